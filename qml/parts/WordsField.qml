import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Theme

// A line for words; letters to tap come up for it where no keyboard is.
TextField {
    id: field

    property real least: Theme.target
    property real size: Theme.large

    implicitHeight: least
    leftPadding: Theme.space
    rightPadding: Theme.space
    font.family: Theme.family
    font.pixelSize: size
    color: Theme.ink
    placeholderTextColor: Theme.quiet
    selectionColor: Theme.accent
    selectedTextColor: Theme.accentInk
    selectByMouse: true
    inputMethodHints: Qt.ImhNoPredictiveText
    background: Rectangle {
        color: Theme.ground
        radius: Theme.radius
        border.width: Theme.line
        border.color: Theme.strongEdge

        FocusFrame {
            visible: field.activeFocus
        }
    }
}
