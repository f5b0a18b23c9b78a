import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The yellow ribbon: the call in force; beyond its notch the one that comes next. Read from two
// metres; where there is no room for both, the call alone.
Item {
    id: ribbon

    required property TableBoard board

    property bool brief: false // as low as may be

    readonly property real letters: Theme.tableText * (brief ? 1.15 : 1.5)
    readonly property real least: now.implicitWidth + 2.6 * Theme.gap + height * 0.3
    readonly property bool both: board.nextCall !== "" && least + next.implicitWidth + 2 * Theme.gap <= width

    visible: board.call !== ""
    implicitHeight: Math.ceil(letters * (brief ? 1.3 : 1.5))
    Accessible.role: Accessible.StaticText
    Accessible.name: board.nextCall === "" ? board.call : qsTr("%1; next: %2").arg(board.call).arg(board.nextCall)

    Ribbon {
        id: cloth

        width: !ribbon.both ? ribbon.width : ribbon.brief ? ribbon.least
               : Math.max(ribbon.least, Math.min(ribbon.width * 0.64, ribbon.width - next.implicitWidth - 3 * Theme.gap))
        height: ribbon.height
        x: ribbon.LayoutMirroring.enabled ? ribbon.width - width : 0
        color: Theme.now
        ink: Theme.nowInk
        mirrored: ribbon.LayoutMirroring.enabled

        Text {
            id: now

            objectName: "call"
            anchors.verticalCenter: parent.verticalCenter
            x: ribbon.LayoutMirroring.enabled ? parent.height * 0.3 + Theme.gap : 1.6 * Theme.gap
            width: parent.width - 2.6 * Theme.gap - parent.height * 0.3
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
    TableWords {
        id: next

        objectName: "nextCall"
        anchors.verticalCenter: parent.verticalCenter
        x: ribbon.LayoutMirroring.enabled ? cloth.x - implicitWidth - Theme.gap : cloth.width + Theme.gap
        visible: ribbon.both
        text: qsTr("Next: %1").arg(ribbon.board.nextCall)
        font.bold: true
        wrapMode: Text.NoWrap
    }
}
