pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The tables to scale: those pushed together with the quilt on them (stitched), the others apart.
// Their edges are tapped to say where a wall is; they can be dragged. Where all of it would be too
// small for a finger it scrolls.
Flickable {
    id: floor

    required property RoomBoard board

    property bool movable: false
    property int chosen: -1

    // Room round the tables for edges and for people.
    property real around: Theme.target + 2 * Theme.gap
    // Where people stand round the tables, those that are apart stay away.
    readonly property rect area: movable ? board.extent : board.surface
    readonly property real fit: Math.min((width - 2 * around) / Math.max(1, area.width),
                                         (height - 2 * around) / Math.max(1, area.height))
    // The narrowest of what is tapped: a table, or the way between those together and the others.
    readonly property real inch: Math.max(0.1, fit, movable ? Theme.target / Math.max(1, board.narrowest) : 0)
    readonly property real leftmost: (contentWidth - area.width * inch) / 2 - area.x * inch
    readonly property real topmost: (contentHeight - area.height * inch) / 2 - area.y * inch
    /// What its words need where there is no table.
    readonly property real least: board.onFloor ? aboutFloor.height + 2 * Theme.space : 0
    readonly property real between: Theme.gap * 0.5
    /// The table in hand is too small for its handles: whoever shows the floor offers the turn of the tables.
    readonly property bool handlesBeside: {
        const row = chosen >= 0 ? tableAt(chosen) : null
        return row !== null && !handlesFit(row.width, row.height)
    }
    property int held: 0 // tables under a finger: they move, not the floor
    readonly property rect surface: Qt.rect(leftmost + board.surface.x * inch, topmost + board.surface.y * inch,
                                            board.surface.width * inch, board.surface.height * inch)

    function handlesFit(wide: real, deep: real): bool {
        return Math.max(wide, deep) >= 3 * Theme.target + 2 * between && Math.min(wide, deep) >= Theme.target
    }
    function tableAt(index: int): Item {
        return placed.itemAt(index)
    }

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    contentWidth: Math.max(width, area.width * inch + 2 * around)
    contentHeight: Math.max(height, area.height * inch + 2 * around)
    interactive: held === 0 && (contentWidth > width + 1 || contentHeight > height + 1)

    Words {
        id: aboutFloor

        x: Theme.space
        y: (floor.height - height) / 2
        width: floor.width - 2 * Theme.space
        visible: floor.board.onFloor
        horizontalAlignment: Text.AlignHCenter
        text: qsTr("No tables: the quilt is laid on the floor, in one pass. Kneel on something soft, and change places often.")
        font.pixelSize: Theme.large
    }
    Repeater {
        model: floor.board.onFloor ? 0 : 4

        AbstractButton {
            id: edge

            required property int index

            readonly property bool wall: (floor.board.walls >> index) % 2 === 1
            readonly property bool level: index < 2 // far and near side

            objectName: "edge" + index
            visible: floor.movable || wall
            enabled: floor.movable
            x: index === RoomBoard.Left ? floor.surface.x - width
               : index === RoomBoard.Right ? floor.surface.x + floor.surface.width : floor.surface.x
            y: index === RoomBoard.Head ? floor.surface.y - height
               : index === RoomBoard.Foot ? floor.surface.y + floor.surface.height : floor.surface.y + Math.min(0, (floor.surface.height - height) / 2)
            width: level ? floor.surface.width : Theme.target
            height: level ? Theme.target : Math.max(Theme.target, floor.surface.height)
            focusPolicy: Qt.StrongFocus
            Accessible.name: wall ? qsTr("%1: a wall").arg(floor.board.sideName(index))
                                  : qsTr("%1: open").arg(floor.board.sideName(index))
            Accessible.onPressAction: edge.clicked()
            Keys.onReturnPressed: edge.clicked()
            onClicked: floor.board.toggleWall(index)
            background: Rectangle {
                color: edge.wall ? Theme.strongEdge : edge.down ? Theme.soft : "transparent"
                border.width: 0

                FocusFrame {
                    radius: 0
                    visible: edge.visualFocus
                }
            }
            contentItem: Item {
                Glyph {
                    anchors.centerIn: parent
                    name: edge.wall ? "wall" : "person"
                    color: edge.wall ? Theme.paper : Theme.quiet
                    width: Theme.text * 1.3
                    height: width
                }
            }
        }
    }
    StitchFrame {
        x: floor.leftmost + floor.board.quilt.x * floor.inch
        y: floor.topmost + floor.board.quilt.y * floor.inch
        width: floor.board.quilt.width * floor.inch
        height: floor.board.quilt.height * floor.inch
        visible: width > 0
        color: Theme.accent
        radius: 0
        thickness: Theme.line * 1.5
    }
    Repeater {
        id: placed

        model: floor.board.tables

        AbstractButton {
            id: table

            required property int index
            required property real atX
            required property real atY
            required property real wide
            required property real deep
            required property string size
            required property bool apart

            property point moved: Qt.point(0, 0)
            readonly property bool held: pressed || drag.active
            readonly property bool picked: floor.movable && floor.chosen === index

            objectName: "table" + index
            visible: floor.movable || !apart
            x: floor.leftmost + atX * floor.inch + moved.x
            y: floor.topmost + atY * floor.inch + moved.y
            z: drag.active ? 2 : 1
            width: wide * floor.inch
            height: deep * floor.inch
            enabled: floor.movable
            focusPolicy: floor.movable ? Qt.StrongFocus : Qt.NoFocus
            Accessible.name: apart ? qsTr("Table %1, %2, apart").arg(index + 1).arg(size)
                                   : qsTr("Table %1, %2, pushed together").arg(index + 1).arg(size)
            Accessible.onPressAction: table.clicked()
            Keys.onReturnPressed: table.clicked()
            onClicked: floor.chosen = picked ? -1 : index
            onHeldChanged: floor.held += held ? 1 : -1
            Component.onDestruction: {
                if (held)
                    floor.held -= 1
            }

            DragHandler {
                id: drag

                enabled: floor.movable
                target: null
                grabPermissions: PointerHandler.CanTakeOverFromAnything
                onActiveTranslationChanged: {
                    if (active)
                        table.moved = Qt.point(activeTranslation.x, activeTranslation.y)
                }
                onActiveChanged: {
                    if (active)
                        return
                    const x = table.atX + table.moved.x / floor.inch, y = table.atY + table.moved.y / floor.inch
                    table.moved = Qt.point(0, 0)
                    floor.board.drop(table.index, x, y)
                }
            }
            background: Rectangle {
                color: Theme.wood
                opacity: table.apart && !drag.active ? 0.65 : 1
                border.width: table.picked ? Theme.line * 4 : Theme.line * 1.5
                border.color: table.picked ? Theme.accent : Theme.woodDark

                FocusFrame {
                    radius: 0
                    visible: table.visualFocus
                }
            }
            contentItem: Item {
                Words {
                    anchors.centerIn: parent
                    width: parent.width - Theme.gap
                    horizontalAlignment: Text.AlignHCenter
                    text: table.size
                    font.pixelSize: Theme.small
                    visible: implicitHeight < table.height && !handles.visible
                }
            }

            // On the table in hand: another like it, turned, pulled apart or pushed together.
            Grid {
                id: handles

                anchors.centerIn: parent
                columns: table.width >= table.height ? 3 : 1
                visible: table.picked && floor.handlesFit(table.width, table.height) && !drag.active
                spacing: floor.between

                TableHandle {
                    objectName: "handleAdd" + table.index
                    glyph: "plus"
                    Accessible.name: qsTr("Another table like this")
                    onClicked: floor.board.addLike(table.index)
                }
                TableHandle {
                    objectName: "handleTurn" + table.index
                    glyph: "turn"
                    enabled: floor.board.turns
                    Accessible.name: qsTr("Push the same tables together another way")
                    onClicked: floor.board.turnTables()
                }
                TableHandle {
                    objectName: "handleApart" + table.index
                    glyph: table.apart ? "together" : "apart"
                    enabled: floor.board.tables.count > 1
                    Accessible.name: table.apart ? qsTr("Push this table to the others") : qsTr("Pull this table away from the others")
                    onClicked: table.apart ? floor.board.pushTo(table.index) : floor.board.pullApart(table.index)
                }
            }
        }
    }
}
