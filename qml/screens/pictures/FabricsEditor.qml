pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// Two to four fabrics of a top: one is chosen, and gets a color of the swatches or any other.
Column {
    id: editor

    required property PhotoDesk photos

    property int chosen: 0
    readonly property color now: Qt.color("" + editor.photos.fabrics[Math.min(chosen, editor.photos.fabrics.length - 1)])

    // A patch of fabric to tap.
    component Swatch: AbstractButton {
        id: swatch

        required property color fabric

        width: Theme.target
        height: Theme.target
        focusPolicy: Qt.StrongFocus
        Accessible.onPressAction: swatch.clicked()
        Keys.onReturnPressed: swatch.clicked()
        Keys.onEnterPressed: swatch.clicked()
        background: Rectangle {
            radius: Theme.radius * 0.5
            color: swatch.fabric
            border.width: swatch.checked ? Theme.line * 4 : Theme.line
            border.color: swatch.checked ? Theme.accent : Theme.frame

            FocusFrame {
                visible: swatch.visualFocus
            }
        }
    }

    spacing: Theme.gap

    Words {
        width: parent.width
        text: qsTr("The border and the darkest fabric come first, the lightest last.")
        quiet: true
    }
    Flow {
        width: parent.width
        spacing: Theme.gap

        Repeater {
            model: editor.photos.fabrics

            Swatch {
                required property string modelData
                required property int index

                objectName: "fabric" + index
                width: Theme.target * 1.6
                fabric: modelData
                checked: index === editor.chosen
                Accessible.name: qsTr("Fabric %1").arg(index + 1)
                onClicked: editor.chosen = index
            }
        }
        Press {
            objectName: "addFabric"
            glyph: "plus"
            visible: editor.photos.mayAdd
            Accessible.name: qsTr("Add a fabric")
            onClicked: editor.photos.addFabric()
        }
        Press {
            objectName: "removeFabric"
            glyph: "minus"
            visible: editor.photos.mayRemove
            Accessible.name: qsTr("Remove this fabric")
            onClicked: {
                editor.photos.removeFabric(editor.chosen)
                editor.chosen = Math.min(editor.chosen, editor.photos.fabrics.length - 1)
            }
        }
        Press {
            objectName: "usualFabrics"
            visible: editor.photos.ownFabrics
            text: qsTr("Use the usual fabrics")
            onClicked: editor.photos.useUsualFabrics()
        }
    }
    Flow {
        width: parent.width
        spacing: Theme.gap * 0.7

        Repeater {
            model: editor.photos.swatches

            Swatch {
                required property string colour
                required property string name
                required property int index

                objectName: "swatch" + index
                fabric: colour
                checked: Qt.colorEqual(colour, editor.now)
                Accessible.name: name
                onClicked: editor.photos.setFabric(editor.chosen, colour)
            }
        }
    }
    ColorSlider {
        id: hue

        objectName: "hue"
        width: parent.width
        label: qsTr("Any color: its hue")
        low: Qt.hsla(0, 0.6, 0.5, 1)
        middle: Qt.hsla(0.5, 0.6, 0.5, 1)
        high: Qt.hsla(1, 0.6, 0.5, 1)
        value: Math.max(0, editor.now.hslHue)
        onMoved: editor.mix()
    }
    ColorSlider {
        id: strength

        objectName: "strength"
        width: parent.width
        label: qsTr("How strong")
        low: Qt.hsla(hue.value, 0, editor.now.hslLightness, 1)
        middle: Qt.hsla(hue.value, 0.5, editor.now.hslLightness, 1)
        high: Qt.hsla(hue.value, 1, editor.now.hslLightness, 1)
        value: editor.now.hslSaturation
        onMoved: editor.mix()
    }
    ColorSlider {
        id: lightness

        objectName: "lightness"
        width: parent.width
        label: qsTr("How light")
        low: "black"
        middle: Qt.hsla(hue.value, strength.value, 0.5, 1)
        high: "white"
        value: editor.now.hslLightness
        onMoved: editor.mix()
    }

    function mix() {
        editor.photos.setFabric(editor.chosen, Qt.hsla(hue.value, strength.value, lightness.value, 1).toString())
    }
}
