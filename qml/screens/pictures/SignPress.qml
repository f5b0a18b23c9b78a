import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What somebody can do, or does not: raised where they do, sunk and struck through where not.
AbstractButton {
    id: sign

    property string glyph: ""
    property string word: ""
    property string person: ""
    property bool on: false

    implicitWidth: Math.max(Theme.target, label.implicitWidth + Theme.gap)
    implicitHeight: Math.max(Theme.target, mark.height + label.implicitHeight + Theme.gap + Theme.lipHeight)
    checkable: true // told as a box to tick
    checked: on
    focusPolicy: Qt.StrongFocus
    Accessible.name: qsTr("%1 %2").arg(person).arg(word)
    Accessible.onPressAction: sign.clicked()
    Keys.onReturnPressed: event => { if (!event.isAutoRepeat) sign.clicked() }
    Keys.onEnterPressed: event => { if (!event.isAutoRepeat) sign.clicked() }

    contentItem: Item {
        Column {
            anchors.centerIn: parent
            anchors.verticalCenterOffset: sign.on ? (sign.down ? 0 : -Theme.lipHeight / 2) : 0
            width: parent.width

            Item {
                id: mark

                anchors.horizontalCenter: parent.horizontalCenter
                width: Theme.text * 1.35
                height: width

                Glyph {
                    anchors.fill: parent
                    name: sign.glyph
                    color: sign.on ? Theme.ink : Theme.quiet
                }
                Rectangle {
                    anchors.centerIn: parent
                    visible: !sign.on
                    width: parent.width * 1.3
                    height: Math.max(2, Theme.line * 1.5)
                    rotation: -40
                    color: Theme.quiet
                    border.width: 0
                }
            }
            Words {
                id: label

                width: parent.width
                horizontalAlignment: Text.AlignHCenter
                text: sign.word
                font.pixelSize: Theme.small
                font.strikeout: !sign.on
                quiet: !sign.on
                wrapMode: Text.NoWrap
            }
        }
    }
    background: Item {
        Rectangle {
            anchors.fill: parent
            visible: sign.on
            radius: Theme.radius
            color: Theme.lip
        }
        Rectangle {
            width: parent.width
            y: sign.on && sign.down ? Theme.lipHeight : 0
            height: parent.height - (sign.on ? Theme.lipHeight : 0)
            radius: Theme.radius
            color: sign.on ? Theme.raised : Theme.sunk
            border.width: Theme.line
            border.color: sign.on ? Theme.edge : Theme.hair
        }
        FocusFrame {
            visible: sign.visualFocus
        }
    }
}
