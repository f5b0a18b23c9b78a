import QtQuick
import Bastewright.Theme

// Text in the hand: wraps, never elides.
Text {
    property bool quiet: false

    font.family: Theme.family
    font.pixelSize: Theme.text
    color: quiet ? Theme.quiet : Theme.ink
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
}
