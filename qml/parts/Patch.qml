import QtQuick
import Bastewright.Theme

// A plain sheet of paper to lay things on.
Rectangle {
    color: Theme.paper
    radius: Theme.radius
    border.width: Theme.highContrast ? Theme.line : 0
    border.color: Theme.edge
}
