import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The one step of the whole pass that comes next: who, what, and the caution that belongs to it.
Item {
    id: bar

    required property TableBoard board
    required property StepCard card

    property bool brief: false // the step alone

    readonly property bool wide: width > 24 * Theme.tableText
    readonly property real between: Theme.gap * 0.5

    signal countWanted
    signal stepWanted // it has questions, or more is to be read

    // Not a layout: its words wrap, and the device is turned.
    implicitHeight: wide ? Math.max(told.visible ? told.height : 0, acts.height)
                         : acts.height + (told.visible ? told.height + between : 0)

    TableWords {
        id: natural

        visible: false
        text: told.text
        wrapMode: Text.NoWrap
    }
    TableWords {
        id: told

        anchors.left: parent.left
        y: bar.wide ? (bar.height - height) / 2 : 0
        width: bar.wide ? Math.min(Math.ceil(natural.implicitWidth), bar.width * 0.44) : bar.width
        visible: text !== "" && !bar.brief
        text: bar.board.caution
        color: Theme.quiet
        lineHeightMode: Text.FixedHeight
        lineHeight: Theme.tableText * 1.12
    }
    Item {
        id: acts

        readonly property real row: Math.max(step.height, how.visible ? how.height : 0)

        anchors.right: parent.right
        anchors.bottom: parent.bottom
        width: bar.wide && told.visible ? bar.width - told.width - Theme.gap : bar.width
        height: row + (count.visible && !bar.wide ? count.height + bar.between : 0)

        TablePress {
            id: step

            objectName: "step"
            anchors.left: parent.left
            width: parent.width - (how.visible ? how.width + Theme.gap : 0)
                   - (bar.wide && count.visible ? count.width + Theme.gap : 0)
            main: bar.board.stepReady
            enabled: bar.board.stepReady
            glyph: "check"
            text: bar.board.stepWho === "" ? bar.board.stepText
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
            y: bar.wide ? (acts.row - height) / 2 : acts.row + bar.between
            width: bar.wide ? implicitWidth : parent.width
            visible: bar.board.finished
            glyph: "pin"
            text: qsTr("Count pins")
            onClicked: bar.countWanted()
        }
    }
}
