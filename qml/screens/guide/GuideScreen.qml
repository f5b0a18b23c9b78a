import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// A first quilt by questions, one a page, beside a picture that grows with the answers. Every page can
// be passed over: something sensible is answered already.
FocusScope {
    id: screen

    required property Workroom room

    readonly property GuideDesk guide: room.guide
    readonly property bool wide: width > height
    readonly property bool last: guide.page === guide.pages - 1
    readonly property bool editing: editor.visible
    readonly property real margin: Theme.gap * 2

    function go(by: int) {
        if (by > 0 && last)
            room.finishGuide()
        else if (by < 0 && guide.page === 0)
            room.leaveGuide()
        else
            guide.page = guide.page + by
    }

    Shortcut {
        sequences: ["Ctrl+Z"]
        onActivated: screen.room.editor.undo()
    }
    Shortcut {
        sequences: ["Ctrl+Shift+Z", "Ctrl+Y"]
        onActivated: screen.room.editor.redo()
    }
    Shortcut {
        enabled: !screen.editing
        sequence: "Escape"
        onActivated: screen.go(-1)
    }
    Shortcut {
        enabled: !screen.editing
        sequences: ["PgDown", "Ctrl+Return"]
        onActivated: screen.go(1)
    }
    Shortcut {
        enabled: !screen.editing
        sequence: "PgUp"
        onActivated: screen.go(-1)
    }
    Connections {
        target: screen.guide
        function onChanged() {
            if (editor.visible && editor.askedOn !== screen.guide.page)
                editor.close()
        }
    }

    GuideHead {
        id: head

        x: screen.margin
        y: Theme.gap
        width: screen.width - 2 * x
        height: implicitHeight
        room: screen.room
    }
    GuidePicture {
        id: picture

        objectName: "guidePicture"
        x: screen.wide ? (screen.LayoutMirroring.enabled ? screen.width - screen.margin - width : screen.margin) : screen.margin
        y: head.y + head.height + Theme.gap
        width: screen.wide ? screen.width - paper.width - 2 * screen.margin : screen.width - 2 * screen.margin
        height: (screen.wide ? screen.height - y : paper.y - y) - Theme.gap
        room: screen.room
    }
    // Paper for the question and its answers.
    Rectangle {
        id: paper

        readonly property real beside: Math.round(Math.max(screen.width * 0.46, Math.min(screen.width * 0.6, 24 * Theme.text)))

        x: screen.wide ? (screen.LayoutMirroring.enabled ? 0 : screen.width - width) : 0
        y: screen.wide ? head.y + head.height + Theme.gap : screen.height - height
        width: screen.wide ? beside : screen.width
        height: screen.wide ? screen.height - y : Math.round(screen.height * (screen.editing ? 0.62 : 0.58))
        color: Theme.paper
        border.width: Theme.highContrast ? Theme.line : 0
        border.color: Theme.ink

        Item {
            id: page

            anchors.fill: parent
            anchors.margins: screen.margin

            GuideQuestion {
                id: asked

                width: parent.width
                height: visible ? implicitHeight : 0
                visible: !screen.editing
                helped: screen.height > 26 * Theme.text
                guide: screen.guide
            }
            GuidePage {
                id: answers

                anchors.top: asked.bottom
                anchors.topMargin: Theme.gap
                anchors.bottom: foot.top
                anchors.bottomMargin: Theme.gap
                width: parent.width
                visible: !screen.editing
                room: screen.room
                onWanted: tile => editor.ask(tile)
                onNameWanted: (person, name) => editor.askName(person, name)
            }
            FieldEditor {
                id: editor

                property int askedOn: -1 // which page
                property int person: -1 // whose name is asked for; -1: a value of the page
                // Asked for together: the second comes after the first.
                function after(which: string): string {
                    return which === "width0" ? "length0" : which === "table0/length" ? "table0/width" : ""
                }
                function ask(tile: ValueTile) {
                    askedOn = screen.guide.page
                    person = -1
                    edit(tile.key, tile.label, tile.kind, tile.value, tile.options, tile.optional)
                }
                function askName(who: int, name: string) {
                    askedOn = screen.guide.page
                    person = who
                    edit("helper" + who + "/name", qsTr("Name"), "text", name, [], false)
                }
                anchors.top: parent.top
                anchors.bottom: parent.bottom
                width: parent.width
                metric: screen.room.editor.metric
                onTyped: text => {
                    if (person < 0)
                        screen.guide.preview(key, text)
                }
                onTaken: text => {
                    editor.problem = editor.person >= 0 ? names.take(editor.key, text) : screen.guide.take(editor.key, text)
                }
                onClosed: {
                    screen.guide.endPreview()
                    const next = accepted ? answers.valueOf(after(key)) : null
                    if (next)
                        ask(next)
                    else
                        answers.forceActiveFocus()
                }
            }
            FieldModel {
                id: names

                editor: screen.room.editor
                section: FieldModel.People
            }
            Item {
                id: foot

                anchors.bottom: parent.bottom
                width: parent.width
                height: visible ? Math.max(previous.height, next.height) : 0
                visible: !screen.editing

                Press {
                    id: previous

                    objectName: "guideBack"
                    anchors.left: parent.left
                    width: Math.min(implicitWidth, parent.width * 0.4)
                    glyph: "back"
                    text: qsTr("Back")
                    onClicked: screen.go(-1)
                }
                Press {
                    id: next

                    objectName: "guideNext"
                    anchors.right: parent.right
                    width: Math.min(Math.max(implicitWidth, parent.width * 0.4), parent.width - previous.width - Theme.gap)
                    main: true
                    text: screen.last ? qsTr("Show the plan") : qsTr("Next")
                    onClicked: screen.go(1)
                }
            }
        }
    }
}
