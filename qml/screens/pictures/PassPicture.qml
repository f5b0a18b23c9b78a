import QtQuick
import Bastewright.Parts
import Bastewright.Quilt
import Bastewright.Theme
import Bastewright.View

// The quilt on its table pass by pass, with what is touched on it, and the passes to step through.
Item {
    id: view

    required property Workroom room
    required property string pane

    signal handWanted

    Item {
        id: ground

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: strip.visible ? strip.top : parent.bottom
        anchors.bottomMargin: strip.visible ? Theme.gap : 0

        QuiltPicture {
            id: picture

            objectName: "picture"
            anchors.fill: parent
            anchors.margins: Theme.line
            quilt: view.room.plan.quilt
            pass: view.room.pass.number
            zone: view.room.pass.zone
            opacity: view.room.plan.busy ? 0.6 : 1
            Accessible.role: Accessible.Graphic
            Accessible.name: view.room.pass.title
            zones: view.pane !== "basting"
            onZoneTapped: zone => view.room.pass.zone = zone === view.room.pass.zone ? "" : zone
            onPlaceTapped: (x, y) => view.room.rows.look(x, y)
        }
        StartHandles {
            active: view.pane === "ways"
            ways: view.room.ways
            picture: picture
        }
        RowMark {
            picture: picture
            rows: view.room.rows
            visible: view.pane === "basting" && view.room.rows.shown && view.room.rows.inRows
        }
        RowsCard {
            desk: view.room.rows
            visible: view.pane === "basting" && view.room.rows.shown
            anchors.right: parent.right
            anchors.top: parent.top
            anchors.bottom: parent.bottom
            width: Math.min(parent.width, Math.max(Math.min(parent.width * 0.55, 80 * Theme.density), 20 * Theme.text))
        }
        Press {
            objectName: "showRows"
            anchors.left: parent.left
            anchors.bottom: parent.bottom
            anchors.margins: Theme.gap
            width: Math.min(implicitWidth, parent.width - 2 * Theme.gap)
            visible: view.pane === "basting" && !view.room.rows.shown && view.room.rows.any
            glyph: "pin"
            text: qsTr("Tap a row to see how it is placed")
            onClicked: view.room.rows.step(1)
        }
        Words {
            anchors.centerIn: parent
            width: parent.width - 2 * Theme.space
            visible: !view.room.plan.planned
            horizontalAlignment: Text.AlignHCenter
            text: view.room.plan.busy ? qsTr("Planning …") : qsTr("There is nothing to draw yet.")
            font.pixelSize: Theme.large
        }
        ZoneCard {
            pass: view.room.pass
            onHandWanted: {
                if (view.room.lanes.chooseZone(view.room.plan.quiltIndex, view.room.pass.zone))
                    view.handWanted()
            }
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            anchors.margins: Theme.gap
            width: Math.min(parent.width - 2 * Theme.gap, Math.max(75 * Theme.density, 20 * Theme.text))
        }
    }
    PassStrip {
        id: strip

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        pass: view.room.pass
        plan: view.room.plan
        roomy: view.height > 3 * implicitHeight
    }
}
