pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What has changed? Each answer leads to a card that shows before and after.
Sheet {
    id: sheet

    required property Workroom room

    // "", or the question that is open: "comes", "goes", "swap", "for", "hours", "until", "pins" or "night"
    property string page: ""
    property string leaving: ""

    readonly property ChangeDesk desk: room.desk

    objectName: "changesSheet"
    atTable: true
    title: page === "comes" ? qsTr("Who comes?") : page === "goes" ? qsTr("Who leaves?")
        : page === "swap" ? qsTr("Who leaves?") : page === "for" ? qsTr("Who comes for %1?").arg(leaving)
        : page === "hours" ? qsTr("Whose hours?") : page === "until" ? qsTr("Until when is %1 here?").arg(leaving)
        : page === "pins" ? qsTr("How many pins?") : qsTr("What has changed?")
    onAboutToShow: {
        page = ""
        pad.begin("")
    }

    function chosen(person: string) {
        if (page === "swap") {
            leaving = person
            page = "for"
            return
        }
        if (page === "hours") {
            leaving = person
            page = "until"
            pad.begin("")
            return
        }
        close()
        if (page === "comes")
            desk.comes(person)
        else if (page === "goes")
            desk.goes(person)
        else
            desk.swaps(leaving, person)
    }

    ChoiceGrid {
        width: parent.width
        visible: sheet.page === ""

        GridChoice {
            objectName: "beginNow"
            visible: sheet.room.live.lateMinutes > 0
            glyph: "clock"
            text: qsTr("Begin now")
            onClicked: {
                sheet.close()
                sheet.desk.beginsNow()
            }
        }
        GridChoice { objectName: "someComes"; glyph: "plus"; text: qsTr("Somebody comes"); onClicked: sheet.page = "comes" }
        GridChoice { objectName: "someGoes"; glyph: "minus"; text: qsTr("Somebody leaves"); onClicked: sheet.page = "goes" }
        GridChoice { objectName: "someHours"; glyph: "clock"; text: qsTr("Somebody's hours"); onClicked: sheet.page = "hours" }
        GridChoice { glyph: "swap"; text: qsTr("Swap a helper"); onClicked: sheet.page = "swap" }
        GridChoice { objectName: "pinsChanged"; visible: sheet.room.live.withPins; glyph: "pin"; text: qsTr("Pins"); onClicked: sheet.page = "pins" }
        GridChoice { objectName: "ironMore"; visible: sheet.room.live.withIrons; text: qsTr("Add an iron"); onClicked: { sheet.close(); sheet.desk.irons(1) } }
        GridChoice { objectName: "ironLess"; visible: sheet.room.live.withIrons; text: qsTr("Take an iron away"); onClicked: { sheet.close(); sheet.desk.irons(-1) } }
        GridChoice { objectName: "tableMore"; glyph: "table"; text: qsTr("Add a table"); onClicked: { sheet.close(); sheet.desk.tables(1) } }
        GridChoice { objectName: "tableLess"; glyph: "table"; text: qsTr("Take a table away"); onClicked: { sheet.close(); sheet.desk.tables(-1) } }
        GridChoice {
            glyph: "cross"
            text: qsTr("Leave the rest of this pass")
            onClicked: {
                sheet.close()
                sheet.desk.abandonPass(sheet.room.board.quilt)
            }
        }
        GridChoice {
            objectName: "overnight"
            glyph: sheet.room.live.paused ? "start" : "pause"
            text: sheet.room.live.paused ? qsTr("Resume") : qsTr("Stop for today")
            onClicked: {
                if (!sheet.room.live.paused) {
                    sheet.page = "night"
                    return
                }
                sheet.close()
                sheet.desk.goOn()
            }
        }
        GridChoice { glyph: "clock"; text: qsTr("Plan the rest again"); onClicked: { sheet.close(); sheet.desk.planAgain() } }
    }
    Repeater {
        model: sheet.page === "" || sheet.page === "pins" || sheet.page === "night" || sheet.page === "until" ? null : sheet.room.live.people

        TablePress {
            required property string name
            required property bool present

            objectName: "person-" + name
            width: sheet.availableWidth
            visible: (sheet.page === "goes" || sheet.page === "swap" || sheet.page === "hours") === present
            glyph: "person"
            text: name
            onClicked: sheet.chosen(name)
        }
    }
    WordsField {
        id: guestName

        objectName: "guestName"
        width: parent.width
        visible: sheet.page === "comes"
        least: Theme.tableTarget
        size: Theme.tableText
        maximumLength: 40
        placeholderText: qsTr("A guest's name")
        Accessible.name: placeholderText
    }
    TablePress {
        width: parent.width
        objectName: "guest"
        visible: sheet.page === "comes"
        glyph: "plus"
        text: guestName.text.trim() === "" ? qsTr("A guest") : qsTr("%1 comes as a guest").arg(guestName.text.trim())
        onClicked: {
            const called = guestName.text
            guestName.clear()
            sheet.close()
            sheet.desk.guestComes(called)
        }
    }
    TableWords {
        width: parent.width
        visible: sheet.page === "night"
        text: sheet.room.live.nightText
    }
    TablePress {
        width: parent.width
        objectName: "pauseNow"
        visible: sheet.page === "night"
        main: true
        glyph: "pause"
        text: qsTr("Stop for today")
        onClicked: {
            sheet.close()
            sheet.room.live.setPaused(true)
        }
    }
    NumberPad {
        id: pad

        width: parent.width
        visible: sheet.page === "pins" || sheet.page === "until"
        mode: sheet.page === "until" ? "time" : "count"
        least: Theme.tableTarget
        size: Theme.tableText
    }
    TablePress {
        width: parent.width
        objectName: "leavesAt"
        visible: sheet.page === "until"
        enabled: pad.text !== ""
        text: pad.text === "" ? qsTr("Leaves then") : qsTr("Leaves at %1").arg(pad.text)
        onClicked: {
            sheet.close()
            sheet.desk.leavesAt(sheet.leaving, pad.text)
        }
    }
    TablePress {
        width: parent.width
        visible: sheet.page === "until"
        text: qsTr("Stays to the end")
        onClicked: {
            sheet.close()
            sheet.desk.leavesAt(sheet.leaving, "")
        }
    }
    TablePress {
        width: parent.width
        objectName: "pinsLess"
        visible: sheet.page === "pins"
        enabled: parseInt(pad.text) > 0
        text: qsTr("Short by this many")
        onClicked: {
            sheet.close()
            sheet.desk.pins(-parseInt(pad.text))
        }
    }
    TablePress {
        width: parent.width
        objectName: "pinsMore"
        visible: sheet.page === "pins"
        enabled: parseInt(pad.text) > 0
        text: qsTr("This many more are here")
        onClicked: {
            sheet.close()
            sheet.desk.pins(parseInt(pad.text))
        }
    }
}
