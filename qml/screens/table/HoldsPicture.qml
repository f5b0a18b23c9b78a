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
    readonly property real apart: disc * 0.975 // one that is lit beside one of two figures
    readonly property int ranks: Math.max(0, fit(width, height))
    readonly property int ranksAcross: ranks > 1 ? 2 : 1
    readonly property int ranksDown: ranks % 2 + 1
    // The table under its numbers as they stand best, in one rank.
    readonly property real amplyHeight: 2 * disc + Math.max(apart / card.nextDown, slip.implicitHeight + 2 * Theme.gap)

    // In how many ranks numbers stand where there is so much room, so that none lies on another: 0 in
    // one, 1 every second one farther out beside the table, 2 above and below it, 3 on all sides; -1
    // where there is no room for them.
    function fit(across: real, down: real): int {
        for (let k = 0; k < 4; ++k) {
            const tableWidth = across - 2 * disc * (k % 2 + 1)
            const tableHeight = down - 2 * disc * (k > 1 ? 2 : 1)
            if (tableWidth * card.nextAcross * (k > 1 ? 2 : 1) >= apart && tableHeight * card.nextDown * (k % 2 + 1) >= apart
                    && tableWidth >= 9 * Theme.tableText && tableHeight >= slip.implicitHeight + 2 * Theme.gap)
                return k
        }
        return -1
    }

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

            // What lies left of the table is left in every language.
            LayoutMirroring.enabled: false
            LayoutMirroring.childrenInherit: true

            Rectangle {
                id: table

                // As wide and as deep as there is room, as the zones are drawn: numbers need it.
                anchors.centerIn: parent
                width: Math.max(1, room.width - 2 * picture.disc * picture.ranksDown)
                height: Math.max(1, room.height - 2 * picture.disc * picture.ranksAcross)
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
                    required property bool second

                    readonly property bool now: round === picture.round
                    readonly property bool set: picture.all || round < picture.round
                    readonly property real size: picture.disc * (now ? 1 : round > 9 ? 0.95 : 0.8)
                    // Outward from the edge it holds.
                    readonly property real outX: x0 === 0 ? -1 : x0 === 1 ? 1 : 0
                    readonly property real outY: outX !== 0 ? 0 : y0 === 0 ? -1 : 1
                    readonly property bool far: second && (outX !== 0 ? picture.ranksDown : picture.ranksAcross) > 1
                    readonly property real off: picture.disc * (far ? 1.5 : 0.5) // its middle, from the edge

                    x: table.x + x0 * table.width + outX * off
                    y: table.y + y0 * table.height + outY * off
                    z: now ? 1 : 0

                    // To the edge, where it stands farther out.
                    Rectangle {
                        visible: hold.far
                        x: hold.outX < 0 ? 0 : hold.outX > 0 ? -width : -width / 2
                        y: hold.outY < 0 ? 0 : hold.outY > 0 ? -height : -height / 2
                        width: hold.outX !== 0 ? hold.off : Theme.line * 2
                        height: hold.outY !== 0 ? hold.off : Theme.line * 2
                        color: Theme.ink
                    }
                    // From the middle, where the hand comes from.
                    Rectangle {
                        visible: hold.now
                        x: hold.outX < 0 ? hold.off : hold.outX > 0 ? -hold.off - width : -width / 2
                        y: hold.outY < 0 ? hold.off : hold.outY > 0 ? -hold.off - height : -height / 2
                        width: hold.outX !== 0 ? Math.min(table.width * 0.22, (table.width - slip.width) / 2) : Theme.gap
                        height: hold.outY !== 0 ? Math.min(table.height * 0.22, (table.height - slip.height) / 2) : Theme.gap
                        color: Theme.now
                        border.width: Theme.line
                        border.color: Theme.nowInk
                    }
                    Rectangle {
                        objectName: "hold"
                        anchors.centerIn: parent
                        width: hold.size
                        height: hold.size
                        radius: hold.tape ? Theme.radius : width / 2
                        color: hold.now ? Theme.now : hold.set ? Theme.tagInk : Theme.tag
                        border.width: hold.now ? Theme.line * 3 : Theme.line
                        border.color: hold.now ? Theme.nowInk : hold.set ? Theme.tag : Theme.tagInk

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
        // On the table; in fewer words where there is less room.
        Rectangle {
            id: slip

            readonly property bool brief: longer.implicitWidth + 2 * Theme.gap > table.width * 0.6

            anchors.centerIn: parent
            implicitHeight: 1.3 * Theme.tableText
            width: told.implicitWidth + 2 * Theme.gap
            height: implicitHeight
            radius: Theme.radius
            color: Theme.tag
            border.width: Theme.line
            border.color: Theme.tagInk

            TableWords {
                id: longer

                visible: false
                text: picture.text
                wrapMode: Text.NoWrap
            }
            TableWords {
                id: told

                anchors.centerIn: parent
                text: !slip.brief || picture.all ? picture.text
                      : picture.done + 1 < picture.card.rounds.length ? qsTr("Tap for the next") : qsTr("The last")
                color: Theme.tagInk
                wrapMode: Text.NoWrap
            }
        }
    }
}
