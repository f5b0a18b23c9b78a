pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Two people with the device flat between them: each half stands upright for the person on its
// side and shows the table as seen from there. What both need is in the middle.
ColumnLayout {
    id: both

    required property Workroom room

    signal moreWanted
    signal stepWanted

    // Room beside the button of the step for one that is held, where no button was before.
    readonly property real beside: width > 18 * Theme.tableTarget ? width * 0.3 : 0

    spacing: Theme.gap

    component Half: ColumnLayout {
        id: half

        required property TableBoard board
        readonly property bool roomy: both.height > 8 * Theme.tableTarget

        spacing: Theme.gap / 2

        TileBoard {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredHeight: 1 // not the height it began with
            board: half.board
            onTicked: zone => both.room.live.tick(half.board.quilt, zone)
            onTakenBack: zone => both.room.live.takeBack(half.board.quilt, zone)
        }
        TableWords {
            Layout.fillWidth: true
            horizontalAlignment: Text.AlignHCenter
            // Shrunk, not hidden: what comes back into a layout keeps the width it had.
            Layout.preferredHeight: half.roomy ? implicitHeight : 0
            opacity: half.roomy ? 1 : 0
            Accessible.ignored: !half.roomy
            text: half.board.call === "" ? half.board.passText : qsTr("%1 · %2").arg(half.board.call).arg(half.board.passText)
        }
    }

    Half {
        objectName: "farHalf"
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredHeight: 1
        board: both.room.farBoard
        rotation: 180
    }
    RowLayout {
        Layout.fillWidth: true
        Layout.fillHeight: false
        Layout.preferredHeight: Theme.tableTarget * 1.15 // not what words took at another width
        spacing: Theme.gap

        TablePress {
            plain: true
            glyph: "back"
            Accessible.name: qsTr("To the plan")
            onClicked: both.room.backToPlan()
        }
        // Where no button was before, and held.
        HoldPress {
            objectName: "holdStep"
            Layout.preferredWidth: both.beside > 0 ? both.beside : -1
            Layout.fillWidth: both.beside === 0
            visible: both.room.board.stepHeld && both.room.board.stepReady
            text: both.room.board.stepText
            onHeld: both.room.board.doStep()
        }
        Item {
            Layout.preferredWidth: both.beside
            visible: !both.room.board.stepHeld && both.beside > 0
        }
        Item {
            Layout.fillWidth: true
            visible: both.room.board.stepHeld && (both.beside > 0 || !both.room.board.stepReady)
        }
        TablePress {
            objectName: "step"
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: !both.room.board.stepHeld
            main: both.room.board.stepReady
            enabled: both.room.board.stepReady
            glyph: "check"
            text: both.room.board.stepText
            onClicked: both.stepWanted()
        }
        TablePress {
            objectName: "tableUndo"
            glyph: "undo"
            enabled: both.room.live.canUndo
            Accessible.name: qsTr("Undo: %1").arg(both.room.live.undoText)
            onClicked: both.room.live.undo()
        }
        TablePress {
            objectName: "more"
            glyph: "down"
            Accessible.name: qsTr("More")
            onClicked: both.moreWanted()
        }
    }
    Half {
        objectName: "nearHalf"
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredHeight: 1
        board: both.room.board
    }
}
