import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The yellow ribbon: the call in force, and with a notch the one that comes next. Read from two
// metres; where there is no room for both, the call alone.
Item {
    id: ribbon

    required property TableBoard board

    readonly property real letters: Theme.tableText * 1.25
    readonly property bool both: next.text !== "" && now.implicitWidth + next.implicitWidth + notch.width + 3 * Theme.gap <= width

    visible: board.call !== ""
    implicitHeight: Math.ceil(letters * 1.3)
    Accessible.role: Accessible.StaticText
    Accessible.name: board.nextCall === "" ? board.call : qsTr("%1; next: %2").arg(board.call).arg(board.nextCall)

    Rectangle {
        id: cloth

        width: Math.min(ribbon.width, now.implicitWidth + 2 * Theme.gap + (ribbon.both ? 0 : Theme.gap))
        height: ribbon.height
        x: ribbon.LayoutMirroring.enabled ? ribbon.width - width : 0
        color: Theme.now
        border.width: Theme.line
        border.color: Theme.ink

        Text {
            id: now

            objectName: "call"
            anchors.verticalCenter: parent.verticalCenter
            x: Theme.gap
            width: parent.width - 2 * Theme.gap
            text: ribbon.board.call
            color: Theme.nowInk
            font.family: Theme.family
            font.pixelSize: ribbon.letters
            font.bold: true
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Math.round(Theme.tableText * 0.8)
            textFormat: Text.PlainText
        }
    }
    Text {
        id: notch

        anchors.verticalCenter: parent.verticalCenter
        x: ribbon.LayoutMirroring.enabled ? cloth.x - width - Theme.gap / 2 : cloth.width + Theme.gap / 2
        visible: ribbon.both
        text: ribbon.LayoutMirroring.enabled ? "‹" : "›"
        color: Theme.ink
        font.family: Theme.family
        font.pixelSize: ribbon.letters
        font.bold: true
    }
    Text {
        id: next

        objectName: "nextCall"
        anchors.verticalCenter: parent.verticalCenter
        x: ribbon.LayoutMirroring.enabled ? notch.x - width - Theme.gap / 2 : notch.x + notch.width + Theme.gap / 2
        visible: ribbon.both
        text: ribbon.board.nextCall
        color: Theme.ink
        font.family: Theme.family
        font.pixelSize: Theme.tableText
        textFormat: Text.PlainText
    }
}
