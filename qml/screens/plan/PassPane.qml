import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// How the quilt lies and is held in the pass looked at.
Flickable {
    id: pane

    required property PassPresenter pass

    contentHeight: text.implicitHeight
    clip: true
    boundsBehavior: Flickable.StopAtBounds

    Words {
        id: text

        width: pane.width
        text: pane.pass.steps
        font.pixelSize: Theme.large
        lineHeight: 1.25
    }
}
