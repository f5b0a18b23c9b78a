import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The one step of the whole pass that comes next: who, what, and the caution that belongs to it.
ColumnLayout {
    id: bar

    required property TableBoard board

    signal countWanted

    spacing: Theme.gap * 0.5

    TableWords {
        Layout.fillWidth: true
        visible: text !== ""
        text: bar.board.caution
        font.pixelSize: Theme.tableText
        color: Theme.quiet
    }
    RowLayout {
        Layout.fillWidth: true
        spacing: Theme.gap

        TablePress {
            objectName: "step"
            Layout.fillWidth: true
            Layout.preferredHeight: implicitHeight
            main: bar.board.stepReady
            enabled: bar.board.stepReady
            glyph: "check"
            text: bar.board.stepWho === "" ? bar.board.stepText
                                           : qsTr("%1 · %2").arg(bar.board.stepText).arg(bar.board.stepWho)
            onClicked: bar.board.doStep()
        }
        TablePress {
            objectName: "countBack"
            visible: bar.board.finished
            glyph: "pin"
            text: qsTr("Count pins")
            onClicked: bar.countWanted()
        }
    }
}
