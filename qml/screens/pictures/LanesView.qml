import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Quilt
import Bastewright.Theme
import Bastewright.View

// Everybody's work over time, one lane each. Scrolled and zoomed by finger; a tap says what a piece
// of work is, and lets its zone be handed to somebody else.
Rectangle {
    id: view

    required property Workroom room

    property bool atTable: false

    signal closed

    readonly property LanesBoard board: room.lanes
    readonly property real letters: atTable ? Theme.tableText : Theme.text
    readonly property real target: atTable ? Theme.tableTarget : Theme.target
    readonly property real headWidth: Math.min(width * 0.3, letters * 8.5)
    readonly property real headHeight: letters * 1.5
    readonly property real lane: Math.max(target * 0.9, letters * 2.6,
                                          Math.min(letters * 6, (flick.height - headHeight) / Math.max(1, board.lanes)))
    readonly property real fit: Math.max(0.5, (flick.width - view.headWidth - Theme.space) / Math.max(1, board.span / 60))
    property real minute: 10

    function show() {
        minute = Math.max(fit, letters * 0.4) // the calls of a pass have room for their names
        flick.contentX = Math.max(0, Math.min(flick.contentWidth - flick.width,
                                              board.now / 60 * minute - (flick.width - view.headWidth) * 0.15))
        picture.forceActiveFocus()
    }
    function zoom(factor: real) {
        const half = (flick.width - view.headWidth) / 2
        const middle = (flick.contentX + half) / minute
        minute = Math.max(fit, Math.min(letters * 6, minute * factor))
        flick.contentX = Math.max(0, Math.min(flick.contentWidth - flick.width, middle * minute - half))
    }
    function tapped(task: string) {
        board.chosen = task
        if (atTable && task !== "")
            detail.open()
    }
    // Scrolls until the piece of work that was chosen by keys is in sight.
    function follow() {
        const r = picture.placeOf(board.chosen)
        if (r.width > 0 && (r.x < view.headWidth || r.x + r.width > picture.width))
            flick.contentX = Math.max(0, Math.min(flick.contentWidth - flick.width, flick.contentX + r.x - picture.width / 2))
    }

    color: Theme.ground
    onVisibleChanged: {
        if (visible)
            show()
    }

    FocusScope {
        id: keys

        anchors.fill: parent
        Keys.onPressed: event => {
            if (event.key === Qt.Key_Left || event.key === Qt.Key_Right)
                view.board.step(event.key === Qt.Key_Right ? 1 : -1, 0)
            else if (event.key === Qt.Key_Up || event.key === Qt.Key_Down)
                view.board.step(0, event.key === Qt.Key_Down ? 1 : -1)
            else if (event.key === Qt.Key_Return && view.board.chosen !== "")
                view.tapped(view.board.chosen)
            else if (event.key === Qt.Key_Plus || event.key === Qt.Key_Minus)
                view.zoom(event.key === Qt.Key_Plus ? 1.4 : 1 / 1.4)
            else
                return
            view.follow()
            event.accepted = true
        }

        ColumnLayout {
            anchors.fill: parent
            spacing: Theme.gap

            RowLayout {
                Layout.fillWidth: true
                spacing: Theme.gap

                Press {
                    objectName: "closeLanes"
                    plain: true
                    glyph: "back"
                    least: view.target
                    size: view.letters
                    Accessible.name: qsTr("Back")
                    onClicked: view.closed()
                }
                Heading {
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    text: view.atTable ? qsTr("Who, when") : qsTr("Who does what, when")
                    font.pixelSize: view.atTable ? view.letters : Theme.large
                }
                Press {
                    objectName: "lanesUndo"
                    visible: !view.atTable
                    glyph: "undo"
                    enabled: view.room.editor.canUndo
                    Accessible.name: qsTr("Undo: %1").arg(view.room.editor.undoText)
                    onClicked: view.room.editor.undo()
                }
                Press {
                    objectName: "lanesRedo"
                    visible: !view.atTable
                    glyph: "redo"
                    enabled: view.room.editor.canRedo
                    Accessible.name: qsTr("Redo: %1").arg(view.room.editor.redoText)
                    onClicked: view.room.editor.redo()
                }
                Press {
                    objectName: "lanesOut"
                    glyph: "minus"
                    least: view.target
                    size: view.letters
                    Accessible.name: qsTr("Longer time in sight")
                    onClicked: view.zoom(1 / 1.6)
                }
                Press {
                    objectName: "lanesIn"
                    glyph: "plus"
                    least: view.target
                    size: view.letters
                    Accessible.name: qsTr("Closer")
                    onClicked: view.zoom(1.6)
                }
            }
            Item {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredHeight: 1 // not the height it began with

                LanesPicture {
                    id: picture

                    objectName: "lanes"
                    anchors.fill: parent
                    anchors.margins: frame.thickness // which covers nothing of it
                    focus: true
                    activeFocusOnTab: true
                    board: view.board
                    minute: view.minute
                    textSize: view.letters
                    lane: view.lane
                    headWidth: view.headWidth
                    headHeight: view.headHeight
                    scrollX: flick.contentX
                    scrollY: flick.contentY
                    Accessible.role: Accessible.Graphic
                    Accessible.name: view.board.chosen === "" ? qsTr("Everybody's work over time") : view.board.title
                }
                FocusFrame {
                    id: frame

                    visible: picture.activeFocus
                }
                Flickable {
                    id: flick

                    objectName: "lanesFlick"
                    anchors.fill: picture
                    contentWidth: view.headWidth + view.board.span / 60 * view.minute + Theme.space
                    contentHeight: view.headHeight + view.board.lanes * view.lane
                    boundsBehavior: Flickable.StopAtBounds

                    Item {
                        width: Math.max(flick.width, flick.contentWidth)
                        height: Math.max(flick.height, flick.contentHeight)

                        TapHandler {
                            onTapped: point => view.tapped(picture.taskAt(point.position.x - flick.contentX, point.position.y - flick.contentY))
                        }
                        PinchHandler {
                            id: pinch

                            property real from: 10

                            target: null
                            onActiveChanged: {
                                if (active)
                                    from = view.minute
                            }
                            onActiveScaleChanged: {
                                if (active)
                                    view.zoom(from * activeScale / view.minute)
                            }
                        }
                    }
                }
            }
            LaneCard {
                Layout.fillWidth: true
                visible: !view.atTable
                board: view.board
                onHandWanted: takers.open()
                onBackWanted: view.room.desk.handOver(view.board.quilt, view.board.zone, "")
            }
        }
    }
    // At the table letters are large: there the lanes keep the screen, and the card lies over them.
    Sheet {
        id: detail

        objectName: "laneDetail"
        atTable: true
        title: view.board.zone === "" ? qsTr("This work") : view.board.zone.slice(view.board.zone.lastIndexOf(".") + 1)

        LaneCard {
            width: parent.width
            board: view.board
            atTable: true
            border.width: 0
            onHandWanted: {
                detail.close()
                takers.open()
            }
            onBackWanted: {
                detail.close()
                view.room.desk.handOver(view.board.quilt, view.board.zone, "")
            }
        }
    }
    TakersSheet {
        id: takers

        board: view.board
        atTable: view.atTable
        onTaken: person => view.room.desk.handOver(view.board.quilt, view.board.zone, person)
    }
}
