pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Every main figure of the plan; each opens to its why.
ListView {
    id: pane

    required property WhyDesk why

    signal whyWanted(figure: string)

    model: why.figures
    clip: true
    spacing: Theme.gap
    boundsBehavior: Flickable.StopAtBounds

    delegate: Opener {
        required property string figure
        required property string value
        required title

        objectName: "why-" + figure
        width: pane.width
        glyph: "why"
        summary: value
        onClicked: pane.whyWanted(figure)
    }
}
