import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// A line for the name of whoever comes too, or several with commas between.
Row {
    id: adding

    required property PeopleDesk desk

    function add() {
        if (desk.add(line.text))
            line.text = ""
    }

    spacing: Theme.gap

    WordsField {
        id: line

        objectName: "newName"
        width: parent.width - plus.width - Theme.gap
        placeholderText: width > 17 * Theme.large ? qsTr("Names, commas between") : qsTr("Names")
        maximumLength: 200
        Accessible.name: qsTr("Name of whoever comes too; several with commas between")
        onAccepted: adding.add()
    }
    Press {
        id: plus

        objectName: "addPerson"
        anchors.verticalCenter: parent.verticalCenter
        glyph: "plus"
        text: qsTr("Add")
        Accessible.name: qsTr("Add a person")
        onClicked: adding.add()
    }
}
