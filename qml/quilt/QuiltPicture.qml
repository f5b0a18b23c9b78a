import QtQuick
import Bastewright.Theme
import Bastewright.View

// The quilt on its table in the colours of the theme. Tapped zones are reported; stepping to another
// pass moves the table under the quilt so that the eye can follow.
QuiltItem {
    id: picture

    property bool tappable: true
    property bool zones: true // a tap means a zone, else a place

    signal zoneTapped(zone: string)
    signal placeTapped(x: real, y: real) // in inches of the quilt

    family: Theme.family
    textSize: Theme.small
    ground: Theme.ground
    paper: Theme.paper
    ink: Theme.ink
    wood: Theme.wood
    woodDark: Theme.woodDark
    backing: Theme.backing
    batting: Theme.batting
    accent: Theme.accent
    now: Theme.now
    nowInk: Theme.nowInk

    onPassChanged: slide.restart()

    NumberAnimation {
        id: slide

        target: picture
        property: "moved"
        from: 0
        to: 1
        duration: Theme.calm
        easing.type: Easing.InOutQuad
    }
    TapHandler {
        enabled: picture.tappable
        onTapped: point => {
            const at = picture.inchesAt(point.position.x, point.position.y)
            if (picture.zones)
                picture.zoneTapped(picture.zoneAt(point.position.x, point.position.y))
            else
                picture.placeTapped(at.x, at.y)
        }
    }
}
