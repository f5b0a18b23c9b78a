import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme

// One part of a color, over the colors it leads to.
Slider {
    id: slider

    required property string label
    required property color low
    required property color middle
    required property color high

    implicitHeight: Theme.target
    from: 0
    to: 1
    stepSize: 0.02
    Accessible.name: label

    background: Item {
        Words {
            id: name

            text: slider.label
            font.pixelSize: Theme.small
        }
        Rectangle {
            y: name.height
            x: slider.handle.width / 2
            width: parent.width - slider.handle.width
            height: Theme.target - name.height - Theme.gap
            border.width: Theme.line
            border.color: Theme.frame
            gradient: Gradient {
                orientation: Gradient.Horizontal

                GradientStop { position: 0; color: slider.low }
                GradientStop { position: 0.5; color: slider.middle }
                GradientStop { position: 1; color: slider.high }
            }
        }
        FocusFrame {
            visible: slider.visualFocus
        }
    }
    handle: Rectangle {
        x: slider.visualPosition * (slider.width - width)
        y: Theme.small * 1.2
        width: Theme.target * 0.5
        height: Theme.target - y
        radius: Theme.radius
        color: Theme.raised
        border.width: Theme.line * 2
        border.color: Theme.ink
    }
}
