pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What is kept by name: rooms, people, boxes of supplies. Each is renamed or forgotten here; a person
// may be taken out of every quilt, too.
Sheet {
    id: sheet

    required property KeptDesk kept

    property int kind: -1 // only these; -1: all
    property string asked: "" // whose row asks something: kind and name
    property string asks: "" // "rename" or "forget"

    readonly property int count: kept.rooms.count + kept.people.count + kept.boxes.count

    function show(which: int) {
        kind = which
        asked = ""
        kept.refresh()
        open()
    }

    component Things: Column {
        id: things

        required property int which
        readonly property int count: which === KeptDesk.Person ? sheet.kept.people.count : which === KeptDesk.Room ? sheet.kept.rooms.count : sheet.kept.boxes.count
        required property string heading

        width: parent ? parent.width : 0
        visible: (sheet.kind < 0 || sheet.kind === which) && count > 0
        spacing: Theme.gap * 0.5

        Heading {
            width: parent.width
            text: things.heading
            font.pixelSize: Theme.text
        }
        Repeater {
            model: things.which === KeptDesk.Person ? sheet.kept.people : things.which === KeptDesk.Room ? sheet.kept.rooms : sheet.kept.boxes

            Column {
                id: thing

                required property string name
                required property string about

                readonly property bool asking: sheet.asked === things.which + " " + name
                readonly property bool renaming: asking && sheet.asks === "rename"

                function ask(what: string) {
                    sheet.asks = what
                    sheet.asked = things.which + " " + name
                    if (what === "rename") {
                        line.text = name
                        line.forceActiveFocus()
                        line.selectAll()
                    }
                }
                function rename() {
                    if (sheet.kept.rename(things.which, name, line.text))
                        sheet.asked = ""
                }

                width: things.width
                spacing: Theme.gap * 0.5

                Words {
                    width: parent.width
                    text: thing.name
                    font.bold: true
                }
                Words {
                    width: parent.width
                    text: thing.about
                    font.pixelSize: Theme.small
                    quiet: true
                }
                WordsField {
                    id: line

                    objectName: "newNameOf-" + thing.name
                    width: parent.width
                    visible: thing.renaming
                    maximumLength: 60
                    Accessible.name: qsTr("New name of %1").arg(thing.name)
                    onAccepted: thing.rename()
                }
                Words {
                    width: parent.width
                    visible: thing.asking && !thing.renaming
                    text: things.which === KeptDesk.Person ? qsTr("Forget %1? What was written down at the table stays in its record.").arg(thing.name)
                                                           : qsTr("Forget %1? Quilts that use it keep what they have.").arg(thing.name)
                }
                Flow {
                    width: parent.width
                    spacing: Theme.gap

                    Press {
                        objectName: "rename-" + thing.name
                        visible: !thing.asking
                        glyph: "write"
                        text: qsTr("Rename")
                        Accessible.name: qsTr("Rename %1").arg(thing.name)
                        onClicked: thing.ask("rename")
                    }
                    Press {
                        objectName: "forget-" + thing.name
                        visible: !thing.asking
                        glyph: "remove"
                        text: qsTr("Forget")
                        Accessible.name: qsTr("Forget %1").arg(thing.name)
                        onClicked: thing.ask("forget")
                    }
                    Press {
                        objectName: "renamed-" + thing.name
                        visible: thing.renaming
                        text: qsTr("Set")
                        onClicked: thing.rename()
                    }
                    Press {
                        objectName: "forgotten-" + thing.name
                        visible: thing.asking && !thing.renaming
                        text: qsTr("Forget")
                        onClicked: {
                            sheet.asked = ""
                            sheet.kept.forget(things.which, thing.name)
                        }
                    }
                    Press {
                        objectName: "everywhere-" + thing.name
                        width: Math.min(implicitWidth, parent.width)
                        visible: thing.asking && !thing.renaming && things.which === KeptDesk.Person
                        text: qsTr("Forget and take out of every quilt")
                        onClicked: {
                            sheet.asked = ""
                            sheet.kept.forgetEverywhere(thing.name)
                        }
                    }
                    Press {
                        visible: thing.asking
                        text: qsTr("Cancel")
                        onClicked: sheet.asked = ""
                    }
                }
                Hair {
                    width: parent.width
                }
            }
        }
    }

    objectName: "keptSheet"
    title: qsTr("Kept for the next quilt")

    Words {
        width: parent.width
        text: sheet.count === 0 ? qsTr("Nothing yet. A room or a box of supplies is kept once it has a name; people where you say so.")
                                : qsTr("Kept on this device alone.")
        quiet: true
    }
    Problem {
        width: parent.width
        text: sheet.kept.problem
    }
    Things {
        which: KeptDesk.Room
        heading: qsTr("Rooms")
    }
    Things {
        which: KeptDesk.Person
        heading: qsTr("People")
    }
    Things {
        which: KeptDesk.Supplies
        heading: qsTr("Supplies")
    }
}
