pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The price of saving: bought length against seams and waste. A tap shows a way; a button takes it.
Flickable {
    id: view

    required property LayersPresenter layers

    contentHeight: column.implicitHeight
    clip: true
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: column

        width: view.width
        spacing: Theme.gap

        Repeater {
            model: view.layers.choices

            AbstractButton {
                id: row

                required property string bought
                required property string seams
                required property string waste
                required property string about
                required property string wanted
                required property bool chosen
                required property bool mayTake
                required property int index

                readonly property bool shown: index === view.layers.shown

                objectName: "way" + index
                width: column.width
                implicitHeight: Math.max(Theme.target, lines.implicitHeight + 2 * Theme.gap)
                focusPolicy: Qt.StrongFocus
                Accessible.name: bought + ", " + seams + ", " + waste
                Accessible.onPressAction: row.clicked()
                Keys.onReturnPressed: row.clicked()
                onClicked: view.layers.shown = index

                contentItem: Item {
                    Column {
                        id: lines

                        x: Theme.gap
                        y: Theme.gap
                        width: parent.width - 2 * Theme.gap
                        spacing: Theme.gap * 0.4

                        Words {
                            width: parent.width
                            text: row.chosen ? qsTr("%1 · %2 · the plan").arg(row.bought).arg(row.seams)
                                             : qsTr("%1 · %2").arg(row.bought).arg(row.seams)
                            font.pixelSize: Theme.large
                            font.bold: true
                        }
                        Words {
                            width: parent.width
                            text: row.waste
                        }
                        Words {
                            width: parent.width
                            visible: row.shown
                            text: row.about
                            quiet: true
                        }
                        Words {
                            width: parent.width
                            visible: row.wanted !== ""
                            text: row.wanted
                        }
                        Press {
                            objectName: "take" + row.index
                            width: Math.min(implicitWidth, parent.width)
                            visible: row.shown && row.mayTake
                            main: true
                            glyph: "check"
                            text: qsTr("Use this plan")
                            onClicked: view.layers.take(row.index)
                        }
                    }
                }
                background: Rectangle {
                    radius: Theme.radius
                    color: row.down || row.shown ? Theme.soft : Theme.paper
                    border.width: row.chosen ? Theme.line * 2.5 : Theme.line
                    border.color: row.chosen ? Theme.accent : Theme.frame

                    FocusFrame {
                        visible: row.visualFocus
                    }
                }
            }
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: view.layers.savingText
            topPadding: Theme.gap
        }
    }
}
