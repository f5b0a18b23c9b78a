pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Pictures
import Bastewright.Theme
import Bastewright.View

// How backing and batting are made: the cloth with its cuts, the pieced backing, the joined batting,
// what lies past the top in every pass, and what each way to piece the backing costs. Where the words
// take too much of the room it scrolls.
Flickable {
    id: view

    required property LayersPresenter layers

    property string tab: "backing"

    readonly property real words: above.height + Theme.gap + (legend.visible ? legend.height + Theme.gap : 0)

    contentHeight: Math.max(height, words + 45 * Theme.density)
    clip: true
    interactive: contentHeight > height + 1
    boundsBehavior: Flickable.StopAtBounds

    // Not a layout: words that wrap grow after a layout has measured them.
    Column {
        id: above

        width: view.width
        spacing: Theme.gap

        Flow {
            width: parent.width
            spacing: Theme.gap

            Repeater {
                model: [
                    {tab: "cloth", title: qsTr("Fabric")},
                    {tab: "backing", title: qsTr("Backing")},
                    {tab: "batting", title: qsTr("Batting")},
                    {tab: "spare", title: qsTr("Overage")},
                    {tab: "choices", title: qsTr("Other ways")}
                ]

                Press {
                    required property var modelData

                    objectName: "layers-" + modelData.tab
                    text: modelData.title
                    checked: view.tab === modelData.tab
                    onClicked: view.tab = modelData.tab
                }
            }
        }
        Heading {
            objectName: "buyBacking"
            width: parent.width
            visible: text !== "" && (view.tab === "cloth" || view.tab === "backing")
            text: view.layers.buyText
            font.pixelSize: Theme.title
        }
        Words {
            width: parent.width
            text: view.tab === "batting" ? view.layers.battingText
                  : view.tab === "spare" ? view.layers.spareText
                  : view.tab === "choices" ? view.layers.savingText : view.layers.backingText
            visible: text !== "" && view.tab !== "choices"
            font.pixelSize: view.tab === "batting" ? Theme.large : Theme.text
        }
        Words {
            width: parent.width
            visible: view.layers.previewing && view.tab !== "batting" && view.tab !== "spare"
            text: qsTr("Only looked at: this is not the plan.")
            font.bold: true
        }
    }
    Item {
        id: body

        y: above.height + Theme.gap
        width: view.width
        height: view.contentHeight - view.words

        ClothPictures {
            anchors.fill: parent
            visible: view.tab === "cloth"
            layers: view.layers
        }
        LayersPicture {
            anchors.fill: parent
            visible: view.tab === "backing"
            layers: view.layers
            what: LayersItem.Backing
        }
        RowLayout {
            anchors.fill: parent
            visible: view.tab === "batting"
            spacing: Theme.gap

            LayersPicture {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 3
                layers: view.layers
                what: LayersItem.Batting
            }
            BattingWays {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 2
                // Where it would break the words, the picture alone is shown.
                visible: view.layers.battingChoices.count > 1 && view.width > 24 * Theme.text
                layers: view.layers
            }
        }
        SpareList {
            anchors.fill: parent
            visible: view.tab === "spare"
            layers: view.layers
        }
        RowLayout {
            anchors.fill: parent
            visible: view.tab === "choices"
            spacing: Theme.gap

            BackingWays {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 3
                layers: view.layers
            }
            LayersPicture {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 2
                // Where it would break the words beside it, it is in a tab of its own alone.
                visible: view.layers.hasBacking && view.width > 24 * Theme.text
                layers: view.layers
                what: LayersItem.Backing
            }
        }
    }
    Words {
        id: legend

        y: view.contentHeight - height
        width: view.width
        visible: view.tab === "backing" && view.layers.hasBacking
        text: qsTr("Dashed: the quilt. Dotted: the tables of the first pass.")
        font.pixelSize: Theme.small
        quiet: true
    }
}
