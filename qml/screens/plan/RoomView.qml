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
                text: qsTr("Add a table")
                onClicked: view.board.addTable()
            }
            Press {
                objectName: "removeTable"
                visible: floor.chosen >= 0
                glyph: "minus"
                text: qsTr("Remove this table")
                onClicked: {
                    const which = floor.chosen
                    floor.chosen = -1
                    view.board.removeTable(which)
                }
            }
            Press {
                objectName: "turnTables"
                visible: floor.chosen < 0 || floor.handlesBeside
                glyph: "turn"
                text: qsTr("Turn the tables")
                enabled: view.board.turns
                onClicked: view.board.turnTables()
            }
            Press {
                objectName: "turnQuilt"
                glyph: "turn"
                visible: floor.chosen < 0
                text: qsTr("Turn the quilt")
                enabled: !view.board.onFloor
                onClicked: view.board.turnQuilt()
            }
            Press {
                objectName: "asIsQuickest"
                visible: floor.chosen < 0 && view.board.asked
                glyph: "clock"
                text: qsTr("As is fastest")
                Accessible.name: qsTr("Let the tables stand and the quilt lie as is fastest")
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
        text: qsTr("Tap a table for its handles, or drag it. Tap an edge that stands against a wall. Stitched: the quilt in the first pass.")
        font.pixelSize: Theme.small
        quiet: true
    }
}
