import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Theme
import Bastewright.View

// One zone at the table: a tap takes it one step on, a long press takes its last tick back. State is
// told three ways: by its mark, its word and its ground.
AbstractButton {
    id: tile

    required property string zone
    required property int points
    required property string stage
    required property string letter
    required property int mark
    required property string person
    required property string verb
    required property bool ready

    readonly property string stageText: stage === "closed" ? qsTr("closed")
                                        : stage === "open" ? qsTr("open") : qsTr("waiting")

    signal heldLong

    focusPolicy: Qt.StrongFocus
    Accessible.name: qsTr("Zone %1, %2, %3 points, %4").arg(zone).arg(stageText).arg(points).arg(person)
    Accessible.onPressAction: tile.clicked()
    Keys.onReturnPressed: tile.clicked()
    Keys.onEnterPressed: tile.clicked()
    onPressAndHold: tile.heldLong()

    background: Rectangle {
        radius: Theme.radius
        color: tile.stage === "closed" ? Theme.done : tile.stage === "open" ? Theme.open : Theme.paper
        border.width: tile.visualFocus || tile.down ? Theme.line * 3 : Theme.line * 1.5
        border.color: tile.visualFocus || tile.down ? Theme.accent : Theme.ink

        StitchFrame {
            anchors.fill: parent
            anchors.margins: Theme.line * 3
            visible: tile.stage === "open"
            color: Theme.ink
            radius: Theme.radius
            thickness: Theme.line * 1.5
        }
    }
    contentItem: Item {
        id: inside

        readonly property real letterSize: Theme.tableText
        readonly property bool tall: height > letterSize * 2.7

        Row {
            id: top

            anchors.horizontalCenter: parent.horizontalCenter
            anchors.verticalCenter: parent.verticalCenter
            anchors.verticalCenterOffset: inside.tall ? -inside.letterSize * 0.62 : 0
            spacing: inside.letterSize * 0.25

            Text {
                anchors.verticalCenter: parent.verticalCenter
                text: tile.zone
                font.family: Theme.family
                font.pixelSize: inside.letterSize
                font.bold: true
                color: Theme.ink
            }
            PersonMark {
                anchors.verticalCenter: parent.verticalCenter
                visible: tile.mark >= 0 && tile.stage !== "closed"
                width: inside.letterSize * 1.35
                height: width
                mark: tile.mark
                letter: tile.letter
                family: Theme.family
            }
            StateMark {
                anchors.verticalCenter: parent.verticalCenter
                visible: tile.stage === "closed"
                width: inside.letterSize
                height: width
                state: tile.stage
                ink: Theme.ink
                fill: Theme.doneMark
            }
        }
        Text {
            anchors.horizontalCenter: parent.horizontalCenter
            anchors.top: top.bottom
            visible: inside.tall
            text: tile.stage === "closed" ? tile.points
                  : tile.stage === "open" ? qsTr("%1 open").arg(tile.points) : tile.points
            font.family: Theme.family
            font.pixelSize: inside.letterSize
            color: Theme.ink
        }
    }
}
