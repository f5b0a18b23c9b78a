import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Theme
import Bastewright.View

// Anything that is pressed: raised, with a lip below that goes under while it is down. `main` is
// filled: the one thing to do next on a screen. What cannot be pressed now lies flat.
AbstractButton {
    id: press

    property string glyph: ""
    property bool main: false
    property bool plain: false
    property real size: Theme.text
    property real least: Theme.target

    // Ahead is where reading goes.
    readonly property string drawn: !mirrored ? glyph : glyph === "back" ? "forward" : glyph === "forward" ? "back" : glyph
    readonly property real glyphSize: glyph === "" ? 0 : size * 1.35
    readonly property real between: glyph === "" || text === "" ? 0 : Theme.gap
    readonly property color inkColor: !enabled ? Theme.quiet : main ? Theme.accentInk : Theme.ink
    readonly property bool flat: plain || !enabled || checked
    readonly property real lip: flat ? 0 : Theme.lipHeight

    implicitWidth: Math.max(least, glyphSize + between + Math.ceil(measure.implicitWidth) + leftPadding + rightPadding)
    implicitHeight: Math.max(least, label.implicitHeight + topPadding + bottomPadding + Theme.lipHeight)
    leftPadding: text === "" ? 0 : Theme.gap * 1.6
    rightPadding: leftPadding
    topPadding: Theme.gap * 0.6 + (down ? lip : 0)
    bottomPadding: topPadding + (down ? 0 : lip)
    focusPolicy: Qt.StrongFocus
    font.family: Theme.family
    font.pixelSize: size
    font.bold: main
    Accessible.name: text // also where assistive technology comes later than the window
    Accessible.onPressAction: press.clicked()
    // A key that is held is one press.
    Keys.onReturnPressed: event => { if (!event.isAutoRepeat) press.clicked() }
    Keys.onEnterPressed: event => { if (!event.isAutoRepeat) press.clicked() }

    // The label's own width before it wraps: metrics alone differ where letters join (ff).
    Text {
        id: measure

        visible: false
        font: press.font
        text: press.text
        textFormat: Text.PlainText
    }

    contentItem: Item {
        Row {
            anchors.centerIn: parent
            spacing: press.between

            Glyph {
                anchors.verticalCenter: parent.verticalCenter
                visible: press.glyph !== ""
                name: press.drawn
                color: press.inkColor
                width: press.glyphSize
                height: width
            }
            Text {
                id: label

                anchors.verticalCenter: parent.verticalCenter
                visible: press.text !== ""
                text: press.text
                font: press.font
                color: press.inkColor
                textFormat: Text.PlainText
                horizontalAlignment: Text.AlignHCenter
                wrapMode: Text.Wrap
                width: Math.min(Math.ceil(measure.implicitWidth),
                                press.width - press.leftPadding - press.rightPadding
                                - press.glyphSize - press.between)
            }
        }
    }

    background: Item {
        Rectangle {
            anchors.fill: parent
            visible: press.lip > 0
            radius: Theme.radius
            color: press.main ? Theme.accentLip : Theme.lip
        }
        Rectangle {
            width: parent.width
            y: press.down ? press.lip : 0
            height: parent.height - press.lip
            radius: Theme.radius
            color: press.plain && !press.checked ? (press.down ? Theme.soft : "transparent")
                   : !press.enabled ? Theme.sunk : press.main ? Theme.accent
                   : press.checked ? Theme.soft : Theme.raised
            border.width: press.checked ? Theme.line * 2 : press.plain || press.main ? 0 : Theme.line
            border.color: press.checked ? Theme.accent : press.enabled ? Theme.edge : Theme.hair
        }
        FocusFrame {
            visible: press.visualFocus
        }
    }
}
