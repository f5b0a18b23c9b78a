pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The pattern of one kind of block, with the distances of every point from its head-left corner.
Patch {
    id: card

    required property PatternDesk desk

    objectName: "patternCard"
    border.color: Theme.strongEdge

    Flickable {
        anchors.fill: parent
        anchors.margins: Theme.gap
        contentHeight: column.implicitHeight
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: column

            width: parent.width
            spacing: Theme.gap

            Row {
                width: parent.width

                Words {
                    width: parent.width - next.width - shut.width
                    text: card.desk.title
                    font.pixelSize: Theme.large
                    font.bold: true
                }
                Press {
                    id: next

                    objectName: "nextPattern"
                    plain: true
                    glyph: "forward"
                    Accessible.name: qsTr("Next pattern")
                    onClicked: card.desk.step(1)
                }
                Press {
                    id: shut

                    objectName: "closePattern"
                    plain: true
                    glyph: "cross"
                    Accessible.name: qsTr("Close the pattern")
                    onClicked: card.desk.close()
                }
            }
            Words {
                width: parent.width
                text: card.desk.text
                quiet: true
            }
            PatternItem {
                width: parent.width
                height: Math.min(width, 90 * Theme.density)
                desk: card.desk
                textSize: Theme.small
                Accessible.role: Accessible.Graphic
                Accessible.name: card.desk.title
            }
            Words {
                width: parent.width
                text: qsTr("From its head-left corner to the middle of each:")
            }
            Repeater {
                model: card.desk.points

                Words {
                    required property int number
                    required property string fromLeft
                    required property string fromHead

                    width: column.width
                    text: qsTr("%1:  %2 from the left, %3 from the head").arg(number).arg(fromLeft).arg(fromHead)
                }
            }
        }
    }
}
