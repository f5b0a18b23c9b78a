import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Where the session stands, and what is reached for most: turn, undo, more.
RowLayout {
    id: header

    required property Workroom room

    signal moreWanted

    spacing: Theme.gap

    TablePress {
        objectName: "leaveTable"
        plain: true
        glyph: "back"
        Accessible.name: qsTr("To the plan")
        onClicked: header.room.backToPlan()
    }
    Column {
        Layout.fillWidth: true

        TableWords {
            objectName: "passText"
            width: parent.width
            text: header.room.board.passText
            font.bold: true
            fontSizeMode: Text.HorizontalFit
            wrapMode: Text.NoWrap
            minimumPixelSize: Theme.tableText
        }
        TableWords {
            objectName: "progressText"
            width: parent.width
            text: header.room.live.progressText
            wrapMode: Text.NoWrap
        }
    }
    TablePress {
        glyph: "turn"
        Accessible.name: qsTr("Turn the picture of the table")
        onClicked: header.room.comfort.turn += 1
    }
    TablePress {
        objectName: "tableUndo"
        glyph: "undo"
        text: header.width > 240 * Theme.density ? header.room.live.undoText : ""
        enabled: header.room.live.canUndo
        Accessible.name: qsTr("Undo: %1").arg(header.room.live.undoText)
        onClicked: header.room.live.undo()
    }
    TablePress {
        objectName: "more"
        glyph: "down"
        Accessible.name: qsTr("More")
        onClicked: header.moreWanted()
    }
}
