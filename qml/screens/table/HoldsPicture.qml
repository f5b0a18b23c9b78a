pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The holds of a step on the table's edge, lit in working order: those of one number are set at the
// same moment. A tap lights the next; nothing is reported by it.
AbstractButton {
    id: picture

    required property StepCard card

    // How many rounds are set, and the number that is lit.
    property int done: 0
    readonly property bool all: done >= card.rounds.length
    readonly property int round: all ? 0 : card.rounds[done]
    readonly property real disc: Theme.tableText * 1.5

    focusPolicy: Qt.StrongFocus
    text: all ? qsTr("All are set.") : done + 1 < card.rounds.length ? qsTr("Number %1 · tap for the next").arg(round) : qsTr("Number %1, the last").arg(round)
    Accessible.name: text
    Accessible.onPressAction: picture.clicked()
    Keys.onReturnPressed: event => { if (!event.isAutoRepeat) picture.clicked() }
    Keys.onEnterPressed: event => { if (!event.isAutoRepeat) picture.clicked() }
    onClicked: done = all ? 0 : done + 1

    // The next step begins with its first.
    readonly property string step: card.title
    onStepChanged: done = 0

    background: Item {
        FocusFrame {
            visible: picture.visualFocus
        }
    }
    contentItem: Item {
        Item {
            id: room

            anchors.fill: parent
            anchors.bottomMargin: told.height + Theme.gap

            // What lies left of the table is left in every language.
            LayoutMirroring.enabled: false
            LayoutMirroring.childrenInherit: true

            Rectangle {
                id: table

                // As wide and as deep as there is room, as the zones are drawn: numbers need it.
                anchors.centerIn: parent
                width: Math.max(1, room.width - 2 * picture.disc)
                height: Math.max(1, room.height - 2 * picture.disc)
                color: Theme.wood
                border.width: Theme.line * 2
                border.color: Theme.woodDark

                Rectangle {
                    anchors.fill: parent
                    anchors.margins: Theme.gap
                    color: Theme.backing
                    border.width: 0
                }
            }
            Repeater {
                model: picture.visible ? picture.card.holds : null

                Item {
                    id: hold

                    required property real x0
                    required property real y0
                    required property int round
                    required property bool tape

                    readonly property bool now: round === picture.round
                    readonly property bool set: picture.all || round < picture.round
                    readonly property real size: picture.disc * (now ? 1 : round > 9 ? 0.95 : 0.8)
                    // Outward from the edge it holds.
                    readonly property real outX: x0 === 0 ? -1 : x0 === 1 ? 1 : 0
                    readonly property real outY: outX !== 0 ? 0 : y0 === 0 ? -1 : 1

                    x: table.x + x0 * table.width + outX * picture.disc / 2
                    y: table.y + y0 * table.height + outY * picture.disc / 2
                    z: now ? 1 : 0

                    // From the middle, where the hand comes from.
                    Rectangle {
                        visible: hold.now
                        x: hold.outX < 0 ? picture.disc / 2 : hold.outX > 0 ? -picture.disc / 2 - width : -width / 2
                        y: hold.outY < 0 ? picture.disc / 2 : hold.outY > 0 ? -picture.disc / 2 - height : -height / 2
                        width: hold.outX !== 0 ? table.width * 0.22 : Theme.gap
                        height: hold.outY !== 0 ? table.height * 0.22 : Theme.gap
                        color: Theme.now
                        border.width: Theme.line
                        border.color: Theme.nowInk
                    }
                    Rectangle {
                        anchors.centerIn: parent
                        width: hold.size
                        height: hold.size
                        radius: hold.tape ? Theme.radius : width / 2
                        color: hold.now ? Theme.now : hold.set ? Theme.nowInk : Theme.tag
                        border.width: hold.now ? Theme.line * 3 : Theme.line
                        border.color: hold.set ? Theme.tag : Theme.nowInk

                        TableWords {
                            anchors.centerIn: parent
                            text: hold.round
                            color: hold.now ? Theme.nowInk : hold.set ? Theme.tag : Theme.tagInk
                            font.bold: hold.now
                        }
                    }
                }
            }
        }
        TableWords {
            id: told

            anchors.bottom: parent.bottom
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            text: picture.text
        }
    }
}
