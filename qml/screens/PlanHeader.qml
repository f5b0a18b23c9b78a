import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The name of the quilt, and what concerns the whole plan. Where it is narrow for its letters the
// name goes below the buttons.
GridLayout {
    id: header

    required property Workroom room

    readonly property bool narrow: width < 34 * Theme.title

    signal comfortWanted

    columns: 7
    columnSpacing: Theme.gap
    rowSpacing: Theme.gap * 0.5

    Press {
        Layout.row: 0
        Layout.column: 0
        objectName: "back"
        plain: true
        glyph: "back"
        Accessible.name: qsTr("Back to your quilts")
        onClicked: header.room.backToShelf()
    }
    Item {
        Layout.row: 0
        Layout.column: 1
        Layout.fillWidth: true
        visible: header.narrow
    }
    Words {
        Layout.row: header.narrow ? 1 : 0
        Layout.column: header.narrow ? 0 : 1
        Layout.columnSpan: header.narrow ? 7 : 1
        Layout.fillWidth: true
        Layout.preferredWidth: 1 // what the buttons leave
        Layout.preferredHeight: Math.max(header.narrow ? 0 : Theme.target, Theme.small * 2.8)
        verticalAlignment: Text.AlignVCenter
        text: header.room.editor.title
        font.pixelSize: Theme.title
        font.bold: true
        minimumPixelSize: Theme.small
        fontSizeMode: Text.Fit
    }
    Press {
        Layout.row: 0
        Layout.column: 2
        Layout.minimumWidth: implicitWidth
        objectName: "undo"
        glyph: "undo"
        enabled: header.room.editor.canUndo
        Accessible.name: qsTr("Undo: %1").arg(header.room.editor.undoText)
        onClicked: header.room.editor.undo()
    }
    Press {
        Layout.row: 0
        Layout.column: 3
        Layout.minimumWidth: implicitWidth
        objectName: "redo"
        glyph: "redo"
        enabled: header.room.editor.canRedo
        Accessible.name: qsTr("Redo: %1").arg(header.room.editor.redoText)
        onClicked: header.room.editor.redo()
    }
    Press {
        Layout.row: 0
        Layout.column: 4
        plain: true
        glyph: "eye"
        Accessible.name: qsTr("Reading comfort")
        onClicked: header.comfortWanted()
    }
    Press {
        Layout.row: 0
        Layout.column: 5
        Layout.minimumWidth: implicitWidth
        objectName: "sheets"
        glyph: "sheet"
        enabled: header.room.plan.planned && !header.room.plan.busy
        Accessible.name: qsTr("Sheets: look and print")
        onClicked: header.room.openSheets()
    }
    Press {
        Layout.row: 0
        Layout.column: 6
        Layout.minimumWidth: implicitWidth
        objectName: "toTable"
        main: true
        glyph: "start"
        text: header.room.inSession ? qsTr("Go on") : qsTr("Start")
        enabled: header.room.inSession || (header.room.plan.good && !header.room.plan.busy)
        Accessible.name: header.room.inSession ? qsTr("Go on at the table") : qsTr("Start at the table")
        onClicked: header.room.goToTable()
    }
}
