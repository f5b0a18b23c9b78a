pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Pictures
import Bastewright.Theme
import Bastewright.View

// Who works from which side of the tables: people are dragged there, or tapped and sent.
Item {
    id: view

    required property RoomBoard board
    required property LearntPaces learnt

    property bool typing: false // beside the picture
    property int chosen: -1
    readonly property real disc: Math.round(Theme.target * 1.1)
    // Who is wherever there is work waits below the tables, in as many rows as it takes.
    readonly property int most: Math.max(1, Math.floor((width + Theme.gap) / (disc + Theme.gap)))
    readonly property int rows: Math.max(1, Math.ceil(board.people.count / most))
    // While something is typed the picture has the room, not what else could be done.
    readonly property bool tight: typing && height < 2 * floor.around + rows * (disc + Theme.gap) + 60 * Theme.density
    readonly property int abreast: Math.ceil(Math.max(1, board.people.count) / rows)

    // Along a side everybody has at least their own width.
    function along(from: real, length: real, order: int, beside: int): real {
        const step = Math.max(disc + Theme.gap, length / (beside + 1))
        return from + length / 2 + (order - (beside - 1) / 2) * step - disc / 2
    }

    // The side of the tables nearest to a place of the floor; -1 away from them.
    function sideAt(x: real, y: real): int {
        const s = floor.surface
        const off = Math.max(s.x - x, x - s.x - s.width, s.y - y, y - s.y - s.height)
        if (off > 2 * view.disc)
            return -1
        const head = Math.abs(y - s.y), foot = Math.abs(s.y + s.height - y)
        const left = Math.abs(x - s.x), right = Math.abs(s.x + s.width - x)
        const least = Math.min(head, foot, left, right)
        return least === head ? RoomBoard.Head : least === foot ? RoomBoard.Foot : least === left ? RoomBoard.Left : RoomBoard.Right
    }

    Column {
        id: above

        width: parent.width
        spacing: Theme.gap

        Words {
            width: parent.width
            visible: view.board.problem !== "" || view.chosen >= 0 || (view.height > 24 * Theme.text && !view.tight)
            text: view.board.problem !== "" ? view.board.problem
                  : view.chosen < 0 ? qsTr("Drag somebody to a side of the tables, or tap them and choose. They then work its zones from there.")
                                    : qsTr("Where do they work?")
        }
        Notice {
            objectName: "learntSpeeds"
            width: parent.width
            text: view.chosen < 0 && !view.tight ? view.learnt.text : ""
            action: qsTr("Use these speeds")
            onActed: view.learnt.use()
            onDismissed: view.learnt.putAway()
        }
        Flow {
            width: parent.width
            visible: view.chosen >= 0
            spacing: Theme.gap

            Repeater {
                model: view.chosen < 0 ? [] : [RoomBoard.Head, RoomBoard.Foot, RoomBoard.Left, RoomBoard.Right, -1]

                Press {
                    required property int modelData
                    required property int index

                    objectName: "keepTo" + index
                    text: modelData < 0 ? qsTr("wherever there is work") : view.board.sideName(modelData)
                    onClicked: {
                        view.board.keepTo(view.chosen, modelData)
                        view.chosen = -1
                    }
                }
            }
        }
    }
    RoomFloor {
        id: floor

        anchors.top: above.bottom
        anchors.bottom: parent.bottom
        anchors.bottomMargin: view.rows * (view.disc + Theme.gap) + Theme.gap
        width: parent.width
        board: view.board
        around: view.disc + 2 * Theme.gap
    }
    Repeater {
        model: floor.board.onFloor ? null : view.board.people

        AbstractButton {
            id: person

            required property int index
            required property string letter
            required property int mark
            required property string name
            required property int side
            required property int order
            required property int beside

            property point moved: Qt.point(0, 0)
            readonly property rect s: floor.surface
            readonly property int row: Math.floor(order / view.abreast)
            readonly property int inRow: Math.min(view.abreast, beside - row * view.abreast)

            objectName: "person-" + name
            x: moved.x + (side < 0 ? view.along(0, view.width, order % view.abreast, inRow)
               : side === RoomBoard.Left ? s.x - Theme.gap - width
               : side === RoomBoard.Right ? s.x + s.width + Theme.gap : view.along(s.x, s.width, order, beside))
            y: moved.y + (side < 0 ? view.height - (view.rows - row) * (height + Theme.gap) + Theme.gap
               : floor.y + (side === RoomBoard.Head ? s.y - Theme.gap - height
               : side === RoomBoard.Foot ? s.y + s.height + Theme.gap : view.along(s.y, s.height, order, beside)))
            z: drag.active ? 2 : 1
            width: view.disc
            height: view.disc
            focusPolicy: Qt.StrongFocus
            Accessible.name: side < 0 ? qsTr("%1, wherever there is work").arg(name)
                                      : qsTr("%1, %2").arg(name).arg(view.board.sideName(side))
            Accessible.onPressAction: person.clicked()
            Keys.onReturnPressed: person.clicked()
            Keys.onUpPressed: view.board.keepTo(index, RoomBoard.Head)
            Keys.onDownPressed: view.board.keepTo(index, RoomBoard.Foot)
            Keys.onLeftPressed: view.board.keepTo(index, RoomBoard.Left)
            Keys.onRightPressed: view.board.keepTo(index, RoomBoard.Right)
            Keys.onDeletePressed: view.board.keepTo(index, -1)
            onClicked: view.chosen = view.chosen === index ? -1 : index

            DragHandler {
                id: drag

                target: null
                grabPermissions: PointerHandler.CanTakeOverFromAnything
                onActiveTranslationChanged: {
                    if (active)
                        person.moved = Qt.point(activeTranslation.x, activeTranslation.y)
                }
                onActiveChanged: {
                    if (active)
                        return
                    const x = person.x + person.width / 2, y = person.y + person.height / 2 - floor.y
                    person.moved = Qt.point(0, 0)
                    view.board.keepTo(person.index, view.sideAt(x, y))
                }
            }
            background: Rectangle {
                radius: width / 2
                color: "transparent"
                border.width: view.chosen === person.index ? Theme.line * 4 : 0
                border.color: Theme.accent

                // Round the mark, which has colours of its own.
                FocusFrame {
                    anchors.margins: -Math.round(Theme.line * 5)
                    radius: width / 2
                    visible: person.visualFocus
                }
            }
            contentItem: PersonMark {
                letter: person.letter
                mark: person.mark
                family: Theme.family
            }
        }
    }
}
