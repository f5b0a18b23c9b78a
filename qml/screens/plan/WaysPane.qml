pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Quilt
import Bastewright.Theme
import Bastewright.View

// The ways the passes can be done as small pictures with three figures, five at once and the rest on
// request; a tap opens what one costs and why it was or was not taken. Side by side they lie where the
// picture is.
Flickable {
    id: pane

    required property PlanPresenter plan
    required property WayDesk ways
    required property Remedies remedies
    property bool sideBySide: false
    property bool all: false // more than the first few
    property int shown: -1 // the way whose reasons are open
    readonly property int hidden: all ? 0 : plan.furtherWays

    objectName: "ways"
    contentHeight: column.implicitHeight
    clip: true
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: column

        width: pane.width
        spacing: Theme.gap

        Words {
            width: parent.width
            text: pane.ways.problem === "" ? qsTr("On the picture the round mark is the start: drag it to another ring, or tap one.") : pane.ways.problem
        }
        Press {
            objectName: "quickestWay"
            width: parent.width
            visible: pane.ways.asked
            glyph: "clock"
            text: qsTr("Whatever is fastest")
            onClicked: pane.ways.takeQuickest()
        }
        Repeater {
            model: pane.plan.alternatives

            AbstractButton {
                id: row

                required property int index
                required property string surface
                required property string start
                required property string orientation
                required property int passes
                required property string time
                required property string lifts
                required property bool chosen
                required property bool workable
                required property string why
                required property string costs
                required property bool beside
                required property bool first

                readonly property bool open: pane.shown === index
                readonly property string count: passes === 1 ? qsTr("1 pass") : qsTr("%1 passes").arg(passes)

                objectName: "wayCard" + index
                width: pane.width
                implicitHeight: lines.height + Theme.gap
                visible: first || pane.all
                focusPolicy: Qt.StrongFocus
                Accessible.name: qsTr("%1, %2, %3: %4, %5").arg(time).arg(count).arg(lifts).arg(surface).arg(orientation)
                Accessible.onPressAction: row.clicked()
                Keys.onReturnPressed: event => { if (!event.isAutoRepeat) row.clicked() }
                Keys.onEnterPressed: event => { if (!event.isAutoRepeat) row.clicked() }
                onClicked: pane.shown = open ? -1 : index

                contentItem: Item {
                    WayPicture {
                        id: picture

                        x: Theme.gap
                        y: Theme.gap / 2
                        width: Math.min(Theme.target * 1.25, parent.width * 0.3)
                        height: width
                        quilt: pane.plan.quilt
                        way: row.index
                    }
                    Column {
                        id: lines

                        x: picture.width + 2 * Theme.gap
                        y: Theme.gap / 2
                        width: parent.width - x - Theme.gap
                        height: Math.max(implicitHeight, picture.height)
                        spacing: Theme.gap * 0.4

                        Words {
                            width: parent.width
                            text: row.time
                            font.pixelSize: Theme.large
                            font.bold: true
                        }
                        Words {
                            width: parent.width
                            visible: row.workable
                            text: qsTr("%1 · %2").arg(row.count).arg(row.lifts)
                            font.bold: true
                        }
                        Words {
                            width: parent.width
                            visible: row.chosen || row.open
                            text: row.chosen ? qsTr("This is the plan") : row.beside ? qsTr("Beside the middle") : row.start
                            quiet: !row.chosen
                        }
                        Words {
                            width: parent.width
                            visible: row.open
                            text: qsTr("%1, %2.").arg(row.surface).arg(row.orientation)
                        }
                        Words {
                            width: parent.width
                            visible: row.open && row.costs !== ""
                            text: row.costs
                        }
                        Words {
                            width: parent.width
                            visible: row.open && row.why !== ""
                            text: row.why
                            quiet: true
                        }
                        Press {
                            objectName: "takeWay" + row.index
                            width: parent.width
                            visible: row.open && row.workable && !row.chosen
                            enabled: !pane.plan.busy
                            main: true
                            text: qsTr("Use this plan")
                            onClicked: pane.ways.take(row.index)
                        }
                    }
                }
                background: Rectangle {
                    radius: Theme.radius
                    color: row.down || row.open ? Theme.soft : "transparent"
                    border.width: row.chosen ? Theme.line * 2.5 : 0
                    border.color: Theme.accent

                    Hair {
                        anchors.bottom: parent.bottom
                        width: parent.width
                        visible: !row.chosen
                    }
                    FocusFrame {
                        visible: row.visualFocus
                    }
                }
            }
        }
        Press {
            objectName: "allWays"
            width: parent.width
            visible: pane.hidden > 0
            text: pane.hidden === 1 ? qsTr("Show 1 more way") : qsTr("Show %1 more ways").arg(pane.hidden)
            onClicked: pane.all = true
        }
        Press {
            objectName: "sideBySide"
            width: parent.width
            glyph: "ways"
            text: qsTr("Side by side")
            checked: pane.sideBySide
            onClicked: pane.sideBySide = !pane.sideBySide
        }
        HelpList {
            width: pane.width
            plan: pane.plan
            remedies: pane.remedies
        }
    }
}
