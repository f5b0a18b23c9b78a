pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Bastewright.Theme

// Figures for a finger: whole numbers, eighths of an inch, tenths, or a time of day.
Column {
    id: pad

    readonly property bool fast: true // tapped fast, also twice in a place

    // "inch", "metric", "count", "number" or "time"
    property string mode: "inch"
    property string text: ""
    property string unit: ""
    property string label: "" // what the figure is of
    property real least: Theme.target
    property real size: Theme.large
    property bool fresh: true // the first key replaces what stood there

    signal accepted

    readonly property var fractionAtEnd: /\s*[½¼¾⅛⅜⅝⅞]\s*$/ // of an inch, at the end
    readonly property string whole: text.replace(fractionAtEnd, "").replace(/\s*\d*\/\d*\s*$/, "").trim() // without its fraction
    readonly property string half: halfOf(text)

    spacing: Theme.gap

    function begin(value: string) {
        const day = mode === "time" ? halfOf(value) : ""
        text = value.replace(/[^0-9:.,\/ ½¼¾⅛⅜⅝⅞]/g, "").trim() + (day === "" ? "" : " " + day)
        fresh = true
    }
    // Of the day, where the device says so.
    function halfOf(text: string): string {
        return /[AP]M/i.exec(text)?.[0].toUpperCase() ?? ""
    }
    // 1, 13, 1:34, 13:45: the last two figures are minutes.
    function clock(figures: string, half: string): string {
        return (figures.length > 2 ? figures.slice(0, -2) + ":" + figures.slice(-2) : figures)
               + (half === "" ? "" : " " + half)
    }
    function figures(text: string): string {
        return text.replace(/[^0-9]/g, "")
    }
    function otherHalf() {
        text = clock(figures(text), half === "PM" ? "AM" : "PM")
        fresh = false
    }
    function key(figure: string) {
        const before = fresh ? "" : text
        fresh = false
        if (mode === "time") {
            text = clock((figures(before) + figure).slice(-4), half)
        } else if (before.length < 12) {
            text = fractionAtEnd.test(before) ? (whole + figure) : before + figure
        }
    }
    function fraction(part: string) { // "½"
        const base = fresh ? "" : whole
        fresh = false
        text = base + part
    }
    function erase() {
        const before = text
        fresh = false
        text = mode === "time" ? clock(figures(before).slice(0, -1), half)
             : fractionAtEnd.test(before) ? whole : before.slice(0, -1)
    }

    Keys.onPressed: event => {
        if (/^[0-9]$/.test(event.text))
            pad.key(event.text)
        else if (event.text === "." || event.text === ",")
            pad.point()
        else if (event.text === "/" || event.text === " " || event.text === ":")
            pad.text = pad.text + event.text
        else if (event.key === Qt.Key_Backspace)
            pad.erase()
        else if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter)
            pad.accepted()
        else
            return
        event.accepted = true
    }
    function point() {
        if (mode === "count" || mode === "time" || text.indexOf(".") >= 0)
            return
        text = (fresh ? "0" : text) + "."
        fresh = false
    }

    activeFocusOnTab: true
    Accessible.role: Accessible.EditableText
    Accessible.focusable: true
    Accessible.name: label === "" ? shown.text : label + ", " + shown.text

    Rectangle {
        width: parent.width
        height: Math.max(pad.least, shown.implicitHeight + Theme.gap)
        radius: Theme.radius
        color: Theme.ground
        border.width: Theme.line
        border.color: Theme.strongEdge

        FocusFrame {
            visible: pad.activeFocus
        }
        Words {
            id: shown

            anchors.centerIn: parent
            width: parent.width - 2 * Theme.gap
            horizontalAlignment: Text.AlignHCenter
            text: (pad.text === "" ? "–" : pad.text) + (pad.unit === "" ? "" : " " + pad.unit)
            font.pixelSize: Math.max(Theme.title, pad.size)
            font.bold: true
            color: pad.fresh ? Theme.quiet : Theme.ink
            Accessible.ignored: true // said with the pad
        }
    }
    GridLayout {
        width: parent.width
        columns: pad.mode === "inch" ? 5 : pad.mode === "count" ? 4 : 3
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        LayoutMirroring.enabled: false // figures stand the same way in every language
        LayoutMirroring.childrenInherit: true

        Repeater {
            model: pad.mode === "inch"
                   ? ["7", "8", "9", "⅛", "¼", "4", "5", "6", "⅜", "½", "1", "2", "3", "⅝", "¾", ".", "0", "<", "⅞"]
                   : pad.mode === "count" ? ["7", "8", "9", "<", "4", "5", "6", "0", "1", "2", "3"]
                   : pad.mode === "time" ? ["7", "8", "9", "4", "5", "6", "1", "2", "3", Theme.twelveHours ? "am" : "", "0", "<"]
                   : ["7", "8", "9", "4", "5", "6", "1", "2", "3", ".", "0", "<"]

            Press {
                id: figure

                required property string modelData

                objectName: "key-" + (modelData === "<" ? "erase" : modelData)
                Layout.fillWidth: true
                Layout.preferredWidth: pad.least
                least: pad.least
                leftPadding: Theme.gap * 0.5 // fractions stay whole on narrow keys
                rightPadding: leftPadding
                opacity: modelData === "" ? 0 : 1
                enabled: modelData !== ""
                readonly property bool isFraction: pad.fractionAtEnd.test(modelData)

                text: modelData === "<" ? "" : modelData === "am" ? "AM/PM" : modelData
                glyph: modelData === "<" ? "erase" : ""
                size: pad.size
                focusPolicy: Qt.NoFocus
                checked: isFraction && pad.text.endsWith(modelData)
                Accessible.name: modelData === "<" ? qsTr("Delete") : text
                onClicked: {
                    if (modelData === "<")
                        pad.erase()
                    else if (modelData === ".")
                        pad.point()
                    else if (modelData === "am")
                        pad.otherHalf()
                    else if (isFraction)
                        pad.fraction(modelData)
                    else
                        pad.key(modelData)
                }
            }
        }
    }
}
