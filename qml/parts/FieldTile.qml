import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Theme
import Bastewright.View

// One value with its name, underlined like a line to fill in; tapped to change it. Toggles flip at
// once; what adds or removes something is a button.
AbstractButton {
    id: tile

    property string label: ""
    property string value: ""
    property string kind: ""
    property bool optional: false

    implicitHeight: Math.max(Theme.target, lines.implicitHeight + Theme.gap * 1.6)
    focusPolicy: Qt.StrongFocus
    Accessible.name: label + ", " + (value === "" ? qsTr("not given") : value)
    Accessible.onPressAction: tile.clicked()
    Keys.onReturnPressed: tile.clicked()
    Keys.onEnterPressed: tile.clicked()

    readonly property bool acts: kind === "action" || kind === "removal"

    contentItem: Item {
        Column {
            id: lines

            anchors.verticalCenter: parent.verticalCenter
            anchors.left: parent.left
            anchors.leftMargin: Theme.gap * 1.2
            width: parent.width - 2 * Theme.gap * 1.2 - (mark.visible ? mark.width + Theme.gap : 0)

            Words {
                width: parent.width
                text: tile.label
                quiet: !tile.acts
                font.pixelSize: tile.acts ? Theme.text : Theme.small
            }
            Words {
                width: parent.width
                visible: !tile.acts
                text: tile.value === "" ? qsTr("not given") : tile.value
                font.pixelSize: Theme.large
                font.bold: tile.value !== ""
                color: tile.value === "" ? Theme.quiet : Theme.ink
            }
        }
        Glyph {
            id: mark

            anchors.verticalCenter: parent.verticalCenter
            anchors.right: parent.right
            anchors.rightMargin: Theme.gap * 1.2
            visible: tile.acts
            name: tile.kind === "action" ? "plus" : tile.kind === "removal" ? "minus" : ""
            color: Theme.accent
            width: Theme.text * 1.2
            height: width
        }
    }
    background: Item {
        Rectangle {
            anchors.fill: parent
            radius: Theme.radius
            color: tile.down ? Theme.soft : tile.acts ? Theme.raised : "transparent"
            border.width: tile.acts ? Theme.line : 0
            border.color: Theme.edge
        }
        Rectangle {
            anchors.bottom: parent.bottom
            anchors.left: parent.left
            anchors.right: parent.right
            height: Math.max(1, Theme.line * 1.2)
            visible: !tile.acts
            color: Theme.frame
        }
        FocusFrame {
            visible: tile.visualFocus
        }
    }
}
