import QtQuick

// As wide as they are on one line, and wrapped where that is wider than their place. Measured apart:
// what a text that wraps would like to be changes while it is laid out.
Words {
    id: words

    property real most: parent ? parent.width : 0

    width: Math.min(Math.ceil(line.advanceWidth) + 1, most)

    TextMetrics {
        id: line

        font: words.font
        text: words.text
    }
}
