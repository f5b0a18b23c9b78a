pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Every length of cloth with its cuts, one below the other.
Flickable {
    id: view

    required property LayersPresenter layers

    contentHeight: column.implicitHeight
    clip: true
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: column

        width: view.width
        spacing: Theme.space

        Repeater {
            model: view.layers.cloths

            Column {
                id: entry

                required property int index

                width: column.width
                spacing: Theme.gap

                Words {
                    width: parent.width
                    text: view.layers.backingText !== "" ? view.layers.clothName(entry.index) : ""
                    font.bold: true
                }
                LayersPicture {
                    width: parent.width
                    height: Math.min(wanted, Math.max(view.height * 0.6, Theme.target * 3))
                    layers: view.layers
                    what: LayersItem.Cloth
                    cloth: entry.index
                }
            }
        }
    }
}
