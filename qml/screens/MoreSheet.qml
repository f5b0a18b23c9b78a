pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What is needed now and then during a session.
Sheet {
    id: sheet

    required property Workroom room

    signal comfortWanted
    signal phonesWanted
    signal countWanted
    signal lanesWanted
    signal changesWanted
    signal notesWanted

    objectName: "moreSheet"
    atTable: true
    title: room.live.title

    Repeater {
        model: sheet.room.board.quilts.length > 1 ? sheet.room.board.quilts : []

        TablePress {
            required property string modelData
            required property int index

            width: parent.width
            text: modelData
            checked: index === sheet.room.board.quilt
            onClicked: {
                sheet.room.board.quilt = index
                sheet.close()
            }
        }
    }
    GridLayout {
        id: choices

        width: parent.width
        columns: width > 18 * Theme.tableText ? 2 : 1
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap

        Choice {
            Layout.columnSpan: choices.columns
            objectName: "whatChanged"
            main: true
            glyph: "swap"
            text: qsTr("What has changed?")
            enabled: !sheet.room.live.ended
            onClicked: {
                sheet.close()
                sheet.changesWanted()
            }
        }
        Choice {
            objectName: "showLanes"
            glyph: "lanes"
            text: qsTr("Who, when")
            onClicked: {
                sheet.close()
                sheet.lanesWanted()
            }
        }
        Choice {
            glyph: sheet.room.live.paused ? "start" : "pause"
            text: sheet.room.live.paused ? qsTr("Go on") : qsTr("A break")
            onClicked: {
                sheet.room.live.setPaused(!sheet.room.live.paused)
                sheet.close()
            }
        }
        Choice {
            objectName: "faceToFace"
            glyph: "person"
            text: sheet.room.comfort.faceToFace ? qsTr("One view for all") : qsTr("Two people face to face")
            onClicked: {
                sheet.room.comfort.faceToFace = !sheet.room.comfort.faceToFace
                sheet.close()
            }
        }
        Choice {
            glyph: "redo"
            text: qsTr("Redo")
            enabled: sheet.room.live.canRedo
            onClicked: sheet.room.live.redo()
        }
        Choice {
            objectName: "countPins"
            glyph: "pin"
            text: qsTr("Count pins")
            onClicked: {
                sheet.close()
                sheet.countWanted()
            }
        }
        Choice {
            objectName: "showNotes"
            glyph: "write"
            text: qsTr("Notes")
            onClicked: {
                sheet.close()
                sheet.notesWanted()
            }
        }
        Choice {
            objectName: "moreSheets"
            glyph: "sheet"
            text: qsTr("Print")
            onClicked: {
                sheet.close()
                sheet.room.openSheets()
            }
        }
        Choice {
            objectName: "phones"
            glyph: "phone"
            text: qsTr("Phones follow")
            onClicked: {
                sheet.close()
                sheet.phonesWanted()
            }
        }
        Choice {
            glyph: "eye"
            text: qsTr("Reading comfort")
            onClicked: {
                sheet.close()
                sheet.comfortWanted()
            }
        }
        Choice {
            objectName: "endSession"
            glyph: "stop"
            text: qsTr("End the session")
            enabled: !sheet.room.live.ended
            onClicked: {
                sheet.room.live.end()
                sheet.close()
            }
        }
    }

    component Choice: TablePress {
        Layout.fillWidth: true
        Layout.fillHeight: true // as high as the one beside it
        Layout.preferredWidth: 1
    }
}
