// One of a ChoiceGrid, as wide and as high as the others.
TablePress {
    readonly property ChoiceGrid grid: parent as ChoiceGrid

    width: grid ? grid.choiceWidth : implicitWidth
    height: grid ? grid.choiceHeight : implicitHeight
}
