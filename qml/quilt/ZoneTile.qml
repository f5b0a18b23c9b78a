pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
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
    required property rect area // inches of the top
    required property var places // of its pins

    property quiltFace face
    property int quarter: 0

    // What people call it within its pass: "A2" of "p1.A2".
    readonly property string name: zone.slice(zone.lastIndexOf(".") + 1)
    readonly property string stageText: stage === "closed" ? qsTr("closed")
                                        : stage === "open" ? qsTr("open") : qsTr("waiting")

    signal heldLong

    focusPolicy: Qt.StrongFocus
    Accessible.name: qsTr("Zone %1, %2, %3 to place, %4").arg(name).arg(stageText).arg(points).arg(person)
    Accessible.onPressAction: tile.clicked()
    Keys.onReturnPressed: tile.clicked()
    Keys.onEnterPressed: tile.clicked()
    onPressAndHold: tile.heldLong()

    background: Item {
        ClothPiece {
            anchors.fill: parent
            face: tile.face
            area: tile.area
            quarter: tile.quarter
            stage: tile.stage
            places: tile.places
            line: Theme.line
            plain: Theme.highContrast
            ground: Theme.paper
            ink: Theme.ink
        }
        // Yellow with ink on both sides: whose turn it is now.
        Rectangle {
            anchors.fill: parent
            visible: tile.ready
            color: "transparent"
            border.width: Theme.line * 5
            border.color: Theme.nowInk

            Rectangle {
                anchors.fill: parent
                anchors.margins: Theme.line
                color: "transparent"
                border.width: Theme.line * 3
                border.color: Theme.now
            }
        }
        Rectangle {
            anchors.fill: parent
            visible: tile.down
            color: "transparent"
            border.width: Theme.line * 3
            border.color: Theme.accent
        }
        FocusFrame {
            visible: tile.visualFocus
        }
    }
    contentItem: Item {
        id: inside

        readonly property real letterSize: Theme.tableText
        readonly property bool narrow: width < letterSize * 3.5

        // A twill tag: words are never read from cloth.
        Rectangle {
            anchors.centerIn: parent
            width: Math.min(parent.width - 2 * Theme.line, said.implicitWidth + Theme.gap)
            height: Math.min(parent.height - 2 * Theme.line, said.implicitHeight + Theme.gap * 0.4)
            radius: Theme.radius * 0.5
            color: tile.ready ? Theme.now : Theme.tag
            border.width: Theme.line
            border.color: Theme.nowInk
        }
        Column {
            id: said

            anchors.centerIn: parent

            Row {
                anchors.horizontalCenter: parent.horizontalCenter
                spacing: inside.letterSize * 0.2

                Line {
                    anchors.verticalCenter: parent.verticalCenter
                    text: tile.name
                    font.bold: true
                }
                Mark {
                    visible: !inside.narrow
                    mark: tile.mark
                    letter: tile.letter
                    stage: tile.stage
                }
            }
            Row {
                anchors.horizontalCenter: parent.horizontalCenter
                spacing: inside.letterSize * 0.2

                Mark {
                    visible: inside.narrow
                    mark: tile.mark
                    letter: tile.letter
                    stage: tile.stage
                }
                Line {
                    visible: !inside.narrow || inside.width > inside.letterSize * 2.8
                    text: tile.points
                }
            }
        }
    }

    // Letters without the generous leading of the face: tiles are small and read from afar.
    component Line: Text {
        font.family: Theme.family
        font.pixelSize: Theme.tableText
        lineHeightMode: Text.FixedHeight
        lineHeight: Theme.tableText * 1.12
        color: tile.ready ? Theme.nowInk : Theme.tagInk
    }
    component Mark: Item {
        id: both

        property int mark: -1
        property string letter: ""
        property string stage: ""

        width: Theme.tableText * 1.1
        height: width
        anchors.verticalCenter: parent ? parent.verticalCenter : undefined

        PersonMark {
            anchors.fill: parent
            visible: both.mark >= 0 && both.stage !== "closed"
            mark: both.mark
            letter: both.letter
            family: Theme.family
        }
        StateMark {
            anchors.fill: parent
            visible: both.stage === "closed"
            state: both.stage
            ink: Theme.tagInk
            fill: Theme.tagMark
        }
    }
}
