pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The ways to buy the batting, each in a sentence; all but the plan's own can be used instead.
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
            model: view.layers.battingChoices

            Column {
                id: row

                required property string about
                required property bool chosen
                required property int index

                width: column.width
                spacing: Theme.gap * 0.4
                bottomPadding: Theme.gap

                Words {
                    width: parent.width
                    text: row.about
                    font.bold: row.chosen
                }
                Words {
                    width: parent.width
                    visible: row.chosen
                    text: qsTr("This is the plan.")
                    quiet: true
                }
                Press {
                    objectName: "takeBatting" + row.index
                    width: Math.min(implicitWidth, parent.width)
                    visible: !row.chosen
                    text: qsTr("Buy it this way")
                    onClicked: view.layers.takeBatting(row.index)
                }
            }
        }
    }
}
