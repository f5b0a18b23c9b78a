pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// A photo over the whole screen: its four corners are put onto the quilt's, then it is the quilt's.
FocusScope {
    id: view

    required property PhotoDesk photos

    property int held: -1 // the corner that is being moved

    readonly property list<string> names: [qsTr("Corner at the head, left"), qsTr("Corner at the head, right"),
        qsTr("Corner at the foot, right"), qsTr("Corner at the foot, left")]

    readonly property bool wide: width > height * 1.2 // what is pressed stands beside the photo
    readonly property real aside: wide ? below.width + Theme.gap : 0

    visible: photos.picking
    onVisibleChanged: {
        held = -1
        if (visible)
            handles.itemAt(0).forceActiveFocus(Qt.TabFocusReason)
    }
    Keys.onEscapePressed: view.photos.cancel()

    Rectangle {
        anchors.fill: parent
        color: Theme.ground
    }
    Column {
        id: above

        width: parent.width - view.aside
        spacing: Theme.gap

        Heading {
            width: parent.width
            text: qsTr("Put the four marks on the corners of your quilt")
        }
        Words {
            width: parent.width
            text: view.photos.sound ? qsTr("The head of the quilt is at the top. Turn the photo until it is.")
                                    : qsTr("The corners have crossed. Move each mark back to its own corner.")
            color: view.photos.sound ? Theme.quiet : Theme.warnInk
            font.bold: !view.photos.sound
        }
    }
    CornersItem {
        id: picture

        objectName: "photoCorners"
        y: above.height + Theme.gap
        width: parent.width - view.aside
        height: parent.height - y - (view.wide ? 0 : below.height + Theme.gap)
        photos: view.photos
        held: view.held
        lens: Math.min(38 * Theme.density, width / 3, height / 3)
        margin: Theme.target / 2
        line: Theme.line
        ink: Theme.nowInk
        mark: Theme.now
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("The photo and the corners of the quilt")

        Repeater {
            id: handles

            model: 4

            AbstractButton {
                id: handle

                required property int index

                readonly property point at: view.photos.corners[index]
                property point from

                function by(dx: real, dy: real) {
                    view.held = index
                    view.photos.moveCorner(index, Qt.point(at.x + dx, at.y + dy))
                }

                objectName: "corner" + index
                x: picture.place.x + at.x * picture.place.width - width / 2
                y: picture.place.y + at.y * picture.place.height - height / 2
                width: Theme.target
                height: Theme.target
                focusPolicy: Qt.StrongFocus
                Accessible.name: view.names[index]
                Accessible.description: qsTr("Arrows move it, with Shift in larger steps.")
                onActiveFocusChanged: if (!activeFocus && view.held === index) view.held = -1
                Keys.onPressed: event => {
                    const step = event.modifiers & Qt.ShiftModifier ? 0.03 : 0.003
                    const dx = event.key === Qt.Key_Left ? -step : event.key === Qt.Key_Right ? step : 0
                    const dy = event.key === Qt.Key_Up ? -step : event.key === Qt.Key_Down ? step : 0
                    event.accepted = dx !== 0 || dy !== 0
                    if (event.accepted)
                        handle.by(dx, dy)
                }

                DragHandler {
                    target: null
                    dragThreshold: 0
                    grabPermissions: PointerHandler.CanTakeOverFromAnything
                    onActiveChanged: {
                        handle.from = handle.at
                        view.held = active ? handle.index : -1
                    }
                    onActiveTranslationChanged: {
                        if (active)
                            view.photos.moveCorner(handle.index, Qt.point(handle.from.x + activeTranslation.x / picture.place.width,
                                                                          handle.from.y + activeTranslation.y / picture.place.height))
                    }
                }
                // A ring of a light and a dark: what lies under its middle stays in sight, and the ring
                // on every photo.
                background: Rectangle {
                    radius: width / 2
                    color: "transparent"
                    border.width: Theme.line * 5
                    border.color: Theme.ink

                    Rectangle {
                        anchors.fill: parent
                        anchors.margins: Theme.line
                        radius: width / 2
                        color: "transparent"
                        border.width: Theme.line * 3
                        border.color: Theme.dark ? Theme.nowInk : Theme.now
                    }
                    FocusFrame {
                        radius: width / 2
                        visible: handle.visualFocus
                    }
                }
            }
        }
    }
    Flow {
        id: below

        anchors.bottom: parent.bottom
        anchors.right: parent.right
        width: view.wide ? Math.max(take.implicitWidth, turn.implicitWidth) : parent.width
        spacing: Theme.gap

        Press {
            id: take

            objectName: "takePhoto"
            main: true
            glyph: "check"
            enabled: view.photos.sound
            text: qsTr("Use this photo")
            onClicked: view.photos.take()
        }
        Press {
            id: turn

            objectName: "turnPhoto"
            glyph: "turn"
            text: qsTr("Turn the photo")
            onClicked: view.photos.turn()
        }
        Press {
            objectName: "cancelPhoto"
            text: qsTr("Cancel")
            onClicked: view.photos.cancel()
        }
    }
}
