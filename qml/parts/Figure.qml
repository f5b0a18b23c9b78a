import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Theme

// A figure of the plan, large, with a small word beside it; a tap opens its why.
AbstractButton {
    id: figure

    property string value: ""
    property string unit: ""
    property real size: Theme.large

    implicitWidth: Math.ceil(number.implicitWidth + (unit === "" ? 0 : word.implicitWidth + Theme.gap) + Theme.gap)
    implicitHeight: Math.max(Theme.target, number.implicitHeight)
    focusPolicy: Qt.StrongFocus
    Accessible.name: qsTr("%1: why").arg(unit === "" ? value : value + ", " + unit)
    Accessible.onPressAction: figure.clicked()
    Keys.onReturnPressed: figure.clicked()
    Keys.onEnterPressed: figure.clicked()

    contentItem: Item {
        Words {
            id: number

            anchors.verticalCenter: parent.verticalCenter
            anchors.left: parent.left
            text: figure.value
            font.pixelSize: figure.size
            font.bold: true
            wrapMode: Text.NoWrap
        }
        Words {
            id: word

            anchors.left: number.right
            anchors.leftMargin: Theme.gap
            anchors.baseline: number.baseline
            text: figure.unit
            quiet: true
            wrapMode: Text.NoWrap
        }
    }
    background: Rectangle {
        radius: Theme.radius
        color: figure.down ? Theme.soft : "transparent"
        border.width: 0

        FocusFrame {
            visible: figure.visualFocus
        }
    }
}
