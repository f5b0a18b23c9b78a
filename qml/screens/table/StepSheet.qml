pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Quilt
import Bastewright.Theme
import Bastewright.View

// The next step in full, read from where one stands: how the quilt lies before and after, what is
// done in order, what to compare, and what has to be answered before the pass is let go.
Sheet {
    id: sheet

    required property StepCard card
    required property TableBoard board

    objectName: "stepSheet"
    atTable: true
    title: card.title
    width: parent ? parent.width - 2 * Theme.gap : 0

    component Told: TableWords {
        width: parent.width
        lineHeightMode: Text.FixedHeight
        lineHeight: Theme.tableText * 1.15
    }
    component Lie: Column {
        id: lie

        property string label: ""
        property int pass: 1

        spacing: Theme.gap / 2

        QuiltPicture {
            width: parent.width
            height: Math.min(width * 0.75, (sheet.parent ? sheet.parent.height : 0) * 0.45)
            tappable: false
            points: false
            figures: false
            quilt: sheet.card.quilt
            pass: lie.pass
        }
        TableWords {
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            text: lie.label
        }
    }

    HoldsPicture {
        width: parent.width
        height: Math.max(10 * Theme.tableText, (sheet.parent ? sheet.parent.height : 0) * 0.5)
        visible: sheet.card.rounds.length > 0
        card: sheet.card
    }
    Row {
        width: parent.width
        visible: sheet.card.moves
        spacing: Theme.gap

        Lie {
            width: (parent.width - parent.spacing) / 2
            label: qsTr("Now")
            pass: Math.max(1, sheet.card.pass - 1)
        }
        Lie {
            width: (parent.width - parent.spacing) / 2
            label: qsTr("After")
            pass: sheet.card.pass
        }
    }
    Repeater {
        model: sheet.card.lines

        Told {
            required property string modelData
            required property int index

            text: qsTr("%1  %2").arg(index + 1).arg(modelData)
        }
    }
    Told {
        visible: text !== ""
        text: sheet.card.how
    }
    Told {
        visible: text !== ""
        text: sheet.card.caution
        font.bold: true
    }
    Repeater {
        model: sheet.card.checks

        CheckQuestion {
            width: sheet.availableWidth
            onAnswered: yes => sheet.card.answer(check, yes)
        }
    }
    Told {
        visible: sheet.card.toRedo.length > 0
        text: qsTr("Where? What is tapped has to be closed once more.")
        font.bold: true
    }
    Flow {
        width: parent.width
        visible: sheet.card.toRedo.length > 0
        spacing: Theme.gap

        Repeater {
            model: sheet.card.toRedo

            TablePress {
                required property string modelData

                objectName: "redo-" + modelData
                text: modelData.slice(modelData.lastIndexOf(".") + 1)
                Accessible.name: qsTr("%1 has to be done again").arg(text)
                onClicked: sheet.card.redo(modelData)
            }
        }
    }
    SidesToCompare {
        width: parent.width
        visible: sheet.card.sides.count > 0
        card: sheet.card
    }
    TablePress {
        width: parent.width
        objectName: "stepSheetDone"
        main: enabled
        enabled: sheet.board.stepReady && !sheet.card.asks
        glyph: "check"
        text: sheet.card.asks ? qsTr("Answer all of them first") : qsTr("Done")
        onClicked: {
            sheet.close()
            sheet.board.doStep()
        }
    }
}
