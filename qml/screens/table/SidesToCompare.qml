pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The four sides as they should be: what hangs over the table, and what shows beyond the top.
Item {
    id: table

    required property StepCard card

    // Where three columns would break words, one figure stands below the other.
    readonly property bool narrow: width < 21 * Theme.tableText
    readonly property real first: width * 0.2
    readonly property real column: (width - first - 3 * Theme.gap) / 3

    implicitHeight: narrow ? below.implicitHeight : beside.implicitHeight

    component Cell: TableWords {
        width: table.column
        lineHeightMode: Text.FixedHeight
        lineHeight: Theme.tableText * 1.15
    }
    component Named: Row {
        property string name: ""
        property string figure: ""

        width: table.width
        spacing: Theme.gap

        Cell { width: (parent.width - parent.spacing) * 0.6; text: parent.name; color: Theme.quiet }
        Cell { width: (parent.width - parent.spacing) * 0.4; text: parent.figure }
    }

    Column {
        id: beside

        width: table.width
        visible: !table.narrow

        Row {
            spacing: Theme.gap

            Cell { width: table.first; text: qsTr("side"); color: Theme.quiet }
            Cell { text: qsTr("over the edge"); color: Theme.quiet }
            Cell { text: qsTr("backing overage"); color: Theme.quiet }
            Cell { text: qsTr("batting overage"); color: Theme.quiet }
        }
        Repeater {
            model: table.card.sides

            Row {
                id: line

                required property string side
                required property string over
                required property string backing
                required property string batting

                spacing: Theme.gap

                Cell { width: table.first; text: line.side; font.bold: true }
                Cell { text: line.over }
                Cell { text: line.backing }
                Cell { text: line.batting }
            }
        }
    }
    Column {
        id: below

        width: table.width
        visible: table.narrow

        Repeater {
            model: table.card.sides

            Column {
                id: block

                required property string side
                required property string over
                required property string backing
                required property string batting

                width: table.width
                bottomPadding: Theme.gap

                Cell { width: parent.width; text: block.side; font.bold: true }
                Named { name: qsTr("over the edge"); figure: block.over }
                Named { name: qsTr("backing overage"); figure: block.backing }
                Named { name: qsTr("batting overage"); figure: block.batting }
            }
        }
    }
}
