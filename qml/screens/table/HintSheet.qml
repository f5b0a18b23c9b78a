pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What is worth knowing, the most useful first; what has been read is put away.
Sheet {
    id: sheet

    required property LiveController live
    required property ChangeDesk desk

    objectName: "hintSheet"
    atTable: true
    title: qsTr("Worth knowing")

    TableWords {
        width: parent.width
        visible: sheet.live.hints.count === 0
        text: qsTr("Nothing more.")
    }
    Repeater {
        model: sheet.live.hints

        Column {
            id: hint

            required property string key
            required property string words
            required property bool pins
            required property int index

            width: sheet.availableWidth
            spacing: Theme.gap / 2

            TableWords {
                width: parent.width
                text: hint.words
            }
            TablePress {
                objectName: "pinsHelp"
                visible: hint.pins
                glyph: "pin"
                text: qsTr("See what helps")
                onClicked: {
                    sheet.close()
                    sheet.desk.pins(0)
                }
            }
            TablePress {
                objectName: "putAway-" + hint.index
                text: qsTr("Put away")
                Accessible.name: qsTr("Put away: %1").arg(hint.words)
                onClicked: sheet.live.putAway(hint.key)
            }
        }
    }
}
