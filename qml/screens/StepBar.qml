import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The one step of the whole pass that comes next: who, what, and the caution that belongs to it.
GridLayout {
    id: bar

    required property TableBoard board
    required property StepCard card

    property bool brief: false // the step alone

    readonly property bool wide: width > 24 * Theme.tableText

    signal countWanted
    signal stepWanted // it has questions, or more is to be read

    columns: wide ? 4 : 2
    columnSpacing: Theme.gap
    rowSpacing: Theme.gap * 0.5

    TableWords {
        Layout.fillWidth: true
        Layout.columnSpan: bar.wide ? 1 : 2
        Layout.preferredWidth: bar.wide ? -1 : bar.width
        Layout.maximumWidth: bar.wide ? bar.width * 0.44 : bar.width
        visible: text !== "" && !bar.brief
        text: bar.board.caution
        color: Theme.quiet
        lineHeightMode: Text.FixedHeight
        lineHeight: Theme.tableText * 1.12
    }
    TablePress {
        objectName: "step"
        Layout.fillWidth: true
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
        objectName: "stepHow"
        visible: bar.card.known
        glyph: "note"
        Accessible.name: qsTr("How: %1").arg(bar.board.stepText)
        onClicked: bar.stepWanted()
    }
    TablePress {
        objectName: "countBack"
        Layout.fillWidth: !bar.wide
        Layout.columnSpan: bar.wide ? 1 : 2
        visible: bar.board.finished
        glyph: "pin"
        text: qsTr("Count pins")
        onClicked: bar.countWanted()
    }
}
