import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Quilt
import Bastewright.Theme
import Bastewright.View

// The quilt on its table in the middle; what is given and what comes of it beside it.
FocusScope {
    id: screen

    required property Workroom room

    readonly property bool wide: width > height
    // Something takes the whole screen for itself.
    readonly property bool whole: panel.pane === "lanes" || panel.pane === "rehearsal"
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
        sequences: ["Left", "PgUp"]
        onActivated: screen.room.pass.number -= 1
    }
    Shortcut {
        enabled: !screen.whole && !screen.given
        sequences: ["Right", "PgDown"]
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
        enabled: !panel.editing
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

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.gap
        visible: !screen.whole
        spacing: Theme.gap

        PlanHeader {
            Layout.fillWidth: true
            room: screen.room
            onComfortWanted: screen.comfortWanted()
        }
        GridLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            columns: screen.wide ? 2 : 1
            columnSpacing: Theme.gap
            rowSpacing: Theme.gap

            LayersView {
                objectName: "layersView"
                Layout.fillWidth: true
                Layout.fillHeight: true
                visible: panel.pane === "layers"
                layers: screen.room.layers
                opacity: screen.room.plan.busy ? 0.6 : 1
            }
            RoomView {
                objectName: "roomView"
                Layout.fillWidth: true
                Layout.fillHeight: true
                visible: panel.pane === "room"
                board: screen.room.tables
            }
            PeopleView {
                objectName: "peopleView"
                Layout.fillWidth: true
                Layout.fillHeight: true
                visible: panel.pane === "people"
                board: screen.room.tables
                editor: screen.room.editor
            }
            TopView {
                objectName: "topView"
                Layout.fillWidth: true
                Layout.fillHeight: true
                visible: panel.pane === "quilt"
                desk: screen.room.top
            }
            WaysTable {
                Layout.fillWidth: true
                Layout.fillHeight: true
                visible: screen.sideBySide
                plan: screen.room.plan
                ways: screen.room.ways
            }
            ColumnLayout {
                Layout.fillWidth: true
                Layout.fillHeight: true
                visible: !screen.given && !screen.sideBySide
                spacing: Theme.gap

                Patch {
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    color: Theme.ground

                    QuiltPicture {
                        id: picture

                        objectName: "picture"
                        anchors.fill: parent
                        anchors.margins: Theme.line
                        quilt: screen.room.plan.quilt
                        pass: screen.room.pass.number
                        zone: screen.room.pass.zone
                        opacity: screen.room.plan.busy ? 0.6 : 1
                        Accessible.role: Accessible.Graphic
                        Accessible.name: screen.room.pass.title
                        zones: panel.pane !== "basting"
                        onZoneTapped: zone => screen.room.pass.zone = zone === screen.room.pass.zone ? "" : zone
                        onPlaceTapped: (x, y) => screen.room.pattern.look(x, y)
                    }
                    StartHandles {
                        active: panel.pane === "ways"
                        ways: screen.room.ways
                        picture: picture
                    }
                    BlockMark {
                        picture: picture
                        pattern: screen.room.pattern
                        visible: panel.pane === "basting" && screen.room.pattern.shown
                    }
                    PatternCard {
                        desk: screen.room.pattern
                        visible: panel.pane === "basting" && screen.room.pattern.shown
                        anchors.right: parent.right
                        anchors.top: parent.top
                        anchors.bottom: parent.bottom
                        width: Math.min(parent.width * 0.55, 80 * Theme.density)
                    }
                    Press {
                        objectName: "showPattern"
                        anchors.left: parent.left
                        anchors.bottom: parent.bottom
                        anchors.margins: Theme.gap
                        visible: panel.pane === "basting" && !screen.room.pattern.shown && screen.room.pattern.any
                        glyph: "pin"
                        text: qsTr("Tap a block to see its pattern")
                        onClicked: screen.room.pattern.step(1)
                    }
                    Words {
                        anchors.centerIn: parent
                        width: parent.width - 2 * Theme.space
                        visible: !screen.room.plan.planned
                        horizontalAlignment: Text.AlignHCenter
                        text: screen.room.plan.busy ? qsTr("Planning …") : qsTr("There is nothing to draw yet.")
                        font.pixelSize: Theme.large
                    }
                    ZoneCard {
                        pass: screen.room.pass
                        onHandWanted: {
                            if (screen.room.lanes.chooseZone(screen.room.plan.quiltIndex, screen.room.pass.zone))
                                takers.open()
                        }
                        anchors.right: parent.right
                        anchors.bottom: parent.bottom
                        anchors.margins: Theme.gap
                        width: Math.min(parent.width - 2 * Theme.gap, 75 * Theme.density)
                    }
                }
                PassStrip {
                    Layout.fillWidth: true
                    pass: screen.room.pass
                }
            }
            SidePanel {
                id: panel

                objectName: "panel"
                Layout.fillHeight: screen.wide
                Layout.fillWidth: !screen.wide
                Layout.preferredWidth: screen.wide ? Math.max(screen.width * 0.3, Math.min(screen.width * 0.42, 78 * Theme.density)) : -1
                Layout.preferredHeight: screen.wide ? -1 : screen.height * (panel.editing ? 0.52 : 0.42)
                room: screen.room
                onWhyWanted: figure => why.show(figure)
            }
        }
        TrialCard {
            Layout.fillWidth: true
            Layout.preferredHeight: implicitHeight
            remedies: screen.room.remedies
        }
    }
    WhySheet {
        id: why

        why: screen.room.why
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
