pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// For whoever leads: people were quicker than their ticks, or did it in another order. What is said
// here is taken as it is.
Sheet {
    id: sheet

    required property Workroom room

    property int minutes: 0
    property bool refused: false // something was tapped too early

    objectName: "otherwiseSheet"
    atTable: true
    title: qsTr("It was done otherwise")
    onAboutToShow: {
        minutes = 0
        refused = room.live.early
    }

    TableWords {
        width: parent.width
        visible: sheet.refused
        text: sheet.room.live.problem
    }
    TablePress {
        width: parent.width
        objectName: "allTheSame"
        visible: sheet.refused
        text: qsTr("It is done all the same")
        onClicked: {
            sheet.close()
            sheet.room.live.doneOtherwise()
        }
    }
    TableWords {
        width: parent.width
        text: qsTr("Everything of this pass is done, up to and with:")
    }
    ChoiceGrid {
        id: calls

        width: parent.width

        Repeater {
            model: sheet.room.board.callsAhead

            GridChoice {
                required property int call
                required property string name

                objectName: "upTo-" + call
                text: name
                onClicked: {
                    sheet.close()
                    sheet.room.live.doneUpTo(sheet.room.board.quilt, call, sheet.minutes)
                }
            }
        }
    }
    TableWords {
        width: parent.width
        text: qsTr("That was")
    }
    ChoiceGrid {
        width: parent.width

        Repeater {
            model: [0, 5, 10, 20, 40]

            GridChoice {
                required property int modelData

                objectName: "ago-" + modelData
                checked: sheet.minutes === modelData
                text: modelData === 0 ? qsTr("just now") : qsTr("%1 min ago").arg(modelData)
                onClicked: sheet.minutes = modelData
            }
        }
    }
}
