import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Where the session stands, and what is reached for most: turn, undo, more. Upright the words go
// below the buttons; a low screen has the call here, too.
GridLayout {
    id: header

    required property Workroom room

    property bool brief: false // one row where there is any room for it
    property bool withCall: false // the call is said here
    property string following: "" // who follows on a phone

    signal moreWanted
    signal hintWanted
    signal phonesWanted

    // The buttons leave too little for the words beside them.
    readonly property int buttons: brief ? (room.live.hints.count > 0 ? 4 : 3) : 6
    readonly property bool narrow: width - buttons * (Theme.tableTarget + Theme.gap) < 6 * Theme.tableText

    // What does not fit in a line stays away.
    component Measure: TableWords {
        visible: false
        wrapMode: Text.NoWrap
    }
    Measure {
        id: whole

        text: header.room.live.finishText === "" ? header.room.board.passText
              : qsTr("%1 · %2").arg(header.room.board.passText).arg(header.room.live.finishText)
    }
    Measure {
        id: middle

        text: qsTr("%1 · %2").arg(header.room.board.passText).arg(header.room.live.finishAbout)
    }
    Measure {
        id: least

        text: header.room.live.finishClock === "" ? header.room.board.passText
              : qsTr("%1 · finish %2").arg(header.room.board.passText).arg(header.room.live.finishClock)
    }

    columns: 7
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
        Layout.preferredHeight: beside.implicitHeight
        visible: header.narrow

        // A low screen has no line for it below.
        TableWords {
            id: beside

            anchors.fill: parent
            visible: header.brief && implicitWidth <= parent.width
            text: header.room.board.passText
            wrapMode: Text.NoWrap
        }
    }
    Column {
        id: told

        Layout.row: header.narrow ? 1 : 0
        Layout.column: header.narrow ? 0 : 1
        Layout.columnSpan: header.narrow ? 7 : 1
        Layout.fillWidth: true
        Layout.preferredWidth: 1 // what the buttons leave
        spacing: Theme.gap * 0.3

        CallRibbon {
            width: parent.width
            visible: header.withCall && board.call !== ""
            brief: true
            board: header.room.board
        }
        TableWords {
            objectName: "passText"
            width: parent.width
            visible: !header.brief || !header.narrow
            text: whole.implicitWidth <= told.width ? whole.text
                  : middle.implicitWidth <= told.width ? middle.text
                  : least.implicitWidth <= told.width ? least.text : header.room.board.passText
            Accessible.role: Accessible.Heading
            Accessible.name: whole.text
            lineHeightMode: Text.FixedHeight
            lineHeight: Theme.tableText * 1.12
        }
    }
    TablePress {
        Layout.row: 0
        Layout.column: 2
        objectName: "hint"
        visible: header.room.live.hints.count > 0
        glyph: "warn"
        text: header.room.live.hints.count > 1 ? header.room.live.hints.count : ""
        Accessible.name: header.room.live.hints.count === 1 ? qsTr("1 hint") : qsTr("%1 hints").arg(header.room.live.hints.count)
        onClicked: header.hintWanted()
    }
    TablePress {
        Layout.row: 0
        Layout.column: 3
        objectName: "phonesSign"
        visible: header.following !== "" && !header.narrow && !header.brief
        glyph: "phone"
        Accessible.name: qsTr("On phones: %1").arg(header.following)
        onClicked: header.phonesWanted()
    }
    TablePress {
        Layout.row: 0
        Layout.column: 4
        visible: !header.brief // then it is among the rarer things
        glyph: "turn"
        Accessible.name: qsTr("Turn the picture of the table")
        onClicked: header.room.comfort.turn += 1
    }
    TablePress {
        Layout.row: 0
        Layout.column: 5
        objectName: "tableUndo"
        glyph: "undo"
        enabled: header.room.live.canUndo
        Accessible.name: qsTr("Undo: %1").arg(header.room.live.undoText)
        onClicked: header.room.live.undo()
    }
    TablePress {
        Layout.row: 0
        Layout.column: 6
        objectName: "more"
        glyph: "down"
        Accessible.name: qsTr("More")
        onClicked: header.moreWanted()
    }
}
