pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// How the pins are placed: the sentence, the two ribbons, and the row at hand.
Patch {
    id: card

    required property RowsDesk desk

    objectName: "rowsCard"
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
                    width: parent.width - back.width - next.width - shut.width
                    text: card.desk.rowTitle
                    font.pixelSize: Theme.large
                    font.bold: true
                }
                Press {
                    id: back

                    objectName: "previousRow"
                    visible: card.desk.inRows
                    width: visible ? implicitWidth : 0
                    plain: true
                    glyph: "back"
                    Accessible.name: qsTr("Previous row")
                    onClicked: card.desk.step(-1)
                }
                Press {
                    id: next

                    objectName: "nextRow"
                    visible: card.desk.inRows
                    width: visible ? implicitWidth : 0
                    plain: true
                    glyph: "forward"
                    Accessible.name: qsTr("Next row")
                    onClicked: card.desk.step(1)
                }
                Press {
                    id: shut

                    objectName: "closeRows"
                    plain: true
                    glyph: "cross"
                    Accessible.name: qsTr("Close")
                    onClicked: card.desk.close()
                }
            }
            Words {
                width: parent.width
                visible: text !== ""
                text: card.desk.rowText
            }
            Words {
                objectName: "rowsSentence"
                width: parent.width
                text: card.desk.title
                font.bold: true
            }
            Words {
                width: parent.width
                visible: card.desk.inRows
                text: card.desk.marksTitle
                quiet: true
            }
            RibbonsItem {
                width: parent.width
                height: visible ? 14 * Theme.text : 0
                visible: card.desk.inRows
                desk: card.desk
                textSize: Theme.small
                Accessible.role: Accessible.Graphic
                Accessible.name: card.desk.marksTitle
            }
            Repeater {
                model: card.desk.details

                Words {
                    required property string modelData

                    width: column.width
                    text: modelData
                }
            }
        }
    }
}
