pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The plan as a line of paper: when it finishes, what it takes, the first thing to check with what
// helps; then a line for each thing given and each thing that comes of it.
Flickable {
    id: pane

    required property Workroom room

    signal paneWanted(pane: string)
    signal whyWanted(figure: string)

    // What opens a pane each: pane, glyph, title, text. Two abreast where their words have room, so that
    // all that is given is seen at once.
    component Lines: Grid {
        id: lines

        property var model: []
        property bool brief: false // their words are few

        width: parent.width
        columns: brief && width > 22 * Theme.text ? 2 : 1
        columnSpacing: Theme.gap

        Repeater {
            id: openers

            model: lines.model

            Opener {
                required property var modelData
                required property int index
                // As high as its neighbor, which is there once all are.
                readonly property Item beside: lines.columns > 1 && openers.count === lines.model.length ? openers.itemAt(index ^ 1) : null

                height: Math.max(implicitHeight, beside ? beside.implicitHeight : 0)
                width: Math.floor((lines.width - (lines.columns - 1) * lines.columnSpacing) / lines.columns)
                objectName: "tile-" + modelData.pane
                glyph: modelData.glyph
                title: modelData.title
                summary: modelData.text
                onClicked: pane.paneWanted(modelData.pane)
            }
        }
    }

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
        Column {
            width: parent.width
            opacity: pane.room.plan.busy ? 0.55 : 1
            enabled: pane.room.plan.planned

            Words {
                width: parent.width
                text: qsTr("Finishes about")
                quiet: true
            }
            Figure {
                objectName: "figure-finish"
                width: parent.width
                value: pane.room.plan.planned ? pane.room.plan.finishText : "…"
                unit: pane.room.plan.rangeText
                size: Theme.figure
                onClicked: pane.whyWanted("finish")
            }
            Flow {
                width: parent.width
                spacing: Theme.gap

                Figure {
                    objectName: "figure-passes"
                    value: pane.room.plan.planned ? pane.room.plan.passesText : "…"
                    onClicked: pane.whyWanted("passes")
                }
                Figure {
                    objectName: "figure-points"
                    value: pane.room.plan.planned ? pane.room.plan.pointsText : "…"
                    onClicked: pane.whyWanted("points")
                }
                Figure {
                    objectName: "figure-span"
                    value: pane.room.plan.planned ? pane.room.plan.spanText : "…"
                    onClicked: pane.whyWanted("finish")
                }
            }
        }
        Opener {
            objectName: "tile-findings"
            width: column.width
            glyph: pane.room.plan.good || !pane.room.plan.planned ? "note" : "warn"
            title: pane.room.plan.planned ? pane.room.plan.findingsText : qsTr("Planning …")
            summary: pane.room.plan.planned ? pane.room.remedies.worst : ""
            loud: pane.room.plan.planned && pane.room.remedies.serious
            onClicked: pane.paneWanted("findings")
        }
        Row {
            id: fixes

            readonly property real each: pane.room.remedies.worstSecond === "" ? width : Math.floor((width - spacing) / 2)

            width: parent.width
            spacing: Theme.gap
            visible: pane.room.plan.planned && pane.room.remedies.worstFirst !== ""

            Press {
                objectName: "worst-first"
                width: pane.room.remedies.worstSecond === "" ? Math.min(implicitWidth, fixes.each) : fixes.each
                text: pane.room.remedies.worstFirst
                enabled: !pane.room.plan.busy
                onClicked: pane.room.remedies.cure(0, 0)
            }
            Press {
                objectName: "worst-second"
                width: fixes.each
                visible: pane.room.remedies.worstSecond !== ""
                text: pane.room.remedies.worstSecond
                enabled: !pane.room.plan.busy
                onClicked: pane.room.remedies.cure(0, 1)
            }
        }
        Lines {
            brief: true
            model: [
                {pane: "quilt", glyph: "quilt", title: qsTr("Your quilt"), text: quilt.summary},
                {pane: "basting", glyph: "pin", title: qsTr("Basting"), text: basting.summary},
                {pane: "layers", glyph: "layers", title: qsTr("Layers"), text: layers.summary},
                {pane: "room", glyph: "table", title: qsTr("Room"), text: roomFields.summary},
                {pane: "people", glyph: "person", title: qsTr("People"), text: people.summary},
                {pane: "boxes", glyph: "box", title: qsTr("What we have"), text: boxes.summary}
            ]
        }
        Heading {
            width: parent.width
            visible: pane.room.plan.planned
            topPadding: Theme.gap
            text: qsTr("Your plan")
        }
        Lines {
            visible: pane.room.plan.planned
            model: [
                {pane: "bring", glyph: "box", title: qsTr("What to bring"), text: pane.room.plan.suppliesText},
                {pane: "ways", glyph: "ways", title: qsTr("Other ways"), text: pane.room.plan.surfaceText},
                {pane: "pass", glyph: "table", title: pane.room.pass.title, text: qsTr("How the quilt lies and is held")},
                {pane: "who", glyph: "clock", title: qsTr("Who does what"), text: qsTr("Steps and hours of each")},
                {pane: "lanes", glyph: "lanes", title: qsTr("Everybody’s turns"), text: qsTr("Who is where, over time")},
                {pane: "rehearsal", glyph: "start", title: qsTr("Rehearse"), text: qsTr("The session in a minute")},
                {pane: "figures", glyph: "why", title: qsTr("Why"), text: qsTr("Every figure and its reason")}
            ]
        }
    }
}
