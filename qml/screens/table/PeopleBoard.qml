pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Who does what now and next, or waits for whom: everybody is seen. Where there is no room for all
// that is to be said, the cards of those who wait shrink to a line first, then all. A tap shows
// everybody with their rows and marks, and who may step away.
AbstractButton {
    id: board

    required property LiveController live

    // Side by side in one row instead of one below the other.
    property bool strip: false

    readonly property int count: live.people.count
    readonly property int busy: live.busy
    readonly property real line: Theme.tableText * 1.37 // with the leading of the face
    readonly property real between: Math.round(Theme.gap * 0.2)
    readonly property real free: height - Math.max(0, count - 1) * between
    readonly property real leastBrief: Math.round(Theme.tableText * 1.12)
    readonly property real brief: Math.max(leastBrief, Math.min(Theme.tableText * 1.4, count > 0 ? free / count : 0))
    readonly property real spare: lines > 1 || count === 0 ? 0 : free / count
    // Lines of those who work, and of those who wait or are away.
    readonly property int lines: strip ? 3 : count * heightOf(3) <= free ? 3
                                 : busy * heightOf(2) + (count - busy) * brief <= free ? 2 : 1
    readonly property int linesOfOthers: lines === 3 ? 3 : lines === 2 && count * heightOf(2) <= free ? 2 : 1

    // In a row whoever works has more words, and more room for them.
    readonly property real least: Theme.tableText * 1.4 + 2.7 * Theme.gap + 3 * Theme.tableText // disc, margins, some letters
    readonly property bool roomForMore: count <= 6 && (width + Theme.gap) / Math.max(1, 2 * busy + count - busy) - Theme.gap >= least
    readonly property real more: strip && roomForMore ? 2 : 1
    readonly property real shares: count > 6 ? 6 : Math.max(1, busy * more + count - busy)

    // In a row: a name and two lines of what is done.
    readonly property real stripHeight: Math.ceil(3 * said * Theme.tableText) + 2 * Theme.gap
    readonly property real said: 1.12 // height of a line, of its letters

    // For everybody's line, and for two lines each.
    readonly property real leastHeight: count * (Theme.tableText * 1.4 + between) - between
    readonly property real amplyHeight: count * (heightOf(2) + between) - between

    function heightOf(lines: int): real {
        return lines > 1 ? lines * line + Theme.gap : Math.max(brief, Math.min(1.5 * line, spare))
    }

    focusPolicy: Qt.StrongFocus
    Accessible.name: qsTr("Who does what")
    Accessible.onPressAction: board.clicked()
    Keys.onReturnPressed: event => { if (!event.isAutoRepeat) board.clicked() }
    Keys.onEnterPressed: event => { if (!event.isAutoRepeat) board.clicked() }

    component Said: TableWords {
        width: parent.width
        lineHeightMode: Text.FixedHeight
        lineHeight: font.pixelSize * board.said
    }

    background: Rectangle {
        color: board.down ? Theme.soft : "transparent"
        border.width: 0

        FocusFrame {
            visible: board.visualFocus
        }
    }
    contentItem: ListView {
        id: list

        model: board.live.people
        orientation: board.strip ? ListView.Horizontal : ListView.Vertical
        clip: true
        spacing: board.strip ? Theme.gap : board.between
        boundsBehavior: Flickable.StopAtBounds
        interactive: board.strip ? contentWidth > width + 1 : contentHeight > height + 1

        delegate: Item {
            id: row

            required property string letter
            required property int mark
            required property string name
            required property string now
            required property string next
            required property bool present
            required property bool waits

            readonly property bool works: present && !waits
            readonly property int lines: works ? board.lines : board.linesOfOthers
            readonly property string both: qsTr("%1: %2").arg(name).arg(now)

            width: board.strip ? Math.floor((list.width + Theme.gap) * (works ? board.more : 1) / board.shares - Theme.gap)
                               : list.width
            height: board.strip ? list.height : board.heightOf(lines)
            Accessible.role: Accessible.StaticText
            Accessible.name: both

            Hair {
                anchors.bottom: parent.bottom
                width: parent.width
                visible: !board.strip
            }
            // Who works now has a yellow ring.
            Rectangle {
                anchors.centerIn: disc
                width: disc.width + Theme.density * 2
                height: width
                radius: width / 2
                visible: row.works
                color: Theme.now
                border.width: Theme.line
                border.color: Theme.nowInk
            }
            PersonMark {
                id: disc

                anchors.left: parent.left
                anchors.leftMargin: Theme.gap
                anchors.verticalCenter: parent.verticalCenter
                width: Theme.tableText * (row.lines === 1 ? 1.05 : 1.4)
                height: width
                letter: row.letter
                mark: row.mark
                family: Theme.family
                opacity: row.works ? 1 : 0.6
            }
            Column {
                anchors.left: disc.right
                anchors.leftMargin: Theme.gap * 1.2
                anchors.right: parent.right
                anchors.rightMargin: Theme.gap * 0.5
                anchors.verticalCenter: parent.verticalCenter

                // What does not fit in a line stays away.
                TableWords {
                    id: measure

                    visible: false
                    width: implicitWidth
                    text: row.both
                    font.bold: row.works
                    wrapMode: Text.NoWrap
                }
                Said {
                    visible: row.lines > 1 || measure.implicitWidth > width
                    text: row.lines === 1 && row.works ? row.now : row.name
                    font.bold: row.works
                    color: row.works ? Theme.ink : Theme.quiet
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                }
                Said {
                    visible: row.lines === 1 && measure.implicitWidth <= width
                    text: row.both
                    font.bold: row.works
                    color: row.works ? Theme.ink : Theme.quiet
                    wrapMode: Text.NoWrap
                }
                TableWords {
                    id: nowMeasure

                    visible: false
                    width: implicitWidth
                    text: row.now
                    wrapMode: Text.NoWrap
                }
                Said {
                    readonly property int most: board.strip ? (row.height >= 3 * lineHeight ? 2 : 1) : row.lines === 3 && !row.works ? 2 : 1

                    visible: row.lines > 1 && (row.works || nowMeasure.implicitWidth <= width * (most === 2 ? 1.7 : 1))
                    text: row.now
                    color: row.works ? Theme.ink : Theme.quiet
                    maximumLineCount: most
                    elide: Text.ElideRight
                }
                Said {
                    visible: row.next !== "" && row.lines === 3 && row.works && !board.strip
                    text: qsTr("› %1").arg(row.next)
                    color: Theme.quiet
                    maximumLineCount: 1
                    elide: Text.ElideRight
                }
            }
        }
    }
}
