pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Pictures
import Bastewright.Theme
import Bastewright.View

// The quilts that are kept, as cards.
FocusScope {
    id: shelf

    required property Workroom room

    signal comfortWanted

    function open(job: real) {
        if (job > 0)
            room.openJob(job)
    }

    Shortcut {
        sequence: "Ctrl+N"
        onActivated: shelf.room.beginQuilt()
    }
    Shortcut {
        sequence: "Ctrl+O"
        onActivated: files.pick()
    }

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.space
        spacing: Theme.gap

        Flow {
            Layout.fillWidth: true
            spacing: Theme.gap

            Heading {
                height: Theme.target
                verticalAlignment: Text.AlignVCenter
                rightPadding: Theme.space * 2
                text: qsTr("Your quilts")
                font.pixelSize: Theme.title
                wrapMode: Text.NoWrap
            }
            Press {
                objectName: "newQuilt"
                main: true
                glyph: "plus"
                text: qsTr("Plan a new quilt")
                onClicked: shelf.room.beginQuilt()
            }
            Press {
                objectName: "showExamples"
                glyph: "quilt"
                text: qsTr("Examples")
                onClicked: examples.open()
            }
            Press {
                glyph: "open"
                text: qsTr("Open a file")
                onClicked: files.pick()
            }
            Press {
                objectName: "showKept"
                visible: keptSheet.count > 0
                glyph: "box"
                text: qsTr("What is kept")
                onClicked: keptSheet.show(-1)
            }
            Press {
                glyph: "eye"
                text: qsTr("Text and display")
                onClicked: shelf.comfortWanted()
            }
        }
        Notice {
            Layout.fillWidth: true
            text: shelf.room.shelf.problem
            serious: true
            onDismissed: shelf.room.shelf.forgetProblem()
        }
        Notice {
            Layout.fillWidth: true
            text: shelf.room.shelf.removed === "" ? "" : qsTr("Removed: %1").arg(shelf.room.shelf.removed)
            action: qsTr("Bring it back")
            onActed: shelf.room.shelf.undoRemove()
            onDismissed: shelf.room.shelf.forgetRemoved()
        }
        GridView {
            id: cards

            objectName: "cards"
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredHeight: 1 // not the height it began with
            clip: true
            model: shelf.room.shelf
            cellWidth: width / Math.max(1, Math.floor(width / Math.max(78 * Theme.density, 16 * Theme.text)))
            cellHeight: Math.max(62 * Theme.density, Theme.large * 3.9 + Theme.text * 6 + Theme.target + 4 * Theme.gap)
            keyNavigationEnabled: false
            boundsBehavior: Flickable.StopAtBounds

            delegate: JobCard {
                width: cards.cellWidth - Theme.gap
                height: cards.cellHeight - Theme.gap
                onOpened: shelf.open(job)
                onCopied: shelf.room.shelf.copy(job)
                onSaved: files.save(job, title)
                onShared: share.ask(job, title)
                onRemoved: shelf.room.shelf.remove(job)
                onSessionsWanted: sessions.ask(job, title)
            }

            Column {
                anchors.centerIn: parent
                width: Math.min(parent.width, 120 * Theme.density)
                visible: shelf.room.shelf.count === 0
                spacing: Theme.space

                Words {
                    width: parent.width
                    horizontalAlignment: Text.AlignHCenter
                    text: qsTr("No quilts yet. Plan a new one in six questions, or look at an example first.")
                    font.pixelSize: Theme.large
                }
                Press {
                    anchors.horizontalCenter: parent.horizontalCenter
                    glyph: "quilt"
                    text: qsTr("Look at an example")
                    onClicked: examples.open()
                }
            }
        }
    }

    Sheet {
        id: examples

        readonly property var about: shelf.room.shelf.examplesAbout // reads all files: once

        objectName: "examples"
        title: qsTr("Examples from Saltmarsh Hall")

        Repeater {
            model: shelf.room.shelf.examples

            Opener {
                required property string modelData
                required property int index

                objectName: "example" + index
                width: parent.width
                glyph: "quilt"
                title: modelData
                summary: examples.about[index]
                onClicked: {
                    examples.close()
                    shelf.open(shelf.room.shelf.addExample(index))
                }
            }
        }
    }
    KeptSheet {
        id: keptSheet

        kept: shelf.room.kept
    }
    SessionsSheet {
        id: sessions

        room: shelf.room
        onChosen: session => {
            record.session = session
            record.visible = true
        }
    }
    RecordView {
        id: record

        objectName: "shelfRecord"
        anchors.fill: parent
        anchors.margins: Theme.space
        visible: false
        room: shelf.room
        onClosed: visible = false
    }
    ShareSheet {
        id: share

        onFolderWanted: files.share(job, name)
        onElsewhereWanted: shelf.room.shelf.openElsewhere(job)
    }
    // By its file: whoever looks at the shelf does not wait for dialogs.
    Loader {
        id: files

        function pick() {
            setSource("QuiltFile.qml", {room: shelf.room})
        }
        function save(job: real, title: string) {
            setSource("QuiltFile.qml", {room: shelf.room, job: job, name: title})
        }
        function share(job: real, title: string) {
            setSource("QuiltFolder.qml", {room: shelf.room, job: job, name: title})
        }
    }
}
