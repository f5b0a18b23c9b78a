import QtQuick
import Bastewright.Parts
import Bastewright.Pictures
import Bastewright.Theme
import Bastewright.View

// The room by finger: tables are dragged together and apart, walls are tapped. Where the words take too
// much of the room it scrolls.
Flickable {
    id: view

    required property RoomBoard board

    readonly property real words: above.height + hint.height + Theme.gap

    contentHeight: Math.max(height, words + Math.max(45 * Theme.density, floor.least))
    clip: true
    interactive: contentHeight > height + 1 && floor.held === 0
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: above

        width: view.width
        spacing: Theme.gap

        Words {
            width: parent.width
            text: view.board.problem === "" ? view.board.title : view.board.problem
            font.pixelSize: Theme.large
            font.bold: view.board.problem !== ""
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        Flow {
            width: parent.width
            spacing: Theme.gap

            Press {
                objectName: "addTable"
                glyph: "plus"
                text: qsTr("A table")
                onClicked: view.board.addTable()
            }
            Press {
                objectName: "removeTable"
                glyph: "minus"
                text: qsTr("This one")
                enabled: floor.chosen >= 0
                Accessible.name: qsTr("Take this table away")
                onClicked: {
                    const which = floor.chosen
                    floor.chosen = -1
                    view.board.removeTable(which)
                }
            }
            Press {
                objectName: "turnTables"
                glyph: "turn"
                text: qsTr("Tables")
                enabled: view.board.turns
                Accessible.name: qsTr("Push the same tables together another way")
                onClicked: view.board.turnTables()
            }
            Press {
                objectName: "turnQuilt"
                glyph: "turn"
                text: qsTr("Quilt")
                enabled: !view.board.onFloor
                Accessible.name: qsTr("Lay the quilt the other way")
                onClicked: view.board.turnQuilt()
            }
            Press {
                objectName: "asIsQuickest"
                glyph: "clock"
                text: qsTr("Fastest")
                Accessible.name: qsTr("Let the tables stand and the quilt lie as is fastest")
                enabled: view.board.asked
                onClicked: view.board.asIsQuickest()
            }
        }
    }
    RoomFloor {
        id: floor

        y: above.height
        width: view.width
        height: view.contentHeight - view.words
        board: view.board
        movable: true
    }
    Words {
        id: hint

        y: view.contentHeight - height
        width: view.width
        text: qsTr("Drag tables together or apart. Tap an edge that stands against a wall. Stitched: the quilt in the first pass.")
        font.pixelSize: Theme.small
        quiet: true
    }
}
