import QtQuick
import Bastewright.Parts
import Bastewright.Theme

// A quilt's plan as a file for somebody else.
Sheet {
    id: share

    property real job: 0
    property string name: ""

    signal folderWanted
    signal elsewhereWanted

    function ask(which: real, what: string) {
        job = which
        name = what
        open()
    }

    objectName: "shareSheet"
    title: qsTr("Share %1").arg(name)

    Words {
        width: parent.width
        text: qsTr("One small file holds everything you entered. Whoever opens it plans the same quilt.")
    }
    Press {
        objectName: "shareFolder"
        width: parent.width
        glyph: "save"
        text: qsTr("Save it in a folder, or on a stick")
        onClicked: {
            share.close()
            share.folderWanted()
        }
    }
    Press {
        objectName: "shareElsewhere"
        width: parent.width
        glyph: "share"
        text: qsTr("Open it with another program")
        onClicked: {
            share.close()
            share.elsewhereWanted()
        }
    }
}
