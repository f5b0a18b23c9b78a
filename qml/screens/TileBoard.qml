import QtQuick
import Bastewright.Quilt
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The zones of the pass on a piece of table, laid as the table lies; scrolls where they would become
// too small for a finger.
Rectangle {
    id: surface

    required property TableBoard board

    signal ticked(zone: string)
    signal takenBack(zone: string)

    readonly property real edgeBand: Theme.tableText * 1.25

    color: Theme.table
    radius: Theme.radius
    border.width: Theme.line * 2
    border.color: Theme.tableLine

    TableWords {
        anchors.horizontalCenter: parent.horizontalCenter
        y: Theme.line * 2
        text: surface.board.edges[0]
    }
    TableWords {
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.line * 2
        text: surface.board.edges[2]
    }
    TableWords {
        anchors.verticalCenter: parent.verticalCenter
        x: surface.edgeBand / 2 - width / 2
        rotation: -90
        text: surface.board.edges[3]
    }
    TableWords {
        anchors.verticalCenter: parent.verticalCenter
        x: parent.width - surface.edgeBand / 2 - width / 2
        rotation: 90
        text: surface.board.edges[1]
    }
    Flickable {
        id: view

        anchors.fill: parent
        anchors.margins: surface.edgeBand
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        interactive: contentWidth > width + 1 || contentHeight > height + 1
        contentWidth: Math.max(width, surface.board.columns * (cellLeast + Theme.gap) - Theme.gap)
        contentHeight: Math.max(height, surface.board.rows * (Theme.tableTarget + Theme.gap) - Theme.gap)

        // A tile holds a name of three characters and a mark beside it.
        readonly property real cellLeast: Math.max(Theme.tableTarget, Theme.tableText * 3.6)
        readonly property real cellWidth: (contentWidth + Theme.gap) / surface.board.columns - Theme.gap
        readonly property real cellHeight: (contentHeight + Theme.gap) / surface.board.rows - Theme.gap

        Repeater {
            model: surface.board.zones

            ZoneTile {
                required property int column
                required property int row

                objectName: "zone-" + zone
                x: column * (view.cellWidth + Theme.gap)
                y: row * (view.cellHeight + Theme.gap)
                width: view.cellWidth
                height: view.cellHeight
                onClicked: surface.ticked(zone)
                onHeldLong: surface.takenBack(zone)
            }
        }
    }
}
