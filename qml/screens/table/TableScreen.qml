import QtQuick
import QtQuick.Layouts
import Bastewright.Page
import Bastewright.Parts
import Bastewright.Pictures
import Bastewright.Theme
import Bastewright.View

// The live session, read and tapped at arm's length: the pass as tiles that lie as the table lies,
// who does what now, and the one step to do next.
FocusScope {
    id: screen

    required property Workroom room
    required property PhonePage phones

    readonly property bool wide: width > height * 1.1
    // A long row of tiles takes the whole width; then people stand in a row below it.
    readonly property bool beside: wide && tiles.needed <= width - column - 3 * Theme.gap
    // Wide enough for the longest word of the work there is; on a low screen for what zones leave.
    readonly property real column: Math.round(low ? Math.min(width * 0.36, Math.max(6.6 * Theme.tableText, width - tiles.needed - 3 * Theme.gap))
                                                  : Math.max(width * 0.36, 10.5 * Theme.tableText))
    // A low screen has room for the tiles and the next step only; others need a line of the call.
    readonly property bool low: wide && height < 6.5 * Theme.tableTarget
    readonly property bool callInHeader: wide && height < 9 * Theme.tableTarget

    property string over: "" // what lies over the screen: "lanes" (everybody's turns), "notes", "record"
    readonly property bool faceToFace: room.comfort.faceToFace && height > 4 * Theme.tableTarget // each half needs a row of tiles beside the middle bar

    signal comfortWanted
    signal phonesWanted

    TapGuard {
        reach: 8 * Theme.density
    }
    Shortcut {
        sequences: ["Ctrl+Z"]
        onActivated: screen.room.live.undo()
    }
    Shortcut {
        sequences: ["Ctrl+Shift+Z", "Ctrl+Y"]
        onActivated: screen.room.live.redo()
    }
    Shortcut {
        sequence: "Escape"
        onActivated: {
            if (screen.over !== "")
                screen.over = ""
            else
                screen.room.backToPlan()
        }
    }

    // Paper, on which everything known is said; the table lies on it.
    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }
    FacingTiles {
        anchors.fill: parent
        anchors.margins: Theme.gap
        visible: screen.over === "" && screen.faceToFace
        room: screen.room
        onMoreWanted: more.open()
        onStepWanted: screen.room.step.asks ? step.open() : screen.room.board.doStep()
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.gap
        visible: screen.over === "" && !screen.faceToFace
        spacing: Theme.gap

        TableHeader {
            Layout.fillWidth: true
            room: screen.room
            brief: screen.low
            withCall: screen.callInHeader
            following: screen.phones.following
            onMoreWanted: more.open()
            onHintWanted: hint.open()
            onPhonesWanted: screen.phonesWanted()
        }
        CallRibbon {
            objectName: "ribbon"
            Layout.fillWidth: true
            Layout.preferredHeight: implicitHeight
            Layout.leftMargin: screen.LayoutMirroring.enabled ? 0 : -Theme.gap
            Layout.rightMargin: screen.LayoutMirroring.enabled ? -Theme.gap : 0
            visible: !screen.callInHeader && board.call !== ""
            board: screen.room.board
        }
        Stitches {
            Layout.fillWidth: true
            Layout.preferredHeight: 2.5 * Theme.density
            share: screen.room.live.progress
        }
        // Not a layout: one remembers the sizes its items began with, and the device may be turned.
        Item {
            id: body

            readonly property bool alone: screen.low && !screen.beside
            // Holds stand in place of the zones while they are set; in place of people too where that spares ranks.
            readonly property bool held: screen.room.step.rounds.length > 0 && screen.room.board.stepReady
            readonly property int ranksAlone: held ? holds.fit(width, height) : -1
            readonly property int ranksBeside: !held || alone ? -1 : screen.beside ? holds.fit(width - screen.column - Theme.gap, height)
                                                                                   : holds.fit(width, height - least - Theme.gap)
            readonly property bool heldAlone: ranksAlone >= 0 && (ranksBeside < 0 || ranksBeside > 1 && ranksAlone < 2)
            readonly property bool heldBeside: ranksBeside >= 0 && !heldAlone
            readonly property bool peopled: !alone && !heldAlone
            readonly property real least: people.strip ? Theme.tableTarget : Math.max(Theme.tableTarget, people.leastHeight) // a line for each person
            readonly property real rest: height - Theme.gap - (heldBeside ? holds.amplyHeight : tiles.neededHeight)
            readonly property real strip: Math.max(least, Math.min(people.strip ? people.stripHeight : people.amplyHeight, rest))

            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredHeight: 1
            Layout.preferredWidth: 1

            TileBoard {
                id: tiles
                objectName: "tiles"
                anchors.left: parent.left
                anchors.top: parent.top
                width: !body.peopled || !screen.beside ? parent.width : parent.width - people.width - Theme.gap
                height: !body.peopled || screen.beside ? parent.height : parent.height - people.height - Theme.gap
                visible: !holds.visible
                board: screen.room.board
                onTicked: zone => screen.room.live.tick(screen.room.board.quilt, zone)
                onTakenBack: zone => screen.room.live.takeBack(screen.room.board.quilt, zone)
            }
            HoldsPicture {
                id: holds
                objectName: "holds"
                anchors.fill: tiles
                visible: body.heldBeside || body.heldAlone
                card: screen.room.step
            }
            PeopleBoard {
                id: people
                objectName: "people"
                visible: body.peopled
                anchors.right: parent.right
                anchors.bottom: parent.bottom
                width: screen.beside ? screen.column : parent.width
                height: screen.beside ? parent.height : body.strip
                strip: screen.wide && !screen.beside
                live: screen.room.live
                onClicked: who.open()
            }
        }
        TableNotice {
            Layout.fillWidth: true
            text: screen.room.live.problem
            serious: true
            early: screen.room.live.early
            onDismissed: screen.room.live.forgetProblem()
            onOtherwiseWanted: otherwise.open()
        }
        StepBar {
            Layout.fillWidth: true
            board: screen.room.board
            card: screen.room.step
            brief: screen.low
            named: body.alone || !screen.low && !screen.beside // where nobody's line says it
            onCountWanted: count.open()
            onStepWanted: step.open()
        }
    }

    StepSheet {
        id: step

        card: screen.room.step
        board: screen.room.board
    }
    HintSheet {
        id: hint

        live: screen.room.live
        desk: screen.room.desk
    }
    OtherwiseSheet {
        id: otherwise

        room: screen.room
    }
    EndSheet {
        id: ending

        live: screen.room.live
    }
    BreakBoard {
        objectName: "breakBoard"
        anchors.fill: parent
        visible: screen.room.live.paused && !screen.room.live.ended && screen.over === ""
        room: screen.room
        onGoOnWanted: goingOn.open()
    }
    GoOnSheet {
        id: goingOn

        room: screen.room
    }
    WhoSheet {
        id: who

        live: screen.room.live
        desk: screen.room.desk
    }
    MoreSheet {
        id: more

        room: screen.room
        onComfortWanted: screen.comfortWanted()
        onPhonesWanted: screen.phonesWanted()
        onCountWanted: count.open()
        onLanesWanted: screen.over = "lanes"
        onNotesWanted: screen.over = "notes"
        onChangesWanted: changes.open()
        onOtherwiseWanted: otherwise.open()
        onEndWanted: ending.open()
        onRecordWanted: screen.over = "record"
    }
    ChangesSheet {
        id: changes

        room: screen.room
    }
    LanesView {
        objectName: "tableLanes"
        anchors.fill: parent
        anchors.margins: Theme.gap
        visible: screen.over === "lanes"
        atTable: true
        room: screen.room
        onClosed: screen.over = ""
    }
    NotesView {
        objectName: "tableNotes"
        anchors.fill: parent
        anchors.margins: Theme.gap
        visible: screen.over === "notes"
        live: screen.room.live
        onClosed: screen.over = ""
    }
    RecordView {
        objectName: "tableRecord"
        anchors.fill: parent
        anchors.margins: Theme.gap
        visible: screen.over === "record"
        room: screen.room
        session: screen.room.live.sessionId
        onClosed: screen.over = ""
    }
    CountSheet {
        id: count

        live: screen.room.live
    }
}
