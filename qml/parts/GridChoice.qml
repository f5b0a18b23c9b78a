import QtQuick.Layouts

// One of a ChoiceGrid, as wide and as high as the one beside it.
TablePress {
    Layout.fillWidth: true
    Layout.fillHeight: true
    Layout.preferredWidth: 1
}
