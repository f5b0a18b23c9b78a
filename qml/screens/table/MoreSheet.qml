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
    signal otherwiseWanted
    signal endWanted
    signal recordWanted

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
    ChoiceGrid {
        id: choices

        width: parent.width

        GridChoice {
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
        GridChoice {
            objectName: "otherwise"
            glyph: "check"
            text: qsTr("It was done otherwise")
            enabled: !sheet.room.live.ended && !sheet.room.live.paused
            onClicked: {
                sheet.close()
                sheet.otherwiseWanted()
            }
        }
        GridChoice {
            objectName: "showLanes"
            glyph: "lanes"
            text: qsTr("Everybody's turns")
            onClicked: {
                sheet.close()
                sheet.lanesWanted()
            }
        }
        GridChoice {
            objectName: "break"
            enabled: !sheet.room.live.ended
            glyph: sheet.room.live.paused ? "start" : "pause"
            text: sheet.room.live.paused ? qsTr("Resume") : qsTr("Break")
            onClicked: {
                sheet.room.live.setPaused(!sheet.room.live.paused)
                sheet.close()
            }
        }
        GridChoice {
            objectName: "faceToFace"
            glyph: "person"
            text: sheet.room.comfort.faceToFace ? qsTr("One view for all") : qsTr("Two people face to face")
            onClicked: {
                sheet.room.comfort.faceToFace = !sheet.room.comfort.faceToFace
                sheet.close()
            }
        }
        GridChoice {
            objectName: "turnPicture"
            glyph: "turn"
            text: qsTr("Turn the picture")
            onClicked: {
                sheet.room.comfort.turn += 1
                sheet.close()
            }
        }
        GridChoice {
            glyph: "redo"
            text: qsTr("Redo")
            enabled: sheet.room.live.canRedo
            onClicked: sheet.room.live.redo()
        }
        GridChoice {
            objectName: "countPins"
            visible: sheet.room.live.withPins
            glyph: "pin"
            text: qsTr("Count pins")
            onClicked: {
                sheet.close()
                sheet.countWanted()
            }
        }
        GridChoice {
            objectName: "showNotes"
            glyph: "write"
            text: qsTr("Notes")
            onClicked: {
                sheet.close()
                sheet.notesWanted()
            }
        }
        GridChoice {
            objectName: "showRecord"
            glyph: "sheet"
            text: qsTr("What was done")
            onClicked: {
                sheet.close()
                sheet.recordWanted()
            }
        }
        GridChoice {
            objectName: "moreSheets"
            glyph: "sheet"
            text: qsTr("Print")
            onClicked: {
                sheet.close()
                sheet.room.openSheets()
            }
        }
        GridChoice {
            objectName: "phones"
            glyph: "phone"
            text: qsTr("Follow on phones")
            onClicked: {
                sheet.close()
                sheet.phonesWanted()
            }
        }
        GridChoice {
            glyph: "eye"
            text: qsTr("Text and display")
            onClicked: {
                sheet.close()
                sheet.comfortWanted()
            }
        }
        GridChoice {
            objectName: "endSession"
            glyph: "stop"
            text: qsTr("End the session")
            enabled: !sheet.room.live.ended
            onClicked: {
                sheet.close()
                sheet.endWanted()
            }
        }
    }
}
