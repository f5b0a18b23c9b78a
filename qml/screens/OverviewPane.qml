pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The plan in four lines, then a tile for each thing given and each thing that comes of it.
Flickable {
    id: pane

    required property Workroom room

    signal paneWanted(pane: string)

    contentHeight: column.implicitHeight
    clip: true
    boundsBehavior: Flickable.StopAtBounds

    FieldModel { id: quilt; editor: pane.room.editor; section: FieldModel.Quilt }
    FieldModel { id: basting; editor: pane.room.editor; section: FieldModel.Basting }
    FieldModel { id: layers; editor: pane.room.editor; section: FieldModel.Layers }
    FieldModel { id: roomFields; editor: pane.room.editor; section: FieldModel.Room }
    FieldModel { id: people; editor: pane.room.editor; section: FieldModel.People }
    FieldModel { id: boxes; editor: pane.room.editor; section: FieldModel.Boxes }

    Column {
        id: column

        width: pane.width
        spacing: Theme.gap

        Flow {
            width: parent.width
            spacing: Theme.gap
            visible: pane.room.editor.quilts.length > 1

            Repeater {
                model: pane.room.editor.quilts

                Press {
                    required property string modelData
                    required property int index

                    text: modelData
                    checked: index === pane.room.editor.quilt
                    onClicked: pane.room.editor.quilt = index
                }
            }
        }
        Patch {
            width: parent.width
            height: lines.implicitHeight + 2 * Theme.gap

            Column {
                id: lines

                x: Theme.gap * 1.2
                y: Theme.gap
                width: parent.width - 2 * x
                opacity: pane.room.plan.busy ? 0.55 : 1

                Words {
                    objectName: "headline"
                    width: parent.width
                    text: pane.room.plan.planned ? qsTr("%1, %2").arg(pane.room.plan.passesText).arg(pane.room.plan.pointsText)
                                                 : qsTr("Planning …")
                    font.pixelSize: Theme.title
                    font.bold: true
                }
                Words {
                    width: parent.width
                    visible: pane.room.plan.planned
                    text: qsTr("%1, %2").arg(pane.room.plan.spanText).arg(pane.room.plan.finishText)
                    font.pixelSize: Theme.large
                }
                Words {
                    width: parent.width
                    visible: pane.room.plan.planned
                    text: pane.room.plan.surfaceText
                    quiet: true
                }
            }
        }
        Repeater {
            model: [
                {pane: "findings", glyph: pane.room.plan.good ? "note" : "warn", title: qsTr("To watch"), text: pane.room.plan.findingsText, loud: pane.room.plan.planned && !pane.room.plan.good},
                {pane: "pass", glyph: "table", title: pane.room.pass.title, text: qsTr("How the quilt lies and is held"), loud: false},
                {pane: "ways", glyph: "ways", title: qsTr("Ways to do it"), text: qsTr("Compared, and why this one"), loud: false},
                {pane: "bring", glyph: "box", title: qsTr("To bring"), text: pane.room.plan.suppliesText, loud: false},
                {pane: "who", glyph: "clock", title: qsTr("Who does what"), text: pane.room.plan.finishText, loud: false},
                {pane: "lanes", glyph: "lanes", title: qsTr("Lanes"), text: qsTr("Everybody's work over time; hand a zone over"), loud: false},
                {pane: "rehearsal", glyph: "start", title: qsTr("Rehearse"), text: qsTr("The whole session in a minute"), loud: false}
            ]

            Opener {
                required property var modelData

                width: column.width
                visible: pane.room.plan.planned
                objectName: "tile-" + modelData.pane
                glyph: modelData.glyph
                title: modelData.title
                summary: modelData.text
                loud: modelData.loud
                onClicked: pane.paneWanted(modelData.pane)
            }
        }
        Words {
            width: parent.width
            topPadding: Theme.gap
            text: qsTr("What you have")
            font.bold: true
            quiet: true
        }
        Repeater {
            model: [
                {pane: "quilt", glyph: "quilt", title: qsTr("The quilt"), text: quilt.summary},
                {pane: "basting", glyph: "pin", title: qsTr("Basting"), text: basting.summary},
                {pane: "layers", glyph: "layers", title: qsTr("Layers"), text: layers.summary},
                {pane: "room", glyph: "table", title: qsTr("The room"), text: roomFields.summary},
                {pane: "people", glyph: "person", title: qsTr("People"), text: people.summary},
                {pane: "boxes", glyph: "box", title: qsTr("Boxes on hand"), text: boxes.summary}
            ]

            Opener {
                required property var modelData

                width: column.width
                objectName: "tile-" + modelData.pane
                glyph: modelData.glyph
                title: modelData.title
                summary: modelData.text
                onClicked: pane.paneWanted(modelData.pane)
            }
        }
    }
}
