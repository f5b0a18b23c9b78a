pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What should not be forgotten, written down at the table and kept with the session.
Rectangle {
    id: view

    required property LiveController live

    readonly property bool wide: width > 6 * Theme.tableTarget

    signal closed

    // What is written stays in the line until it is kept.
    function keep() {
        if (live.note(line.text))
            line.clear()
        line.forceActiveFocus()
    }

    color: Theme.ground
    onVisibleChanged: {
        if (visible)
            line.forceActiveFocus()
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: Theme.gap

        GridLayout {
            Layout.fillWidth: true
            columns: 3
            columnSpacing: Theme.gap
            rowSpacing: Theme.gap

            TablePress {
                objectName: "closeNotes"
                plain: true
                glyph: "back"
                Accessible.name: qsTr("Back")
                onClicked: view.closed()
            }
            Heading {
                Layout.row: 0
                Layout.column: 1
                Layout.fillWidth: true
                visible: !view.wide
                text: qsTr("Notes")
                font.pixelSize: Theme.tableText
            }
            WordsField {
                id: line

                objectName: "noteLine"
                Layout.row: view.wide ? 0 : 1
                Layout.column: view.wide ? 1 : 0
                Layout.columnSpan: view.wide ? 1 : 3
                Layout.fillWidth: true
                least: Theme.tableTarget
                size: Theme.tableText
                maximumLength: 200
                placeholderText: qsTr("A note")
                Accessible.name: placeholderText
                onAccepted: view.keep()
            }
            TablePress {
                Layout.row: 0
                Layout.column: 2
                objectName: "keepNote"
                main: true
                glyph: "check"
                enabled: line.text.trim() !== ""
                Accessible.name: qsTr("Keep the note")
                onClicked: view.keep()
            }
        }
        TableNotice {
            Layout.fillWidth: true
            text: view.live.problem
            serious: true
            onDismissed: view.live.forgetProblem()
        }
        ListView {
            id: list

            objectName: "notes"
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredHeight: 1 // not the height it began with
            clip: true
            spacing: Theme.gap
            boundsBehavior: Flickable.StopAtBounds
            model: view.live.notes
            delegate: Item {
                id: note

                required property string noteId
                required property string time
                required property string words

                width: list.width
                height: Math.max(said.implicitHeight, undo.height)

                TableWords {
                    id: when

                    anchors.left: parent.left
                    anchors.baseline: said.baseline
                    color: Theme.quiet
                    text: note.time
                }
                TableWords {
                    id: said

                    anchors.left: when.right
                    anchors.leftMargin: Theme.space
                    anchors.right: undo.left
                    anchors.rightMargin: Theme.gap
                    anchors.verticalCenter: parent.verticalCenter
                    text: note.words
                }
                TablePress {
                    id: undo

                    objectName: "takeBackNote"
                    anchors.right: parent.right
                    anchors.verticalCenter: parent.verticalCenter
                    glyph: "undo"
                    Accessible.name: qsTr("Take back: %1").arg(note.words)
                    onClicked: view.live.takeBackNote(note.noteId)
                }
            }

            TableWords {
                width: parent.width
                visible: list.count === 0
                text: qsTr("Nothing noted yet. What should not be forgotten, such as a seam to mend, is kept here with its time.")
            }
        }
    }
}
