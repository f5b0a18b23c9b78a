pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The passes in working order, to step through.
RowLayout {
    id: strip

    required property PassPresenter pass

    spacing: Theme.gap
    visible: pass.count > 0

    Press {
        objectName: "previousPass"
        glyph: "back"
        enabled: strip.pass.number > 1
        Accessible.name: qsTr("Pass before")
        onClicked: strip.pass.number -= 1
    }
    Flickable {
        id: list

        // The pass that is shown comes into the middle.
        function follow() {
            const now = chips.itemAt(strip.pass.number - 1)
            if (now)
                contentX = Math.max(0, Math.min(contentWidth - width, now.x + (now.width - width) / 2))
        }

        Layout.fillWidth: true
        Layout.preferredWidth: 1
        Layout.preferredHeight: Math.max(Theme.target, Theme.text * 1.35 + Theme.small * 1.5 + Theme.gap)
        contentWidth: row.width
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        onWidthChanged: follow()
        onContentWidthChanged: follow()

        Connections {
            target: strip.pass
            function onChanged() { list.follow() }
        }
        Row {
            id: row

            spacing: Theme.gap

            Repeater {
                id: chips

                model: strip.pass.passes

                Press {
                    id: chip

                    required property int number
                    required property string title
                    required property string points
                    required property string time

                    height: list.height
                    width: Math.max(34 * Theme.density, name.implicitWidth + 2 * Theme.gap, figures.implicitWidth + 2 * Theme.gap)
                    checked: number === strip.pass.number
                    Accessible.name: title + ", " + points + ", " + time
                    onClicked: strip.pass.number = number

                    contentItem: Item {
                        Column {
                            anchors.centerIn: parent

                            Words {
                                id: name

                                anchors.horizontalCenter: parent.horizontalCenter
                                text: chip.title
                                font.bold: true
                                wrapMode: Text.NoWrap
                            }
                            Words {
                                id: figures

                                anchors.horizontalCenter: parent.horizontalCenter
                                text: chip.time === "" ? chip.points : chip.points + " · " + chip.time
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
    Press {
        objectName: "nextPass"
        glyph: "forward"
        enabled: strip.pass.number < strip.pass.count
        Accessible.name: qsTr("Next pass")
        onClicked: strip.pass.number += 1
    }
}
