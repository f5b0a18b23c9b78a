import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The name of the quilt, and what concerns the whole plan.
RowLayout {
    id: header

    required property Workroom room

    signal comfortWanted

    spacing: Theme.gap

    Press {
        objectName: "back"
        plain: true
        glyph: "back"
        Accessible.name: qsTr("Back to your quilts")
        onClicked: header.room.backToShelf()
    }
    Words {
        Layout.fillWidth: true
        Layout.preferredWidth: 1 // what the buttons leave
        Layout.preferredHeight: Theme.target
        verticalAlignment: Text.AlignVCenter
        text: header.room.editor.title
        Accessible.role: Accessible.Heading
        Accessible.name: text
        font.pixelSize: Theme.title
        font.bold: true
        minimumPixelSize: 11
        fontSizeMode: Text.Fit
    }
    Press {
        Layout.minimumWidth: implicitWidth
        objectName: "undo"
        glyph: "undo"
        enabled: header.room.editor.canUndo
        Accessible.name: qsTr("Undo: %1").arg(header.room.editor.undoText)
        onClicked: header.room.editor.undo()
    }
    Press {
        Layout.minimumWidth: implicitWidth
        objectName: "redo"
        glyph: "redo"
        enabled: header.room.editor.canRedo
        Accessible.name: qsTr("Redo: %1").arg(header.room.editor.redoText)
        onClicked: header.room.editor.redo()
    }
    Press {
        plain: true
        glyph: "eye"
        Accessible.name: qsTr("Reading comfort")
        onClicked: header.comfortWanted()
    }
    Press {
        Layout.minimumWidth: implicitWidth
        objectName: "sheets"
        glyph: "sheet"
        enabled: header.room.plan.planned && !header.room.plan.busy
        Accessible.name: qsTr("Sheets: look and print")
        onClicked: header.room.openSheets()
    }
    Press {
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
