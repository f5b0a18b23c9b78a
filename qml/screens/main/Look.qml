import QtQuick
import Bastewright.Theme
import Bastewright.View

// Carries how this person reads best into the tokens; one in each window.
Item {
    id: look

    required property Comfort comfort
    property bool dark: comfort.dark
    property bool highContrast: comfort.highContrast
    property bool still: false

    Binding { target: Theme; property: "density"; value: look.comfort.density }
    Binding { target: Theme; property: "distance"; value: look.comfort.distance }
    Binding { target: Theme; property: "textScale"; value: look.comfort.textScale }
    Binding { target: Theme; property: "dark"; value: look.dark }
    Binding { target: Theme; property: "highContrast"; value: look.highContrast }
    Binding { target: Theme; property: "twelveHours"; value: look.comfort.twelveHours }
    Binding { target: Theme; property: "still"; value: look.still }
}
