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
    property bool still: false // nothing moves or fades

    // A capital letter is about 0.714 of the type size (the face's own figure).
    readonly property real capital: 0.714
    // 20 arc minutes at the table (ISO 9241-303 prefers 20 to 22); tan of it is 0.005818.
    readonly property real tableText: Math.round(theme.distance * 0.005818 / theme.capital * theme.density)
    // In the hand, at about half a metre: 16 arc minutes, the least of the same standard.
    readonly property real text: Math.max(15, Math.round(500 * 0.004654 / theme.capital * theme.density * theme.textScale))
    readonly property real small: Math.max(13, Math.round(theme.text * 0.86))
    readonly property real large: Math.round(theme.text * 1.3)
    readonly property real title: Math.round(theme.text * 1.6)
    // Where it is missing the system puts its own nearest face.
    readonly property string family: "Noto Sans"

    readonly property real target: Math.ceil(12 * theme.density)
    readonly property real tableTarget: Math.ceil(20 * theme.density)
    readonly property real gap: Math.round(2 * theme.density)
    readonly property real space: Math.round(4 * theme.density)
    readonly property real radius: Math.round(1.4 * theme.density)
    readonly property real line: Math.max(1, Math.round(0.3 * theme.density))

    readonly property color ground: theme.dark ? "#11171c" : "#f6f2ea"
    readonly property color paper: theme.dark ? "#1c252c" : "#fffdf9"
    readonly property color ink: theme.dark ? "#f5f1e8" : "#14212b"
    readonly property color quiet: theme.dark ? "#c6ced4" : "#38454f"
    readonly property color edge: theme.dark ? "#4a5761" : "#bdb4a3"
    readonly property color strongEdge: theme.dark ? "#c6ced4" : "#38454f"
    readonly property color accent: theme.dark ? "#8cc9f0" : "#004a78"
    readonly property color accentInk: theme.dark ? "#0b1a26" : "#ffffff"
    readonly property color soft: theme.dark ? "#203444" : "#dbe8f1"
    readonly property color done: theme.dark ? "#19513f" : "#c6e8dc"
    readonly property color doneMark: theme.dark ? "#007a58" : "#005c43"
    readonly property color open: theme.dark ? "#53480f" : "#fbeeb0"
    readonly property color warn: theme.dark ? "#53480f" : "#fbeeb0"
    readonly property color stop: theme.dark ? "#5c2410" : "#fbdccb"

    readonly property color table: theme.dark ? "#5d4c35" : "#e2cda9"
    readonly property color tableLine: theme.dark ? "#d9c39b" : "#6b4d20"
    readonly property color backing: theme.dark ? "#39505f" : "#b9cfdd"
    readonly property color batting: theme.dark ? "#54514a" : "#f4efe2"
    readonly property color cloth: theme.dark ? "#2a3945" : "#ffffff"
    readonly property color patch: theme.dark ? "#3f6f92" : "#a9cbe2"
    readonly property color seam: theme.dark ? "#7d8c97" : "#93a3ae"
    readonly property color fresh: theme.dark ? "#655713" : "#fcefa6"
    readonly property color hatch: theme.dark ? "#6cc4a6" : "#00725a"

    readonly property int quick: theme.still ? 0 : 140
    readonly property int calm: theme.still ? 0 : 320
}
