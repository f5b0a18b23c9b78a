pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// What lies past the top in every pass, and what squaring and creep leave of it.
Flickable {
    id: view

    required property LayersPresenter layers

    contentHeight: column.implicitHeight
    clip: true
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: column

        width: view.width
        spacing: Theme.gap

        Repeater {
            model: view.layers.spare

            Patch {
                id: row

                required property string title
                required property string level
                required property string text
                required property string cure

                width: column.width
                height: lines.implicitHeight + 2 * Theme.gap
                color: level === "stop" ? Theme.stop : level === "warn" ? Theme.warn : Theme.paper

                Glyph {
                    id: mark

                    anchors.left: parent.left
                    anchors.leftMargin: Theme.gap
                    y: Theme.gap
                    name: row.level === "fine" ? "check" : row.level
                    color: Theme.ink
                    width: Theme.title
                    height: width
                }
                Column {
                    id: lines

                    anchors.left: mark.right
                    anchors.leftMargin: Theme.gap
                    y: Theme.gap
                    width: parent.width - mark.width - 3 * Theme.gap

                    Words {
                        width: parent.width
                        text: row.level === "stop" ? qsTr("%1: too small").arg(row.title)
                              : row.level === "warn" ? qsTr("%1: check first").arg(row.title) : qsTr("%1: large enough").arg(row.title)
                        font.bold: true
                    }
                    Words {
                        width: parent.width
                        text: row.text
                        font.pixelSize: Theme.large
                    }
                    Words {
                        width: parent.width
                        visible: row.cure !== ""
                        text: row.cure
                    }
                }
            }
        }
    }
}
