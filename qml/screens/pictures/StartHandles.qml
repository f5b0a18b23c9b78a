pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Quilt
import Bastewright.Theme
import Bastewright.View

// Where basting can begin, on the picture: the start that is planned is dragged to another, or
// another is tapped.
Repeater {
    id: handles

    required property WayDesk ways
    required property QuiltPicture picture
    property bool active: false

    // Asked anew whenever the picture's size or its quilt changes.
    function spot(x: real, y: real, width: real, height: real, quilt: plannedQuilt): point {
        return handles.picture.pixelsAt(x, y)
    }

    function spotOf(handle: var): point {
        return handle.at
    }

    // How far a start steps aside of those before it, across the line they lie on, where they would
    // cover each other. The planned one is the first and stays in its place.
    function aside(index: int, at: point): point {
        let near = 0, level = false
        for (let i = 0; i < index; ++i) {
            const before = handles.itemAt(i)
            if (!before) // the list is being taken down
                continue
            const other = spotOf(before)
            if (Math.abs(other.x - at.x) >= Theme.target || Math.abs(other.y - at.y) >= Theme.target)
                continue
            ++near
            level = Math.abs(other.x - at.x) > Math.abs(other.y - at.y)
        }
        const by = near * (Theme.target + Theme.gap)
        return level ? Qt.point(0, by) : Qt.point(by, 0)
    }

    model: active ? ways.starts : null

    AbstractButton {
        id: handle

        required property int index
        required property real x0
        required property real y0
        required property string title
        required property int row
        required property bool chosen

        property point moved: Qt.point(0, 0)
        readonly property point at: handles.spot(x0, y0, handles.picture.width, handles.picture.height, handles.picture.quilt)

        readonly property point beside: handles.aside(index, at)

        objectName: "start" + index
        x: at.x - width / 2 + beside.x + moved.x
        y: at.y - height / 2 + beside.y + moved.y
        z: chosen ? 2 : 1
        width: Theme.target
        height: Theme.target
        focusPolicy: Qt.StrongFocus
        Accessible.name: title
        Accessible.onPressAction: handle.clicked()
        Keys.onReturnPressed: handle.clicked()
        onClicked: {
            if (!chosen)
                handles.ways.take(row)
        }

        DragHandler {
            enabled: handle.chosen
            target: null
            grabPermissions: PointerHandler.CanTakeOverFromAnything
            onActiveTranslationChanged: {
                if (active)
                    handle.moved = Qt.point(activeTranslation.x, activeTranslation.y)
            }
            onActiveChanged: {
                if (active)
                    return
                const to = handles.picture.inchesAt(handle.x + handle.width / 2, handle.y + handle.height / 2)
                handle.moved = Qt.point(0, 0)
                handles.ways.startNear(to.x, to.y)
            }
        }
        background: Rectangle {
            radius: width / 2
            color: handle.chosen ? Theme.accent : Theme.paper
            border.width: Theme.line * 2
            border.color: Theme.accent

            FocusFrame {
                radius: width / 2
                visible: handle.visualFocus
            }
        }
        contentItem: Item {
            Glyph {
                anchors.centerIn: parent
                name: "start"
                color: handle.chosen ? Theme.accentInk : Theme.accent
                width: Theme.text * 1.2
                height: width
            }
        }
    }
}
