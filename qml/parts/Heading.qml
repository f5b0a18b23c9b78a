import QtQuick
import Bastewright.Theme

// Words that name what follows them, here and to who listens.
Words {
    font.pixelSize: Theme.large
    font.bold: true
    Accessible.role: Accessible.Heading
    Accessible.name: text
}
