import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What the quilt looks like on every picture: its photo, or a few fabrics.
Sheet {
    id: sheet

    required property PhotoDesk photos
    required property quiltFace face

    objectName: "clothSheet"
    title: qsTr("Photo and fabrics")

    Connections {
        target: sheet.photos
        function onChanged() {
            if (sheet.photos.picking)
                sheet.close()
        }
    }
    Notice {
        width: parent.width
        text: sheet.photos.problem
        serious: true
        onDismissed: sheet.photos.forgetProblem()
    }
    QuiltFaceItem {
        width: parent.width
        height: Math.min(60 * Theme.density, width * 0.6, (sheet.parent ? sheet.parent.height : 0) * (sheet.photos.hasPhoto ? 0.5 : 0.26))
        face: sheet.face
        ink: Theme.ink
        Accessible.role: Accessible.Graphic
        Accessible.name: sheet.photos.hasPhoto ? qsTr("The photo of your quilt") : qsTr("Your quilt in its fabrics")
    }
    Flow {
        width: parent.width
        spacing: Theme.gap

        Press {
            objectName: "choosePhoto"
            main: !sheet.photos.hasPhoto
            glyph: "open"
            enabled: !sheet.photos.busy
            text: sheet.photos.busy ? qsTr("Reading the photo …")
                  : sheet.photos.hasPhoto ? qsTr("Choose another photo") : qsTr("Choose a photo")
            onClicked: files.setSource("PhotoFile.qml", {photos: sheet.photos})
        }
        Press {
            objectName: "removePhoto"
            visible: sheet.photos.hasPhoto
            glyph: "remove"
            text: qsTr("Remove the photo")
            onClicked: sheet.photos.removePhoto()
        }
    }
    Words {
        width: parent.width
        visible: !sheet.photos.hasPhoto
        text: qsTr("Or drag a picture from another program onto the plan.")
        quiet: true
    }
    FabricsEditor {
        width: parent.width
        visible: !sheet.photos.hasPhoto
        photos: sheet.photos
    }
    // By its file: whoever looks at a screen does not wait for dialogs.
    Loader {
        id: files
    }
}
