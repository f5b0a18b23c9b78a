pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Everybody, with the rows and marks of what they have in hand; somebody steps away, or is back.
Sheet {
    id: sheet

    required property LiveController live
    required property ChangeDesk desk

    objectName: "whoSheet"
    atTable: true
    title: qsTr("Who does what")

    Repeater {
        model: sheet.live.people

        Item {
            id: person

            required property string letter
            required property int mark
            required property string name
            required property string now
            required property string next
            required property string rows
            required property bool present

            readonly property bool narrow: width < 18 * Theme.tableText // the button then stands below

            width: sheet.availableWidth
            height: (narrow ? said.height + press.height : Math.max(said.height, press.height)) + Theme.gap

            PersonMark {
                id: disc

                y: Theme.gap * 0.3
                width: Theme.tableText * 1.1
                height: width
                letter: person.letter
                mark: person.mark
                family: Theme.family
                opacity: person.present ? 1 : 0.6
            }
            Column {
                id: said

                anchors.left: disc.right
                anchors.leftMargin: Theme.gap
                anchors.right: person.narrow ? parent.right : press.left
                anchors.rightMargin: Theme.gap

                Said {
                    text: qsTr("%1: %2").arg(person.name).arg(person.now)
                    font.bold: true
                }
                Said {
                    visible: text !== ""
                    text: person.rows
                }
                Said {
                    visible: person.next !== ""
                    text: qsTr("then: %1").arg(person.next)
                    color: Theme.quiet
                }
            }
            TablePress {
                id: press

                objectName: "presence-" + person.name
                anchors.right: parent.right
                y: person.narrow ? said.height : 0
                text: person.present ? qsTr("Steps away") : qsTr("Is back")
                Accessible.name: person.present ? qsTr("%1 steps away").arg(person.name) : qsTr("%1 is back at the table").arg(person.name)
                onClicked: {
                    sheet.close()
                    if (person.present)
                        sheet.desk.goes(person.name)
                    else
                        sheet.desk.comes(person.name)
                }
            }
        }
    }
    component Said: TableWords {
        width: parent.width
        lineHeightMode: Text.FixedHeight
        lineHeight: Theme.tableText * 1.15
    }
}
