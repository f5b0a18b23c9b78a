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
        spacing: Theme.gap * 0.6

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

            Patch {
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
                height: Math.max(lines.implicitHeight + 2 * Theme.gap, reason.visible ? reason.height + Theme.line * 2 : 0)
                color: row.lacking ? Theme.warn : Theme.paper

                Column {
                    id: lines

                    anchors.left: parent.left
                    anchors.leftMargin: Theme.gap
                    y: Theme.gap
                    width: parent.width - 2 * Theme.gap - (reason.visible ? reason.width : 0)

                    Words {
                        width: parent.width
                        text: row.unit === "" ? row.item : qsTr("%1 (%2)").arg(row.item).arg(row.unit)
                        font.bold: true
                    }
                    Words {
                        width: parent.width
                        text: row.lacking ? qsTr("need %1, have %2: buy %3").arg(row.need).arg(row.have).arg(row.buy)
                                        : qsTr("need %1, have %2").arg(row.need).arg(row.have)
                    }
                    Words {
                        width: parent.width
                        visible: text !== ""
                        text: row.note
                        quiet: !row.lacking // on the colour of a warning it would be too pale
                    }
                }
                Press {
                    id: reason

                    objectName: "whyItem-" + row.figure
                    anchors.right: parent.right
                    anchors.verticalCenter: parent.verticalCenter
                    anchors.margins: Theme.line
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
