import QtQuick
import Bastewright.Theme

// The whole edge of the screen lights up twice, slowly, and goes: seen from across the table without
// a word. Once a second at most (WCAG 2.2, 2.3.1 allows three flashes). Where nothing may move it
// stands still for a while instead.
Item {
    id: edge

    property bool sign: false

    readonly property int swell: 450
    readonly property int stay: 4 * swell

    opacity: 0
    visible: opacity > 0

    onSignChanged: {
        swelling.stop()
        standing.stop()
        edge.opacity = 0
        if (!edge.sign)
            return
        if (Theme.still)
            standing.start()
        else
            swelling.start()
    }

    SequentialAnimation {
        id: swelling

        loops: 2
        alwaysRunToEnd: false
        NumberAnimation { target: edge; property: "opacity"; to: 1; duration: edge.swell; easing.type: Easing.InOutSine }
        PauseAnimation { duration: edge.swell / 3 }
        NumberAnimation { target: edge; property: "opacity"; to: 0; duration: edge.swell; easing.type: Easing.InOutSine }
    }
    SequentialAnimation {
        id: standing

        PropertyAction { target: edge; property: "opacity"; value: 1 }
        PauseAnimation { duration: edge.stay }
        PropertyAction { target: edge; property: "opacity"; value: 0 }
    }
    Rectangle {
        anchors.fill: parent
        color: "transparent"
        border.width: 4 * Theme.density
        border.color: Theme.accent
    }
}
