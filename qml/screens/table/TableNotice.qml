import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// A sentence at the table: a hint, or why something could not be done.
Rectangle {
    id: notice

    property string text: ""
    property bool serious: false
    property bool early: false // nothing is wrong; whoever leads may say that it was done otherwise

    signal dismissed
    signal otherwiseWanted

    visible: text !== ""
    implicitHeight: Math.max(words.implicitHeight + Theme.gap, serious ? Theme.tableTarget : 0)
    color: serious && !early ? Theme.stop : Theme.warn
    radius: Theme.radius
    border.width: Theme.line
    border.color: Theme.strongEdge

    TableWords {
        id: words

        anchors.verticalCenter: parent.verticalCenter
        x: Theme.gap
        width: parent.width - 2 * Theme.gap - (shut.visible ? shut.width : 0)
               - (other.visible ? other.width + Theme.gap : 0)
        text: notice.text
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
    }
    TablePress {
        id: other

        objectName: "saidOtherwise"
        anchors.right: shut.left
        anchors.rightMargin: Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        visible: notice.early
        text: qsTr("Done otherwise")
        onClicked: notice.otherwiseWanted()
    }
    TablePress {
        id: shut

        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        visible: notice.serious
        plain: true
        glyph: "cross"
        Accessible.name: qsTr("Close the message")
        onClicked: notice.dismissed()
    }
}
