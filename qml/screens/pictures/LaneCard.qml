import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What the piece of work is that was tapped: what, where, why then; and whose it may become.
Patch {
    id: card

    required property LanesBoard board

    property bool atTable: false

    signal handWanted
    signal backWanted

    readonly property real letters: atTable ? Theme.tableText : Theme.text
    readonly property bool wide: width > letters * 34

    objectName: "laneCard"
    readonly property real beside: buttons.visible ? buttons.height : 0

    implicitHeight: (wide ? Math.max(told.height, beside) : told.height + (beside > 0 ? beside + Theme.gap * 0.5 : 0)) + Theme.gap

    // Not a layout: its words wrap, and it is turned.
    Column {
        id: told

        anchors.left: parent.left
        anchors.leftMargin: Theme.gap
        y: card.wide ? (card.height - height) / 2 : Theme.gap * 0.5
        width: parent.width - 2 * Theme.gap - (card.wide && buttons.visible ? buttons.width + Theme.gap : 0)

        Words {
            width: parent.width
            text: card.board.chosen === "" ? qsTr("Tap a piece of work: dashed is pinned open, solid is closed or pressed, tied is done together.")
                                           : card.board.title
            font.pixelSize: card.letters
            font.bold: card.board.chosen !== ""
            quiet: card.board.chosen === ""
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: card.board.what
            font.pixelSize: card.letters
        }
    }
    Row {
        id: buttons

        anchors.right: parent.right
        anchors.rightMargin: Theme.gap
        y: card.wide ? (card.height - height) / 2 : told.y + told.height + Theme.gap * 0.5
        visible: card.board.zone !== ""
        spacing: Theme.gap

        Press {
            objectName: "handOver"
            width: card.wide ? implicitWidth : card.width - 2 * Theme.gap - (back.visible ? back.width + Theme.gap : 0)
            glyph: "swap"
            text: qsTr("Hand %1 to …").arg(card.board.zone.slice(card.board.zone.lastIndexOf(".") + 1))
            least: card.atTable ? Theme.tableTarget : Theme.target
            size: card.letters
            onClicked: card.handWanted()
        }
        Press {
            id: back

            objectName: "giveBack"
            visible: card.board.handed
            glyph: "undo"
            least: card.atTable ? Theme.tableTarget : Theme.target
            size: card.letters
            Accessible.name: qsTr("Give %1 back to whoever is best").arg(card.board.zone.slice(card.board.zone.lastIndexOf(".") + 1))
            onClicked: card.backWanted()
        }
    }
}
