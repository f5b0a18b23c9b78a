pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The plan in four figures, then a tile for each thing given and each thing that comes of it.
Flickable {
    id: pane

    required property Workroom room

    signal paneWanted(pane: string)
    signal whyWanted(figure: string)

    readonly property int abreast: width > Math.max(74 * Theme.density, 22 * Theme.text) ? 2 : 1
    // Set once all tiles are there: those in a row are as high as the higher one.
    property bool complete: false
    readonly property real tile: (width - (abreast - 1) * Theme.gap) / abreast

    // What opens a pane each: pane, glyph, title, text.
    component Tiles: Grid {
        property alias model: tiles.model

        width: parent.width
        columns: pane.abreast
        spacing: Theme.gap

        Repeater {
            id: tiles

            Opener {
                required property var modelData
                required property int index

                readonly property Item mate: pane.complete && pane.abreast > 1 ? tiles.itemAt(index % 2 ? index - 1 : index + 1) : null

                width: pane.tile
                height: Math.max(implicitHeight, mate ? mate.implicitHeight : 0)
                objectName: "tile-" + modelData.pane
                glyph: modelData.glyph
                title: modelData.title
                summary: modelData.text
                onClicked: pane.paneWanted(modelData.pane)
            }
        }
    }

    Component.onCompleted: complete = true
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
        // All of it is there before the plan is, so that nothing moves under a finger when it comes.
        Grid {
            id: figures

            readonly property real part: (width - (columns - 1) * spacing) / columns

            width: parent.width
            columns: width < 17 * Theme.large ? 1 : 2
            spacing: Theme.gap
            opacity: pane.room.plan.busy ? 0.55 : 1
            enabled: pane.room.plan.planned

            Figure {
                objectName: "figure-passes"
                width: figures.part
                text: pane.room.plan.planned ? pane.room.plan.passesText : "…"
                onClicked: pane.whyWanted("passes")
            }
            Figure {
                objectName: "figure-points"
                width: figures.part
                text: pane.room.plan.planned ? pane.room.plan.pointsText : "…"
                onClicked: pane.whyWanted("points")
            }
            Figure {
                objectName: "figure-finish"
                width: figures.part
                text: pane.room.plan.planned ? pane.room.plan.finishText : "…"
                onClicked: pane.whyWanted("finish")
            }
            Figure {
                objectName: "figure-span"
                width: figures.part
                text: pane.room.plan.planned ? pane.room.plan.spanText : "…"
                onClicked: pane.whyWanted("finish")
            }
        }
        Words {
            width: parent.width
            text: pane.room.plan.planned ? pane.room.plan.surfaceText : qsTr("Planning …")
            quiet: true
        }
        Opener {
            objectName: "tile-findings"
            width: column.width
            glyph: pane.room.plan.good || !pane.room.plan.planned ? "note" : "warn"
            title: qsTr("To watch")
            summary: pane.room.plan.planned ? pane.room.plan.findingsText : qsTr("Planning …")
            loud: pane.room.plan.planned && !pane.room.plan.good
            onClicked: pane.paneWanted("findings")
        }
        Heading {
            width: parent.width
            topPadding: Theme.gap
            text: qsTr("What you have")
            font.pixelSize: Theme.text
            quiet: true
        }
        Tiles {
            model: [
                {pane: "quilt", glyph: "quilt", title: qsTr("The quilt"), text: quilt.summary},
                {pane: "basting", glyph: "pin", title: qsTr("Basting"), text: basting.summary},
                {pane: "layers", glyph: "layers", title: qsTr("Layers"), text: layers.summary},
                {pane: "room", glyph: "table", title: qsTr("The room"), text: roomFields.summary},
                {pane: "people", glyph: "person", title: qsTr("People"), text: people.summary},
                {pane: "boxes", glyph: "box", title: qsTr("Boxes on hand"), text: boxes.summary}
            ]
        }
        Heading {
            width: parent.width
            visible: pane.room.plan.planned
            topPadding: Theme.gap
            text: qsTr("What comes of it")
            font.pixelSize: Theme.text
            quiet: true
        }
        Tiles {
            visible: pane.room.plan.planned
            model: [
                {pane: "pass", glyph: "table", title: pane.room.pass.title, text: qsTr("How the quilt lies and is held")},
                {pane: "ways", glyph: "ways", title: qsTr("Ways to do it"), text: qsTr("Compared, and why this one")},
                {pane: "lanes", glyph: "lanes", title: qsTr("Lanes"), text: qsTr("Everybody's work over time")},
                {pane: "rehearsal", glyph: "start", title: qsTr("Rehearse"), text: qsTr("The session in a minute")},
                {pane: "bring", glyph: "box", title: qsTr("To bring"), text: pane.room.plan.suppliesText},
                {pane: "who", glyph: "clock", title: qsTr("Who does what"), text: pane.room.plan.finishText},
                {pane: "figures", glyph: "why", title: qsTr("Every figure"), text: qsTr("And its why")}
            ]
        }
    }
}
