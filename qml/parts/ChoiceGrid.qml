import QtQuick.Layouts
import Bastewright.Theme

// Choices at the table, in two columns where there is room.
GridLayout {
    columns: width > 18 * Theme.tableText ? 2 : 1
    columnSpacing: Theme.gap
    rowSpacing: Theme.gap
}
