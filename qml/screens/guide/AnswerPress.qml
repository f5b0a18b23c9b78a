import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// One answer to tap: what it is, and half a line about it. The one that holds lies down and is ticked.
AbstractButton {
    id: answer

    required property string title
    required property string about
    required property bool chosen

    readonly property real lip: chosen ? 0 : Theme.lipHeight

    implicitHeight: Math.max(Theme.target, lines.implicitHeight + Theme.gap * 1.4 + Theme.lipHeight)
    checkable: true // told as one of several
    autoExclusive: true
    checked: chosen
    focusPolicy: Qt.StrongFocus
    Accessible.name: about === "" ? title : title + ", " + about
    Accessible.onPressAction: answer.clicked()
    Keys.onReturnPressed: answer.clicked()
    Keys.onEnterPressed: answer.clicked()

    contentItem: Item {
        Column {
            id: lines

            anchors.verticalCenter: parent.verticalCenter
            anchors.verticalCenterOffset: (answer.down ? answer.lip : 0) - answer.lip / 2
            anchors.left: parent.left
            anchors.leftMargin: Theme.gap * 1.4
            width: parent.width - 2 * Theme.gap * 1.4 - tick.width

            Words {
                width: parent.width
                text: answer.title
                font.bold: answer.chosen
            }
            Words {
                width: parent.width
                visible: answer.about !== ""
                text: answer.about
                font.pixelSize: Theme.small
            }
        }
        Glyph {
            id: tick

            anchors.right: parent.right
            anchors.rightMargin: Theme.gap * 1.2
            anchors.verticalCenter: parent.verticalCenter
            name: answer.chosen ? "check" : ""
            color: Theme.accent
            width: Theme.text * 1.2
            height: width
        }
    }
    background: Item {
        Rectangle {
            anchors.fill: parent
            visible: answer.lip > 0
            radius: Theme.radius
            color: Theme.lip
        }
        Rectangle {
            width: parent.width
            y: answer.down ? answer.lip : 0
            height: parent.height - answer.lip
            radius: Theme.radius
            color: answer.chosen ? Theme.soft : Theme.raised
            border.width: answer.chosen ? Theme.line * 2 : Theme.line
            border.color: answer.chosen ? Theme.accent : Theme.edge
        }
        FocusFrame {
            visible: answer.visualFocus
        }
    }
}
