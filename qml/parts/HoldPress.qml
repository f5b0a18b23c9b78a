pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Theme

// For what is not to be done by a stray tap: held while a seam is sewn along it. Whoever cannot hold
// taps twice, slowly; so do keys and assistive technology.
AbstractButton {
    id: hold

    property real size: Theme.tableText
    property real least: Theme.tableTarget
    property int holdMs: 900
    property real sewn: 0
    property bool armed: false // tapped once: another tap counts

    readonly property int armedAfterMs: 600 // a double tap is one tap
    readonly property int armedForMs: 8000

    signal held

    function arm() {
        if (armed && !tooSoon.running) {
            armed = false
            held()
        } else if (!armed) {
            armed = true
            tooSoon.restart()
            forget.restart()
        }
    }

    implicitWidth: Math.max(least, Math.ceil(measure.implicitWidth) + leftPadding + rightPadding)
    implicitHeight: Math.max(least * 1.15, label.implicitHeight + how.implicitHeight + topPadding + bottomPadding)
    leftPadding: Theme.gap * 1.6
    rightPadding: leftPadding
    topPadding: Theme.gap * 0.6
    bottomPadding: topPadding + Theme.lipHeight * 1.6 + Theme.gap
    focusPolicy: Qt.StrongFocus
    opacity: enabled ? 1 : 0.6
    Accessible.name: text
    Accessible.description: how.text
    Accessible.onPressAction: hold.arm()
    Keys.onReturnPressed: event => { if (!event.isAutoRepeat) hold.arm() }
    Keys.onEnterPressed: event => { if (!event.isAutoRepeat) hold.arm() }
    Keys.onSpacePressed: event => { if (!event.isAutoRepeat) hold.arm() }
    onPressed: sewing.restart()
    onReleased: {
        if (sewing.running) {
            sewing.stop()
            sewn = 0
            arm()
        }
    }
    onCanceled: {
        sewing.stop()
        sewn = 0
    }
    onEnabledChanged: {
        armed = false
        sewn = 0
    }

    NumberAnimation {
        id: sewing

        target: hold
        property: "sewn"
        from: 0
        to: 1
        duration: hold.holdMs
        onFinished: {
            hold.sewn = 0
            hold.armed = false
            hold.held()
        }
    }
    Timer {
        id: tooSoon

        interval: hold.armedAfterMs
    }
    Timer {
        id: forget

        interval: hold.armedForMs
        onTriggered: hold.armed = false
    }
    Text {
        id: measure

        visible: false
        font: label.font
        text: hold.text
        textFormat: Text.PlainText
    }

    contentItem: Item {
        Column {
            anchors.centerIn: parent
            width: parent.width

            Text {
                id: label

                width: parent.width
                text: hold.text
                color: Theme.accentInk
                font.family: Theme.family
                font.pixelSize: hold.size
                font.bold: true
                horizontalAlignment: Text.AlignHCenter
                textFormat: Text.PlainText
                wrapMode: Text.Wrap
            }
            Text {
                id: how

                width: parent.width
                text: hold.armed ? qsTr("Once more, or hold") : qsTr("Hold")
                color: Theme.accentInk
                font.family: Theme.family
                font.pixelSize: hold.size
                horizontalAlignment: Text.AlignHCenter
                textFormat: Text.PlainText
                wrapMode: Text.Wrap
            }
        }
    }
    background: Rectangle {
        radius: Theme.radius
        color: Theme.accentLip

        Rectangle {
            width: parent.width
            y: hold.down ? Theme.lipHeight * 1.6 : 0
            height: parent.height - Theme.lipHeight * 1.6
            radius: Theme.radius
            color: hold.enabled ? Theme.accent : Theme.quiet
            border.width: hold.armed ? Theme.line * 3 : 0
            border.color: Theme.now
        }

        // The seam: a stitch for every twentieth, sewn from where reading begins.
        Repeater {
            model: 20

            Rectangle {
                required property int index

                readonly property real step: (hold.width - 2 * Theme.gap) / 20
                readonly property int place: hold.mirrored ? 19 - index : index

                x: Theme.gap + place * step + step * 0.15
                y: hold.height - height - Theme.gap * 0.6 - Theme.lipHeight * 1.6 + (hold.down ? Theme.lipHeight * 1.6 : 0)
                width: step * 0.7
                height: Math.max(2, Theme.density * 0.9)
                radius: height / 2
                color: hold.sewn * 20 > index ? Theme.now : Theme.accentInk
                opacity: hold.sewn * 20 > index ? 1 : 0.35
            }
        }
        FocusFrame {
            visible: hold.visualFocus
        }
    }
}
