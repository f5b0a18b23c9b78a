pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Bastewright.Parts
import Bastewright.Quilt
import Bastewright.Theme
import Bastewright.View

// The session before it happens: layers laid, the quilt shifting, zones filling, everybody where
// they stand; played through in a minute, or drawn to any moment.
Rectangle {
    id: view

    required property Workroom room

    signal closed

    readonly property Rehearsal rehearsal: room.rehearsal

    color: Theme.ground
    onVisibleChanged: {
        rehearsal.playing = false
        if (visible)
            slider.forceActiveFocus()
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: Theme.gap

        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap

            Press {
                objectName: "closeRehearsal"
                plain: true
                glyph: "back"
                Accessible.name: qsTr("Back")
                onClicked: view.closed()
            }
            Heading {
                Layout.fillWidth: true
                text: qsTr("%1 · %2").arg(view.rehearsal.clock).arg(view.rehearsal.passText)
                font.pixelSize: Theme.title
            }
        }
        QuiltPicture {
            objectName: "rehearsalPicture"
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredHeight: 1 // not the height it began with
            tappable: false
            quilt: view.room.plan.quilt
            moment: view.visible ? view.rehearsal.moment : -1
            textSize: Theme.text
            Accessible.role: Accessible.Graphic
            Accessible.name: view.rehearsal.caption
        }
        Words {
            objectName: "caption"
            Layout.fillWidth: true
            // Room for two lines, so that the picture stands still.
            Layout.preferredHeight: Math.max(implicitHeight, Theme.large * 3)
            text: view.rehearsal.caption
            font.pixelSize: Theme.large
        }
        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap
            LayoutMirroring.enabled: false // time runs as it does in the lanes
            LayoutMirroring.childrenInherit: true

            Press {
                objectName: "stepBack"
                glyph: "back"
                Accessible.name: qsTr("To the step before")
                onClicked: view.rehearsal.step(-1)
            }
            Press {
                objectName: "play"
                main: true
                glyph: view.rehearsal.playing ? "pause" : "start"
                Accessible.name: view.rehearsal.playing ? qsTr("Pause") : qsTr("Play")
                onClicked: view.rehearsal.playing = !view.rehearsal.playing
            }
            Press {
                objectName: "stepForward"
                glyph: "forward"
                Accessible.name: qsTr("To the next step")
                onClicked: view.rehearsal.step(1)
            }
            Slider {
                id: slider

                // The numbers of the passes stand above, where the handle does not hide them.
                readonly property real above: Theme.small * 1.4
                readonly property real run: width - handle.width

                objectName: "moment"
                Layout.fillWidth: true
                implicitHeight: Theme.target + above
                from: 0
                to: Math.max(1, view.rehearsal.span)
                stepSize: 60
                value: view.rehearsal.moment
                Accessible.name: qsTr("Moment of the session")
                onMoved: view.rehearsal.moment = value
                Keys.onSpacePressed: view.rehearsal.playing = !view.rehearsal.playing

                background: Item {
                    FocusFrame {
                        visible: slider.visualFocus
                    }
                    Rectangle {
                        x: slider.handle.width / 2
                        y: slider.above + (Theme.target - height) / 2
                        width: slider.run
                        height: Theme.line * 3
                        color: Theme.strongEdge
                    }
                    Repeater {
                        model: view.rehearsal.passes

                        Item {
                            id: tick

                            required property real modelData
                            required property int index

                            readonly property real next: index + 1 < view.rehearsal.passes.length ? view.rehearsal.passes[index + 1] : slider.to

                            x: slider.handle.width / 2 + slider.run * modelData / slider.to
                            height: parent ? parent.height : 0

                            Rectangle {
                                x: -width / 2
                                width: Theme.line * 3
                                height: parent.height * 0.9
                                color: Theme.strongEdge
                            }
                            Words {
                                x: Theme.line * 4
                                y: (slider.above - height) / 2
                                // Where passes follow each other closely the mark alone tells.
                                visible: slider.run * (tick.next - tick.modelData) / slider.to > width + Theme.line * 8
                                text: tick.index + 1
                                font.pixelSize: Theme.small
                            }
                        }
                    }
                }
                handle: Rectangle {
                    x: slider.visualPosition * (slider.width - width)
                    y: slider.above + (Theme.target - height) / 2
                    width: Theme.target * 0.7
                    height: width
                    radius: width / 2
                    color: Theme.accent
                    border.width: Theme.line
                    border.color: Theme.paper
                }
            }
        }
    }
}
