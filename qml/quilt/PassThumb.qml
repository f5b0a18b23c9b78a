import QtQuick
import Bastewright.Theme

// A pass as a small quilt: what is sewn before it, and what it bastes in its yellow frame.
QuiltPicture {
    figures: false
    points: false
    tappable: false
    textSize: Theme.small * 0.5
}
