pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Theme

// Progress as a seam being sewn: a stitch for every twentieth.
Item {
    id: seam

    property real share: 0

    Accessible.role: Accessible.ProgressBar
    Accessible.name: qsTr("%1 percent done").arg(Math.round(share * 100))

    Repeater {
        model: 20

        Rectangle {
            required property int index

            readonly property real step: seam.width / 20
            readonly property int place: seam.LayoutMirroring.enabled ? 19 - index : index

            x: place * step + step * 0.12
            width: step * 0.76
            height: seam.height
            radius: height / 2
            color: seam.share * 20 >= index + 0.999 ? Theme.doneMark : Theme.paper
            border.width: Theme.line
            border.color: Theme.strongEdge
        }
    }
}
