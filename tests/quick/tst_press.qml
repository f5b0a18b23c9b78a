import QtQuick
import QtTest
import Bastewright.Parts
import Bastewright.Theme

Item {
    width: 500
    height: 300
    visible: true

    Press {
        id: press

        text: "Go on"
        glyph: "start"
    }
    Press {
        id: narrow

        y: 100
        width: 90
        text: "A longer word or two"
    }
    SignalSpy {
        id: clicked

        target: press
        signalName: "clicked"
    }

    TestCase {
        name: "Press"
        when: windowShown

        function init() {
            failOnWarning(/.*/)
            clicked.clear()
        }
        function test_finger() {
            const touch = touchEvent(press)
            touch.press(0, press, 10, 10).commit()
            touch.release(0, press, 10, 10).commit()
            compare(clicked.count, 1)
        }
        function test_keys_data() {
            return [{tag: "space", key: Qt.Key_Space}, {tag: "return", key: Qt.Key_Return},
                    {tag: "enter", key: Qt.Key_Enter}]
        }
        function test_keys(data) {
            press.forceActiveFocus()
            keyClick(data.key)
            compare(clicked.count, 1)
        }
        function test_disabled_does_nothing() {
            press.enabled = false
            mouseClick(press)
            press.enabled = true
            compare(clicked.count, 0)
        }
        function test_grows_with_wrapped_words() {
            verify(narrow.height > press.height)
        }
        function test_is_never_smaller_than_a_finger() {
            verify(press.width >= 12 * Theme.density)
            verify(press.height >= 12 * Theme.density)
        }
    }
}
