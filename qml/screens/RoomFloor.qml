pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The tables to scale: those pushed together with the quilt on them (stitched), the others apart.
// Their edges are tapped to say where a wall is; they can be dragged.
Item {
    id: floor

    required property RoomBoard board

    property bool movable: false
    property int chosen: -1

    // Room round the tables for edges and for people.
    property real around: Theme.target + 2 * Theme.gap
    readonly property real inch: Math.max(0.1, Math.min((width - 2 * around) / Math.max(1, board.extent.width),
                                                        (height - 2 * around) / Math.max(1, board.extent.height)))
    readonly property real originX: (width - board.extent.width * inch) / 2 - board.extent.x * inch
    readonly property real originY: (height - board.extent.height * inch) / 2 - board.extent.y * inch
    readonly property rect surface: Qt.rect(originX + board.surface.x * inch, originY + board.surface.y * inch,
                                            board.surface.width * inch, board.surface.height * inch)

    clip: true

    Words {
        anchors.centerIn: parent
        width: parent.width - 2 * Theme.space
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
        x: floor.originX + floor.board.quilt.x * floor.inch
        y: floor.originY + floor.board.quilt.y * floor.inch
        width: floor.board.quilt.width * floor.inch
        height: floor.board.quilt.height * floor.inch
        visible: width > 0
        color: Theme.accent
        radius: 0
        thickness: Theme.line * 1.5
    }
    Repeater {
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
            readonly property bool picked: floor.movable && floor.chosen === index

            objectName: "table" + index
            x: floor.originX + atX * floor.inch + moved.x
            y: floor.originY + atY * floor.inch + moved.y
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
                color: Theme.table
                opacity: table.apart && !drag.active ? 0.65 : 1
                border.width: table.picked ? Theme.line * 4 : Theme.line * 1.5
                border.color: table.picked ? Theme.accent : Theme.tableLine

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
                    visible: implicitHeight < table.height
                }
            }
        }
    }
}
