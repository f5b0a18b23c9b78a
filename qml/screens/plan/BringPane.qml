pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What the session needs, what is on hand, what is to be bought.
Flickable {
    id: pane

    required property PlanPresenter plan

    signal whyWanted(figure: string)

    objectName: "bring"
    contentHeight: column.implicitHeight
    clip: true
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: column

        width: pane.width
        spacing: 0

        Column {
            width: pane.width
            spacing: Theme.gap
            bottomPadding: Theme.gap

            Words {
                width: parent.width
                text: pane.plan.suppliesText
                font.bold: true
            }
            Words {
                width: parent.width
                visible: text !== ""
                text: pane.plan.backingText
            }
            Words {
                width: parent.width
                visible: text !== ""
                text: pane.plan.battingText
            }
        }
        Repeater {
            model: pane.plan.supplies

            Item {
                id: row

                required property string item
                required property string need
                required property string have
                required property string buy
                required property string unit
                required property bool lacking
                required property string figure
                required property string note

                width: pane.width
                height: Math.max(lines.implicitHeight + Theme.gap * 1.4, reason.visible ? reason.height : 0)

                Column {
                    id: lines

                    anchors.left: parent.left
                    y: Theme.gap * 0.7
                    width: parent.width - (reason.visible ? reason.width : 0)

                    Words {
                        width: parent.width
                        text: row.unit === "" ? row.item : qsTr("%1 (%2)").arg(row.item).arg(row.unit)
                        font.bold: true
                    }
                    // What is to be bought stands out by its weight: it is no fault.
                    Flow {
                        width: parent.width
                        spacing: Theme.gap

                        ShortWords {
                            visible: row.lacking
                            text: qsTr("buy %1").arg(row.buy)
                            font.bold: true
                        }
                        ShortWords {
                            text: qsTr("need %1, have %2").arg(row.need).arg(row.have)
                            quiet: true
                        }
                    }
                    Words {
                        width: parent.width
                        visible: text !== ""
                        text: row.note
                        font.pixelSize: Theme.small
                        quiet: true
                    }
                }
                Hair {
                    anchors.bottom: parent.bottom
                    width: parent.width
                }
                Press {
                    id: reason

                    objectName: "whyItem-" + row.figure
                    anchors.right: parent.right
                    anchors.verticalCenter: parent.verticalCenter
                    visible: row.figure !== ""
                    plain: true
                    glyph: "why"
                    Accessible.name: qsTr("Why so much: %1").arg(row.item)
                    onClicked: pane.whyWanted(row.figure)
                }
            }
        }
    }
}
