import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Page
import Bastewright.Paper
import Bastewright.Parts
import Bastewright.Table
import Bastewright.Theme
import Bastewright.View

// The window: one screen at a time, and what lies over all of them. Screens are named by their files, so
// that the first frame waits for the shelf alone.
ApplicationWindow {
    id: window

    required property Workroom room
    required property Surroundings surroundings
    required property Letters letters
    required property PhonePage phones

    readonly property var files: [Qt.resolvedUrl("../Guide/GuideScreen.qml"), Qt.resolvedUrl("../Plan/PlanScreen.qml"), Qt.resolvedUrl("../Table/TableScreen.qml")]
    property var read: [] // components, held so that they stay read

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

        readonly property url file: {
            switch (window.room.screen) {
            case Workroom.Guide: return window.files[0]
            case Workroom.Planning: return window.files[1]
            case Workroom.AtTable: return window.files[2]
            default: return Qt.resolvedUrl("../Shelf/ShelfScreen.qml")
            }
        }

        onFileChanged: setSource(file, window.room.screen === Workroom.AtTable ? {room: window.room, phones: window.phones} : {room: window.room})
    }
    Connections {
        target: screen.item
        ignoreUnknownSignals: true

        function onComfortWanted() { comfort.open() }
        function onPhonesWanted() {
            window.phones.look()
            phones.open()
        }
    }
    // The other screens are read while nobody waits.
    Timer {
        running: true
        interval: 200
        onTriggered: {
            for (const file of window.files)
                window.read.push(Qt.createComponent(file, Component.Asynchronous))
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
