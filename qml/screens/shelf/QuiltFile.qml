import QtQuick
import QtQuick.Dialogs
import Bastewright.View

// Asks for a file: of a quilt to open, or, with a job, to save it as.
FileDialog {
    required property Workroom room
    property real job: 0
    property string name: ""

    title: job > 0 ? qsTr("Save %1 as a file").arg(name) : qsTr("Open a quilt from a file")
    fileMode: job > 0 ? FileDialog.SaveFile : FileDialog.OpenFile
    nameFilters: [qsTr("Quilts (*.json)"), qsTr("All files (*)")]
    defaultSuffix: "bastewright.json"
    Component.onCompleted: open()
    onAccepted: {
        if (job > 0) {
            room.shelf.saveFile(job, selectedFile)
        } else {
            const opened = room.shelf.openFile(selectedFile)
            if (opened > 0)
                room.openJob(opened)
        }
    }
}
