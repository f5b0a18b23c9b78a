pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Every way the passes can be done, with what it costs and why it was or was not taken; a tap takes
// another. Side by side they lie where the picture is.
Flickable {
    id: pane

    required property PlanPresenter plan
    required property WayDesk ways
    required property Remedies remedies
    property bool sideBySide: false

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
            objectName: "sideBySide"
            width: parent.width
            glyph: "ways"
            text: qsTr("Side by side")
            checked: pane.sideBySide
            onClicked: pane.sideBySide = !pane.sideBySide
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

            Patch {
                id: row

                required property int index
                required property string surface
                required property string start
                required property string orientation
                required property int passes
                required property string time
                required property string largestShift
                required property bool chosen
                required property bool workable
                required property string why
                required property string costs
                required property bool beside

                width: pane.width
                height: lines.implicitHeight + 2 * Theme.gap
                border.width: chosen ? Theme.line * 2.5 : Theme.line
                border.color: chosen ? Theme.accent : Theme.edge

                Column {
                    id: lines

                    x: Theme.gap
                    y: Theme.gap
                    width: parent.width - 2 * Theme.gap
                    spacing: Theme.gap * 0.4

                    Row {
                        spacing: Theme.gap
                        visible: row.chosen

                        Glyph {
                            name: "check"
                            color: Theme.accent
                            width: Theme.text * 1.2
                            height: width
                        }
                        Words {
                            text: qsTr("This is the plan")
                            font.bold: true
                        }
                    }
                    Words {
                        width: parent.width
                        text: row.passes === 1 ? qsTr("1 pass, %1").arg(row.time) : qsTr("%1 passes, %2").arg(row.passes).arg(row.time)
                        font.pixelSize: Theme.large
                        font.bold: true
                    }
                    Words {
                        width: parent.width
                        text: qsTr("%1, %2. %3.").arg(row.surface).arg(row.orientation).arg(row.beside ? qsTr("Beside the middle") : row.start)
                    }
                    Words {
                        width: parent.width
                        visible: row.costs !== ""
                        text: row.costs
                    }
                    Words {
                        width: parent.width
                        visible: row.why !== ""
                        text: row.why
                        quiet: true
                    }
                    Press {
                        objectName: "takeWay" + row.index
                        width: parent.width
                        visible: row.workable && !row.chosen
                        enabled: !pane.plan.busy
                        text: qsTr("Use this plan")
                        onClicked: pane.ways.take(row.index)
                    }
                }
            }
        }
        HelpList {
            width: pane.width
            plan: pane.plan
            remedies: pane.remedies
        }
    }
}
