import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Somebody steps away, or is back.
Sheet {
    id: person

    required property ChangeDesk desk

    property string name: ""
    property bool present: true

    objectName: "personSheet"
    atTable: true
    title: name

    function ask(who: string, here: bool) {
        name = who
        present = here
        open()
    }

    TablePress {
        width: parent.width
        objectName: "presence"
        text: person.present ? qsTr("Steps away") : qsTr("Back at the table")
        onClicked: {
            person.close()
            if (person.present)
                person.desk.goes(person.name)
            else
                person.desk.comes(person.name)
        }
    }
}
