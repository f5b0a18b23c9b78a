import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Theme
import Bastewright.View

// A line that opens something: a drawing, a name, and half a line of what is in it.
AbstractButton {
    id: opener

    property string glyph: ""
    property string title: ""
    property string summary: ""
    property bool loud: false

    readonly property bool tight: width < 13 * Theme.text // the words need all of it

    implicitHeight: Math.max(Theme.target, lines.implicitHeight + Theme.gap * (loud ? 1.4 : 0.7))
    focusPolicy: Qt.StrongFocus
    Accessible.name: title + ", " + summary
    Accessible.onPressAction: opener.clicked()
    Keys.onReturnPressed: opener.clicked()
    Keys.onEnterPressed: opener.clicked()

    contentItem: Item {
        Glyph {
            id: drawing

            anchors.verticalCenter: parent.verticalCenter
            anchors.left: parent.left
            anchors.leftMargin: Theme.gap * 1.2
            name: opener.glyph
            color: opener.loud ? Theme.warnInk : Theme.ink
            width: Theme.title
            height: width
        }
        Column {
            id: lines

            anchors.verticalCenter: parent.verticalCenter
            anchors.left: drawing.right
            anchors.leftMargin: Theme.gap * 1.2
            width: parent.width - drawing.width - (opener.tight ? Theme.gap * 3.2 : Theme.text + Theme.gap * 4)

            Words {
                width: parent.width
                text: opener.title
                font.bold: true
                color: opener.loud ? Theme.warnInk : Theme.ink
            }
            Words {
                width: parent.width
                visible: opener.summary !== ""
                text: opener.summary
                font.pixelSize: Theme.small
                quiet: true
            }
        }
        Glyph {
            anchors.verticalCenter: parent.verticalCenter
            anchors.right: parent.right
            anchors.rightMargin: Theme.gap
            name: opener.mirrored ? "back" : "forward"
            color: Theme.quiet
            visible: !opener.tight
            width: Theme.text
            height: width
        }
    }
    background: Item {
        Rectangle {
            anchors.fill: parent
            radius: opener.loud ? Theme.radius : 0
            color: opener.down ? Theme.soft : opener.loud ? Theme.warn : "transparent"
        }
        Hair {
            anchors.bottom: parent.bottom
            width: parent.width
            visible: !opener.loud
        }
        FocusFrame {
            visible: opener.visualFocus
        }
    }
}
