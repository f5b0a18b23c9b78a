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
    property bool twelveHours: false // times have AM and PM
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
    // Where one is missing the system puts its own nearest face. The serif is for names of quilts.
    readonly property string family: "Noto Sans"
    readonly property string nameFamily: "Noto Serif"
    readonly property real figure: Math.round(theme.text * 2.5)

    readonly property real target: Math.ceil(12 * theme.density)
    readonly property real tableTarget: Math.ceil(20 * theme.density)
    readonly property real gap: Math.round(2 * theme.density)
    readonly property real space: Math.round(4 * theme.density)
    readonly property real radius: Math.round(1.8 * theme.density)
    readonly property real lipHeight: theme.highContrast ? 0 : Math.max(3, Math.round(0.85 * theme.density))
    readonly property real line: theme.highContrast ? Math.max(2, Math.round(0.45 * theme.density))
                                                    : Math.max(1, Math.round(0.3 * theme.density))

    function pick(light: color, dark: color, contrast: color, contrastDark: color): color {
        return theme.highContrast ? (theme.dark ? contrastDark : contrast) : theme.dark ? dark : light
    }

    // Ground is the flannel of a design wall, paper what is known; ink and quiet are 7 : 1 and more
    // on both.
    readonly property color ground: theme.pick("#d9dcd6", "#171a1f", "#ffffff", "#000000")
    readonly property color paper: theme.pick("#fbf9f3", "#20242b", "#ffffff", "#000000")
    readonly property color ink: theme.pick("#1b2130", "#f5f0e6", "#000000", "#ffffff")
    readonly property color quiet: theme.pick("#3c4251", "#c3c7d1", "#000000", "#ffffff")
    readonly property color hair: theme.pick("#cfc9ba", "#3a404b", "#000000", "#ffffff") // between groups
    readonly property color edge: theme.pick("#b9b6ab", "#4a505c", "#000000", "#ffffff")
    readonly property color frame: theme.pick("#7d7a70", "#848b98", "#000000", "#ffffff") // of what is tapped
    readonly property color strongEdge: theme.pick("#3c4251", "#c3c7d1", "#000000", "#ffffff")
    // What is pressed: raised, with a darker lip below; the one main thing is filled with indigo.
    readonly property color accent: theme.pick("#2b3c72", "#b4c3fb", "#00208f", "#a8d8ff")
    readonly property color accentInk: theme.pick("#ffffff", "#131a33", "#ffffff", "#000000")
    readonly property color accentLip: theme.pick("#18244b", "#7c8fd6", "#000000", "#ffffff")
    readonly property color raised: theme.pick("#ffffff", "#333946", "#ffffff", "#000000")
    readonly property color lip: theme.pick("#b1aea3", "#0e1014", "#000000", "#ffffff")
    readonly property color sunk: theme.pick("#ecebe4", "#191c22", "#ffffff", "#000000")
    readonly property color soft: theme.pick("#dfe4f2", "#2c3550", "#dcdcdc", "#383838")
    readonly property color done: theme.pick("#d6dfe4", "#26343d", "#ffffff", "#000000")
    readonly property color doneMark: theme.pick("#2b3c72", "#b4c3fb", "#000000", "#ffffff")
    readonly property color open: theme.pick("#ffffff", "#333946", "#ffffff", "#000000")
    // What is said now, and nothing else; the ink on it is dark, whatever the theme.
    readonly property color now: theme.pick("#f8c53a", "#f8c53a", "#ffe94a", "#ffe94a")
    readonly property color nowInk: theme.pick("#1b2130", "#1b2130", "#000000", "#000000")
    // Twill of the tags on cloth, the same in the dark; the ink on it is that of `now`.
    readonly property color tag: theme.pick("#fffdf6", "#fffdf6", "#ffffff", "#000000")
    readonly property color tagInk: theme.pick("#1b2130", "#1b2130", "#000000", "#ffffff")
    // A white tick stands on it, on tags and on paper.
    readonly property color tagMark: theme.pick("#2b3c72", "#2b3c72", "#000000", "#000000")
    // What to check first.
    readonly property color warnInk: theme.pick("#7a210a", "#ffb8a0", "#000000", "#ffffff")
    readonly property color warn: theme.pick("#f7e1d8", "#43261d", "#ffffff", "#000000")
    readonly property color stop: theme.pick("#f3d3c6", "#54271a", "#ffffff", "#000000")

    readonly property color wood: theme.pick("#d6ae7c", "#5f4729", "#ffffff", "#000000")
    readonly property color woodDark: theme.pick("#6f4c28", "#cbb08a", "#000000", "#ffffff")
    readonly property color backing: theme.pick("#a9c3c6", "#5b7a80", "#d8d8d8", "#3c3c3c")
    readonly property color batting: theme.pick("#f6f1e6", "#d9d2c3", "#ffffff", "#c8c8c8")

    readonly property int calm: theme.still ? 0 : 320
}
