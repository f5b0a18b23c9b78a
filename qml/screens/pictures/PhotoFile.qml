import QtQuick
import QtQuick.Dialogs
import Bastewright.View

// Asks for the photo of a top.
FileDialog {
    required property PhotoDesk photos

    title: qsTr("Choose a photo of the top")
    nameFilters: photos.nameFilters
    Component.onCompleted: open()
    onAccepted: photos.open(selectedFile)
}
