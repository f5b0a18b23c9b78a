pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What is kept by name, to take by one tap; and the way to the list where it is renamed and forgotten.
Column {
    id: choices

    required property KeptDesk kept
    required property int kind

    readonly property int count: kind === KeptDesk.Person ? kept.away : kind === KeptDesk.Room ? kept.rooms.count : kept.boxes.count

    signal listWanted

    visible: count > 0
    spacing: Theme.gap * 0.5

    Words {
        width: parent.width
        text: choices.kind === KeptDesk.Person ? qsTr("Who came before") : qsTr("Kept from before")
        font.pixelSize: Theme.small
        quiet: true
    }
    Flow {
        width: parent.width
        spacing: Theme.gap

        Repeater {
            model: choices.kind === KeptDesk.Person ? choices.kept.people : choices.kind === KeptDesk.Room ? choices.kept.rooms : choices.kept.boxes

            Press {
                required property string name
                required property string about
                required property bool here

                objectName: "kept-" + name
                width: Math.min(implicitWidth, choices.width)
                visible: !here || choices.kind !== KeptDesk.Person // who comes has a card
                checked: here
                glyph: here ? "check" : choices.kind === KeptDesk.Person ? "plus" : ""
                text: name
                Accessible.description: about
                onClicked: choices.kept.use(choices.kind, name)
            }
        }
        Press {
            objectName: "keptList"
            plain: true
            glyph: "write"
            Accessible.name: qsTr("Rename or forget what is kept")
            onClicked: choices.listWanted()
        }
    }
}
