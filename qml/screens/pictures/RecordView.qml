pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What was done: who, what, when, for how long, how many. To be read, printed, and taken elsewhere.
Rectangle {
    id: view

    required property Workroom room
    property real session: 0 // of the library

    readonly property RecordBook book: room.record

    signal closed

    color: Theme.ground
    onVisibleChanged: {
        if (visible)
            book.show(session)
    }

    // Side by side where there is room, else one below the other.
    component Line: Flow {
        id: line

        property string first: ""
        property string second: ""
        property string third: ""

        readonly property bool wide: width > 26 * Theme.tableText
        readonly property real share: wide ? (width - 2 * spacing) / 3 : width

        width: list.width
        spacing: Theme.gap

        TableWords {
            width: line.share
            text: line.first
            font.bold: true
        }
        TableWords {
            width: line.wide && line.third === "" ? 2 * line.share : line.share
            text: line.second
        }
        TableWords {
            width: line.share
            visible: text !== ""
            text: line.third
            color: Theme.quiet
        }
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: Theme.gap

        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap

            TablePress {
                objectName: "closeRecord"
                plain: true
                glyph: "back"
                Accessible.name: qsTr("Back")
                onClicked: view.closed()
            }
            Heading {
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                text: qsTr("What was done")
                font.pixelSize: Theme.tableText
                elide: Text.ElideRight
            }
            TablePress {
                objectName: "recordPage"
                glyph: "sheet"
                Accessible.name: qsTr("Save as a page to print")
                onClicked: view.book.savePage()
            }
            TablePress {
                objectName: "recordTable"
                glyph: "save"
                Accessible.name: qsTr("Save as a table for other programs")
                onClicked: view.book.saveTable()
            }
        }
        Notice {
            Layout.fillWidth: true
            text: view.book.message
            onDismissed: view.book.forget()
        }
        Flickable {
            id: list

            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredHeight: 1 // not the height it began with
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            contentHeight: all.height

            Column {
                id: all

                width: list.width
                spacing: Theme.gap

                Repeater {
                    model: view.book.summary

                    TableWords {
                        required property string modelData

                        width: all.width
                        text: modelData
                    }
                }
                Repeater {
                    model: view.book.people

                    Line {
                        required property string name
                        required property string here
                        required property int zones
                        required property string pace

                        first: name
                        second: zones === 1 ? qsTr("%1, 1 zone done").arg(here)
                                            : qsTr("%1, %2 zones done").arg(here).arg(zones)
                        third: pace
                    }
                }
                Repeater {
                    model: view.book.calls

                    Line {
                        required property int pass
                        required property string name
                        required property string took
                        required property string planned

                        first: qsTr("Pass %1 · %2").arg(pass).arg(name)
                        second: took
                        third: planned === "" ? "" : qsTr("planned %1").arg(planned)
                    }
                }
                Repeater {
                    model: view.visible ? view.book.lines : null

                    Line {
                        required property string time
                        required property string words

                        first: time
                        second: words
                    }
                }
            }
        }
    }
}
