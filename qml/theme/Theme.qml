pragma Singleton

import QtQuick

// Every size, colour and typeface of the screen. Sizes are millimetres turned into pixels by the
// density, because a finger and an eye are measured in millimetres.
QtObject {
    id: theme

    // Set by the window from what the person chose.
    property real density: 4
    property real distance: 1000
    property real textScale: 1
    property bool dark: false
    property bool highContrast: false // black on white, or the other way where dark too
    property bool still: false // nothing moves or fades

    // A capital letter is about 0.714 of the type size (the face's own figure).
    readonly property real capital: 0.714
    // 20 arc minutes at the table (ISO 9241-303 prefers 20 to 22); tan of it is 0.005818.
    readonly property real tableText: Math.round(theme.distance * 0.005818 / theme.capital * theme.density)
    // In the hand, at about half a metre: 16 arc minutes, the least of the same standard.
    readonly property real usual: 500 * 0.004654 / theme.capital * theme.density
    readonly property real text: Math.max(15, Math.round(theme.usual * theme.textScale))
    readonly property real small: Math.max(13, Math.round(theme.text * 0.86))
    // Headings stand out by as much whatever the scale: they need not grow as letters do.
    readonly property real large: Math.round(theme.text + 0.3 * Math.max(15, theme.usual))
    readonly property real title: Math.round(theme.text + 0.6 * Math.max(15, theme.usual))
    // Where it is missing the system puts its own nearest face.
    readonly property string family: "Noto Sans"

    readonly property real target: Math.ceil(12 * theme.density)
    readonly property real tableTarget: Math.ceil(20 * theme.density)
    readonly property real gap: Math.round(2 * theme.density)
    readonly property real space: Math.round(4 * theme.density)
    readonly property real radius: Math.round(1.4 * theme.density)
    readonly property real line: theme.highContrast ? Math.max(2, Math.round(0.45 * theme.density))
                                                    : Math.max(1, Math.round(0.3 * theme.density))

    function pick(light: color, dark: color, contrast: color, contrastDark: color): color {
        return theme.highContrast ? (theme.dark ? contrastDark : contrast) : theme.dark ? dark : light
    }

    readonly property color ground: theme.pick("#f6f2ea", "#11171c", "#ffffff", "#000000")
    readonly property color paper: theme.pick("#fffdf9", "#1c252c", "#ffffff", "#000000")
    readonly property color ink: theme.pick("#14212b", "#f5f1e8", "#000000", "#ffffff")
    readonly property color quiet: theme.pick("#38454f", "#c6ced4", "#000000", "#ffffff")
    readonly property color edge: theme.pick("#bdb4a3", "#4a5761", "#000000", "#ffffff")
    readonly property color frame: theme.pick("#8a8172", "#75838e", "#000000", "#ffffff") // of what is tapped
    readonly property color strongEdge: theme.pick("#38454f", "#c6ced4", "#000000", "#ffffff")
    readonly property color accent: theme.pick("#004a78", "#8cc9f0", "#00208f", "#a8d8ff")
    readonly property color accentInk: theme.pick("#ffffff", "#0b1a26", "#ffffff", "#000000")
    readonly property color soft: theme.pick("#dbe8f1", "#203444", "#dcdcdc", "#383838")
    readonly property color done: theme.pick("#c6e8dc", "#19513f", "#ffffff", "#000000")
    readonly property color doneMark: theme.pick("#005c43", "#007a58", "#000000", "#000000")
    readonly property color open: theme.pick("#fbeeb0", "#53480f", "#ffffff", "#000000")
    readonly property color warn: theme.pick("#fbeeb0", "#53480f", "#ffffff", "#000000")
    // What is said now, and nothing else; the ink on it is dark, whatever the theme.
    readonly property color now: theme.pick("#f7d774", "#f0c94a", "#ffe94a", "#ffe94a")
    readonly property color nowInk: theme.pick("#14212b", "#14212b", "#000000", "#000000")
    readonly property color stop: theme.pick("#fbdccb", "#5c2410", "#ffffff", "#000000")

    readonly property color table: theme.pick("#e2cda9", "#5d4c35", "#ffffff", "#000000")
    readonly property color tableLine: theme.pick("#6b4d20", "#d9c39b", "#000000", "#ffffff")
    readonly property color backing: theme.pick("#b9cfdd", "#39505f", "#d8d8d8", "#3c3c3c")
    readonly property color batting: theme.pick("#f4efe2", "#54514a", "#ffffff", "#000000")
    readonly property color cloth: theme.pick("#ffffff", "#2a3945", "#ffffff", "#000000")
    readonly property color patch: theme.pick("#a9cbe2", "#3f6f92", "#d8d8d8", "#3c3c3c")
    readonly property color seam: theme.pick("#93a3ae", "#7d8c97", "#5c5c5c", "#c4c4c4")
    readonly property color fresh: theme.pick("#fcefa6", "#655713", "#ffe94a", "#5a4b00")
    readonly property color hatch: theme.pick("#00725a", "#6cc4a6", "#00594a", "#7fe0c0")

    readonly property int calm: theme.still ? 0 : 320
}
