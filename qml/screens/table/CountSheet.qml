import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Pins are counted out and counted back in.
Sheet {
    id: sheet

    required property LiveController live

    objectName: "countSheet"
    atTable: true
    title: qsTr("Pins")
    onOpened: {
        pad.begin("")
        pad.forceActiveFocus()
    }

    Grid {
        id: halves

        // Four keys abreast, each of a finger's size at the table.
        readonly property real keys: 4 * Theme.tableTarget + 3 * Theme.gap

        width: parent.width
        columns: width > keys * 1.9 ? 2 : 1
        spacing: Theme.gap

        NumberPad {
            id: pad

            width: halves.columns === 2 ? halves.keys : halves.width
            mode: "count"
            least: Theme.tableTarget
            size: Theme.tableText
            onAccepted: sheet.back()
        }
        Column {
            width: halves.columns === 2 ? halves.width - halves.keys - halves.spacing : halves.width
            spacing: Theme.gap

            TableWords {
                width: parent.width
                visible: text !== ""
                text: sheet.live.pinsText
            }
            TablePress {
                width: parent.width
                objectName: "pinsBack"
                main: true
                text: qsTr("Back in the box")
                enabled: parseInt(pad.text) > 0
                onClicked: sheet.back()
            }
            TablePress {
                width: parent.width
                text: qsTr("Found some more")
                enabled: parseInt(pad.text) > 0
                onClicked: {
                    sheet.live.pinsFound(parseInt(pad.text))
                    pad.begin("")
                }
            }
            TablePress {
                width: parent.width
                objectName: "pinsCounted"
                text: qsTr("That is all")
                onClicked: {
                    sheet.live.pinsCounted()
                    if (sheet.live.pinsNotice === "")
                        sheet.close()
                }
            }
        }
    }
    TableWords {
        width: parent.width
        visible: text !== ""
        text: sheet.live.pinsNotice
    }

    function back() {
        const counted = parseInt(pad.text)
        if (counted > 0)
            sheet.live.pinsBack(counted)
        pad.begin("")
    }
}
