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
    signal hintWanted

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
        Layout.preferredWidth: 1 // what the buttons leave

        TableWords {
            objectName: "passText"
            width: parent.width
            text: qsTr("%1 · %2").arg(header.room.board.passText).arg(header.room.live.progressText)
            font.bold: true
            lineHeightMode: Text.FixedHeight
            lineHeight: Theme.tableText * 1.12
        }
        TableWords {
            objectName: "finishText"
            width: parent.width
            visible: text !== ""
            text: header.room.live.finishText
            lineHeightMode: Text.FixedHeight
            lineHeight: Theme.tableText * 1.12
        }
    }
    TablePress {
        objectName: "hint"
        visible: header.room.live.nudge !== ""
        glyph: "warn"
        Accessible.name: header.room.live.nudge
        onClicked: header.hintWanted()
    }
    TablePress {
        glyph: "turn"
        Accessible.name: qsTr("Turn the picture of the table")
        onClicked: header.room.comfort.turn += 1
    }
    TablePress {
        objectName: "tableUndo"
        glyph: "undo"
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
