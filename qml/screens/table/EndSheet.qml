import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Ending asks: what is open is said, and the button is held. It can be undone.
Sheet {
    id: sheet

    required property LiveController live

    objectName: "endSheet"
    atTable: true
    title: qsTr("End the session?")

    TableWords {
        width: parent.width
        text: sheet.live.openText
    }
    TableWords {
        width: parent.width
        color: Theme.quiet
        text: qsTr("The record is kept. Stop for today instead where the work goes on another day.")
    }
    HoldPress {
        objectName: "endNow"
        width: parent.width
        text: qsTr("End the session")
        onHeld: {
            sheet.close()
            sheet.live.end(true)
        }
    }
}
