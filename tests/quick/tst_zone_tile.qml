import QtQuick
import QtTest
import Bastewright.Quilt

Item {
    width: 500
    height: 300
    visible: true

    ZoneTile {
        id: tile

        width: 160
        height: 120
        zone: "C4"
        points: 9
        stage: "waiting"
        letter: "A"
        mark: 0
        person: "Ada"
        verb: "pins in"
        ready: true
        area: Qt.rect(0, 0, 20, 15)
        places: [Qt.point(4, 4), Qt.point(12, 8)]
    }
    SignalSpy {
        id: clicked

        target: tile
        signalName: "clicked"
    }
    SignalSpy {
        id: held

        target: tile
        signalName: "heldLong"
    }

    TestCase {
        name: "ZoneTile"
        when: windowShown

        function init() {
            failOnWarning(/.*/)
            clicked.clear()
            held.clear()
            tile.stage = "waiting"
        }
        function test_a_tap_ticks() {
            mouseClick(tile)
            compare(clicked.count, 1)
            compare(held.count, 0)
        }
        function test_a_long_press_takes_back_and_does_not_tick() {
            mousePress(tile)
            tryCompare(held, "count", 1, 2000)
            mouseRelease(tile)
            compare(clicked.count, 0)
        }
        function test_a_tap_alone_changes_nothing_on_the_tile() {
            mouseClick(tile)
            compare(tile.stage, "waiting")
        }
        function test_looks_differ_without_colour() {
            // In grey, where the ink stands must still tell the three states apart.
            const inks = []
            for (const stage of ["waiting", "open", "closed"]) {
                tile.stage = stage
                const image = grabImage(tile)
                const ink = []
                for (let x = 4; x < tile.width - 4; x += 2)
                    for (let y = 4; y < tile.height - 4; y += 2)
                        ink.push(image.red(x, y) * 0.3 + image.green(x, y) * 0.59 + image.blue(x, y) * 0.11 < 110)
                inks.push(ink)
            }
            for (const [a, b] of [[0, 1], [1, 2], [0, 2]]) {
                let differ = 0
                for (let i = 0; i < inks[a].length; ++i)
                    differ += inks[a][i] !== inks[b][i] ? 1 : 0
                verify(differ > 60, a + " and " + b + " differ in " + differ + " places")
            }
        }
    }
}
