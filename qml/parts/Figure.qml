import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Theme
import Bastewright.View

// A figure of the plan, large; a tap opens its why.
AbstractButton {
    id: figure

    implicitHeight: Math.max(Theme.target, value.implicitHeight + Theme.gap * 1.4)
    focusPolicy: Qt.StrongFocus
    Accessible.name: qsTr("%1: why").arg(text)
    Accessible.onPressAction: figure.clicked()
    Keys.onReturnPressed: figure.clicked()
    Keys.onEnterPressed: figure.clicked()

    contentItem: Item {
        Words {
            id: value

            anchors.verticalCenter: parent.verticalCenter
            anchors.left: parent.left
            anchors.leftMargin: Theme.gap
            anchors.right: mark.left
            anchors.rightMargin: Theme.gap * 0.5
            text: figure.text
            font.pixelSize: Theme.large
            font.bold: true
        }
        Glyph {
            id: mark

            anchors.verticalCenter: parent.verticalCenter
            anchors.right: parent.right
            anchors.rightMargin: Theme.gap * 0.5
            name: "why"
            color: Theme.accent
            width: Theme.text
            height: width
        }
    }
    background: Rectangle {
        radius: Theme.radius
        color: figure.down ? Theme.soft : Theme.paper
        border.width: Theme.line
        border.color: Theme.frame

        FocusFrame {
            visible: figure.visualFocus
        }
    }
}
