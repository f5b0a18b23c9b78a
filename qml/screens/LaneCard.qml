import QtQuick
import QtQuick.Layouts
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
    implicitHeight: lines.implicitHeight + Theme.gap

    GridLayout {
        id: lines

        x: Theme.gap
        y: Theme.gap * 0.5
        width: parent.width - 2 * Theme.gap
        columns: card.wide ? 2 : 1
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap * 0.5

        Column {
            Layout.fillWidth: true

            Words {
                width: parent.width
                text: card.board.chosen === "" ? qsTr("Tap a piece of work: dashed is put in, solid is closed or pressed, tied is done together.")
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
        RowLayout {
            visible: card.board.zone !== ""
            spacing: Theme.gap

            Press {
                objectName: "handOver"
                Layout.fillWidth: !card.wide
                glyph: "swap"
                text: qsTr("Hand %1 to …").arg(card.board.zone)
                least: card.atTable ? Theme.tableTarget : Theme.target
                size: card.letters
                onClicked: card.handWanted()
            }
            Press {
                objectName: "giveBack"
                visible: card.board.handed
                glyph: "undo"
                least: card.atTable ? Theme.tableTarget : Theme.target
                size: card.letters
                Accessible.name: qsTr("Give %1 back to whoever is best").arg(card.board.zone)
                onClicked: card.backWanted()
            }
        }
    }
}
