pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What a change would mean, before and after; nothing has happened until one of the two is tapped.
Sheet {
    id: card

    required property ChangeDesk desk

    readonly property real letters: atTable ? Theme.tableText : Theme.text
    readonly property real target: atTable ? Theme.tableTarget : Theme.target

    objectName: "changeCard"
    title: desk.title
    onClosed: {
        if (desk.open)
            desk.cancel()
    }

    Connections {
        target: card.desk
        function onChanged() {
            if (card.desk.open && !card.opened)
                card.open()
            else if (!card.desk.open && card.opened)
                card.close()
        }
    }
    Line {
        visible: card.desk.busy
        text: qsTr("Planning …")
    }
    Line {
        objectName: "refused"
        visible: text !== ""
        text: card.desk.refused
        font.bold: true
    }
    Line {
        objectName: "finishChange"
        visible: text !== "" && card.desk.sides.count === 0
        text: card.desk.finishText
        font.bold: true
    }
    Line {
        visible: text !== ""
        text: card.desk.meaning
    }
    // Before and after, side by side.
    Column {
        width: parent.width
        visible: card.desk.sides.count > 0

        Side { what: ""; before: qsTr("As it is"); after: qsTr("New plan"); head: true }
        Repeater {
            model: card.desk.sides

            Side {}
        }
    }
    GridLayout {
        objectName: "pinsChoices"
        width: parent.width
        visible: !card.desk.busy && card.desk.pinsShort
        columns: width > card.letters * 20 ? 3 : 1
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap

        Press {
            objectName: "widerRows"
            Layout.fillWidth: true
            text: qsTr("Wider rows")
            least: card.target
            size: card.letters
            onClicked: card.desk.widerRows()
        }
        Press {
            objectName: "dotsInstead"
            Layout.fillWidth: true
            text: qsTr("Some fuse dots")
            least: card.target
            size: card.letters
            onClicked: card.desk.dotsInstead()
        }
        Press {
            objectName: "fewerZones"
            Layout.fillWidth: true
            text: qsTr("Fewer zones today")
            least: card.target
            size: card.letters
            onClicked: card.desk.fewerZones()
        }
    }
    GridLayout {
        width: parent.width
        visible: !card.desk.busy
        columns: width > card.letters * 20 ? 2 : 1
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap

        Press {
            objectName: "acceptChange"
            Layout.fillWidth: true
            visible: card.desk.refused === ""
            main: true
            glyph: "check"
            text: qsTr("Use this plan")
            least: card.target
            size: card.letters
            onClicked: card.desk.accept()
        }
        Press {
            objectName: "keepPlan"
            Layout.fillWidth: true
            text: card.desk.refused !== "" && !card.desk.happened ? qsTr("Back") : qsTr("Keep the old plan")
            least: card.target
            size: card.letters
            onClicked: card.desk.keep()
        }
    }
    Repeater {
        model: card.desk.people

        Row {
            id: person

            required property string letter
            required property int mark
            required property string name
            required property string before
            required property string after
            required property bool differs

            width: card.availableWidth
            visible: differs
            spacing: Theme.gap

            PersonMark {
                width: card.letters * 1.3
                height: width
                letter: person.letter
                mark: person.mark
                family: Theme.family
            }
            Line {
                width: parent.width - card.letters * 1.3 - Theme.gap
                text: qsTr("%1: %2 instead of %3 at work").arg(person.name).arg(person.after).arg(person.before)
            }
        }
    }
    Repeater {
        model: card.desk.busy || card.desk.refused !== "" ? [] : card.desk.changes

        Line {
            required property string modelData

            text: modelData
            color: Theme.quiet
        }
    }
    Line {
        visible: text !== "" && card.desk.refused === ""
        text: card.desk.caution
    }
    component Line: Words {
        width: parent ? parent.width : 0
        font.pixelSize: card.letters
    }
    component Side: Row {
        id: side

        required property string what
        required property string before
        required property string after
        property bool head: false

        width: parent ? parent.width : 0
        spacing: Theme.gap

        Line { width: (side.width - 2 * Theme.gap) * 0.46; text: side.what; color: Theme.quiet }
        Line { width: (side.width - 2 * Theme.gap) * 0.27; text: side.before; color: Theme.quiet }
        Line {
            width: (side.width - 2 * Theme.gap) * 0.27
            text: side.after
            color: side.head ? Theme.quiet : Theme.ink
            font.bold: !side.head && side.before !== side.after
        }
    }
}
