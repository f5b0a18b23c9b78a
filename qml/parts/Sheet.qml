import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Templates as T
import Bastewright.Theme

// Something laid over the screen for one question; a tap beside it or Escape leaves all as it was.
Popup {
    id: sheet

    property string title: ""
    property bool atTable: false
    default property alias body: holder.data

    parent: T.Overlay.overlay
    modal: true
    focus: true
    padding: Theme.space
    x: Math.round((parent.width - width) / 2)
    y: Math.round((parent.height - height) / 2)
    width: Math.min(parent.width - 2 * Theme.gap, Math.round(atTable ? 180 * Theme.density : Math.max(125 * Theme.density, 34 * Theme.text)))
    height: Math.min(parent.height - 2 * Theme.gap, contents.implicitHeight + 2 * padding)
    closePolicy: Popup.CloseOnEscape | Popup.CloseOnPressOutside

    T.Overlay.modal: Rectangle {
        color: "#80101820"
    }
    background: Patch {
        border.color: Theme.strongEdge
    }
    contentItem: Flickable {
        contentHeight: contents.implicitHeight
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: contents

            width: parent.width
            spacing: Theme.space

            Head {
                width: parent.width
                title: sheet.title
                atTable: sheet.atTable
                closeName: sheet.objectName + "Close"
                closeWords: qsTr("Close")
                onClosed: sheet.close()
            }
            Column {
                id: holder

                width: parent.width
                spacing: Theme.gap
            }
        }
    }
}
