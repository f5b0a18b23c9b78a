// Components for a Loader cannot be bound to their context in Qt 6.4, so ids in them look unqualified.
// qmllint disable unqualified
import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Guide
import Bastewright.Page
import Bastewright.Paper
import Bastewright.Parts
import Bastewright.Plan
import Bastewright.Shelf
import Bastewright.Table
import Bastewright.Theme
import Bastewright.View

// The window: one screen at a time, and what lies over all of them.
ApplicationWindow {
    id: window

    required property Workroom room
    required property Surroundings surroundings
    required property Letters letters
    required property PhonePage phones

    width: 1280
    height: 800
    minimumWidth: 480
    minimumHeight: 400
    visible: true
    visibility: surroundings.wholeScreen ? Window.FullScreen : Window.Windowed
    title: room.screen === Workroom.Shelf ? "Bastewright" : room.editor.title
    color: Theme.ground
    font.family: Theme.family
    font.pixelSize: Theme.text
    LayoutMirroring.enabled: Application.layoutDirection === Qt.RightToLeft
    LayoutMirroring.childrenInherit: true

    Look {
        comfort: window.room.comfort
        dark: window.surroundings.asDevice ? window.surroundings.deviceDark : window.room.comfort.dark
        highContrast: window.surroundings.asDevice ? window.surroundings.deviceContrast : window.room.comfort.highContrast
        still: window.surroundings.still
    }
    Shortcut {
        sequences: ["F11"]
        onActivated: window.surroundings.wholeScreen = !window.surroundings.wholeScreen
    }

    Loader {
        id: screen

        anchors.top: parent.top
        anchors.left: parent.left
        anchors.right: parent.right
        // Nothing lies under a message or the letters.
        anchors.bottom: notice.visible ? notice.top : keys.visible ? keys.top : parent.bottom
        focus: true
        sourceComponent: window.room.screen === Workroom.Shelf ? shelf : window.room.screen === Workroom.Guide ? guide
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
        id: guide

        GuideScreen {
            room: window.room
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
            following: window.phones.following
            onComfortWanted: comfort.open()
            onPhonesWanted: {
                window.phones.look()
                phones.open()
            }
        }
    }

    ComfortSheet {
        id: comfort

        comfort: window.room.comfort
        surroundings: window.surroundings
        letters: window.letters
    }
    // Below the screen, which makes room: what is typed into stays in sight.
    LettersPad {
        id: keys

        objectName: "letters"
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        height: Math.min(implicitHeight, window.height * 0.62)
        visible: field !== null && window.letters.wanted
        field: window.activeFocusItem as TextInput
        language: window.room.comfort.language
        onAccepted: field.accepted()
    }
    PhoneSheet {
        id: phones

        phones: window.phones
    }
    EdgeSign {
        anchors.fill: parent
        sign: window.surroundings.edgeSign && window.room.screen === Workroom.AtTable && window.room.board.shiftNow
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
        id: notice

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: keys.visible ? keys.top : parent.bottom
        anchors.margins: Theme.gap
        text: window.room.notice
        serious: true
        onDismissed: window.room.forgetNotice()
    }
}
