import QtQuick
import QtTest
import Bastewright.Parts
import Bastewright.Theme

Item {
    width: 500
    height: 600
    visible: true

    NumberPad {
        id: pad

        width: 480
        focus: true
    }
    SignalSpy {
        id: accepted

        target: pad
        signalName: "accepted"
    }

    TestCase {
        name: "NumberPad"
        when: windowShown

        function useMode(mode: string) {
            pad.mode = mode
            wait(50) // until the keys of this mode lie in their places
        }
        function init() {
            failOnWarning(/.*/)
            useMode("inch")
            pad.begin("")
            pad.forceActiveFocus()
            accepted.clear()
        }
        function keyOf(item, text) {
            if (item.modelData === text && item.visible)
                return item
            for (let i = 0; i < item.children.length; ++i) {
                const found = keyOf(item.children[i], text)
                if (found)
                    return found
            }
            return null
        }
        function tap(text) {
            const key = keyOf(pad, text)
            verify(key, "a key for " + text)
            mouseClick(key)
        }

        function test_inches_and_eighths_by_finger() {
            tap("1"); tap("2"); tap("⅜")
            compare(pad.text, "12⅜")
            tap("½")
            compare(pad.text, "12½")
            tap("<")
            compare(pad.text, "12")
        }
        function test_a_fraction_alone() {
            tap("¾")
            compare(pad.text, "¾")
        }
        function test_the_first_figure_replaces_what_stood_there() {
            pad.begin("88½\u00a0in")
            compare(pad.text, "88½")
            tap("9")
            compare(pad.text, "9")
        }
        function test_a_time_of_day() {
            useMode("time")
            tap("1"); tap("3"); tap("4"); tap("5")
            compare(pad.text, "13:45")
            tap("<")
            compare(pad.text, "1:34")
        }
        function test_a_time_with_am_and_pm() {
            Theme.twelveHours = true
            useMode("time")
            pad.begin("2:35\u00a0PM")
            compare(pad.text, "2:35 PM")
            tap("am")
            compare(pad.text, "2:35 AM")
            tap("am")
            tap("<"); tap("<")
            compare(pad.text, "2 PM")
            tap("1"); tap("5")
            compare(pad.text, "2:15 PM")
            Theme.twelveHours = false
        }
        function test_decimals_once() {
            useMode("number")
            tap("1"); tap("."); tap("5"); tap("."); tap("2")
            compare(pad.text, "1.52")
        }
        function test_keys_of_a_keyboard() {
            keyClick(Qt.Key_7)
            keyClick(Qt.Key_2)
            compare(pad.text, "72")
            keyClick(Qt.Key_Return)
            compare(accepted.count, 1)
        }
        function typeEightyEightAndAHalf() {
            for (const key of [Qt.Key_8, Qt.Key_8, Qt.Key_Space, Qt.Key_1, Qt.Key_Slash, Qt.Key_2])
                keyClick(key)
        }
        function test_a_fraction_by_keyboard() {
            typeEightyEightAndAHalf()
            compare(pad.text, "88 1/2")
            keyClick(Qt.Key_Backspace)
            compare(pad.text, "88 1/")
            keyClick(Qt.Key_4)
            compare(pad.text, "88 1/4")
        }
        function test_a_tapped_fraction_replaces_a_typed_one() {
            typeEightyEightAndAHalf()
            tap("¾")
            compare(pad.text, "88¾")
            keyClick(Qt.Key_Backspace)
            compare(pad.text, "88")
        }
        function test_keys_are_wide_enough_for_a_finger() {
            const key = keyOf(pad, "7")
            verify(key.width >= 12 * Theme.density - 1)
            verify(key.height >= 12 * Theme.density - 1)
        }
    }
}
