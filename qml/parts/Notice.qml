import QtQuick
import Bastewright.Theme
import Bastewright.View

// One sentence across the screen, with at most one thing to do about it.
Rectangle {
    id: notice

    property string text: ""
    property string action: ""
    property bool serious: false

    signal acted
    signal dismissed

    visible: text !== ""
    implicitHeight: row.implicitHeight + Theme.gap
    color: serious ? Theme.stop : Theme.soft
    border.width: Theme.highContrast ? Theme.line : 0
    border.color: Theme.strongEdge
    radius: Theme.radius

    Row {
        id: row

        x: Theme.gap
        width: parent.width - 2 * Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        spacing: Theme.gap

        Glyph {
            id: sign

            anchors.verticalCenter: parent.verticalCenter
            name: notice.serious ? "warn" : "note"
            color: Theme.ink
            width: Theme.large
            height: width
        }
        Words {
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width - sign.width - Theme.gap * 2
                   - (act.visible ? act.width + Theme.gap : 0) - shut.width
            text: notice.text
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
        }
        Press {
            id: act

            anchors.verticalCenter: parent.verticalCenter
            visible: notice.action !== ""
            text: notice.action
            onClicked: notice.acted()
        }
        Press {
            id: shut

            anchors.verticalCenter: parent.verticalCenter
            plain: true
            glyph: "cross"
            Accessible.name: qsTr("Close the message")
            onClicked: notice.dismissed()
        }
    }
}
