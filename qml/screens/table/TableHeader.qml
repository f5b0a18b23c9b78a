import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Where the session stands, and what is reached for most: turn, undo, more. Upright the words go
// below the buttons.
GridLayout {
    id: header

    required property Workroom room

    property bool brief: false // one row, without the finish

    signal moreWanted
    signal hintWanted

    readonly property bool narrow: !brief && width < 24 * Theme.tableText

    // The line of stitches below tells how far it is, too: what does not fit in a line stays away.
    component Measure: TableWords {
        visible: false
        wrapMode: Text.NoWrap
    }
    Measure {
        id: whole

        text: qsTr("%1 · %2").arg(header.room.board.passText).arg(header.room.live.progressText)
        font.bold: true
    }
    Measure {
        id: finish

        text: header.room.live.finishText
    }

    columns: 6
    columnSpacing: Theme.gap
    rowSpacing: Theme.gap * 0.5

    TablePress {
        Layout.row: 0
        Layout.column: 0
        objectName: "leaveTable"
        plain: true
        glyph: "back"
        Accessible.name: qsTr("To the plan")
        onClicked: header.room.backToPlan()
    }
    Item {
        Layout.row: 0
        Layout.column: 1
        Layout.fillWidth: true
        visible: header.narrow
    }
    Column {
        id: told

        Layout.row: header.narrow ? 1 : 0
        Layout.column: header.narrow ? 0 : 1
        Layout.columnSpan: header.narrow ? 6 : 1
        Layout.fillWidth: true
        Layout.preferredWidth: 1 // what the buttons leave

        TableWords {
            objectName: "passText"
            width: parent.width
            text: whole.implicitWidth <= told.width ? whole.text : header.room.board.passText
            Accessible.role: Accessible.Heading
            Accessible.name: whole.text
            font.bold: true
            lineHeightMode: Text.FixedHeight
            lineHeight: Theme.tableText * 1.12
        }
        TableWords {
            objectName: "finishText"
            width: parent.width
            visible: text !== "" && !header.brief
            text: finish.implicitWidth <= told.width ? finish.text : finish.text.replace(/ \(.*\)$/, "")
            lineHeightMode: Text.FixedHeight
            lineHeight: Theme.tableText * 1.12
        }
    }
    TablePress {
        Layout.row: 0
        Layout.column: 2
        objectName: "hint"
        visible: header.room.live.nudge !== ""
        glyph: "warn"
        Accessible.name: header.room.live.nudge
        onClicked: header.hintWanted()
    }
    TablePress {
        Layout.row: 0
        Layout.column: 3
        glyph: "turn"
        Accessible.name: qsTr("Turn the picture of the table")
        onClicked: header.room.comfort.turn += 1
    }
    TablePress {
        Layout.row: 0
        Layout.column: 4
        objectName: "tableUndo"
        glyph: "undo"
        enabled: header.room.live.canUndo
        Accessible.name: qsTr("Undo: %1").arg(header.room.live.undoText)
        onClicked: header.room.live.undo()
    }
    TablePress {
        Layout.row: 0
        Layout.column: 5
        objectName: "more"
        glyph: "down"
        Accessible.name: qsTr("More")
        onClicked: header.moreWanted()
    }
}
