pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Bastewright.Page
import Bastewright.Parts
import Bastewright.Theme

// Whether phones may follow the session, at which address, and the code that lets them.
Sheet {
    id: sheet

    required property PhonePage phones

    objectName: "phoneSheet"
    atTable: true
    title: qsTr("Follow on phones")

    TableWords {
        width: parent.width
        visible: !sheet.phones.on
        text: qsTr("Guests see this table on their phones and tick their own zones. Use a network you trust: nothing is encrypted.")
    }
    TableWords {
        width: parent.width
        visible: text !== ""
        text: sheet.phones.problem
        font.bold: true
    }
    TablePress {
        width: parent.width
        objectName: "phonesOn"
        visible: !sheet.phones.on
        main: true
        glyph: "phone"
        text: qsTr("Switch on")
        onClicked: sheet.phones.setOn(true)
    }
    Repeater {
        model: sheet.phones.on ? [] : sheet.phones.addresses

        TablePress {
            required property string modelData

            width: parent.width
            objectName: "address-" + modelData
            text: modelData.startsWith("127.") ? qsTr("%1 · this device alone").arg(modelData) : modelData
            checked: modelData === sheet.phones.address
            onClicked: sheet.phones.choose(modelData)
        }
    }
    GridLayout {
        id: both

        readonly property bool wide: width > 110 * Theme.density

        width: parent.width
        visible: sheet.phones.on
        columns: wide ? 2 : 1
        columnSpacing: Theme.space
        rowSpacing: Theme.gap

        QrPicture {
            objectName: "qr"
            Layout.preferredWidth: Math.min(both.width, 58 * Theme.density)
            Layout.preferredHeight: Layout.preferredWidth
            Layout.alignment: Qt.AlignHCenter
            text: sheet.phones.scan
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("The address and the code as a picture to scan")
        }
        Column {
            Layout.fillWidth: true
            spacing: Theme.gap

            TableWords {
                width: parent.width
                text: qsTr("Scan, or type this address")
                color: Theme.quiet
            }
            TableWords {
                width: parent.width
                text: sheet.phones.link
                font.bold: true
                wrapMode: Text.WrapAnywhere
            }
            TableWords {
                width: parent.width
                text: qsTr("and this code there")
                color: Theme.quiet
            }
            TableWords {
                width: parent.width
                text: sheet.phones.code
                font.bold: true
            }
            TableWords {
                width: parent.width
                objectName: "followers"
                text: sheet.phones.following === "" ? qsTr("Nobody follows yet.")
                                                    : qsTr("On phones: %1").arg(sheet.phones.following)
            }
        }
    }
    GridLayout {
        width: parent.width
        visible: sheet.phones.on
        columns: width > 17 * Theme.tableText ? 2 : 1
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap

        TablePress {
            Layout.fillWidth: true
            objectName: "phonesNewCode"
            glyph: "redo"
            text: qsTr("New code")
            onClicked: sheet.phones.newCode()
        }
        TablePress {
            Layout.fillWidth: true
            objectName: "phonesOff"
            glyph: "stop"
            text: qsTr("Turn off")
            onClicked: sheet.phones.setOn(false)
        }
    }
}
