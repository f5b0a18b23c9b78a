pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// How this person reads best on this device: language, distance, size of text, day or evening, and the true
// size of the screen, measured against a ruler or a bank card.
Sheet {
    id: sheet

    required property Comfort comfort
    required property Surroundings surroundings
    required property Letters letters

    title: qsTr("Text and display")
    objectName: "comfort"

    component Step: Row {
        id: step

        property string label: ""
        property string value: ""

        signal less
        signal more

        width: parent.width
        spacing: Theme.gap

        Words {
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width - minus.width - plus.width - shown.width - 3 * Theme.gap
            text: step.label
        }
        Press {
            id: minus

            anchors.verticalCenter: parent.verticalCenter
            glyph: "minus"
            Accessible.name: qsTr("%1: less").arg(step.label)
            onClicked: step.less()
        }
        Words {
            id: shown

            width: Math.max(22 * Theme.density, 6.5 * Theme.text)
            anchors.verticalCenter: parent.verticalCenter
            horizontalAlignment: Text.AlignHCenter
            text: step.value
            font.bold: true
        }
        Press {
            id: plus

            anchors.verticalCenter: parent.verticalCenter
            glyph: "plus"
            Accessible.name: qsTr("%1: more").arg(step.label)
            onClicked: step.more()
        }
    }

    Step {
        label: qsTr("From your eyes to the screen at the table")
        value: qsTr("%1 cm").arg(Math.round(sheet.comfort.distance / 10))
        onLess: sheet.comfort.distance -= 100
        onMore: sheet.comfort.distance += 100
    }
    Step {
        label: qsTr("Size of text elsewhere")
        value: qsTr("%1 %").arg(Math.round(sheet.comfort.textScale * 100))
        onLess: sheet.comfort.textScale -= 0.1
        onMore: sheet.comfort.textScale += 0.1
    }
    Grid {
        id: looks

        readonly property real part: (width - (columns - 1) * spacing) / columns

        function choose(dark: bool, highContrast: bool) {
            sheet.surroundings.asDevice = false
            sheet.comfort.dark = dark
            sheet.comfort.highContrast = highContrast
        }

        width: parent.width
        columns: 2
        spacing: Theme.gap

        Press {
            width: looks.part
            text: qsTr("Light")
            checked: !sheet.surroundings.asDevice && !sheet.comfort.dark && !sheet.comfort.highContrast
            onClicked: looks.choose(false, false)
        }
        Press {
            width: looks.part
            text: qsTr("Dark")
            checked: !sheet.surroundings.asDevice && sheet.comfort.dark && !sheet.comfort.highContrast
            onClicked: looks.choose(true, false)
        }
        Press {
            objectName: "highContrast"
            width: looks.part
            text: qsTr("High contrast")
            checked: !sheet.surroundings.asDevice && sheet.comfort.highContrast
            onClicked: looks.choose(false, true)
        }
        Press {
            width: looks.part
            text: qsTr("Same as device")
            checked: sheet.surroundings.asDevice
            onClicked: sheet.surroundings.asDevice = true
        }
    }
    Row {
        id: tongues

        width: parent.width
        spacing: Theme.gap

        Repeater {
            model: sheet.comfort.languages
            delegate: Press {
                required property string modelData

                width: (tongues.width - (sheet.comfort.languages.length - 1) * Theme.gap) / sheet.comfort.languages.length
                text: sheet.comfort.languageName(modelData)
                checked: sheet.comfort.language === modelData
                onClicked: sheet.comfort.language = modelData
            }
        }
    }
    Words {
        width: parent.width
        text: qsTr("On-screen keyboard")
    }
    Row {
        id: keys

        readonly property real part: (width - 2 * spacing) / 3

        width: parent.width
        spacing: Theme.gap

        Press {
            width: keys.part
            text: qsTr("As needed")
            Accessible.name: qsTr("On-screen keyboard: as needed")
            checked: sheet.letters.show === Letters.AsNeeded
            onClicked: sheet.letters.show = Letters.AsNeeded
        }
        Press {
            objectName: "lettersAlways"
            width: keys.part
            text: qsTr("Always")
            Accessible.name: qsTr("On-screen keyboard: always")
            checked: sheet.letters.show === Letters.Always
            onClicked: sheet.letters.show = Letters.Always
        }
        Press {
            width: keys.part
            text: qsTr("Never")
            Accessible.name: qsTr("On-screen keyboard: never")
            checked: sheet.letters.show === Letters.Never
            onClicked: sheet.letters.show = Letters.Never
        }
    }
    Toggle {
        label: qsTr("Whole screen (F11)")
        on: sheet.surroundings.wholeScreen
        onFlipped: sheet.surroundings.wholeScreen = !sheet.surroundings.wholeScreen
    }
    Toggle {
        label: qsTr("Light up the edge when the quilt may be moved")
        on: sheet.surroundings.edgeSign
        onFlipped: sheet.surroundings.edgeSign = !sheet.surroundings.edgeSign
    }
    Toggle {
        label: qsTr("Nothing moves or fades")
        on: sheet.surroundings.still
        onFlipped: sheet.surroundings.still = !sheet.surroundings.still
    }
    Words {
        width: parent.width
        text: qsTr("Hold a bank card (85.6 mm wide) against the bar and make them equal, so that buttons and letters have their true size.")
        quiet: true
    }
    Rectangle {
        width: Math.min(parent.width, 85.6 * Theme.density)
        height: Theme.gap * 2
        color: Theme.accent
    }
    Step {
        label: qsTr("Length of the bar")
        value: qsTr("%1 px/mm").arg(sheet.comfort.density.toFixed(1))
        onLess: sheet.comfort.density -= 0.1
        onMore: sheet.comfort.density += 0.1
    }
}
