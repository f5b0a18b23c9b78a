import QtQuick
import QtQuick.Dialogs
import Bastewright.View

// Asks for the folder a quilt is saved into.
FolderDialog {
    required property Workroom room
    required property real job
    required property string name

    title: qsTr("Where to save %1").arg(name)
    Component.onCompleted: open()
    onAccepted: room.shelf.saveInto(job, selectedFolder)
}
