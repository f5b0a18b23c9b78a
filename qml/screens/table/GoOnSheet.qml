pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Quilt
import Bastewright.Theme
import Bastewright.View

// Going on another day: who is here, what is open, how the quilt must lie; then the rest is planned
// from this day's clock.
Sheet {
    id: sheet

    required property Workroom room

    objectName: "goOnSheet"
    atTable: true
    title: qsTr("Going on")

    TableWords {
        width: parent.width
        text: sheet.room.live.openText
    }
    TableWords {
        width: parent.width
        text: sheet.room.live.liesText
    }
    QuiltPicture {
        width: parent.width
        height: Math.min(width * 0.6, (sheet.parent ? sheet.parent.height : 0) * 0.35)
        tappable: false
        points: false
        figures: false
        quilt: sheet.room.step.quilt
        pass: sheet.room.board.pass
    }
    TableWords {
        width: parent.width
        text: qsTr("Who is here? Tap who is not, or has come.")
        font.bold: true
    }
    Flow {
        width: parent.width
        spacing: Theme.gap

        Repeater {
            model: sheet.room.live.people

            TablePress {
                required property string name
                required property bool present

                objectName: "here-" + name
                checked: present
                glyph: present ? "check" : "cross"
                text: name
                Accessible.name: present ? qsTr("%1 is here").arg(name) : qsTr("%1 is not here").arg(name)
                onClicked: sheet.room.live.setPresent(name, !present)
            }
        }
    }
    TablePress {
        width: parent.width
        objectName: "planFromNow"
        main: true
        glyph: "start"
        text: qsTr("Plan the rest from now")
        onClicked: {
            sheet.close()
            sheet.room.desk.goOn()
        }
    }
}
