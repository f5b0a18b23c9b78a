import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Theme
import Bastewright.View

// Something that is so or not: a box with a tick, and its words. A tap anywhere flips it.
AbstractButton {
    id: toggle

    property string label: ""
    property bool on: false

    signal flipped

    width: parent ? parent.width : implicitWidth
    implicitHeight: Math.max(Theme.target, words.implicitHeight + Theme.gap)
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.CheckBox
    Accessible.name: label
    Accessible.checked: on
    Accessible.onPressAction: toggle.flipped()
    Keys.onReturnPressed: toggle.flipped()
    Keys.onEnterPressed: toggle.flipped()
    onClicked: toggle.flipped()

    contentItem: Item {
        Rectangle {
            id: box

            anchors.left: parent.left
            anchors.verticalCenter: parent.verticalCenter
            width: Theme.target * 0.6
            height: width
            radius: Theme.radius * 0.6
            color: Theme.paper
            border.width: Theme.line * 1.5
            border.color: Theme.strongEdge

            Glyph {
                anchors.fill: parent
                anchors.margins: Theme.line * 2
                visible: toggle.on
                name: "check"
                color: Theme.ink
            }
        }
        Words {
            id: words

            anchors.left: box.right
            anchors.leftMargin: Theme.gap * 1.5
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            text: toggle.label
        }
    }
    background: Rectangle {
        radius: Theme.radius
        color: toggle.down ? Theme.soft : "transparent"
        border.width: 0

        FocusFrame {
            visible: toggle.visualFocus
        }
    }
}
