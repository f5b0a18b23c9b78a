import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The one step of the whole pass that comes next: who, what, and the caution that belongs to it, or
// what is left. What is held (the release of a pass, the end) stands where no button was before.
Item {
    id: bar

    required property TableBoard board
    required property StepCard card

    property bool brief: false // the step alone
    property bool named: true // with who does it

    readonly property bool over: board.finished && !board.stepReady // the session has ended
    readonly property bool wide: width > 24 * Theme.tableText
    readonly property real between: Theme.gap * 0.5
    readonly property real aside: wide ? Math.round(width * 0.4) : width // for words and what is held
    readonly property real beside: wide ? width - aside - Theme.gap : width

    signal countWanted
    signal stepWanted // it has questions, or more is to be read

    // Not a layout: its words wrap, and the device is turned.
    implicitHeight: wide ? Math.max(told.shown ? told.height : 0, hold.visible ? hold.height : 0, acts.height)
                         : acts.height + (told.shown ? told.height + between : 0)
                           + (hold.visible ? hold.height + between : 0)

    TableWords {
        id: told

        readonly property bool shown: text !== "" && !bar.brief && !(hold.visible && bar.wide)

        anchors.left: parent.left
        y: bar.wide ? (bar.height - height) / 2 : hold.visible ? hold.height + bar.between : 0
        width: bar.aside
        visible: shown
        text: bar.over ? bar.board.stepText : bar.board.caution
        color: Theme.quiet
        lineHeightMode: Text.FixedHeight
        lineHeight: Theme.tableText * 1.12
    }
    HoldPress {
        id: hold

        objectName: "holdStep"
        anchors.left: parent.left
        y: bar.wide ? (bar.height - height) / 2 : 0
        width: bar.aside
        visible: bar.board.stepHeld && bar.board.stepReady
        text: bar.board.stepText
        onHeld: bar.board.doStep()
    }
    Item {
        id: acts

        readonly property real row: Math.max(step.visible ? step.height : 0, how.visible ? how.height : 0,
                                             bar.wide && count.visible ? count.height : 0)

        anchors.right: parent.right
        anchors.bottom: parent.bottom
        width: bar.beside
        height: row + (count.visible && !bar.wide ? count.height + (row > 0 ? bar.between : 0) : 0)

        TablePress {
            id: step

            objectName: "step"
            anchors.left: parent.left
            width: parent.width - (how.visible ? how.width + Theme.gap : 0)
                   - (bar.wide && count.visible ? count.width + Theme.gap : 0)
            visible: !hold.visible && !bar.over
            main: bar.board.stepReady
            enabled: bar.board.stepReady || bar.board.stepAsksAgain
            glyph: "check"
            text: bar.board.stepWho === "" || !bar.named ? bar.board.stepText
                                           : qsTr("%1 · %2").arg(bar.board.stepText).arg(bar.board.stepWho)
            onClicked: {
                if (bar.card.asks)
                    bar.stepWanted()
                else
                    bar.board.doStep()
            }
        }
        TablePress {
            id: how

            objectName: "stepHow"
            anchors.right: parent.right
            anchors.rightMargin: bar.wide && count.visible ? count.width + Theme.gap : 0
            y: (acts.row - height) / 2
            visible: bar.card.known
            glyph: "note"
            Accessible.name: qsTr("How: %1").arg(bar.board.stepText)
            onClicked: bar.stepWanted()
        }
        TablePress {
            id: count

            objectName: "countBack"
            anchors.right: parent.right
            y: bar.wide ? (acts.row - height) / 2 : acts.row + (acts.row > 0 ? bar.between : 0)
            width: bar.wide ? implicitWidth : parent.width
            visible: bar.board.pinsToCount
            glyph: "pin"
            text: qsTr("Count pins")
            onClicked: bar.countWanted()
        }
    }
}
