import QtQuick
import Bastewright.Theme

// Text in the hand: wraps, never elides.
Text {
    property bool quiet: false

    font.family: Theme.family
    font.pixelSize: Theme.text
    color: quiet ? Theme.quiet : Theme.ink
    horizontalAlignment: Text.AlignLeft // where reading begins, whatever letters a name has
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
}
