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

    TableWords {
        width: parent.width
        visible: text !== ""
        text: sheet.live.pinsText
    }
    TableWords {
        width: parent.width
        visible: text !== ""
        text: sheet.live.pinsNotice
    }
    NumberPad {
        id: pad

        width: parent.width
        mode: "count"
        least: Theme.tableTarget
        size: Theme.tableText
        onAccepted: sheet.back()
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
        text: qsTr("Found, more than we had")
        enabled: parseInt(pad.text) > 0
        onClicked: {
            sheet.live.pinsFound(parseInt(pad.text))
            pad.begin("")
        }
    }
    TablePress {
        width: parent.width
        objectName: "pinsCounted"
        text: qsTr("That is all of them")
        onClicked: {
            sheet.live.pinsCounted()
            sheet.close()
        }
    }

    function back() {
        const counted = parseInt(pad.text)
        if (counted > 0)
            sheet.live.pinsBack(counted)
        pad.begin("")
    }
}
