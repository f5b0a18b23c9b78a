// Components for a Loader cannot be bound to their context in Qt 6.4, so ids in them look unqualified.
// qmllint disable unqualified
import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The window: one screen at a time, and what lies over all of them.
ApplicationWindow {
    id: window

    required property Workroom room

    width: 1280
    height: 800
    minimumWidth: 480
    minimumHeight: 400
    visible: true
    title: room.screen === Workroom.Shelf ? "Bastewright" : room.editor.title
    color: Theme.ground
    font.family: Theme.family
    font.pixelSize: Theme.text
    LayoutMirroring.enabled: Qt.locale().textDirection === Qt.RightToLeft
    LayoutMirroring.childrenInherit: true

    Binding { target: Theme; property: "density"; value: window.room.comfort.density }
    Binding { target: Theme; property: "distance"; value: window.room.comfort.distance }
    Binding { target: Theme; property: "textScale"; value: window.room.comfort.textScale }
    Binding { target: Theme; property: "dark"; value: window.room.comfort.dark }

    Loader {
        id: screen

        anchors.fill: parent
        focus: true
        sourceComponent: window.room.screen === Workroom.Shelf ? shelf
                         : window.room.screen === Workroom.Planning ? planning : table
    }
    Component {
        id: shelf

        ShelfScreen {
            room: window.room
            onComfortWanted: comfort.open()
        }
    }
    Component {
        id: planning

        PlanScreen {
            room: window.room
            onComfortWanted: comfort.open()
        }
    }
    Component {
        id: table

        TableScreen {
            room: window.room
            onComfortWanted: comfort.open()
        }
    }

    ComfortSheet {
        id: comfort

        comfort: window.room.comfort
    }
    ChangeCard {
        desk: window.room.desk
        atTable: window.room.screen === Workroom.AtTable
    }
    PrintSheet {
        id: prints

        writer: window.room.sheets
    }
    Connections {
        target: window.room
        function onSheetsWanted() { prints.open() }
    }
    Notice {
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        anchors.margins: Theme.gap
        text: window.room.notice
        serious: true
        onDismissed: window.room.forgetNotice()
    }
}
