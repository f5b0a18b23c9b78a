// Components for a Loader cannot be bound to their context in Qt 6.4, so ids in them look unqualified.
// qmllint disable unqualified
import QtQuick
import Bastewright.Parts
import Bastewright.Pictures
import Bastewright.Theme
import Bastewright.View

// Beside the picture: an overview of all that is given and all that comes of it; each tile opens.
FocusScope {
    id: panel

    required property Workroom room

    // "" for the overview, else the pane that is open
    property string pane: ""
    property bool editing: false // a value is being changed
    property bool inside: false // somebody's details are open, Escape closes them first
    property bool sideBySide: false // the ways lie where the picture is
    readonly property int section: pane === "quilt" ? FieldModel.Quilt : pane === "basting" ? FieldModel.Basting
        : pane === "layers" ? FieldModel.Layers : pane === "room" ? FieldModel.Room
        : pane === "people" ? FieldModel.People : pane === "boxes" ? FieldModel.Boxes : -1
    readonly property string heading: pane === "findings" ? qsTr("Check first")
        : pane === "figures" ? qsTr("Why")
        : pane === "ways" ? qsTr("Other ways") : pane === "bring" ? qsTr("What to bring")
        : pane === "who" ? qsTr("Who does what") : pane === "pass" ? room.pass.title
        : pane === "quilt" ? qsTr("Your quilt") : pane === "basting" ? qsTr("Basting")
        : pane === "layers" ? qsTr("Layers") : pane === "room" ? qsTr("Room")
        : pane === "people" ? qsTr("People") : pane === "boxes" ? qsTr("What we have") : ""

    signal whyWanted(figure: string)

    onPaneChanged: {
        editing = false
        inside = false
        sideBySide = false
    }

    Row {
        id: head

        visible: panel.pane !== ""
        width: parent.width
        height: visible ? Theme.target : 0
        spacing: Theme.gap

        Press {
            id: back

            objectName: "closePane"
            glyph: "back"
            plain: true
            Accessible.name: qsTr("Back to the overview")
            onClicked: panel.pane = ""
        }
        Heading {
            height: parent.height
            width: parent.width - back.width - Theme.gap
            verticalAlignment: Text.AlignVCenter
            text: panel.heading
        }
    }
    Loader {
        anchors.top: head.bottom
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        anchors.topMargin: head.visible ? Theme.gap : 0
        sourceComponent: panel.pane === "" ? overview : panel.pane === "people" ? people : panel.section >= 0 ? fields
                         : panel.pane === "findings" ? findings : panel.pane === "ways" ? ways
                         : panel.pane === "figures" ? figures
                         : panel.pane === "bring" ? bring : panel.pane === "who" ? who : pass
    }
    Component {
        id: overview

        OverviewPane {
            room: panel.room
            onPaneWanted: pane => panel.pane = pane
            onWhyWanted: figure => panel.whyWanted(figure)
        }
    }
    Component {
        id: fields

        FieldsPane {
            editor: panel.room.editor
            section: Math.max(0, panel.section)
            onEditingChanged: panel.editing = editing

            KeptChoices {
                width: parent.width
                visible: (panel.pane === "room" || panel.pane === "boxes") && count > 0
                kept: panel.room.kept
                kind: panel.pane === "boxes" ? KeptDesk.Supplies : KeptDesk.Room
                onListWanted: keptSheet.show(kind)
            }
        }
    }
    Component {
        id: people

        PeoplePane {
            objectName: "peoplePane"
            room: panel.room
            onEditingChanged: panel.editing = editing
            onOpenedChanged: panel.inside = opened >= 0
            onKeptWanted: keptSheet.show(KeptDesk.Person)
        }
    }
    Component {
        id: findings

        FindingsPane {
            plan: panel.room.plan
            remedies: panel.room.remedies
        }
    }
    Component {
        id: ways

        WaysPane {
            plan: panel.room.plan
            ways: panel.room.ways
            remedies: panel.room.remedies
            onSideBySideChanged: panel.sideBySide = sideBySide
        }
    }
    Component {
        id: bring

        BringPane {
            plan: panel.room.plan
            onWhyWanted: figure => panel.whyWanted(figure)
        }
    }
    Component {
        id: figures

        FiguresPane {
            why: panel.room.why
            onWhyWanted: figure => panel.whyWanted(figure)
        }
    }
    Component {
        id: who

        WhoPane {
            plan: panel.room.plan
        }
    }
    Component {
        id: pass

        PassPane {
            pass: panel.room.pass
        }
    }
    KeptSheet {
        id: keptSheet

        kept: panel.room.kept
    }
}
