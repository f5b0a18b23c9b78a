import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// One page at a time: turned by a swipe, by buttons or by keys.
FocusScope {
    id: pages

    required property SheetPreview preview

    Keys.onPressed: event => {
        if (event.key === Qt.Key_Right || event.key === Qt.Key_PageDown)
            pages.preview.page += 1
        else if (event.key === Qt.Key_Left || event.key === Qt.Key_PageUp)
            pages.preview.page -= 1
        else if (event.key === Qt.Key_Down)
            pages.preview.stepPart(1)
        else if (event.key === Qt.Key_Up)
            pages.preview.stepPart(-1)
        else if (event.key === Qt.Key_Home)
            pages.preview.page = 0
        else if (event.key === Qt.Key_End)
            pages.preview.page = pages.preview.pages - 1
        else
            return
        event.accepted = true
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: Theme.gap
        LayoutMirroring.enabled: false // pages lie as the paper does
        LayoutMirroring.childrenInherit: true

        Item {
            id: room

            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredHeight: 1 // not the height it began with

            SheetPicture {
                objectName: "sheetPicture"
                anchors.centerIn: parent
                width: Math.floor(Math.min(room.width, room.height / pages.preview.tallness))
                height: Math.floor(width * pages.preview.tallness)
                visible: pages.preview.pages > 0
                focus: true
                activeFocusOnTab: true
                preview: pages.preview
                Accessible.role: Accessible.Graphic
                Accessible.name: pages.preview.partText

                FocusFrame {
                    visible: parent.activeFocus
                    radius: 0
                }
            }
            DragHandler {
                id: swipe

                target: null
                yAxis.enabled: false
                onActiveChanged: {
                    if (active)
                        return
                    const far = swipe.persistentTranslation.x
                    swipe.persistentTranslation = Qt.vector2d(0, 0)
                    if (Math.abs(far) > 8 * Theme.density)
                        pages.preview.page += far < 0 ? 1 : -1
                }
            }
        }
        Words {
            Layout.fillWidth: true
            horizontalAlignment: Text.AlignHCenter
            text: pages.preview.partText
            font.bold: true
        }
        RowLayout {
            Layout.alignment: Qt.AlignHCenter
            spacing: Theme.gap

            Press {
                objectName: "pageBack"
                glyph: "back"
                enabled: pages.preview.page > 0
                Accessible.name: qsTr("The page before")
                onClicked: pages.preview.page -= 1
            }
            Words {
                Layout.preferredWidth: 30 * Theme.density
                horizontalAlignment: Text.AlignHCenter
                text: pages.preview.pageText
            }
            Press {
                objectName: "pageOn"
                glyph: "forward"
                enabled: pages.preview.page < pages.preview.pages - 1
                Accessible.name: qsTr("The next page")
                onClicked: pages.preview.page += 1
            }
            Press {
                glyph: "person"
                enabled: pages.preview.page < pages.preview.pages - 1
                Accessible.name: qsTr("The next person's sheets")
                onClicked: pages.preview.stepPart(1)
            }
        }
    }
}
