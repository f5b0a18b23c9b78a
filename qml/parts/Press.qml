import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Theme
import Bastewright.View

// Anything that is pressed: a patch of cloth with its word and drawing. `main` is sewn round with a
// running stitch: the one thing to do next.
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
    readonly property color inkColor: main ? Theme.accentInk : Theme.ink

    implicitWidth: Math.max(least, glyphSize + between + Math.ceil(measure.implicitWidth) + leftPadding + rightPadding)
    implicitHeight: Math.max(least, label.implicitHeight + topPadding + bottomPadding)
    leftPadding: text === "" ? 0 : Theme.gap * 1.6
    rightPadding: leftPadding
    topPadding: Theme.gap * 0.6
    bottomPadding: topPadding
    focusPolicy: Qt.StrongFocus
    font.family: Theme.family
    font.pixelSize: size
    font.bold: main
    opacity: enabled ? 1 : 0.5
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

    background: Rectangle {
        radius: Theme.radius
        color: press.main ? Theme.accent
               : press.down || press.checked ? Theme.soft
               : press.plain ? "transparent" : Theme.paper
        border.width: press.checked ? Theme.line * 2.5 : press.plain ? 0 : Theme.line
        border.color: press.checked ? Theme.accent : Theme.strongEdge

        StitchFrame {
            anchors.fill: parent
            anchors.margins: Math.round(Theme.density * 0.8)
            visible: press.main
            color: Theme.accentInk
            radius: Theme.radius * 0.7
            thickness: Theme.line * 0.9
        }
        FocusFrame {
            visible: press.visualFocus
        }
    }
}
