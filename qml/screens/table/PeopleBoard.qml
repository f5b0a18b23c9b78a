pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Who does what now and next. A tap says that somebody comes or goes.
ListView {
    id: board

    required property LiveController live

    signal personTapped(name: string, present: bool)

    // Side by side in one row instead of one below the other.
    property bool strip: false

    model: live.people
    orientation: strip ? ListView.Horizontal : ListView.Vertical
    clip: true
    spacing: Theme.gap
    boundsBehavior: Flickable.StopAtBounds

    delegate: AbstractButton {
        id: row

        required property string letter
        required property int mark
        required property string name
        required property string now
        required property string next
        required property bool present

        width: board.strip ? Math.max(Math.floor((board.width + Theme.gap) / Math.max(1, board.count) - Theme.gap),
                                      disc.width + 4 * Theme.gap + Math.max(nowText.implicitWidth, nextText.implicitWidth))
                           : board.width
        height: board.strip ? board.height : Math.max(Theme.tableTarget, lines.implicitHeight + Theme.gap)
        focusPolicy: Qt.StrongFocus
        Accessible.name: name + ", " + now
        Accessible.onPressAction: row.clicked()
        Keys.onReturnPressed: row.clicked()
        onClicked: board.personTapped(name, present)
        background: Patch {
            border.color: Theme.frame
            color: row.present ? Theme.paper : Theme.ground

            FocusFrame {
                visible: row.visualFocus
            }
        }
        contentItem: Item {
            PersonMark {
                id: disc

                anchors.left: parent.left
                anchors.leftMargin: Theme.gap
                anchors.verticalCenter: parent.verticalCenter
                width: Theme.tableText * 1.35
                height: width
                letter: row.letter
                mark: row.mark
                family: Theme.family
                opacity: row.present ? 1 : 0.6
            }
            Column {
                id: lines

                anchors.left: disc.right
                anchors.leftMargin: Theme.gap
                anchors.right: parent.right
                anchors.rightMargin: Theme.gap
                anchors.verticalCenter: parent.verticalCenter

                TableWords {
                    id: nowText

                    width: parent.width
                    text: row.now
                    font.bold: true
                    wrapMode: board.strip ? Text.NoWrap : Text.Wrap
                    lineHeightMode: Text.FixedHeight
                    lineHeight: Theme.tableText * 1.12
                }
                TableWords {
                    id: nextText

                    width: parent.width
                    visible: row.next !== ""
                    text: qsTr("› %1").arg(row.next)
                    color: Theme.quiet
                    wrapMode: nowText.wrapMode
                    lineHeightMode: Text.FixedHeight
                    lineHeight: Theme.tableText * 1.12
                }
            }
        }
    }
}
