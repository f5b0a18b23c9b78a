import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Pictures
import Bastewright.Theme
import Bastewright.View

// The quilt on its table in the middle; what is given and what comes of it beside it.
FocusScope {
    id: screen

    required property Workroom room

    readonly property bool wide: width > height
    // Something takes the whole screen for itself.
    readonly property bool whole: panel.pane === "lanes" || panel.pane === "rehearsal" || photos.picking
    // What is given has a picture of its own to touch.
    readonly property bool given: panel.pane === "layers" || panel.pane === "room" || panel.pane === "people" || panel.pane === "quilt"
    readonly property bool sideBySide: panel.pane === "ways" && panel.sideBySide

    signal comfortWanted

    Shortcut {
        sequences: ["Ctrl+Z"]
        onActivated: screen.room.editor.undo()
    }
    Shortcut {
        sequences: ["Ctrl+Shift+Z", "Ctrl+Y"]
        onActivated: screen.room.editor.redo()
    }
    Shortcut {
        enabled: !screen.whole && !screen.given
        sequences: [screen.LayoutMirroring.enabled ? "Right" : "Left", "PgUp"] // as reading goes
        onActivated: screen.room.pass.number -= 1
    }
    Shortcut {
        enabled: !screen.whole && !screen.given
        sequences: [screen.LayoutMirroring.enabled ? "Left" : "Right", "PgDown"]
        onActivated: screen.room.pass.number += 1
    }
    Shortcut {
        enabled: !screen.whole && !screen.given
        sequences: ["Down", "Ctrl+Right"]
        onActivated: screen.room.pass.stepZone(1)
    }
    Shortcut {
        enabled: !screen.whole && !screen.given
        sequences: ["Up", "Ctrl+Left"]
        onActivated: screen.room.pass.stepZone(-1)
    }
    Shortcut {
        enabled: !panel.editing && !panel.inside && !photos.picking
        sequence: "Escape"
        onActivated: {
            if (panel.pane !== "")
                panel.pane = ""
            else if (screen.room.pass.zone !== "")
                screen.room.pass.zone = ""
            else
                screen.room.backToShelf()
        }
    }

    PhotoDesk {
        id: photos

        editor: screen.room.editor
    }
    DropArea {
        objectName: "photoDrop"
        anchors.fill: parent
        onDropped: drop => {
            if (drop.hasUrls)
                photos.open(drop.urls[0])
        }
    }
    // Paper for what is known, down the whole side or below.
    Rectangle {
        visible: !screen.whole
        x: screen.wide ? (screen.LayoutMirroring.enabled ? 0 : screen.width - width) : 0
        y: screen.wide ? 0 : screen.height - height
        width: screen.wide ? panel.width + 2.5 * Theme.gap : screen.width
        height: screen.wide ? screen.height : panel.height + 2 * Theme.gap + (trial.visible ? trial.height + Theme.gap : 0)
        color: Theme.paper
        border.width: Theme.highContrast ? Theme.line : 0
        border.color: Theme.ink
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.gap
        visible: !screen.whole
        spacing: Theme.gap

        PlanHeader {
            Layout.fillWidth: true
            room: screen.room
            aside: screen.wide ? panel.width + 1.5 * Theme.gap : 0
            onComfortWanted: screen.comfortWanted()
        }
        // Not a layout: one remembers the sizes its items began with, and the window may be turned.
        Item {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredHeight: 1
            Layout.preferredWidth: 1

            Item {
                anchors.left: parent.left
                anchors.top: parent.top
                width: screen.wide ? parent.width - panel.width - 2.5 * Theme.gap : parent.width
                height: screen.wide ? parent.height : parent.height - panel.height - Theme.gap

                LayersView {
                    objectName: "layersView"
                    anchors.fill: parent
                    visible: panel.pane === "layers"
                    layers: screen.room.layers
                    opacity: screen.room.plan.busy ? 0.6 : 1
                }
                RoomView {
                    objectName: "roomView"
                    anchors.fill: parent
                    visible: panel.pane === "room"
                    board: screen.room.tables
                }
                PeopleView {
                    objectName: "peopleView"
                    anchors.fill: parent
                    visible: panel.pane === "people"
                    board: screen.room.tables
                    learnt: screen.room.learnt
                    typing: panel.editing
                }
                TopView {
                    objectName: "topView"
                    anchors.fill: parent
                    visible: panel.pane === "quilt"
                    desk: screen.room.top
                    photos: photos
                }
                WaysTable {
                    anchors.fill: parent
                    visible: screen.sideBySide
                    plan: screen.room.plan
                    ways: screen.room.ways
                }
                PassPicture {
                    anchors.fill: parent
                    visible: !screen.given && !screen.sideBySide
                    room: screen.room
                    pane: panel.pane
                    onHandWanted: takers.open()
                }
            }
            SidePanel {
                id: panel

                objectName: "panel"
                anchors.right: parent.right
                anchors.bottom: parent.bottom
                width: screen.wide ? Math.round(Math.max(screen.width * (panel.pane === "people" ? 0.46 : 0.3), Math.min(screen.width * 0.42, 78 * Theme.density), Math.min(screen.width * 0.5, 22 * Theme.text))) : parent.width
                height: screen.wide ? parent.height : Math.round(screen.height * (screen.room.remedies.trying ? 0.25 : panel.editing ? (screen.given ? 0.46 : 0.52) : panel.pane === "people" ? 0.56 : screen.given ? 0.36 : 0.42))
                room: screen.room
                onWhyWanted: figure => why.show(figure)
            }
        }
        TrialCard {
            id: trial

            Layout.fillWidth: true
            Layout.preferredHeight: implicitHeight
            remedies: screen.room.remedies
        }
    }
    // Of a picture that was dropped.
    Notice {
        objectName: "photoProblem"
        anchors.top: parent.top
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.margins: Theme.gap
        text: photos.problem
        serious: true
        onDismissed: photos.forgetProblem()
    }
    WhySheet {
        id: why

        why: screen.room.why
    }
    PhotoView {
        objectName: "photoView"
        anchors.fill: parent
        anchors.margins: Theme.gap
        photos: photos
    }
    LanesView {
        anchors.fill: parent
        anchors.margins: Theme.gap
        visible: panel.pane === "lanes"
        room: screen.room
        onClosed: panel.pane = ""
    }
    RehearsalView {
        anchors.fill: parent
        anchors.margins: Theme.gap
        visible: panel.pane === "rehearsal"
        room: screen.room
        onClosed: panel.pane = ""
    }
    TakersSheet {
        id: takers

        board: screen.room.lanes
        onTaken: person => screen.room.desk.handOver(screen.room.lanes.quilt, screen.room.lanes.zone, person)
    }
}
