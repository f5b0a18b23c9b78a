import QtQuick
import Bastewright.Theme

// The title of something that lies over the rest, and what closes it.
Item {
    id: head

    property string title: ""
    property bool atTable: false
    property string closeName: "" // in the tests
    property string closeWords: ""

    signal closed

    implicitHeight: Math.max(heading.implicitHeight, close.height)

    Heading {
        id: heading

        anchors.left: parent.left
        anchors.verticalCenter: parent.verticalCenter
        width: parent.width - close.width - Theme.gap
        text: head.title
        font.pixelSize: head.atTable ? Theme.tableText : Theme.large
    }
    Press {
        id: close

        objectName: head.closeName
        anchors.right: parent.right
        plain: true
        glyph: "cross"
        least: head.atTable ? Theme.tableTarget : Theme.target
        size: head.atTable ? Theme.tableText : Theme.text
        Accessible.name: head.closeWords
        onClicked: head.closed()
    }
}
