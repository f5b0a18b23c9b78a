#include "quick/whole_window.h"

#include <QTest>

/// Names written by a finger alone, on letters of the program's own; and when those stay away.
namespace bastewright::app {
namespace {

struct ByFinger : WholeWindow {
    std::unique_ptr<QPointingDevice> glass{QTest::createTouchDevice()};

    const Session& session() const { return room.workroom->editor()->session(); }
    QQuickItem* pad() const { return find(QStringLiteral("letters")); }

    void touch(const QString& name, int stillMs = 60) {
        const auto* item = usable(name);
        ASSERT_TRUE(item);
        live(stillMs);
        const auto at = item->mapToScene({item->width() / 2, item->height() / 2}).toPoint();
        QTest::touchEvent(room.window, glass.get()).press(0, at);
        live(10);
        QTest::touchEvent(room.window, glass.get()).release(0, at);
        live(10);
    }
    void write(const QString& keys) {
        for (const QString& key : keys.split(QLatin1Char(' ')))
            ASSERT_NO_FATAL_FAILURE(touch(QStringLiteral("letter-") + key, 0));
    }
    void open(const char* section, const QString& field) {
        pane("");
        pane(section);
        live(60);
        if (field.startsWith(QLatin1String("helper"))) // behind somebody's card
            find(QStringLiteral("peoplePane"))->setProperty("opened", field.mid(6, 1).toInt());
        live(60);
        auto* tile = find(QStringLiteral("field-") + field);
        ASSERT_TRUE(tile) << field.toStdString();
        for (auto* list = tile->parentItem(); list; list = list->parentItem())
            if (list->inherits("QQuickFlickable")) // far down: people come one below the other
                list->setProperty("contentY", std::max(0.0, tile->mapToItem(list, {}).y() - 100));
        touch(QStringLiteral("field-") + field);
        live(60);
    }
    void expectFieldInSight(const std::string& where, const char* name = "line") {
        ASSERT_TRUE(pad()) << where;
        const auto* line = find(QLatin1String(name));
        ASSERT_TRUE(line && line->hasActiveFocus()) << where;
        const auto field = line->mapRectToScene(line->boundingRect());
        const auto keys = pad()->mapRectToScene(pad()->boundingRect());
        EXPECT_LE(field.bottom(), keys.top() + 1) << where;
        EXPECT_GE(field.top(), 0) << where;
        EXPECT_LE(keys.bottom(), room.window->height() + 1) << where;
        for (const auto* list = line->parentItem(); list; list = list->parentItem())
            if (list->inherits("QQuickFlickable")) {
                const auto sight = list->mapRectToScene(list->boundingRect());
                EXPECT_GE(field.top(), sight.top() - 1) << where;
                EXPECT_LE(field.bottom(), sight.bottom() + 1) << where;
            }
    }
};

TEST_F(ByFinger, NamesAQuiltAndAPerson) {
    EXPECT_FALSE(pad());
    open("quilt", QStringLiteral("name"));
    expectFieldInSight("the name of the quilt");
    write(QStringLiteral("m o o n space t i d e space 2 take"));
    EXPECT_EQ(session().jobs.front().name, "Moon Tide 2");
    EXPECT_FALSE(pad()) << "letters stay after the name was taken";

    open("people", QStringLiteral("helper1/name"));
    write(QStringLiteral("a d a take"));
    EXPECT_NE(session().setting.helpers[1].name, "Ada") << "two people of one name";
    const auto* problem = find(QStringLiteral("problem"));
    ASSERT_TRUE(problem) << "a name that is taken is refused in a sentence";
    EXPECT_TRUE(problem->property("text").toString().contains(QStringLiteral("Ada")));
    EXPECT_EQ(find(QStringLiteral("line"))->property("text").toString(), QStringLiteral("Ada"))
        << "what was written is lost";
    expectFieldInSight("a refused name");
    write(QStringLiteral("space m take"));
    EXPECT_EQ(session().setting.helpers[1].name, "Ada M");
}

TEST_F(ByFinger, WritesANoteAtTheTable) {
    room.workroom->goToTable();
    const auto begin = [this] {
        ASSERT_NO_FATAL_FAILURE(touch(QStringLiteral("more")));
        ASSERT_NO_FATAL_FAILURE(touch(QStringLiteral("showNotes"), 300));
        live(100);
    };
    ASSERT_NO_FATAL_FAILURE(begin());
    EXPECT_FALSE(find(QStringLiteral("keepNote"))->isEnabled()) << "nothing to keep";
    expectFieldInSight("a note", "noteLine");
    write(QStringLiteral("d 4 space s e a m"));
    ASSERT_NO_FATAL_FAILURE(touch(QStringLiteral("closeNotes")));
    EXPECT_FALSE(pad());
    ASSERT_NO_FATAL_FAILURE(begin());
    write(QStringLiteral("take")); // what was written is still there
    const auto& notes = room.workroom->live()->notes()->rows();
    ASSERT_EQ(notes.size(), 1);
    EXPECT_EQ(notes[0][2], QStringLiteral("D4 Seam"));
    write(QStringLiteral("b o"));
    ASSERT_NO_FATAL_FAILURE(touch(QStringLiteral("keepNote")));
    ASSERT_EQ(notes.size(), 2);
    EXPECT_EQ(notes[0][2], QStringLiteral("Bo"));

    ASSERT_NO_FATAL_FAILURE(touch(QStringLiteral("takeBackNote")));
    ASSERT_EQ(notes.size(), 1);
    EXPECT_EQ(notes[0][2], QStringLiteral("D4 Seam"));

    for (const auto& [width, height] : {std::pair{1024, 600}, {800, 1280}, {1280, 800}}) {
        room.window->resize(width, height);
        room.workroom->comfort()->setDensity(5.9);
        live(100);
        touch(QStringLiteral("noteLine"));
        expectFieldInSight(std::to_string(width) + " × " + std::to_string(height), "noteLine");
    }
}

TEST_F(ByFinger, SeesTheFieldOnEveryDeviceAndSizeOfText) {
    struct Device {
        int width, height;
        qreal density, text;
    };
    for (const Device& d : {Device{1024, 600, 4, 1},
                            {1280, 800, 5.9, 1},
                            {800, 1280, 5.9, 1},
                            {1920, 1080, 6, 1},
                            {1280, 800, 5.9, 2},
                            {1024, 600, 4, 2}}) {
        room.window->resize(d.width, d.height);
        room.workroom->comfort()->setDensity(d.density);
        room.workroom->comfort()->setTextScale(d.text);
        live(100);
        open("quilt", QStringLiteral("name"));
        live(100);
        expectFieldInSight(std::to_string(d.width) + " × " + std::to_string(d.height) + ", text " +
                           std::to_string(d.text));
        touch(QStringLiteral("closeEditor"));
    }
}

TEST_F(ByFinger, LettersStayAwayWhereAKeyboardIs) {
    const auto showOf = [this](Letters::Show show) { room.letters->setShow(show); };
    open("quilt", QStringLiteral("name"));
    EXPECT_TRUE(pad());
    key(Qt::Key_A, QStringLiteral("a"));
    EXPECT_FALSE(pad());
    EXPECT_EQ(find(QStringLiteral("line"))->property("text").toString(), QStringLiteral("a"));
    touch(QStringLiteral("closeEditor"));
    open("quilt", QStringLiteral("name"));
    EXPECT_FALSE(pad()) << "a keyboard was used";
    touch(QStringLiteral("line"));
    EXPECT_TRUE(pad()) << "the field was touched itself";
    touch(QStringLiteral("closeEditor"));

    key(Qt::Key_VolumeUp);
    open("quilt", QStringLiteral("name"));
    EXPECT_TRUE(pad()) << "a button of the device is no keyboard";
    showOf(Letters::Show::Never);
    EXPECT_FALSE(pad());
    touch(QStringLiteral("closeEditor"));
    showOf(Letters::Show::AsNeeded);
    room.workroom->comfort()->setLanguage(QStringLiteral("de"));
    live(50);
    open("quilt", QStringLiteral("name"));
    EXPECT_TRUE(find(QStringLiteral("letter-ß")));
    room.workroom->comfort()->setLanguage(QStringLiteral("en"));
    touch(QStringLiteral("closeEditor"));

    tap(QStringLiteral("field-name"));
    key(Qt::Key_Escape, QStringLiteral("\u001b"));
    tap(QStringLiteral("field-name"));
    EXPECT_FALSE(pad()) << "a mouse, and a keyboard beside it";
    showOf(Letters::Show::Always);
    EXPECT_TRUE(pad());
}

} // namespace
} // namespace bastewright::app
