import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The board rests: nothing can be ticked until somebody resumes.
Rectangle {
    id: rest

    required property Workroom room

    signal goOnWanted

    color: Theme.ground

    Column {
        anchors.centerIn: parent
        width: Math.min(parent.width - 2 * Theme.space, 26 * Theme.tableText)
        spacing: Theme.space

        TableWords {
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            text: rest.room.live.pausedText
            font.pixelSize: Theme.tableText * 1.3
            font.bold: true
        }
        TableWords {
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            text: rest.room.live.openText
        }
        TableWords {
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            visible: text !== ""
            text: rest.room.live.liesText
        }
        TableWords {
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            color: Theme.quiet
            text: rest.room.live.breakText
        }
        TablePress {
            objectName: "resume"
            width: parent.width
            main: true
            glyph: "start"
            text: qsTr("Resume")
            onClicked: {
                if (rest.room.live.anotherDay)
                    rest.goOnWanted()
                else
                    rest.room.live.setPaused(false)
            }
        }
    }
}
