import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What a change that was tried has made of the plan: before and after, to keep or to take back.
Patch {
    id: card

    required property Remedies remedies

    objectName: "trialCard"
    visible: remedies.trying
    implicitHeight: visible ? lines.implicitHeight + 2 * Theme.gap : 0
    border.color: Theme.strongEdge
    color: Theme.soft

    Flow {
        id: lines

        x: Theme.gap
        y: Theme.gap
        width: parent.width - 2 * Theme.gap
        spacing: Theme.gap

        Column {
            readonly property real beside: parent.width - keep.width - back.width - 2 * Theme.gap

            width: beside > 22 * Theme.text ? beside : parent.width

            Words {
                width: parent.width
                text: card.remedies.tried
                font.bold: true
            }
            Words {
                width: parent.width
                text: qsTr("Before: %1").arg(card.remedies.before)
            }
            Words {
                objectName: "trialAfter"
                width: parent.width
                text: card.remedies.after === "" ? qsTr("Planning …") : qsTr("Now: %1").arg(card.remedies.after)
                font.bold: true
                Accessible.role: Accessible.AlertMessage
                Accessible.name: text
            }
        }
        Press {
            id: keep

            objectName: "keepTrial"
            glyph: "check"
            text: qsTr("Keep it")
            onClicked: card.remedies.keep()
        }
        Press {
            id: back

            objectName: "takeTrialBack"
            glyph: "undo"
            text: qsTr("Take it back")
            onClicked: card.remedies.takeBack()
        }
    }
}
