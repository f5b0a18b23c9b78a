import QtQuick
import Bastewright.Parts
import Bastewright.Theme

// One thing to look at before a pass is let go: yes, or not yet and what to do about it.
Column {
    id: asked

    required property string check
    required property string cure
    required property string answer

    required property string question

    signal answered(yes: bool)

    spacing: Theme.gap / 2

    TableWords {
        width: parent.width
        text: asked.question
        font.bold: true
        lineHeightMode: Text.FixedHeight
        lineHeight: Theme.tableText * 1.15
    }
    Row {
        width: parent.width
        spacing: Theme.gap

        TablePress {
            width: (parent.width - parent.spacing) / 2
            objectName: "yes-" + asked.check
            glyph: asked.answer === "yes" ? "check" : ""
            checked: asked.answer === "yes"
            text: qsTr("Yes")
            Accessible.name: qsTr("Yes: %1").arg(asked.question)
            onClicked: asked.answered(true)
        }
        TablePress {
            width: (parent.width - parent.spacing) / 2
            objectName: "no-" + asked.check
            glyph: asked.answer === "no" ? "cross" : ""
            checked: asked.answer === "no"
            text: qsTr("Not yet")
            Accessible.name: qsTr("Not yet: %1").arg(asked.question)
            onClicked: asked.answered(false)
        }
    }
    TableWords {
        width: parent.width
        visible: asked.answer === "no"
        text: asked.cure
        lineHeightMode: Text.FixedHeight
        lineHeight: Theme.tableText * 1.15
    }
}
