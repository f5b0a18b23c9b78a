pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Who could take a zone; who cannot says why.
Sheet {
    id: sheet

    required property LanesBoard board

    signal taken(person: string)

    readonly property real letters: atTable ? Theme.tableText : Theme.text

    objectName: "takersSheet"
    title: qsTr("%1 goes to").arg(board.zone.slice(board.zone.lastIndexOf(".") + 1))

    Repeater {
        model: sheet.board.takers

        AbstractButton {
            id: row

            required property string letter
            required property int mark
            required property string name
            required property string why
            required property bool has

            objectName: "taker-" + name
            width: parent.width
            height: Math.max(sheet.atTable ? Theme.tableTarget : Theme.target, lines.implicitHeight + Theme.gap)
            enabled: why === "" && !has
            focusPolicy: Qt.StrongFocus
            Accessible.name: why === "" ? name : why
            Accessible.onPressAction: row.clicked()
            Keys.onReturnPressed: row.clicked()
            onClicked: {
                sheet.close()
                sheet.taken(name)
            }
            background: Patch {
                color: row.down ? Theme.soft : row.enabled ? Theme.paper : Theme.ground
                border.color: Theme.frame

                FocusFrame {
                    visible: row.visualFocus
                }
            }
            contentItem: Item {
                PersonMark {
                    id: disc

                    anchors.left: parent.left
                    anchors.leftMargin: Theme.gap
                    anchors.verticalCenter: parent.verticalCenter
                    width: sheet.letters * 1.5
                    height: width
                    letter: row.letter
                    mark: row.mark
                    family: Theme.family
                }
                Column {
                    id: lines

                    anchors.left: disc.right
                    anchors.leftMargin: Theme.gap
                    anchors.right: parent.right
                    anchors.rightMargin: Theme.gap
                    anchors.verticalCenter: parent.verticalCenter

                    Words {
                        width: parent.width
                        text: row.has ? qsTr("%1 has it").arg(row.name) : row.name
                        font.pixelSize: sheet.letters
                        font.bold: true
                    }
                    Words {
                        width: parent.width
                        visible: row.why !== ""
                        text: row.why
                        font.pixelSize: sheet.letters
                        quiet: true
                    }
                }
            }
        }
    }
}
