pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What would help most, best first; each can be tried.
Column {
    id: list

    required property PlanPresenter plan
    required property Remedies remedies

    readonly property bool narrow: width < 22 * Theme.text

    visible: plan.help.count > 0
    spacing: Theme.gap

    Heading {
        width: parent.width
        topPadding: Theme.gap
        text: qsTr("What would help most")
        font.pixelSize: Theme.text
        quiet: true
    }
    Repeater {
        model: list.plan.help

        Patch {
            id: row

            required property int index
            required property string change
            required property string gain

            width: list.width
            height: (list.narrow ? lines.implicitHeight + attempt.height + Theme.gap : Math.max(lines.implicitHeight, attempt.height)) + 2 * Theme.gap

            Column {
                id: lines

                anchors.left: parent.left
                anchors.leftMargin: Theme.gap
                y: Theme.gap
                width: parent.width - (list.narrow ? 2 * Theme.gap : attempt.width + 3 * Theme.gap)

                Words {
                    width: parent.width
                    text: row.change
                    font.bold: true
                }
                Words {
                    width: parent.width
                    text: row.gain
                }
            }
            Press {
                id: attempt

                objectName: "try" + row.index
                anchors.right: parent.right
                anchors.rightMargin: Theme.gap
                y: list.narrow ? parent.height - height - Theme.gap : (parent.height - height) / 2
                text: qsTr("Try it")
                enabled: !list.plan.busy
                Accessible.name: qsTr("Try it: %1").arg(row.change)
                onClicked: list.remedies.tryHelp(row.index)
            }
        }
    }
}
