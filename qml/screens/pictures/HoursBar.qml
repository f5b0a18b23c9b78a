pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// When somebody is there, over the hours of the day: either end is dragged, or moved by a quarter of an
// hour with Left and Right. The handles stand outside what they bound, so that they never meet. The
// bar reads from left to right in every language, as clocks on paper do.
Item {
    id: bar

    required property PeopleDesk desk
    required property int person
    required property string name
    required property int mark
    required property int from
    required property int until

    readonly property int step: desk.step
    readonly property real inner: width - 2 * Theme.target
    readonly property real minute: inner / Math.max(1, desk.dayUntil - desk.dayFrom)
    // What is shown while a handle is under a finger.
    property int fromShown: from
    property int untilShown: until

    signal typed(field: string) // a handle was tapped: the hour is typed

    function at(minutes: int): real {
        return Theme.target + (minutes - desk.dayFrom) * minute
    }
    function snapped(minutes: real): int {
        return Math.round(minutes / step) * step
    }
    function take() {
        const from = fromShown, until = untilShown
        fromShown = Qt.binding(() => bar.from)
        untilShown = Qt.binding(() => bar.until)
        desk.setHours(person, from, until)
    }

    implicitHeight: Theme.target
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true

    Rectangle {
        x: Theme.target
        anchors.verticalCenter: parent.verticalCenter
        width: bar.inner
        height: Theme.target * 0.34
        color: Theme.sunk
        border.width: Theme.highContrast ? Theme.line : 0
        border.color: Theme.edge
    }
    FabricBand {
        x: bar.at(bar.fromShown)
        anchors.verticalCenter: parent.verticalCenter
        width: Math.max(2, bar.at(bar.untilShown) - x)
        height: Theme.target * 0.46
        mark: bar.mark
        ink: Theme.ink
    }
    Rectangle {
        x: bar.at(bar.desk.finish) - width / 2
        visible: bar.desk.finish >= 0 && bar.desk.finish <= bar.desk.dayUntil
        width: Math.max(3, Theme.line * 2)
        height: parent.height
        color: Theme.ink
        border.width: 0
    }
    Repeater {
        model: 2

        AbstractButton {
            id: handle

            required property int index

            readonly property bool begins: index === 0
            readonly property int value: begins ? bar.fromShown : bar.untilShown
            property real grabbed: 0 // the minute it stood at

            function shift(by: int) {
                move(value + by)
                bar.take()
            }
            function move(to: int) {
                if (begins)
                    bar.fromShown = Math.max(bar.desk.dayFrom, Math.min(bar.untilShown - bar.step, to))
                else
                    bar.untilShown = Math.min(bar.desk.dayUntil, Math.max(bar.fromShown + bar.step, to))
            }

            objectName: (begins ? "from-" : "until-") + bar.name
            x: begins ? bar.at(value) - width : bar.at(value)
            width: Theme.target
            height: Theme.target
            focusPolicy: Qt.StrongFocus
            Accessible.name: !bar ? "" // while both go
                             : begins ? qsTr("%1 comes at %2").arg(bar.name).arg(bar.desk.clock(value))
                                    : value >= bar.desk.dayUntil ? qsTr("%1 stays to the end").arg(bar.name)
                                                                 : qsTr("%1 leaves at %2").arg(bar.name).arg(bar.desk.clock(value))
            Accessible.description: qsTr("Drag it, or move it with Left and Right; press to type the time")
            Accessible.onPressAction: handle.clicked()
            Accessible.onIncreaseAction: handle.shift(bar.step)
            Accessible.onDecreaseAction: handle.shift(-bar.step)
            Keys.onReturnPressed: handle.clicked()
            Keys.onEnterPressed: handle.clicked()
            Keys.onLeftPressed: handle.shift(-bar.step)
            Keys.onRightPressed: handle.shift(bar.step)

            onClicked: bar.typed(begins ? "from" : "until")

            DragHandler {
                id: drag

                target: null
                yAxis.enabled: false
                grabPermissions: PointerHandler.CanTakeOverFromAnything
                onActiveTranslationChanged: {
                    if (active)
                        handle.move(bar.snapped(handle.grabbed + activeTranslation.x / bar.minute))
                }
                onActiveChanged: {
                    if (active)
                        handle.grabbed = handle.value
                    else
                        bar.take()
                }
            }
            background: Item {
                Rectangle {
                    anchors.verticalCenter: parent.verticalCenter
                    x: handle.begins ? parent.width - width : 0
                    width: Theme.target * 0.62
                    height: width
                    radius: width / 2
                    color: handle.pressed || drag.active ? Theme.soft : Theme.raised
                    border.width: Math.max(2, Theme.line * 1.6)
                    border.color: Theme.ink
                }
                FocusFrame {
                    visible: handle.visualFocus
                }
            }
            contentItem: Item {}
        }
    }
}
