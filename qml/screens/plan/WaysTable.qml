pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Quilt
import Bastewright.Theme
import Bastewright.View

// The ways side by side, a column each: what each costs, line by line. A tap takes one.
ListView {
    id: table

    required property PlanPresenter plan
    required property WayDesk ways

    objectName: "waysTable"
    orientation: ListView.Horizontal
    model: plan.alternatives
    clip: true
    spacing: Theme.gap
    boundsBehavior: Flickable.StopAtBounds

    delegate: AbstractButton {
        id: way

        required property int index
        required property string surface
        required property string start
        required property string orientation
        required property int passes
        required property string time
        required property bool chosen
        required property bool workable
        required property bool beside
        required property string costs

        width: Math.max(52 * Theme.density, 14 * Theme.text)
        height: table.height
        enabled: workable && !table.plan.busy
        focusPolicy: Qt.StrongFocus
        Accessible.name: qsTr("%1, %2, %3").arg(surface).arg(orientation).arg(time)
        Accessible.onPressAction: way.clicked()
        Keys.onReturnPressed: way.clicked()
        onClicked: {
            if (!chosen)
                table.ways.take(index)
        }
        background: Patch {
            color: way.chosen ? Theme.soft : Theme.paper
            border.width: way.chosen ? Theme.line * 2.5 : Theme.line
            border.color: way.chosen ? Theme.accent : Theme.frame

            FocusFrame {
                visible: way.visualFocus
            }
        }
        contentItem: Flickable {
            contentHeight: lines.implicitHeight + 2 * Theme.gap
            clip: true
            interactive: contentHeight > height
            boundsBehavior: Flickable.StopAtBounds

            Column {
                id: lines

                x: Theme.gap
                y: Theme.gap
                width: parent.width - 2 * Theme.gap
                spacing: Theme.gap

                WayPicture {
                    width: parent.width
                    height: Math.min(width, Theme.target * 2.6)
                    quilt: table.plan.quilt
                    way: way.index
                }
                Words {
                    width: parent.width
                    text: way.chosen ? qsTr("The plan") : way.workable ? qsTr("Tap to take") : qsTr("Does not work")
                    font.bold: true
                    quiet: !way.chosen
                }
                Words {
                    width: parent.width
                    text: way.time
                    font.pixelSize: Theme.title
                    font.bold: true
                }
                Words {
                    width: parent.width
                    text: way.passes === 1 ? qsTr("1 pass") : qsTr("%1 passes").arg(way.passes)
                    font.pixelSize: Theme.large
                    visible: way.workable
                }
                Words {
                    width: parent.width
                    text: way.surface
                }
                Words {
                    width: parent.width
                    text: way.orientation
                }
                Words {
                    width: parent.width
                    text: way.beside ? qsTr("Beside the middle") : way.start
                }
                Words {
                    width: parent.width
                    text: way.costs
                }
            }
        }
    }
}
