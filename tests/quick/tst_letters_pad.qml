import QtQuick
import QtQuick.Controls.Basic
import QtTest
import Bastewright.Parts
import Bastewright.Theme

Item {
    width: 900
    height: 600
    visible: true

    TextField {
        id: line

        width: 400
        maximumLength: 20
    }
    LettersPad {
        id: pad

        y: 100
        width: 800
        height: implicitHeight
        field: line
    }
    SignalSpy {
        id: accepted

        target: pad
        signalName: "accepted"
    }

    TestCase {
        name: "LettersPad"
        when: windowShown

        function init() {
            failOnWarning(/.*/)
            line.text = ""
            line.forceActiveFocus()
            lay("en", 800)
            accepted.clear()
        }
        function lay(language, width) {
            if (pad.language === language && pad.width === width)
                return
            pad.language = language
            pad.width = width
            waitForRendering(pad, 200) // until the keys lie in their places
        }
        function keyOf(item, name) {
            if (item.objectName === "letter-" + name && item.visible)
                return item
            for (let i = 0; i < item.children.length; ++i) {
                const found = keyOf(item.children[i], name)
                if (found)
                    return found
            }
            return null
        }
        function tap(...names) {
            for (const name of names) {
                const key = keyOf(pad, name)
                verify(key, "a key for " + name)
                mouseClick(key)
            }
        }
        function keys(item, out) {
            if (item.objectName.startsWith("letter-") && item.visible)
                out.push(item)
            for (let i = 0; i < item.children.length; ++i)
                keys(item.children[i], out)
            return out
        }

        function test_words_begin_with_capitals() {
            tap("a", "d", "a", "space", "m", "-", "l", "e", "e")
            compare(line.text, "Ada M-Lee")
            verify(line.activeFocus, "the field keeps the focus")
        }
        function test_shift_is_for_one_letter() {
            tap("shift", "a", "shift", "b", "c")
            compare(line.text, "aBc")
        }
        function test_figures_and_marks() {
            tap("q", "1", "0", "'", ",", "space", ".")
            compare(line.text, "Q10', .")
        }
        function test_selected_text_is_replaced() {
            line.text = "Helper 2"
            line.selectAll()
            tap("b", "o")
            compare(line.text, "Bo")
            line.selectAll()
            tap("erase")
            compare(line.text, "")
            tap("erase")
            compare(line.text, "")
        }
        function test_letters_go_where_the_cursor_is() {
            line.text = "Cai"
            line.cursorPosition = 1
            tap("h")
            compare(line.text, "Chai")
            tap("erase")
            compare(line.text, "Cai")
            compare(line.cursorPosition, 1)
        }
        function test_erase_goes_on_while_held() {
            line.text = "Lantern Walk"
            const key = keyOf(pad, "erase")
            mousePress(key)
            tryCompare(line, "text", "", 3000)
            mouseRelease(key)
        }
        function test_as_many_letters_as_fit_the_field() {
            for (let i = 0; i < 25; ++i)
                tap("x")
            compare(line.text.length, 20)
        }
        function test_german_has_its_own_letters() {
            verify(!keyOf(pad, "ß"))
            lay("de", 800)
            tap("ü", "ß", "ä", "space", "ö")
            compare(line.text, "Üßä Ö")
        }
        function test_taken_by_its_key() {
            tap("take")
            compare(accepted.count, 1)
        }
        function test_every_key_is_a_finger_wide_data() {
            const out = []
            for (const width of [410, 540, 560, 620, 800, 900])
                for (const language of ["en", "de"])
                    out.push({tag: language + " " + width, width: width, language: language})
            return out
        }
        function test_every_key_is_a_finger_wide(data) {
            lay(data.language, data.width)
            const all = keys(pad, [])
            const names = all.map(key => key.name)
            const letters = "abcdefghijklmnopqrstuvwxyz0123456789-',." + (data.language === "de" ? "äöüß" : "")
            for (const letter of letters)
                compare(names.filter(name => name === letter).length, 1, letter)
            for (const name of ["shift", "erase", "space", "take"])
                verify(names.includes(name), name)
            for (const key of all) {
                const at = key.mapToItem(pad, 0, 0)
                verify(key.width >= 12 * Theme.density - 0.5, key.name + " is " + key.width + " wide")
                verify(key.height >= 12 * Theme.density - 0.5, key.name + " is " + key.height + " high")
                verify(at.x >= 0 && at.x + key.width <= pad.width - pad.between, key.name + " lies beside the pad")
                verify(key.Accessible.name !== "", key.name)
            }
        }
    }
}
