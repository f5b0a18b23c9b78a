import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// A quilt on the shelf: its face, its size, how far it is; and what can be done with it.
AbstractButton {
    id: card

    required property real job
    required property string title
    required property string size
    required property string stage
    required property string stageText
    required property quiltFace face

    signal opened
    signal copied
    signal saved
    signal shared
    signal removed
    signal sessionsWanted

    objectName: "card"
    focusPolicy: Qt.StrongFocus
    Accessible.name: title + ", " + size + ", " + stageText
    Accessible.onPressAction: card.clicked()
    Keys.onReturnPressed: card.clicked()
    Keys.onEnterPressed: card.clicked()
    onClicked: card.opened()

    background: Patch {
        border.color: Theme.frame
        color: card.down ? Theme.soft : Theme.paper

        FocusFrame {
            visible: card.visualFocus
        }
    }
    contentItem: Item {
        QuiltFaceItem {
            id: picture

            anchors.left: parent.left
            anchors.leftMargin: Theme.gap
            y: Theme.gap
            width: parent.width * 0.36
            height: parent.height - Theme.gap * 2 - tools.height
            face: card.face
            ink: Theme.ink
        }
        Column {
            anchors.left: picture.right
            anchors.leftMargin: Theme.gap * 1.5
            anchors.right: parent.right
            anchors.rightMargin: Theme.gap
            y: Theme.gap
            spacing: Theme.gap * 0.6

            Words {
                width: parent.width
                height: Math.min(implicitHeight, Theme.large * 3.9)
                text: card.title
                font.family: Theme.nameFamily
                font.bold: true
                font.pixelSize: Theme.large
                minimumPixelSize: Theme.small
                fontSizeMode: Text.Fit
            }
            Words {
                width: parent.width
                text: card.size
                quiet: true
            }
            Row {
                width: parent.width
                spacing: Theme.gap

                StateMark {
                    id: state

                    width: Theme.text * 1.3
                    height: width
                    state: card.stage === "done" ? "closed" : card.stage === "session" ? "open" : "waiting"
                    visible: card.stage !== "new"
                    ink: Theme.ink
                    fill: Theme.tagMark
                }
                Words {
                    width: parent.width - (state.visible ? state.width + parent.spacing : 0)
                    text: card.stageText
                    font.bold: true
                }
            }
        }
        Row {
            id: tools

            anchors.right: parent.right
            anchors.bottom: parent.bottom
            anchors.margins: Theme.line
            spacing: 0

            Press {
                objectName: "sessions"
                visible: card.stage === "session" || card.stage === "done"
                plain: true
                glyph: "clock"
                Accessible.name: qsTr("Sessions of %1").arg(card.title)
                onClicked: card.sessionsWanted()
            }
            Press {
                plain: true
                glyph: "copy"
                Accessible.name: qsTr("Copy %1").arg(card.title)
                onClicked: card.copied()
            }
            Press {
                plain: true
                glyph: "save"
                Accessible.name: qsTr("Save %1 as a file").arg(card.title)
                onClicked: card.saved()
            }
            Press {
                objectName: "share"
                plain: true
                glyph: "share"
                Accessible.name: qsTr("Share %1").arg(card.title)
                onClicked: card.shared()
            }
            Press {
                plain: true
                glyph: "remove"
                Accessible.name: qsTr("Remove %1").arg(card.title)
                onClicked: card.removed()
            }
        }
    }
}
