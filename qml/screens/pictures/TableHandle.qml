import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// A round handle on a table of the room.
AbstractButton {
    id: handle

    property string glyph: ""

    width: Theme.target
    height: Theme.target
    focusPolicy: Qt.StrongFocus
    opacity: enabled ? 1 : 0.5
    Accessible.onPressAction: handle.clicked()
    Keys.onReturnPressed: event => { if (!event.isAutoRepeat) handle.clicked() }
    Keys.onEnterPressed: event => { if (!event.isAutoRepeat) handle.clicked() }

    contentItem: Item {
        Glyph {
            anchors.centerIn: parent
            name: handle.glyph
            color: Theme.accentInk
            width: Theme.text * 1.3
            height: width
        }
    }
    background: Rectangle {
        anchors.fill: parent
        anchors.margins: Math.round(Theme.target * 0.06)
        radius: width / 2
        color: handle.down ? Theme.accentLip : Theme.accent
        border.width: 0

        FocusFrame {
            radius: width / 2
            visible: handle.visualFocus
        }
    }
}
