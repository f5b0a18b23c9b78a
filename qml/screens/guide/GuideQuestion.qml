import QtQuick
import Bastewright.Parts
import Bastewright.Theme
import Bastewright.View

// The question of a page, and how many there are.
Column {
    id: question

    required property GuideDesk guide

    property bool helped: true // a sentence below it

    spacing: Theme.gap * 0.5

    Row {
        width: parent.width
        spacing: Theme.gap

        ShortWords {
            id: count

            most: parent.width * 0.5
            text: qsTr("%1 of %2").arg(question.guide.page + 1).arg(question.guide.pages)
            font.pixelSize: Theme.small
            quiet: true
        }
        Stitches {
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width - count.width - Theme.gap
            height: Math.max(5, Theme.density * 1.4)
            share: (question.guide.page + 1) / question.guide.pages
        }
    }
    Heading {
        objectName: "guideQuestion"
        width: parent.width
        text: question.guide.question
        font.pixelSize: Theme.title
    }
    Words {
        width: parent.width
        visible: question.helped
        text: question.guide.help
        quiet: true
    }
}
