pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Everybody's afternoon; a tap shows their tasks one by one.
ListView {
    id: pane

    required property PlanPresenter plan

    property string opened: ""

    objectName: "who"
    model: plan.people
    clip: true
    spacing: Theme.gap
    boundsBehavior: Flickable.StopAtBounds

    delegate: AbstractButton {
        id: row

        required property string letter
        required property int mark
        required property string name
        required property string hours
        required property string work
        required property string tasks

        readonly property bool unfolded: pane.opened === name

        width: pane.width
        height: Math.max(Theme.target, lines.implicitHeight + 2 * Theme.gap)
        focusPolicy: Qt.StrongFocus
        Accessible.name: name + ", " + hours
        Accessible.onPressAction: row.clicked()
        Keys.onReturnPressed: row.clicked()
        onClicked: pane.opened = unfolded ? "" : name
        background: Patch {
            border.color: Theme.frame

            FocusFrame {
                visible: row.visualFocus
            }
        }
        contentItem: Item {
            PersonMark {
                id: disc

                anchors.left: parent.left
                anchors.leftMargin: Theme.gap
                y: Theme.gap
                width: Theme.title * 1.5
                height: width
                letter: row.letter
                mark: row.mark
                family: Theme.family
            }
            Column {
                id: lines

                anchors.left: disc.right
                anchors.leftMargin: Theme.gap
                anchors.right: parent.right
                anchors.rightMargin: Theme.gap
                y: Theme.gap

                Words {
                    width: parent.width
                    text: row.name
                    font.bold: true
                    font.pixelSize: Theme.large
                }
                Words {
                    width: parent.width
                    text: row.work === "" ? row.hours : qsTr("%1, %2").arg(row.hours).arg(row.work)
                }
                Words {
                    width: parent.width
                    visible: row.unfolded && row.tasks !== ""
                    topPadding: Theme.gap
                    text: row.tasks
                    lineHeight: 1.25
                }
            }
        }
    }
}
