import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The name of the quilt, the way back to the shelf, and the way past all questions.
Item {
    id: head

    required property Workroom room

    implicitHeight: Math.max(Theme.target, skip.height)

    Press {
        id: back

        objectName: "guideShelf"
        anchors.left: parent.left
        anchors.verticalCenter: parent.verticalCenter
        plain: true
        glyph: "back"
        Accessible.name: qsTr("Back to your quilts")
        onClicked: head.room.leaveGuide()
    }
    Heading {
        anchors.left: back.right
        anchors.leftMargin: Theme.gap
        anchors.right: skip.left
        anchors.rightMargin: Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        text: head.room.editor.title
        font.family: Theme.nameFamily
        font.pixelSize: Theme.large
    }
    Press {
        id: skip

        objectName: "guideSkip"
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        width: Math.min(implicitWidth, head.width * 0.5)
        text: qsTr("Skip the questions")
        onClicked: head.room.finishGuide()
    }
}
