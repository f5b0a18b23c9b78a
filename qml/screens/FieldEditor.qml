pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme

// Changes one value: by pad, by choice or by keyboard. Closes when the value was taken; else it says
// in one sentence what does not fit.
Sheet {
    id: sheet

    property string key: ""
    property string kind: ""
    property string value: ""
    property list<string> choices
    property bool optional: false
    property bool metric: false
    property string problem: ""

    readonly property bool padded: kind === "length" || kind === "count" || kind === "number" || kind === "time"

    signal taken(text: string)

    objectName: "fieldEditor"

    function edit(which: string, label: string, what: string, now: string, options: list<string>, mayBeEmpty: bool) {
        key = which
        title = label
        kind = what
        value = now
        choices = options
        optional = mayBeEmpty
        problem = ""
        if (padded)
            pad.begin(now)
        else
            line.text = now
        open()
        if (padded)
            pad.forceActiveFocus()
        else if (kind === "text")
            line.forceActiveFocus()
    }
    function take(text: string) {
        problem = ""
        taken(text)
        if (problem === "")
            close()
    }

    NumberPad {
        id: pad

        objectName: "pad"
        width: parent.width
        visible: sheet.padded
        mode: sheet.kind !== "length" ? sheet.kind : sheet.unit === "in" ? "inch" : "metric"
        unit: sheet.kind === "length" ? sheet.unit : ""
        onAccepted: sheet.take(pad.text)
    }

    // The unit the value is shown in; for an empty one, the job's.
    readonly property string unit: value.endsWith("mm") ? "mm" : value.endsWith("cm") ? "cm"
                                   : value.endsWith("in") ? "in" : metric ? "cm" : "in"

    TextField {
        id: line

        visible: sheet.kind === "text"
        width: parent.width
        height: Theme.target
        font.family: Theme.family
        font.pixelSize: Theme.large
        color: Theme.ink
        selectionColor: Theme.accent
        selectedTextColor: Theme.accentInk
        selectByMouse: true
        maximumLength: 100
        Accessible.name: sheet.title
        onAccepted: sheet.take(line.text)
        background: Rectangle {
            color: Theme.ground
            radius: Theme.radius
            border.width: line.activeFocus ? Theme.line * 2 : Theme.line
            border.color: line.activeFocus ? Theme.accent : Theme.strongEdge
        }
    }
    Repeater {
        model: sheet.kind === "choice" ? sheet.choices : []

        Press {
            required property string modelData
            required property int index

            objectName: "choice" + index
            width: parent.width
            text: modelData
            checked: modelData === sheet.value
            onClicked: sheet.take(index.toString())
        }
    }
    Words {
        objectName: "problem"
        visible: sheet.problem !== ""
        width: parent.width
        text: sheet.problem
        font.bold: true
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
    }
    Row {
        width: parent.width
        visible: sheet.kind !== "choice"
        spacing: Theme.gap

        Press {
            id: none

            visible: sheet.optional
            text: qsTr("Not given")
            onClicked: sheet.take("")
        }
        Press {
            objectName: "take"
            width: parent.width - (none.visible ? none.width + Theme.gap : 0)
            main: true
            glyph: "check"
            text: qsTr("Take it")
            onClicked: sheet.take(sheet.padded ? pad.text : line.text)
        }
    }
}
