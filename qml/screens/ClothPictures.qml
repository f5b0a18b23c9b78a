pragma ComponentBehavior: Bound

import QtQuick
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

            LayersPicture {
                required property int index

                width: column.width
                height: wanted
                layers: view.layers
                what: LayersItem.Cloth
                cloth: index
            }
        }
    }
}
