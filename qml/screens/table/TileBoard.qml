pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Quilt
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The zones of the pass on a piece of table, laid as the table lies; scrolls where they would become
// too small for a finger.
Item {
    id: surface

    required property TableBoard board

    signal ticked(zone: string)
    signal takenBack(zone: string)

    readonly property real edgeBand: Math.round(Theme.tableText * 1.4)
    // The least width at which no tile is too small for a finger and its letters.
    readonly property real needed: board.columns * (cellLeast + Theme.gap) - Theme.gap + leftRim + rightRim
    // The height at which all rows are seen.
    readonly property real neededHeight: board.rows * (Theme.tableTarget + Theme.gap) - Theme.gap + topRim + bottomRim
    readonly property real cellLeast: Math.max(Theme.tableTarget, Theme.tableText * 2.3)

    readonly property real topRim: board.edges[0] === "" ? Theme.gap : edgeBand
    readonly property real rightRim: board.edges[1] === "" ? Theme.gap : edgeBand
    readonly property real bottomRim: board.edges[2] === "" ? Theme.gap : edgeBand
    readonly property real leftRim: board.edges[3] === "" ? Theme.gap : edgeBand

    // A wall: a thick bar along the side.
    component Wall: Rectangle {
        color: Theme.ink
    }
    // What lies left of the table is left in every language.
    Rectangle {
        anchors.fill: parent
        LayoutMirroring.enabled: false
        LayoutMirroring.childrenInherit: true
        color: Theme.wood
        radius: Theme.radius
        border.width: Theme.line * 2
        border.color: Theme.woodDark

        Wall { visible: surface.board.walls[0]; width: parent.width; height: Theme.gap * 0.8 }
        Wall { visible: surface.board.walls[2]; width: parent.width; height: Theme.gap * 0.8; anchors.bottom: parent.bottom }
        Wall { visible: surface.board.walls[3]; height: parent.height; width: Theme.gap * 0.8 }
        Wall { visible: surface.board.walls[1]; height: parent.height; width: Theme.gap * 0.8; anchors.right: parent.right }

        TableWords {
            anchors.horizontalCenter: parent.horizontalCenter
            y: surface.topRim / 2 - height / 2
            text: surface.board.edges[0]
        }
        TableWords {
            anchors.horizontalCenter: parent.horizontalCenter
            y: parent.height - surface.bottomRim / 2 - height / 2
            text: surface.board.edges[2]
        }
        TableWords {
            anchors.verticalCenter: parent.verticalCenter
            x: surface.leftRim / 2 - width / 2
            rotation: -90
            text: surface.board.edges[3]
        }
        TableWords {
            anchors.verticalCenter: parent.verticalCenter
            x: parent.width - surface.rightRim / 2 - width / 2
            rotation: 90
            text: surface.board.edges[1]
        }
        Flickable {
            id: view

            anchors.fill: parent
            anchors.topMargin: surface.topRim
            anchors.rightMargin: surface.rightRim
            anchors.bottomMargin: surface.bottomRim
            anchors.leftMargin: surface.leftRim
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            interactive: contentWidth > width + 1 || contentHeight > height + 1
            contentWidth: Math.max(width, surface.needed - surface.leftRim - surface.rightRim)
            contentHeight: Math.max(height, surface.board.rows * (Theme.tableTarget + Theme.gap) - Theme.gap)

            // Whole pixels: the last frame of a row would be cut off by a fraction.
            readonly property real cellWidth: Math.floor((contentWidth + Theme.gap) / surface.board.columns) - Theme.gap
            readonly property real cellHeight: Math.floor((contentHeight + Theme.gap) / surface.board.rows) - Theme.gap

            Repeater {
                model: surface.visible ? surface.board.zones : null // a hidden half costs nothing

                ZoneTile {
                    required property int column
                    required property int row

                    objectName: "zone-" + zone
                    face: surface.board.face
                    quarter: surface.board.quarter
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
}
