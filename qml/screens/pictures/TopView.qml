import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The top as it is measured: blocks, sashing and border follow what is typed; seams are drawn by two
// taps; how crooked it is, exaggerated. Where the words take too much of the room it scrolls.
Flickable {
    id: view

    required property TopDesk desk
    required property PhotoDesk photos

    property bool crooked: false

    readonly property real words: above.height + (caption.visible ? caption.height + Theme.gap : 0) + Theme.gap

    contentHeight: Math.max(height, words + 30 * Theme.density)
    clip: true
    interactive: contentHeight > height + 1
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: above

        width: view.width
        spacing: Theme.gap

        Flow {
            width: parent.width
            spacing: Theme.gap

            Words {
                height: Theme.target
                verticalAlignment: Text.AlignVCenter
                rightPadding: Theme.space
                text: view.desk.sizeText
                font.pixelSize: Theme.title
                font.bold: true
                wrapMode: Text.NoWrap
            }
            Press {
                objectName: "photoAndFabrics"
                glyph: "quilt"
                text: qsTr("Photo and fabrics")
                onClicked: cloth.open()
            }
            Press {
                objectName: "isItSquare"
                glyph: "lean"
                text: qsTr("Is it square?")
                checked: view.crooked
                onClicked: {
                    view.desk.drawing = false
                    view.crooked = !view.crooked
                }
            }
            Press {
                objectName: "drawSeam"
                glyph: "seam"
                text: qsTr("Draw a seam")
                checked: view.desk.drawing
                onClicked: {
                    view.desk.forget()
                    view.crooked = false
                    view.desk.drawing = !view.desk.drawing
                }
            }
            Press {
                objectName: "lastSeam"
                glyph: "erase"
                visible: view.desk.seams > 0
                Accessible.name: qsTr("Without the last seam")
                onClicked: view.desk.removeLastSeam()
            }
        }
        Heading {
            width: parent.width
            visible: view.crooked && text !== ""
            text: view.desk.squareVerdict
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: !view.crooked && !view.desk.drawing ? view.desk.gridText
                  : view.crooked ? (view.desk.squareText === "" ? qsTr("One reading each way says nothing of the corners. Add readings, and measure the diagonals.") : view.desk.squareText)
                  : view.desk.drawing ? (view.desk.told === "" ? qsTr("Tap where a seam begins, then where it ends.") : view.desk.told) : ""
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        Flow {
            width: parent.width
            spacing: Theme.gap
            visible: !view.crooked && !view.desk.drawing && view.desk.gridText !== ""

            Press {
                objectName: "keepMeasured"
                width: Math.min(implicitWidth, parent.width)
                visible: view.desk.gridFits
                glyph: "check"
                text: qsTr("Keep the measured size")
                onClicked: view.desk.keepMeasured()
            }
            Press {
                objectName: "takeGrid"
                width: Math.min(implicitWidth, parent.width)
                text: qsTr("Use the size the blocks make")
                onClicked: view.desk.takeGrid()
            }
        }
    }
    ClothSheet {
        id: cloth

        photos: view.photos
        face: view.desk.face
    }
    TopItem {
        id: picture

        objectName: "topPicture"
        y: above.height + Theme.gap
        width: view.width
        height: view.contentHeight - view.words
        face: view.desk.face
        begun: view.desk.begun
        crooked: view.crooked
        sides: view.crooked ? "" : view.desk.sidesText
        ends: view.crooked ? "" : view.desk.endsText
        textSize: Theme.small
        line: Theme.line
        cloth: Theme.paper
        patch: Theme.soft
        ink: Theme.ink
        accent: Theme.accent
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("The top, %1").arg(view.desk.sizeText)

        TapHandler {
            enabled: view.desk.drawing
            onTapped: point => {
                const at = picture.placeAt(point.position.x, point.position.y)
                view.desk.tap(at.x, at.y)
            }
        }
    }
    Words {
        id: caption

        y: view.contentHeight - height
        width: view.width
        visible: view.crooked
        text: picture.exaggeration > 1 ? qsTr("What is off is drawn %1 times as large; dashed: square. %2").arg(picture.exaggeration).arg(view.desk.reasonText)
                                       : view.desk.reasonText
        font.pixelSize: Theme.small
        quiet: true
    }
}
