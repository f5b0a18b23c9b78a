import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Who works the zone that was tapped, and when.
Patch {
    id: card

    required property PassPresenter pass

    signal handWanted

    objectName: "zoneCard"
    visible: pass.zone !== ""
    implicitHeight: lines.implicitHeight + 2 * Theme.gap
    border.color: Theme.strongEdge

    Column {
        id: lines

        x: Theme.gap
        y: Theme.gap
        width: parent.width - 2 * Theme.gap
        spacing: Theme.gap / 2

        Words {
            width: parent.width
            text: card.pass.zoneTitle
            font.pixelSize: Theme.large
            font.bold: true
        }
        Words {
            width: parent.width
            text: card.pass.zoneText
        }
        Press {
            objectName: "handZone"
            width: parent.width
            glyph: "swap"
            text: qsTr("Hand %1 to …").arg(card.pass.zone.slice(card.pass.zone.lastIndexOf(".") + 1))
            onClicked: card.handWanted()
        }
    }
}
