pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Pictures
import Bastewright.Theme
import Bastewright.View

// Everybody as a card, their hours over one clock, when it finishes across them; a tap on a name opens
// all that can be told of somebody.
FocusScope {
    id: pane

    required property Workroom room

    readonly property PeopleDesk desk: room.crew
    readonly property bool editing: details.editing
    property int opened: -1 // whose details are open
    property string name: ""
    property bool isKept: false

    signal keptWanted

    function look() {
        name = desk.nameOf(opened)
        isKept = name !== "" && room.kept.isKept(KeptDesk.Person, name)
    }

    onOpenedChanged: look()

    Connections {
        target: pane.desk
        function onChanged() {
            if (pane.opened >= pane.desk.people.count)
                pane.opened = -1
            pane.look()
        }
    }
    Connections {
        target: pane.room.kept.people
        function onCountChanged() {
            pane.look()
        }
    }
    Shortcut {
        enabled: pane.opened >= 0 && !pane.editing
        sequence: "Escape"
        onActivated: pane.opened = -1
    }

    Flickable {
        id: list

        objectName: "personCards"
        anchors.fill: parent
        visible: pane.opened < 0
        contentHeight: column.implicitHeight
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: column

            width: list.width
            spacing: Theme.gap * 0.5

            Problem {
                width: parent.width
                text: pane.desk.problem
            }
            // The clock of the bars below.
            Item {
                id: clock

                readonly property int hours: Math.max(1, (pane.desk.dayUntil - pane.desk.dayFrom) / 60)
                readonly property real inner: width - 2 * Theme.target
                readonly property int every: Math.max(1, Math.ceil(hours * widest.implicitWidth * 1.4 / Math.max(1, inner)))

                width: parent.width
                height: widest.implicitHeight + (ends.visible ? ends.implicitHeight : 0)
                LayoutMirroring.enabled: false
                LayoutMirroring.childrenInherit: true

                Words {
                    id: widest

                    visible: false
                    text: pane.desk.clock(pane.desk.dayUntil - 60)
                    font.pixelSize: Theme.small
                }
                Repeater {
                    model: Math.floor(clock.hours / clock.every) + 1

                    Words {
                        required property int index

                        x: Theme.target + clock.inner * index * clock.every / clock.hours - width / 2
                        text: pane.desk.clock(pane.desk.dayFrom + index * clock.every * 60)
                        font.pixelSize: Theme.small
                        quiet: true
                        wrapMode: Text.NoWrap
                    }
                }
                Words {
                    id: ends

                    x: Math.max(0, Math.min(parent.width - width,
                                            Theme.target + clock.inner * (pane.desk.finish - pane.desk.dayFrom) / Math.max(1, pane.desk.dayUntil - pane.desk.dayFrom) - width / 2))
                    y: widest.implicitHeight
                    visible: pane.desk.finish >= 0
                    text: pane.desk.finishText
                    font.pixelSize: Theme.small
                    font.bold: true
                    wrapMode: Text.NoWrap
                }
            }
            Repeater {
                model: pane.desk.people

                PersonCard {
                    width: column.width
                    desk: pane.desk
                    onOpened: pane.opened = index
                    onHourTyped: field => {
                        pane.opened = index
                        details.open("helper" + index + "/" + field)
                    }
                }
            }
            KeptChoices {
                width: parent.width
                kept: pane.room.kept
                kind: KeptDesk.Person
                onListWanted: pane.keptWanted()
            }
            AddPerson {
                width: parent.width
                visible: !pane.desk.full
                desk: pane.desk
            }
        }
    }
    Column {
        id: about

        width: parent.width
        visible: pane.opened >= 0 && !pane.editing
        spacing: Theme.gap * 0.5

        Press {
            objectName: "allPeople"
            width: Math.min(implicitWidth, parent.width)
            glyph: "back"
            text: qsTr("All people")
            onClicked: pane.opened = -1
        }
        Toggle {
            objectName: "keepPerson"
            label: qsTr("Keep %1 for other quilts").arg(pane.name)
            on: pane.isKept
            onFlipped: on ? pane.room.kept.forget(KeptDesk.Person, pane.name) : pane.room.kept.keepPerson(pane.name)
        }
    }
    FieldsPane {
        id: details

        anchors.top: about.visible ? about.bottom : parent.top
        anchors.topMargin: about.visible ? Theme.gap : 0
        anchors.bottom: parent.bottom
        width: parent.width
        visible: pane.opened >= 0
        editor: pane.room.editor
        section: FieldModel.People
        only: pane.opened >= 0 ? "helper" + pane.opened + "/" : "none"
    }
}
