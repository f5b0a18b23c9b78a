import QtQuick
import Bastewright.Theme

// A hair line between two parts of a sheet.
Rectangle {
    height: Math.max(1, Math.round(Theme.line * 0.8))
    color: Theme.hair
    border.width: 0
}
