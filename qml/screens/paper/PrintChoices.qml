pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What is printed, on what, by which printer; and the files for other programs.
Flickable {
    id: choices

    required property SheetsWriter writer

    readonly property SheetPreview preview: writer.preview

    contentHeight: column.implicitHeight
    clip: true
    boundsBehavior: Flickable.StopAtBounds

    function onRequest(part: string): string {
        switch (part) {
        case "passes":
            return qsTr("A page for every pass");
        case "ribbons":
            return qsTr("The ribbons at true size");
        case "cards":
            return qsTr("Cards to lay on the zones");
        case "labels":
            return qsTr("Labels for places, head and foot");
        case "record":
            return qsTr("Pins counted back, roll for the machine");
        }
        return qsTr("Why this plan");
    }

    component Choice: Press {
        id: choice

        property bool on: false

        width: parent.width
        checked: choice.on
        glyph: choice.on ? "check" : "minus"
        Accessible.checkable: true
        Accessible.checked: choice.on
    }

    Column {
        id: column

        width: choices.width
        spacing: Theme.gap

        Choice {
            objectName: "withLead"
            text: qsTr("A page for whoever leads")
            on: choices.preview.lead
            onClicked: choices.preview.lead = !choices.preview.lead
        }
        Choice {
            objectName: "withBring"
            text: qsTr("What to bring and cut")
            on: choices.preview.bring
            onClicked: choices.preview.bring = !choices.preview.bring
        }
        Choice {
            objectName: "withHelpers"
            text: qsTr("A page for every helper")
            on: choices.preview.helpers
            onClicked: choices.preview.helpers = !choices.preview.helpers
        }
        Words {
            width: parent.width
            text: qsTr("More sheets")
            font.bold: true
        }
        Repeater {
            model: ["passes", "ribbons", "cards", "labels", "record", "why"]

            Choice {
                required property string modelData

                objectName: "with-" + modelData
                width: column.width
                text: choices.onRequest(modelData)
                on: String(choices.preview.more).split(",").indexOf(modelData) >= 0
                onClicked: choices.preview.toggle(modelData)
            }
        }
        Choice {
            objectName: "inColour"
            text: choices.preview.colour ? qsTr("In color") : qsTr("Black and white")
            on: choices.preview.colour
            onClicked: choices.preview.colour = !choices.preview.colour
        }
        Choice {
            objectName: "bothSides"
            text: qsTr("Both sides of the paper")
            on: choices.preview.bothSides
            onClicked: choices.preview.bothSides = !choices.preview.bothSides
        }
        Row {
            width: parent.width
            spacing: Theme.gap

            Press {
                width: (parent.width - parent.spacing) / 2
                text: "A4"
                checked: !choices.preview.letter
                onClicked: choices.preview.letter = false
            }
            Press {
                objectName: "letter"
                width: (parent.width - parent.spacing) / 2
                text: "Letter"
                checked: choices.preview.letter
                onClicked: choices.preview.letter = true
            }
        }
        Words {
            width: parent.width
            text: qsTr("Printer")
            font.bold: true
        }
        Repeater {
            model: choices.writer.printers

            Press {
                required property string modelData

                objectName: "printer-" + modelData
                width: column.width
                text: modelData
                checked: modelData === choices.writer.printer
                onClicked: choices.writer.printer = modelData
            }
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: choices.writer.printerText
            quiet: true
        }
        Row {
            width: parent.width
            spacing: Theme.gap
            visible: choices.writer.printers.length > 0

            Words {
                width: parent.width - less.width - count.width - more.width - 3 * Theme.gap
                height: Theme.target
                verticalAlignment: Text.AlignVCenter
                text: qsTr("Copies")
            }
            Press {
                id: less

                glyph: "minus"
                Accessible.name: qsTr("Fewer copies")
                onClicked: choices.writer.copies -= 1
            }
            Words {
                id: count

                width: 12 * Theme.density
                height: Theme.target
                horizontalAlignment: Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
                text: choices.writer.copies
                font.bold: true
            }
            Press {
                id: more

                objectName: "moreCopies"
                glyph: "plus"
                Accessible.name: qsTr("More copies")
                onClicked: choices.writer.copies += 1
            }
        }
        Press {
            width: parent.width
            objectName: "saveForOthers"
            glyph: "copy"
            text: qsTr("Files for other programs")
            enabled: !choices.writer.busy
            onClicked: choices.writer.saveForOthers()
        }
        Words {
            width: parent.width
            text: qsTr("The plan, the bring list and the helpers as tables, a calendar, and a picture of every pass.")
            font.pixelSize: Theme.small
            quiet: true
        }
    }
}
