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
        enabled: !screen.whole
        sequences: ["Left", "PgUp"]
        onActivated: screen.room.pass.number -= 1
    }
    Shortcut {
        enabled: !screen.whole
        sequences: ["Right", "PgDown"]
        onActivated: screen.room.pass.number += 1
    }
    Shortcut {
        enabled: !screen.whole
        sequences: ["Down", "Ctrl+Right"]
        onActivated: screen.room.pass.stepZone(1)
    }
    Shortcut {
        enabled: !screen.whole
        sequences: ["Up", "Ctrl+Left"]
        onActivated: screen.room.pass.stepZone(-1)
    }
    Shortcut {
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
            ColumnLayout {
                Layout.fillWidth: true
                Layout.fillHeight: true
                visible: panel.pane !== "layers"
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
                        onZoneTapped: zone => screen.room.pass.zone = zone === screen.room.pass.zone ? "" : zone
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
                Layout.preferredHeight: screen.wide ? -1 : screen.height * 0.42
                room: screen.room
            }
        }
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
