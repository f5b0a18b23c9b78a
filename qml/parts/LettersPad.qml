pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Bastewright.Theme

// Letters for a finger, where no keyboard is: they write into the field in hand, which keeps the
// focus. Capitals begin words; nothing is guessed or corrected.
Rectangle {
    id: pad

    readonly property bool fast: true // tapped fast, also twice in a place

    property TextInput field: null
    property string language: "en"
    property real least: Theme.target

    signal accepted

    readonly property bool german: language === "de"
    readonly property real between: Math.round(Theme.density)
    // The rows people know (for German as in DIN 2137); figures beside them where there is room.
    readonly property real room: width - 2 * Theme.gap
    readonly property bool wide: room >= need(german ? 14 : 13) + Theme.gap
    readonly property bool narrow: room < need(10)
    readonly property int abreast: narrow ? Math.max(3, Math.floor((room + between) / (least + between))) : wide && german ? 11 : 10
    readonly property real cell: Math.floor(wide ? (room - Theme.gap + 2 * between) / (abreast + 3) - between
                                                 : (room + between) / abreast - between)
    readonly property list<string> rows: narrow ? alphabet() : wide ? (german
            ? ["q w e r t z u i o p ü", "a s d f g h j k l ö ä", "shift y x c v b n m ß erase", "- ' , . space take"]
            : ["q w e r t y u i o p", "a s d f g h j k l '", "shift z x c v b n m erase", "- , . space take"])
        : german
            ? ["1 2 3 4 5 6 7 8 9 0", "q w e r t z u i o p", "a s d f g h j k l ß", "shift y x c v b n m erase", "ä ö ü - ' , . space take"]
            : ["1 2 3 4 5 6 7 8 9 0", "q w e r t y u i o p", "a s d f g h j k l '", "shift z x c v b n m erase", "- , . space take"]

    property bool other: false // the next letter is the other kind than its place says
    property bool wordBegins: true
    readonly property bool capital: wordBegins !== other

    function need(keys: int): real {
        return keys * (least + between) - between
    }
    // On a screen too narrow for rows of ten.
    function alphabet(): list<string> {
        const keys = ("a b c d e f g h i j k l m n o p q r s t u v w x y z " + (german ? "ä ö ü ß " : "")
                      + "1 2 3 4 5 6 7 8 9 0 - ' , .").split(" ")
        const out = []
        for (let i = 0; i < keys.length; i += abreast)
            out.push(keys.slice(i, i + abreast).join(" "))
        out.push("shift erase")
        out.push("space take")
        return out
    }
    function look() {
        const before = pad.field ? pad.field.text.slice(0, pad.field.selectionStart) : ""
        wordBegins = before === "" || /[\s-]$/.test(before)
        other = false
    }
    function put(letter: string) {
        if (!field)
            return
        field.remove(field.selectionStart, field.selectionEnd)
        field.insert(field.cursorPosition, letter)
        look()
    }
    function erase() {
        if (!field)
            return
        if (field.selectionStart !== field.selectionEnd)
            field.remove(field.selectionStart, field.selectionEnd)
        else
            field.remove(field.cursorPosition - 1, field.cursorPosition)
        look()
    }
    function press(key: string) {
        if (key === "shift")
            other = !other
        else if (key === "erase")
            erase()
        else if (key === "take")
            accepted()
        else
            put(key === "space" ? " " : shown(key))
    }
    function shown(key: string): string {
        return capital && key !== "ß" ? key.toUpperCase() : key
    }

    implicitHeight: keys.implicitHeight + 2 * Theme.gap
    color: Theme.ground
    border.width: Theme.line
    border.color: Theme.strongEdge
    onFieldChanged: look()

    Connections {
        target: pad.field
        function onCursorPositionChanged() { pad.look() }
        function onSelectionStartChanged() { pad.look() }
    }
    component Key: Press {
        id: key

        property string name: ""
        readonly property bool figure: name.length === 1

        objectName: "letter-" + name
        least: pad.least
        leftPadding: 0
        rightPadding: 0
        size: Math.min(Theme.large, pad.least * 0.55) // large letters leave the field its room
        focusPolicy: Qt.NoFocus // the field keeps it, and a keyboard needs no keys to tap
        autoRepeat: name === "erase"
        main: name === "take"
        checked: name === "shift" && pad.capital
        text: figure ? pad.shown(name) : ""
        glyph: name === "shift" ? "up" : name === "erase" ? "erase" : name === "take" ? "check" : name === "space" ? "space" : ""
        Accessible.name: name === "shift" ? qsTr("Capital letter") : name === "erase" ? qsTr("Delete")
                         : name === "take" ? qsTr("Set") : name === "space" ? qsTr("Space") : text
        onClicked: pad.press(name)
    }

    MouseArea {
        anchors.fill: parent // a tap beside a key reaches nothing below
    }
    Flickable {
        anchors.fill: parent
        anchors.margins: Theme.gap
        contentHeight: keys.implicitHeight
        interactive: contentHeight > height + 1
        clip: interactive
        boundsBehavior: Flickable.StopAtBounds

        RowLayout {
            id: keys

            width: parent.width
            spacing: Theme.gap
            LayoutMirroring.enabled: false // letters lie where hands know them in every language
            LayoutMirroring.childrenInherit: true

            ColumnLayout {
                Layout.fillWidth: true
                spacing: pad.between

                Repeater {
                    model: pad.rows

                    RowLayout {
                        id: row

                        required property string modelData

                        Layout.fillWidth: true
                        spacing: pad.between

                        Repeater {
                            model: row.modelData.split(" ")

                            Key {
                                required property string modelData

                                name: modelData
                                Layout.fillWidth: !figure
                                Layout.preferredWidth: figure ? pad.cell : name === "space" ? pad.least * 1.5 : pad.least
                            }
                        }
                    }
                }
            }
            GridLayout {
                Layout.alignment: Qt.AlignTop
                visible: pad.wide
                columns: 3
                columnSpacing: pad.between
                rowSpacing: pad.between

                Repeater {
                    model: pad.wide ? ["7", "8", "9", "4", "5", "6", "1", "2", "3", "0"] : []

                    Key {
                        required property string modelData

                        name: modelData
                        Layout.fillWidth: true
                        Layout.preferredWidth: pad.cell
                        Layout.columnSpan: modelData === "0" ? 3 : 1
                    }
                }
            }
        }
    }
}
