import QtQuick
import QtTest
import Bastewright.Theme

TestCase {
    name: "Theme"

    function init() {
        failOnWarning(/.*/)
        light("light")
        Theme.distance = 1000
        Theme.density = 4
    }
    function cleanup() {
        light("light")
    }
    readonly property var lights: ["light", "dark", "high contrast", "high contrast dark"]

    function light(name) {
        Theme.dark = /dark/.test(name)
        Theme.highContrast = /contrast/.test(name)
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
        for (const name of lights) {
            for (const ground of ["ground", "paper", "soft", "done", "open", "warn", "stop", "wood", "raised", "sunk"])
                rows.push({tag: name + " " + ground, light: name, ink: "ink", ground: ground})
            rows.push({tag: name + " quiet on paper", light: name, ink: "quiet", ground: "paper"})
            rows.push({tag: name + " quiet on ground", light: name, ink: "quiet", ground: "ground"})
            rows.push({tag: name + " quiet on sunk", light: name, ink: "quiet", ground: "sunk"})
            rows.push({tag: name + " check first on paper", light: name, ink: "warnInk", ground: "paper"})
            rows.push({tag: name + " check first on its own", light: name, ink: "warnInk", ground: "warn"})
            rows.push({tag: name + " a tag on cloth", light: name, ink: "tagInk", ground: "tag"})
            rows.push({tag: name + " what is said now", light: name, ink: "nowInk", ground: "now"})
            rows.push({tag: name + " main button", light: name, ink: "accentInk", ground: "accent"})
        }
        return rows
    }
    // WCAG 2.2, 1.4.6 (AAA): 7 to 1.
    function test_contrast_of_text(data) {
        light(data.light)
        const ratio = contrast(Theme[data.ink], Theme[data.ground])
        verify(ratio >= 7, ratio.toFixed(2))
    }
    function test_contrast_of_marks_data() {
        const rows = []
        for (const name of lights)
            for (const [mark, grounds] of [["frame", ["ground", "paper", "soft"]], ["strongEdge", ["ground", "paper"]],
                                           ["accent", ["ground", "paper", "soft"]], ["woodDark", ["ground", "wood"]]])
                for (const ground of grounds)
                    rows.push({tag: name + " " + mark + " on " + ground, light: name, mark: mark, ground: ground})
        return rows
    }
    // WCAG 2.2, 1.4.11: 3 to 1; in high contrast as much as 1.4.3 asks of text.
    function test_contrast_of_marks(data) {
        light(data.light)
        const ratio = contrast(Theme[data.mark], Theme[data.ground])
        verify(ratio >= (/contrast/.test(data.light) ? 4.5 : 3), ratio.toFixed(2))
    }
    function test_high_contrast_is_on_pure_grounds_with_strong_frames() {
        for (const dark of [false, true]) {
            Theme.dark = dark
            Theme.highContrast = false
            const line = Theme.line
            Theme.highContrast = true
            const pure = dark ? "#000000" : "#ffffff"
            for (const ground of ["ground", "paper", "done", "open", "warn", "stop", "wood", "raised"])
                compare(Theme[ground].toString(), pure, ground)
            verify(Theme.line > line)
        }
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
