import QtQuick
import Bastewright.Quilt
import Bastewright.Theme
import Bastewright.View

// Shows on the picture which row is told of beside it.
Rectangle {
    id: mark

    required property QuiltPicture picture
    required property RowsDesk rows

    readonly property rect area: rows.area
    readonly property point from: spot(area.x, area.y, picture.width, picture.height, picture.quilt)
    readonly property point to: spot(area.x + area.width, area.y + area.height, picture.width, picture.height, picture.quilt)

    // Asked anew whenever the picture's size or its quilt changes.
    function spot(x: real, y: real, width: real, height: real, quilt: plannedQuilt): point {
        return mark.picture.pixelsAt(x, y)
    }

    // Where the head points to the left the corners change places.
    x: Math.min(from.x, to.x)
    y: Math.min(from.y, to.y)
    width: Math.abs(to.x - from.x)
    height: Math.abs(to.y - from.y)
    color: "transparent"
    border.width: Theme.line * 5
    border.color: Theme.accent
}
