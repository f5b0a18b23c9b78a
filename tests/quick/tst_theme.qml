import QtQuick
import QtTest
import Bastewright.Theme

TestCase {
    name: "Theme"

    function init() {
        failOnWarning(/.*/)
        Theme.dark = false
        Theme.distance = 1000
        Theme.density = 4
    }
    function cleanup() {
        Theme.dark = false
    }

    // Relative luminance and contrast ratio as WCAG 2.2 defines them.
    function luminance(c) {
        const line = v => v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4)
        return 0.2126 * line(c.r) + 0.7152 * line(c.g) + 0.0722 * line(c.b)
    }
    function contrast(a, b) {
        const la = luminance(a), lb = luminance(b)
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05)
    }

    function test_contrast_of_text_data() {
        const rows = []
        for (const dark of [false, true])
            for (const ground of ["ground", "paper", "soft", "done", "open", "warn", "stop", "table"])
                rows.push({tag: (dark ? "dark " : "light ") + ground, dark: dark, ink: "ink", ground: ground})
        for (const dark of [false, true]) {
            rows.push({tag: (dark ? "dark" : "light") + " quiet on paper", dark: dark, ink: "quiet", ground: "paper"})
            rows.push({tag: (dark ? "dark" : "light") + " quiet on ground", dark: dark, ink: "quiet", ground: "ground"})
            rows.push({tag: (dark ? "dark" : "light") + " main button", dark: dark, ink: "accentInk", ground: "accent"})
        }
        return rows
    }
    // WCAG 2.2, 1.4.6 (AAA): 7 to 1.
    function test_contrast_of_text(data) {
        Theme.dark = data.dark
        const ratio = contrast(Theme[data.ink], Theme[data.ground])
        verify(ratio >= 7, ratio.toFixed(2))
    }
    // ISO 9241-303: 20 to 22 arc minutes preferred. A capital at 1 m is then 5.82 mm high.
    function test_text_at_the_table_data() {
        return [{tag: "0.5 m", distance: 500}, {tag: "1 m", distance: 1000}, {tag: "2 m", distance: 2000}]
    }
    function test_text_at_the_table(data) {
        Theme.distance = data.distance
        Theme.density = 8
        const capital = Theme.tableText * Theme.capital / Theme.density
        const minutes = Math.atan(capital / data.distance) * 180 / Math.PI * 60
        verify(minutes >= 19.8, minutes)
        verify(minutes < 22, minutes)
    }
    function test_targets() {
        Theme.density = 5.9
        verify(Theme.target >= 12 * 5.9)
        verify(Theme.tableTarget >= 20 * 5.9)
    }
}
