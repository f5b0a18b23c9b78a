pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The fields of one section, under their headings, two abreast where there is room; what is declared
// inside stands above them. A value is changed in their place, so that the picture beside stays in
// sight and follows.
FocusScope {
    id: pane

    required property JobEditor editor
    required property int section

    default property alias above: lead.data
    property string only: "" // fields whose keys begin so

    readonly property int abreast: width > Math.max(66 * Theme.density, 20 * Theme.text) ? 2 : 1
    readonly property bool metric: pane.editor.metric
    readonly property bool editing: editSheet.visible
    property real keep: 0
    property Item from: null // the tile whose value is changed

    function groupAt(index: int): string {
        return fields.groupAt(index)
    }
    // Changes the field of this key, as a tap on it does.
    function open(key: string) {
        for (let i = 0; i < tiles.count; ++i) {
            const entry = tiles.itemAt(i)
            if (entry && entry.key === key)
                change(entry.key, entry.label, entry.kind, entry.value, entry.choices, entry.optional)
        }
    }
    function returnFocus() {
        if (from)
            from.forceActiveFocus(Qt.TabFocusReason)
        else
            list.forceActiveFocus()
    }
    function change(key: string, label: string, kind: string, value: string, choices: list<string>, optional: bool) {
        if (kind === "action" || kind === "removal")
            fields.take(key, "")
        else if (kind === "toggle")
            fields.take(key, value === choices[1] ? "0" : "1")
        else
            editSheet.edit(key, label, kind, value, choices, optional)
    }

    FieldModel {
        id: fields

        editor: pane.editor
        section: pane.section
        only: pane.only
        onModelAboutToBeReset: pane.keep = list.contentY
        onModelReset: afterwards.start()
    }
    Timer {
        id: afterwards

        interval: 0
        onTriggered: list.contentY = Math.max(0, Math.min(pane.keep, list.contentHeight - list.height))
    }

    Flickable {
        id: list

        anchors.fill: parent
        visible: !editSheet.visible
        contentHeight: flow.y + flow.implicitHeight + Theme.gap
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: lead

            width: list.width
        }
        Flow {
            id: flow

            y: lead.implicitHeight > 0 ? lead.implicitHeight + Theme.gap : 0
            width: list.width
            spacing: Theme.gap

            Repeater {
                id: tiles

                model: fields

                Column {
                    id: entry

                    required property string key
                    required property string group
                    required property string label
                    required property string kind
                    required property string value
                    required property list<string> choices
                    required property bool optional
                    required property int index

                    readonly property bool first: index === 0 || pane.groupAt(index - 1) !== group

                    // A heading takes the whole width, so that its fields begin a new line.
                    width: first || kind === "action" || kind === "removal" || pane.abreast === 1 ? flow.width : (flow.width - Theme.gap) / 2
                    spacing: Theme.gap * 0.5

                    Heading {
                        visible: entry.first
                        width: flow.width
                        topPadding: entry.index === 0 ? 0 : Theme.gap
                        text: entry.group
                        font.pixelSize: Theme.text
                        quiet: true
                    }
                    FieldTile {
                        id: tile

                        objectName: "field-" + entry.key
                        width: entry.width
                        label: entry.label
                        value: entry.value
                        kind: entry.kind
                        optional: entry.optional
                        onClicked: {
                            pane.from = tile.visualFocus ? tile : null
                            pane.change(entry.key, entry.label, entry.kind, entry.value, entry.choices, entry.optional)
                        }
                    }
                }
            }
        }
    }
    FieldEditor {
        id: editSheet

        anchors.fill: parent
        metric: pane.metric
        onTyped: text => fields.preview(editSheet.key, text)
        onTaken: text => editSheet.problem = fields.take(editSheet.key, text)
        onClosed: {
            fields.endPreview()
            pane.returnFocus()
        }
    }
}
