pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Who does what now and next, or waits for whom. A tap says that somebody comes or goes.
ListView {
    id: board

    required property LiveController live

    signal personTapped(name: string, present: bool)

    // Side by side in one row instead of one below the other.
    property bool strip: false

    // All cards are seen: what comes next gives way first, then what they wait for who wait.
    readonly property real line: Theme.tableText * 1.12
    readonly property bool roomy: !strip && count * (3 * line + 2 * Theme.gap) <= height
    readonly property bool tight: !strip && count * (2 * line + 2 * Theme.gap) > height
    readonly property real letters: Theme.tableText * (strip ? 0.75 : 1)

    model: live.people
    orientation: strip ? ListView.Horizontal : ListView.Vertical
    clip: true
    spacing: Theme.gap
    boundsBehavior: Flickable.StopAtBounds

    component Said: TableWords {
        width: parent.width
        lineHeightMode: Text.FixedHeight
        lineHeight: font.pixelSize * 1.12
    }

    delegate: AbstractButton {
        id: row

        required property string letter
        required property int mark
        required property string name
        required property string now
        required property string next
        required property bool present
        required property bool waits

        readonly property bool small: board.tight && (waits || !present)
        readonly property real letters: board.letters

        width: board.strip ? Math.floor((board.width + Theme.gap) / Math.max(1, Math.min(board.count, 6)) - Theme.gap)
                           : board.width
        height: board.strip ? board.height : Math.max(Theme.tableTarget, lines.implicitHeight + Theme.gap)
        focusPolicy: Qt.StrongFocus
        Accessible.name: name + ", " + now
        Accessible.onPressAction: row.clicked()
        Keys.onReturnPressed: row.clicked()
        onClicked: board.personTapped(name, present)
        background: Rectangle {
            color: row.down ? Theme.soft : "transparent"
            border.width: 0

            Rectangle {
                anchors.bottom: parent.bottom
                width: parent.width
                height: Math.max(1, Math.round(Theme.line * 0.8))
                visible: !board.strip
                color: Theme.hair
            }
            FocusFrame {
                visible: row.visualFocus
            }
        }
        contentItem: Item {
            // Who works now has a yellow ring.
            Rectangle {
                anchors.centerIn: disc
                width: disc.width + Theme.density * 2.4
                height: width
                radius: width / 2
                visible: row.present && !row.waits
                color: Theme.now
                border.width: Theme.line
                border.color: Theme.nowInk
            }
            PersonMark {
                id: disc

                anchors.left: parent.left
                anchors.leftMargin: Theme.gap
                anchors.verticalCenter: parent.verticalCenter
                width: row.letters * 1.5
                height: width
                letter: row.letter
                mark: row.mark
                family: Theme.family
                opacity: row.present && !row.waits ? 1 : 0.6
            }
            Column {
                id: lines

                anchors.left: disc.right
                anchors.leftMargin: Theme.gap * 1.4
                anchors.right: parent.right
                anchors.rightMargin: Theme.gap
                anchors.verticalCenter: parent.verticalCenter

                Said {
                    text: row.name
                    font.bold: !row.waits
                    color: row.waits ? Theme.quiet : Theme.ink
                    font.pixelSize: row.letters
                }
                Said {
                    visible: !row.small
                    text: row.now
                    color: row.waits ? Theme.quiet : Theme.ink
                    font.pixelSize: row.letters
                }
                Said {
                    visible: row.next !== "" && board.roomy && !row.waits
                    text: qsTr("› %1").arg(row.next)
                    color: Theme.quiet
                }
            }
        }
    }
}
