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

    model: live.people
    clip: true
    spacing: Theme.gap
    boundsBehavior: Flickable.StopAtBounds

    header: TableWords {
        objectName: "finishText"
        width: board.width
        bottomPadding: Theme.gap
        text: board.live.finishText + (board.live.pinsText === "" ? "" : "\n" + board.live.pinsText)
    }
    delegate: AbstractButton {
        id: row

        required property string letter
        required property int mark
        required property string name
        required property string now
        required property string next
        required property bool present

        width: board.width
        height: Math.max(Theme.tableTarget, lines.implicitHeight + Theme.gap)
        focusPolicy: Qt.StrongFocus
        Accessible.name: name + ", " + now
        Accessible.onPressAction: row.clicked()
        Keys.onReturnPressed: row.clicked()
        onClicked: board.personTapped(name, present)
        background: Patch {
            border.color: row.visualFocus ? Theme.accent : Theme.edge
            border.width: row.visualFocus ? Theme.line * 3 : Theme.line
            color: row.present ? Theme.paper : Theme.ground
        }
        contentItem: Item {
            PersonMark {
                id: disc

                x: Theme.gap
                anchors.verticalCenter: parent.verticalCenter
                width: Theme.tableText * 1.6
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
                    width: parent.width
                    text: row.now
                    font.bold: true
                }
                TableWords {
                    width: parent.width
                    visible: row.next !== ""
                    text: qsTr("then %1").arg(row.next)
                    color: Theme.quiet
                }
            }
        }
    }
}
