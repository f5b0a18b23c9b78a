pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What the person has to know about the plan, gravest first, each with its cure.
Flickable {
    id: pane

    required property PlanPresenter plan

    objectName: "findings"
    contentHeight: column.implicitHeight
    clip: true
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: column

        width: pane.width
        spacing: Theme.gap

        Column {
            width: pane.width
            spacing: Theme.gap
            bottomPadding: Theme.gap

            Words {
                width: parent.width
                text: pane.plan.findingsText
                font.bold: true
            }
            Words {
                width: parent.width
                visible: text !== ""
                text: pane.plan.boundText
                quiet: true
            }
        }
        Repeater {
            model: pane.plan.findings

            Patch {
                id: row

                required property string level
                required property string text
                required property string cure

                width: pane.width
                height: lines.implicitHeight + 2 * Theme.gap
                color: level === "stop" ? Theme.stop : level === "warn" ? Theme.warn : Theme.paper

                Glyph {
                    id: sign

                    x: Theme.gap
                    y: Theme.gap
                    name: row.level
                    color: Theme.ink
                    width: Theme.large
                    height: width
                }
                Column {
                    id: lines

                    anchors.left: sign.right
                    anchors.leftMargin: Theme.gap
                    anchors.right: parent.right
                    anchors.rightMargin: Theme.gap
                    y: Theme.gap

                    Words {
                        width: parent.width
                        text: row.text
                        font.bold: row.level === "stop"
                    }
                    Words {
                        width: parent.width
                        visible: row.cure !== ""
                        topPadding: Theme.gap * 0.5
                        text: row.cure
                    }
                }
            }
        }
    }
}
