pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// A person: covered button, name and hours, what they can do as signs to tap, and their hours as a bar
// to drag. A tap on the name opens the rest.
Item {
    id: card

    required property PeopleDesk desk
    required property int index
    required property string letter
    required property int mark
    required property string name
    required property string hours
    required property int from
    required property int until
    required property bool lifts
    required property bool irons
    required property bool sits
    required property bool pins
    required property bool breath

    property bool bar: true
    property bool removable: false

    readonly property bool beside: width > signs.implicitWidth + Math.max(24 * Theme.density, 8 * Theme.text) + Theme.gap

    signal opened
    signal hourTyped(field: string)

    implicitHeight: lines.implicitHeight + Theme.gap * 0.6

    Column {
        id: lines

        width: parent.width
        spacing: 0

        Flow {
            width: parent.width
            spacing: Theme.gap

            AbstractButton {
                id: who

                objectName: "card-" + card.name
                width: card.beside ? parent.width - signs.implicitWidth - Theme.gap : parent.width
                height: Math.max(Theme.target, words.implicitHeight + Theme.gap)
                focusPolicy: Qt.StrongFocus
                Accessible.name: card.bar ? qsTr("%1, %2").arg(card.name).arg(card.hours) : card.name
                Accessible.onPressAction: who.clicked()
                Keys.onReturnPressed: who.clicked()
                Keys.onEnterPressed: who.clicked()
                onClicked: card.opened()
                contentItem: Item {
                    PersonMark {
                        id: disc

                        anchors.left: parent.left
                        anchors.verticalCenter: parent.verticalCenter
                        width: Theme.target * 0.86
                        height: width
                        letter: card.letter
                        mark: card.mark
                        family: Theme.family
                    }
                    Column {
                        id: words

                        anchors.left: disc.right
                        anchors.leftMargin: Theme.gap
                        anchors.right: parent.right
                        anchors.verticalCenter: parent.verticalCenter

                        Words {
                            width: parent.width
                            text: card.name
                            font.bold: true
                            font.pixelSize: Theme.large
                        }
                        Words {
                            width: parent.width
                            visible: card.bar
                            text: card.hours
                            font.pixelSize: Theme.small
                            quiet: true
                        }
                    }
                }
                background: Rectangle {
                    radius: Theme.radius
                    color: who.down ? Theme.soft : "transparent"
                    border.width: 0

                    FocusFrame {
                        visible: who.visualFocus
                    }
                }
            }
            Row {
                id: signs

                spacing: Theme.gap * 0.5

                SignPress {
                    objectName: "lifts-" + card.name
                    glyph: "lift"
                    word: qsTr("lifts")
                    person: card.name
                    on: card.lifts
                    onClicked: card.desk.flip(card.index, "lifts")
                }
                SignPress {
                    objectName: "irons-" + card.name
                    glyph: "iron"
                    word: qsTr("irons")
                    person: card.name
                    on: card.irons
                    onClicked: card.desk.flip(card.index, "irons")
                }
                SignPress {
                    objectName: "sits-" + card.name
                    glyph: "chair"
                    word: qsTr("sits")
                    person: card.name
                    on: card.sits
                    onClicked: card.desk.flip(card.index, "sits")
                }
                SignPress {
                    objectName: "pins-" + card.name
                    glyph: "safetypin"
                    word: qsTr("pins")
                    person: card.name
                    on: card.pins
                    onClicked: card.desk.flip(card.index, "pins")
                }
                SignPress {
                    objectName: "breath-" + card.name
                    visible: card.desk.sprays || card.breath
                    glyph: "breath"
                    word: qsTr("breathes well")
                    person: card.name
                    on: !card.breath
                    onClicked: card.desk.flip(card.index, "breath")
                }
                Press {
                    objectName: "remove-" + card.name
                    visible: card.removable
                    plain: true
                    glyph: "cross"
                    Accessible.name: qsTr("Remove %1").arg(card.name)
                    onClicked: card.desk.remove(card.index)
                }
            }
        }
        HoursBar {
            width: parent.width
            visible: card.bar
            desk: card.desk
            person: card.index
            name: card.name
            mark: card.mark
            from: card.from
            until: card.until
            onTyped: field => card.hourTyped(field)
        }
    }
    Hair {
        anchors.bottom: parent.bottom
        width: parent.width
    }
}
