pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme

// Changes one value: by pad, by choice or by keyboard, beside the picture that follows what is typed.
// Closes when the value was taken; else it says in one sentence what does not fit.
FocusScope {
    id: editor

    property string title: ""
    property string key: ""
    property string kind: ""
    property string value: ""
    property list<string> choices
    property bool optional: false
    property bool metric: false
    property string problem: ""
    property bool accepted: false // closed because the value was taken

    readonly property bool padded: kind === "length" || kind === "count" || kind === "number" || kind === "time"
    // The unit the value is shown in; for an empty one, the job's.
    readonly property string unit: value.endsWith("mm") ? "mm" : value.endsWith("cm") ? "cm"
                                   : value.endsWith("in") ? "in" : metric ? "cm" : "in"

    signal taken(text: string)
    signal typed(text: string)
    signal closed

    function edit(which: string, label: string, what: string, now: string, options: list<string>, mayBeEmpty: bool) {
        key = which
        title = label
        kind = what
        value = now
        choices = options
        optional = mayBeEmpty
        problem = ""
        accepted = false
        visible = true
        if (padded)
            pad.begin(now)
        else
            line.text = now
        if (padded)
            pad.forceActiveFocus()
        else if (kind === "text")
            write()
        else
            forceActiveFocus()
    }
    // The first letter replaces what stood there, as the first figure does.
    function write() {
        line.forceActiveFocus()
        line.selectAll()
    }
    function take(text: string) {
        problem = ""
        taken(text)
        if (problem === "") {
            accepted = true
            close()
        }
    }
    function close() {
        visible = false
        closed()
    }

    objectName: "fieldEditor"
    visible: false
    Shortcut {
        enabled: editor.visible
        sequence: "Escape"
        onActivated: editor.close()
    }
    Flickable {
        anchors.fill: parent
        contentHeight: column.implicitHeight
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: column

            width: parent.width
            spacing: Theme.gap

            Head {
                width: parent.width
                title: editor.title
                closeName: "closeEditor"
                closeWords: qsTr("Cancel")
                onClosed: editor.close()
            }
            Words {
                objectName: "problem"
                visible: editor.problem !== ""
                width: parent.width
                text: editor.problem
                font.bold: true
                Accessible.role: Accessible.AlertMessage
                Accessible.name: text
            }
            NumberPad {
                id: pad

                objectName: "pad"
                width: parent.width
                visible: editor.padded
                label: editor.title
                mode: editor.kind !== "length" ? editor.kind : editor.unit === "in" ? "inch" : "metric"
                unit: editor.kind === "length" ? editor.unit : ""
                onTextChanged: if (editor.visible && !pad.fresh) editor.typed(pad.text)
                onAccepted: editor.take(pad.text)
            }
            WordsField {
                id: line

                objectName: "line"
                visible: editor.kind === "text"
                width: parent.width
                maximumLength: 100
                Accessible.name: editor.title
                onAccepted: editor.take(line.text)
            }
            Repeater {
                model: editor.kind === "choice" ? editor.choices : []

                Press {
                    required property string modelData
                    required property int index

                    objectName: "choice" + index
                    width: column.width
                    text: modelData
                    checked: modelData === editor.value
                    onClicked: editor.take(index.toString())
                }
            }
            Flow {
                width: parent.width
                visible: editor.kind !== "choice"
                spacing: Theme.gap

                Press {
                    id: none

                    width: take.beside ? implicitWidth : parent.width
                    visible: editor.optional
                    text: qsTr("Not given")
                    onClicked: editor.take("")
                }
                Press {
                    id: take

                    readonly property real rest: parent.width - none.implicitWidth - Theme.gap
                    readonly property bool beside: none.visible && rest >= implicitWidth

                    objectName: "take"
                    width: beside ? rest : parent.width
                    main: true
                    glyph: "check"
                    text: qsTr("Set")
                    onClicked: editor.take(editor.padded ? pad.text : line.text)
                }
            }
        }
    }
}
