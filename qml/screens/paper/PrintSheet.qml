pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import QtQuick.Templates as T
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The sheets as they will come out: which of them, on what paper, from which printer.
Popup {
    id: sheet

    required property SheetsWriter writer

    readonly property SheetPreview preview: writer.preview
    readonly property bool wide: width > height

    objectName: "printSheet"
    parent: T.Overlay.overlay
    width: parent.width
    height: parent.height
    modal: true
    focus: true
    padding: Theme.gap
    closePolicy: Popup.CloseOnEscape
    onOpened: pages.forceActiveFocus()

    background: Rectangle {
        color: Theme.ground
    }
    // Not a layout: one remembers the sizes its items began with, and the device may be turned.
    contentItem: Item {
        PagesView {
            id: pages

            anchors.left: parent.left
            anchors.top: parent.top
            width: sheet.wide ? parent.width - beside.width - Theme.gap : parent.width
            height: sheet.wide ? parent.height : parent.height - beside.height - Theme.gap
            preview: sheet.preview
        }
        ColumnLayout {
            id: beside

            anchors.right: parent.right
            anchors.bottom: parent.bottom
            width: sheet.wide ? Math.min(sheet.width * 0.46, 92 * Theme.density) : parent.width
            height: sheet.wide ? parent.height : sheet.height * 0.46
            spacing: Theme.gap

            Head {
                Layout.fillWidth: true
                title: qsTr("Sheets")
                closeName: "closeSheets"
                closeWords: qsTr("Close")
                onClosed: sheet.close()
            }
            Notice {
                Layout.fillWidth: true
                text: sheet.writer.message
                serious: sheet.writer.failed
                onDismissed: sheet.writer.forget()
            }
            Stitches {
                objectName: "printProgress"
                Layout.fillWidth: true
                Layout.preferredHeight: Theme.gap
                visible: sheet.writer.busy && sheet.writer.progress > 0
                share: sheet.writer.progress
            }
            PrintChoices {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredHeight: 1 // not the height it began with
                writer: sheet.writer
            }
            Press {
                Layout.fillWidth: true
                objectName: "print"
                main: true
                glyph: "sheet"
                text: qsTr("Print")
                enabled: sheet.writer.whyNot === ""
                onClicked: sheet.writer.print()
            }
            Words {
                Layout.fillWidth: true
                objectName: "whyNoPrint"
                visible: text !== ""
                text: sheet.writer.whyNot
                quiet: true
            }
            Press {
                Layout.fillWidth: true
                objectName: "savePdf"
                glyph: "save"
                text: qsTr("Save as PDF")
                enabled: sheet.preview.pages > 0 && !sheet.writer.busy
                onClicked: sheet.writer.save()
            }
        }
    }
}
