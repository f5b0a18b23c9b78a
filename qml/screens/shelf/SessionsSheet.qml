pragma ComponentBehavior: Bound

import QtQuick
import Bastewright.Parts
import Bastewright.View

// The sessions a quilt has had, running or ended; each opens what was done in it.
Sheet {
    id: sessions

    required property Workroom room

    property string name: ""

    signal chosen(session: real)

    function ask(job: real, what: string) {
        room.record.list(job)
        name = what
        open()
    }

    objectName: "sessionsSheet"
    title: qsTr("Sessions of %1").arg(name)

    Repeater {
        model: sessions.room.record.sessions

        Press {
            required property real session
            required property string words
            required property bool running
            required property int index

            objectName: "session" + index
            width: sessions.availableWidth
            glyph: running ? "start" : "check"
            text: words
            onClicked: {
                sessions.close()
                sessions.chosen(session)
            }
        }
    }
}
