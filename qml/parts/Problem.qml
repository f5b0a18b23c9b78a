import QtQuick
import Bastewright.Theme

// What does not fit, in one sentence; where there is none it takes no room.
Words {
    visible: text !== ""
    font.bold: true
    color: Theme.warnInk
    Accessible.role: Accessible.AlertMessage
    Accessible.name: text
}
