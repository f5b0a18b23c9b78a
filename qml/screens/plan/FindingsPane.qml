pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What the person has to know about the plan, gravest first, each with its cure: a button where the
// program can make the change. Then what would help most, to try.
Flickable {
    id: pane

    required property PlanPresenter plan
    required property Remedies remedies

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
            model: pane.remedies.findings

            Patch {
                id: row

                required property int index
                required property string level
                required property string text
                required property string cure
                required property string first
                required property string second

                width: pane.width
                height: lines.implicitHeight + 2 * Theme.gap
                color: level === "stop" ? Theme.stop : level === "warn" ? Theme.warn : Theme.paper

                Glyph {
                    id: sign

                    anchors.left: parent.left
                    anchors.leftMargin: Theme.gap
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
                    Flow {
                        width: parent.width
                        topPadding: Theme.gap * 0.5
                        spacing: Theme.gap
                        visible: row.first !== ""

                        Press {
                            objectName: "cure" + row.index
                            width: Math.min(implicitWidth, parent.width)
                            text: row.first
                            enabled: !pane.plan.busy
                            onClicked: pane.remedies.cure(row.index, 0)
                        }
                        Press {
                            objectName: "cure" + row.index + "b"
                            width: Math.min(implicitWidth, parent.width)
                            visible: row.second !== ""
                            text: row.second
                            enabled: !pane.plan.busy
                            onClicked: pane.remedies.cure(row.index, 1)
                        }
                    }
                }
            }
        }
        HelpList {
            width: pane.width
            plan: pane.plan
            remedies: pane.remedies
        }
    }
}
