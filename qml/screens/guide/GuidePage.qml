pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.Pictures
import Bastewright.Theme
import Bastewright.View

// The answers of one page: what is kept, what is chosen by a tap, what is typed; people as cards.
FocusScope {
    id: page

    required property Workroom room

    readonly property GuideDesk guide: room.guide
    readonly property bool people: guide.page === GuideDesk.People
    readonly property int keptKind: people ? KeptDesk.Person : guide.page === GuideDesk.Tables ? KeptDesk.Room : guide.page === GuideDesk.Supplies ? KeptDesk.Supplies : -1
    readonly property int abreast: width > Math.max(70 * Theme.density, 20 * Theme.text) ? 2 : 1

    signal wanted(tile: ValueTile)
    signal nameWanted(person: int, name: string)

    // The tile of this key; null where the page has none.
    function valueOf(key: string): ValueTile {
        for (let i = 0; i < tiles.count; ++i) {
            const entry = tiles.itemAt(i) as ValueTile
            if (entry && entry.key === key)
                return entry
        }
        return null
    }

    Flickable {
        id: list

        objectName: "guideAnswers"
        anchors.fill: parent
        contentHeight: column.implicitHeight
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: column

            width: list.width
            spacing: Theme.gap

            Problem {
                width: parent.width
                text: page.people ? page.room.crew.problem : page.guide.problem
            }
            KeptChoices {
                width: parent.width
                visible: page.keptKind >= 0 && count > 0
                kept: page.room.kept
                kind: Math.max(0, page.keptKind)
                onListWanted: keptSheet.show(kind)
            }
            Grid {
                id: choices

                width: parent.width
                visible: page.guide.choices.count > 0
                columns: page.abreast
                columnSpacing: Theme.gap
                rowSpacing: Theme.gap

                Repeater {
                    model: page.guide.choices

                    AnswerPress {
                        required property int index

                        objectName: "answer" + index
                        width: Math.floor((choices.width - (choices.columns - 1) * Theme.gap) / choices.columns)
                        onClicked: page.guide.choose(index)
                    }
                }
            }
            Grid {
                id: typed

                width: parent.width
                visible: page.guide.values.count > 0
                columns: page.abreast
                columnSpacing: Theme.gap
                rowSpacing: Theme.gap

                Repeater {
                    id: tiles

                    model: page.guide.values

                    ValueTile {
                        id: tile

                        width: Math.floor((typed.width - (typed.columns - 1) * Theme.gap) / typed.columns)
                        onClicked: page.wanted(tile)
                    }
                }
            }
            Repeater {
                model: page.people ? page.room.crew.people : null

                PersonCard {
                    width: column.width
                    desk: page.room.crew
                    bar: false
                    removable: page.room.crew.people.count > 1
                    onOpened: page.nameWanted(index, name)
                }
            }
            AddPerson {
                width: parent.width
                visible: page.people && !page.room.crew.full
                desk: page.room.crew
            }
            Toggle {
                objectName: "keepPeople"
                visible: page.people
                label: qsTr("Keep these people for the next quilt")
                on: page.room.kept.keepsPeople
                onFlipped: page.room.kept.keepsPeople = !page.room.kept.keepsPeople
            }
        }
    }
    KeptSheet {
        id: keptSheet

        kept: page.room.kept
    }
}
