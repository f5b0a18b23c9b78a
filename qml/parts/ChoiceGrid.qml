import QtQuick
import Bastewright.Theme

// Choices at the table, in two columns where there is room, all of one size. A positioner, not a
// layout: choices come and go while one of them is being tapped.
Grid {
    id: grid

    readonly property real choiceWidth: (width - (columns - 1) * columnSpacing) / columns
    readonly property real choiceHeight: {
        let most = 0
        for (let i = 0; i < children.length; ++i)
            if (children[i].visible)
                most = Math.max(most, children[i].implicitHeight)
        return most
    }

    columns: width > 18 * Theme.tableText ? 2 : 1
    columnSpacing: Theme.gap
    rowSpacing: Theme.gap
}
