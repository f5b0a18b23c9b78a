pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The quilt of the guide, to scale, as far as it is told: its layers and its size, then lines of
// quilting, pins, the tables where they will be, and whoever stands round them.
Item {
    id: picture

    required property Workroom room

    readonly property GuideDesk guide: room.guide
    readonly property RoomBoard board: room.tables
    readonly property bool tables: guide.page >= GuideDesk.Tables && !board.onFloor
    readonly property bool people: guide.page >= GuideDesk.People
    readonly property size quilt: guide.top
    readonly property size backing: Qt.size(quilt.width + 2 * guide.backingOverage, quilt.height + 2 * guide.backingOverage)
    readonly property real disc: Math.min(Theme.target, Math.round(Math.min(width, height) / 7))
    // In inches, the middle of everything at 0, 0.
    readonly property size all: Qt.size(Math.max(backing.width, tables ? board.surface.width : 0),
                                        Math.max(backing.height, tables ? board.surface.height : 0))
    readonly property real around: Theme.gap + (people ? disc * 0.7 : 0)
    readonly property real inch: Math.max(0.1, Math.min((width - 2 * around) / Math.max(1, all.width),
                                                        (height - 2 * around - tag.height - Theme.gap) / Math.max(1, all.height)))
    readonly property point middle: Qt.point(width / 2, (height - tag.height - Theme.gap) / 2)
    readonly property rect surface: Qt.rect(middle.x - board.surface.width * inch / 2, middle.y - board.surface.height * inch / 2,
                                            board.surface.width * inch, board.surface.height * inch)

    // Where somebody stands: at the side they keep to, else shared between the long sides.
    function place(side: int, order: int, beside: int): point {
        const head = board.walls % 2 === 0, foot = (board.walls >> 1) % 2 === 0
        const sides = side < 0 && head && foot ? 2 : 1
        const at = side >= 0 ? side : sides === 2 ? (order % 2 === 0 ? RoomBoard.Head : RoomBoard.Foot)
                                                  : head ? RoomBoard.Head : foot ? RoomBoard.Foot : RoomBoard.Left
        const row = Math.floor(order / sides)
        const of = Math.ceil(beside / sides)
        const s = tables ? surface : Qt.rect(middle.x - backing.width * inch / 2, middle.y - backing.height * inch / 2, backing.width * inch, backing.height * inch)
        const share = (row + 1) / (of + 1)
        if (at === RoomBoard.Left || at === RoomBoard.Right)
            return Qt.point(at === RoomBoard.Left ? s.x : s.x + s.width, s.y + s.height * share)
        return Qt.point(s.x + s.width * share, at === RoomBoard.Head ? s.y : s.y + s.height)
    }

    Accessible.role: Accessible.Graphic
    Accessible.name: guide.soFar

    component Layers: Item {
        id: layers

        width: picture.backing.width * picture.inch
        height: picture.backing.height * picture.inch

        Rectangle {
            anchors.fill: parent
            color: Theme.backing
            border.width: 1
            border.color: Theme.strongEdge
        }
        Rectangle {
            anchors.centerIn: parent
            width: (picture.quilt.width + 2 * picture.guide.battingOverage) * picture.inch
            height: (picture.quilt.height + 2 * picture.guide.battingOverage) * picture.inch
            color: Theme.batting
            border.width: 1
            border.color: Theme.hair
        }
        QuiltFaceItem {
            anchors.centerIn: parent
            width: picture.quilt.width * picture.inch + 4
            height: picture.quilt.height * picture.inch + 4
            face: picture.room.top.face
            ink: Theme.ink
        }
        GuideMarks {
            anchors.centerIn: parent
            width: picture.quilt.width * picture.inch
            height: picture.quilt.height * picture.inch
            editor: picture.room.editor
            quilting: picture.guide.page >= GuideDesk.Quilted
            pins: picture.guide.page >= GuideDesk.Closely
        }
    }

    Layers {
        x: picture.middle.x - width / 2
        y: picture.middle.y - height / 2
        opacity: picture.tables ? 0.45 : 1
    }
    // The tables where they will be, and the quilt on them in full colour.
    Repeater {
        model: picture.tables ? picture.board.tables : null

        Rectangle {
            required property real atX
            required property real atY
            required property real wide
            required property real deep
            required property bool apart

            x: picture.surface.x + (atX - picture.board.surface.x) * picture.inch
            y: picture.surface.y + (atY - picture.board.surface.y) * picture.inch
            width: wide * picture.inch
            height: deep * picture.inch
            visible: !apart
            color: Theme.wood
            border.width: Math.max(1, Theme.line)
            border.color: Theme.woodDark
        }
    }
    Item {
        readonly property real rim: Math.max(3, 2 * picture.inch)

        x: picture.surface.x + rim
        y: picture.surface.y + rim
        width: Math.max(0, picture.surface.width - 2 * rim)
        height: Math.max(0, picture.surface.height - 2 * rim)
        clip: true
        visible: picture.tables

        Layers {
            x: (parent.width - width) / 2
            y: (parent.height - height) / 2
        }
    }
    Repeater {
        model: picture.people ? picture.board.people : null

        Item {
            id: who

            required property string letter
            required property int mark
            required property int side
            required property int order
            required property int beside
            readonly property point at: picture.place(side, order, beside)

            x: at.x - width / 2
            y: at.y - height / 2
            width: picture.disc
            height: picture.disc

            PersonMark {
                anchors.fill: parent
                letter: who.letter
                mark: who.mark
                family: Theme.family
            }
        }
    }
    Words {
        id: tag

        anchors.bottom: parent.bottom
        width: parent.width
        horizontalAlignment: Text.AlignHCenter
        text: picture.guide.soFar
        font.pixelSize: Theme.small
        quiet: true
    }
}
