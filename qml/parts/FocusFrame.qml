import QtQuick
import Bastewright.Theme

// Where the keyboard is. A light line round a dark one (the other way in the dark), so that one of
// them stands out on any ground and beside any edge; it lies inside what it frames, so that nothing
// cuts it off (WCAG 2.2, 2.4.13).
Rectangle {
    id: frame

    readonly property real thickness: border.width + inner.border.width

    objectName: "focusFrame"
    anchors.fill: parent
    color: "transparent"
    radius: Theme.radius
    border.width: Math.max(3, Math.round(Theme.line * 2))
    border.color: Theme.accentInk

    Rectangle {
        id: inner

        anchors.fill: parent
        anchors.margins: frame.border.width
        color: "transparent"
        radius: Math.max(0, frame.radius - frame.border.width)
        border.width: Math.max(3, Math.round(Theme.line * 3))
        border.color: Theme.accent
    }
}
