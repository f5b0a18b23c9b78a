pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Why a figure is what it is: the rule, what it was worked out from, what is proven, the trade's
// reason, and where the rule comes from.
Sheet {
    id: sheet

    required property WhyDesk why

    function show(figure: string) {
        if (why.open(figure))
            open()
    }

    objectName: "whySheet"
    title: why.title

    Words {
        width: parent.width
        text: sheet.why.value
        font.pixelSize: Theme.title
        font.bold: true
    }
    Repeater {
        model: [
            {title: qsTr("The rule"), text: sheet.why.rule},
            {title: qsTr("The best possible"), text: sheet.why.bound},
            {title: qsTr("Why the trade does it so"), text: sheet.why.reason}
        ]

        Column {
            id: part

            required property var modelData

            width: parent ? parent.width : 0
            visible: modelData.text !== ""

            Heading {
                width: parent.width
                text: part.modelData.title
                font.pixelSize: Theme.text
                quiet: true
            }
            Words {
                width: parent.width
                text: part.modelData.text
            }
        }
    }
    Heading {
        width: parent.width
        text: qsTr("Worked out from")
        font.pixelSize: Theme.text
        quiet: true
    }
    Repeater {
        model: sheet.why.inputs

        Flow {
            id: input

            required property string label
            required property string value

            // Large letters have a line for each.
            readonly property real column: width < 24 * Theme.text ? width : Math.floor((width - Theme.gap) * 0.5)

            width: parent ? parent.width : 0
            spacing: Theme.gap

            Words {
                width: input.column
                text: input.label
            }
            Words {
                width: input.column
                text: input.value
                font.bold: true
            }
        }
    }
    Words {
        width: parent.width
        text: qsTr("Source: %1").arg(sheet.why.source)
        font.pixelSize: Theme.small
        quiet: true
    }
}
