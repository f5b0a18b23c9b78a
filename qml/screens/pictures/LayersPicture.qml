import QtQuick
import Bastewright.Theme
import Bastewright.View

// A drawing of a layer in the colours of the theme.
LayersItem {
    textSize: Theme.text
    ink: Theme.ink
    paper: Theme.paper
    rest: Theme.ground
    hatch: Theme.edge
    table: Theme.woodDark
    fabric: Theme.highContrast ? "transparent" : Theme.backing
    Accessible.role: Accessible.Graphic
    Accessible.name: what === LayersItem.Batting ? layers.battingText : layers.backingText
}
