import QtQuick
import Bastewright.Theme

// A plain piece of ground to lay things on.
Rectangle {
    color: Theme.paper
    radius: Theme.radius
    border.width: Theme.line
    border.color: Theme.edge
}
