import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// In place of everything else where the library cannot be opened: why, and a way to try again. It ends
// with 1 where the person wants that.
ApplicationWindow {
    id: window

    required property string problem
    required property Comfort comfort

    width: 900
    height: 420
    visible: true
    title: "Bastewright"
    color: Theme.ground
    font.family: Theme.family
    font.pixelSize: Theme.text
    LayoutMirroring.enabled: Application.layoutDirection === Qt.RightToLeft
    LayoutMirroring.childrenInherit: true

    Look {
        comfort: window.comfort
    }
    Flickable {
        id: page

        anchors.fill: parent
        anchors.margins: Theme.gap * 2
        contentHeight: column.height
        clip: true

        Column {
            id: column

            width: page.width
            spacing: Theme.gap * 2

            Heading {
                width: parent.width
                text: qsTr("The library cannot be opened")
            }
            Words {
                width: parent.width
                text: window.problem
                Accessible.role: Accessible.AlertMessage
                Accessible.name: text
            }
            Flow {
                width: parent.width
                spacing: Theme.gap

                Press {
                    objectName: "tryAgain"
                    main: true
                    text: qsTr("Try again")
                    onClicked: Qt.exit(1)
                }
                Press {
                    objectName: "closeProgram"
                    text: qsTr("Close")
                    onClicked: Qt.quit()
                }
            }
        }
    }
}
