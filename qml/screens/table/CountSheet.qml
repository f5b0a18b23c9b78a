pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Pins: in the box, in the quilt, back in the box. What is lost, only a count of the box tells.
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

            Repeater {
                model: sheet.live.pinsLines

                TableWords {
                    required property string modelData

                    width: parent.width
                    text: modelData
                }
            }
            TablePress {
                width: parent.width
                objectName: "pinsBack"
                main: true
                text: qsTr("Add to returned")
                enabled: parseInt(pad.text) > 0
                onClicked: sheet.back()
            }
            TablePress {
                width: parent.width
                objectName: "pinsFound"
                text: qsTr("Add found pins")
                enabled: parseInt(pad.text) > 0
                onClicked: {
                    sheet.live.pinsFound(parseInt(pad.text))
                    pad.begin("")
                }
            }
            TablePress {
                width: parent.width
                objectName: "pinsInBox"
                text: pad.text === "" ? qsTr("So many are in the box now") : qsTr("%1 are in the box now").arg(pad.text)
                enabled: pad.text !== "" && parseInt(pad.text) >= 0
                onClicked: {
                    sheet.live.pinsInBox(parseInt(pad.text))
                    if (sheet.live.pinsNotice === "")
                        sheet.close()
                    else
                        pad.begin("")
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
