import QtQuick
import Bastewright.Theme

// Text for an arm's length.
Text {
    font.family: Theme.family
    font.pixelSize: Theme.tableText
    color: Theme.ink
    horizontalAlignment: Text.AlignLeft // where reading begins, whatever letters a name has
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
}
