pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Quilt
import Bastewright.Theme
import Bastewright.View

// The passes in working order as small quilts, to step through: what is sewn by then, and what this
// pass bastes.
Flickable {
    id: strip

    required property PassPresenter pass
    required property PlanPresenter plan

    // The pass that is shown comes into the middle.
    function follow() {
        const now = chips.itemAt(strip.pass.number - 1)
        if (now)
            contentX = Math.max(0, Math.min(contentWidth - width, now.x + (now.width - width) / 2))
    }

    implicitHeight: Math.max(Theme.target * 1.35, Theme.large * 1.4 + Theme.small * 2.8 + Theme.gap)
    property bool roomy: true // for a picture beside it

    visible: pass.count > 0 && roomy
    contentWidth: row.width
    clip: true
    boundsBehavior: Flickable.StopAtBounds
    onWidthChanged: follow()
    onContentWidthChanged: follow()

    Connections {
        target: strip.pass
        function onChanged() { strip.follow() }
    }
    Row {
        id: row

        height: strip.height
        spacing: Theme.gap

        Repeater {
            id: chips

            model: strip.pass.passes

            AbstractButton {
                id: chip

                required property int number
                required property string title
                required property string points
                required property string time

                readonly property bool now: number === strip.pass.number

                objectName: "pass" + number
                height: row.height
                width: Math.ceil(thumb.width + words.implicitWidth + 3.5 * Theme.gap)
                focusPolicy: Qt.StrongFocus
                checked: now
                Accessible.name: title + ", " + points + ", " + time
                Accessible.onPressAction: chip.clicked()
                Keys.onReturnPressed: chip.clicked()
                Keys.onEnterPressed: chip.clicked()
                onClicked: strip.pass.number = number

                background: Rectangle {
                    radius: Theme.radius
                    color: chip.now ? Theme.paper : chip.down ? Theme.soft : "transparent"
                    border.width: chip.now && Theme.highContrast ? Theme.line * 2 : 0
                    border.color: Theme.ink

                    FocusFrame {
                        visible: chip.visualFocus
                    }
                }
                contentItem: Item {
                    PassThumb {
                        id: thumb

                        x: Theme.gap
                        anchors.verticalCenter: parent.verticalCenter
                        height: parent.height - 2 * Theme.gap
                        width: height * 0.8
                        quilt: strip.plan.quilt
                        pass: chip.number
                    }
                    Column {
                        id: words

                        anchors.left: thumb.right
                        anchors.leftMargin: Theme.gap
                        anchors.verticalCenter: parent.verticalCenter

                        Words {
                            text: chip.number
                            font.pixelSize: Theme.large
                            font.bold: true
                            wrapMode: Text.NoWrap
                        }
                        Words {
                            text: chip.points
                            font.pixelSize: Theme.small
                            wrapMode: Text.NoWrap
                        }
                        Words {
                            visible: chip.time !== ""
                            text: chip.time
                            font.pixelSize: Theme.small
                            quiet: true
                            wrapMode: Text.NoWrap
                        }
                    }
                }
            }
        }
    }
}
