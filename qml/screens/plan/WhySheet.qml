pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Why a figure is what it is, in two storeys: one sentence for anybody and the trade's reason; below,
// small, how it is worked out, from what, the best possible, and where the rule comes from.
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
    Words {
        width: parent.width
        objectName: "whyPlain"
        text: sheet.why.plain
    }
    Words {
        width: parent.width
        text: sheet.why.reason
        quiet: true
    }
    Hair {
        width: parent.width
    }
    Heading {
        width: parent.width
        text: qsTr("How it is worked out")
        font.pixelSize: Theme.small
        quiet: true
    }
    Repeater {
        model: [sheet.why.rule, sheet.why.bound]

        Words {
            required property string modelData

            width: parent ? parent.width : 0
            visible: modelData !== ""
            text: modelData
            font.pixelSize: Theme.small
        }
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
                font.pixelSize: Theme.small
                quiet: true
            }
            Words {
                width: input.column
                text: input.value
                font.pixelSize: Theme.small
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
