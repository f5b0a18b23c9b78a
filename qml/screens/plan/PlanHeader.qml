import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The name of the quilt, and what concerns the whole plan. Where it is narrow for its letters the
// name goes below the buttons.
Item {
    id: header

    required property Workroom room
    property real aside: 0 // the width of the panel below

    readonly property bool narrow: width < 27 * Theme.title

    signal comfortWanted

    // Not a layout: the name changes its place while the window is turned.
    implicitHeight: narrow ? Theme.target + Theme.gap * 0.5 + title.height : Math.max(Theme.target, title.height)

    Press {
        id: back

        objectName: "back"
        anchors.left: parent.left
        plain: true
        glyph: "back"
        Accessible.name: qsTr("Back to your quilts")
        onClicked: header.room.backToShelf()
    }
    Heading {
        id: title

        anchors.left: header.narrow ? parent.left : back.right
        anchors.leftMargin: header.narrow ? 0 : Theme.gap
        y: header.narrow ? Theme.target + Theme.gap * 0.5 : 0
        width: header.narrow ? parent.width : history.x - back.width - 2 * Theme.gap
        height: Math.max(header.narrow ? 0 : Theme.target, Theme.small * 2.8)
        verticalAlignment: Text.AlignVCenter
        text: header.room.editor.title
        font.family: Theme.nameFamily
        font.pixelSize: Theme.title
        minimumPixelSize: Theme.small
        fontSizeMode: Text.Fit
    }
    // Where the panel has no room for all of them, these two lie beside it.
    Row {
        id: history

        anchors.right: buttons.left
        anchors.rightMargin: Math.max(buttons.spacing, header.aside < buttons.width + buttons.spacing + width ? header.aside - buttons.width : 0)
        spacing: buttons.spacing

        Press {
            objectName: "redo"
            plain: true
            glyph: "redo"
            visible: header.room.editor.canRedo
            Accessible.name: qsTr("Redo: %1").arg(header.room.editor.redoText)
            onClicked: header.room.editor.redo()
        }
        Press {
            objectName: "undo"
            plain: true
            glyph: "undo"
            enabled: header.room.editor.canUndo
            Accessible.name: qsTr("Undo: %1").arg(header.room.editor.undoText)
            onClicked: header.room.editor.undo()
        }
    }
    Row {
        id: buttons

        anchors.right: parent.right
        spacing: Theme.gap * 0.25 // drawings alone have their room in them

        Press {
            plain: true
            glyph: "eye"
            Accessible.name: qsTr("Text and display")
            onClicked: header.comfortWanted()
        }
        Press {
            objectName: "sheets"
            plain: true
            glyph: "sheet"
            enabled: header.room.plan.planned && !header.room.plan.busy
            Accessible.name: qsTr("Sheets: look and print")
            onClicked: header.room.openSheets()
        }
        Press {
            objectName: "toTable"
            main: true
            glyph: "start"
            // A window narrow for its letters shows the drawing alone.
            text: header.width < 30 * Theme.text ? "" : header.room.inSession ? qsTr("Resume") : qsTr("Start basting")
            enabled: header.room.inSession || (header.room.plan.good && !header.room.plan.busy)
            Accessible.name: header.room.inSession ? qsTr("Resume at the table") : qsTr("Start basting at the table")
            onClicked: header.room.goToTable()
        }
    }
}
