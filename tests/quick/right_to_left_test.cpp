#include "language/language.h"
#include "quick/whole_window.h"
#include "support/greek_letters.h"
#include "view/paint/quilt_item.h"

#include <QGuiApplication>

/// A language that is read from right to left: words and panels change sides, what shows the table
/// and the quilt does not, because they lie in the room.
namespace bastewright::app {
namespace {

class RightToLeft : public WholeWindow {
protected:
    /// The same words before and after, so that nothing differs but their direction.
    void SetUp() override {
        WholeWindow::SetUp();
        letters_.emplace();
        turn(Qt::LeftToRight);
    }
    void TearDown() override {
        letters_.reset();
        QGuiApplication::setLayoutDirection(Qt::LeftToRight);
        WholeWindow::TearDown();
    }
    void turn(Qt::LayoutDirection direction) {
        QGuiApplication::setLayoutDirection(direction);
        emit room.workroom->comfort()->languageChanged();
        live(200);
    }
    /// Where an item lies in the window, or within another.
    QRectF place(const QString& name, const QString& within = {}) {
        const auto* item = find(name);
        const auto* ground = within.isEmpty() ? room.window->contentItem() : find(within);
        EXPECT_TRUE(item && ground) << name.toStdString();
        return item && ground ? item->mapRectToItem(ground, item->boundingRect()) : QRectF{};
    }
    QRectF otherSide(QRectF lies) const {
        return {room.window->width() - lies.right(), lies.y(), lies.width(), lies.height()};
    }
    QImage pictureOf(const QString& name) {
        return room.window->grabWindow().copy(place(name).toAlignedRect());
    }
    std::map<QString, QRectF> tiles() {
        std::map<QString, QRectF> out;
        for (const auto& row : room.workroom->board()->zones()->rows())
            out[row[0].toString()] =
                place(QStringLiteral("zone-") + row[0].toString(), QStringLiteral("tiles"));
        return out;
    }

    std::optional<HebrewLetters> letters_;
};

void expectNear(QRectF a, QRectF b, const char* what) {
    EXPECT_NEAR(a.x(), b.x(), 1.5) << what;
    EXPECT_NEAR(a.width(), b.width(), 1.5) << what;
}

TEST_F(RightToLeft, PanelsChangeSidesAndTheQuiltDoesNot) {
    const auto panelBefore = place(QStringLiteral("panel"));
    const auto back = place(QStringLiteral("back"));
    const auto size = place(QStringLiteral("picture")).size();
    const auto quilt = pictureOf(QStringLiteral("picture"));
    const auto* picture = qobject_cast<QuiltItem*>(find(QStringLiteral("picture")));
    ASSERT_TRUE(picture);
    const auto corner = picture->pixelsAt(0, 0), far = picture->pixelsAt(88, 112);

    turn(Qt::RightToLeft);
    expectNear(place(QStringLiteral("panel")), otherSide(panelBefore), "the panel");
    expectNear(place(QStringLiteral("back")), otherSide(back), "the way back");
    ASSERT_EQ(place(QStringLiteral("picture")).size(), size);
    EXPECT_EQ(picture->pixelsAt(0, 0), corner);
    EXPECT_EQ(picture->pixelsAt(88, 112), far);
    EXPECT_EQ(pictureOf(QStringLiteral("picture")), quilt);
}

TEST_F(RightToLeft, FiguresAndTablesStandAsTheyDid) {
    const auto keys = [this] {
        pane("quilt");
        tap(QStringLiteral("field-width0"));
        std::array<qreal, 3> out;
        std::ranges::transform(std::array{"key-7", "key-8", "key-⅛"}, out.begin(),
                               [&](const char* name) {
                                   return place(QString::fromUtf8(name), QStringLiteral("pad")).x();
                               });
        tap(QStringLiteral("closeEditor"));
        return out;
    };
    const auto tables = [this] {
        pane("room");
        live(200);
        return place(QStringLiteral("table1"), QStringLiteral("roomView"));
    };
    const auto keysBefore = keys();
    EXPECT_LT(keysBefore[0], keysBefore[1]);
    const auto tableBefore = tables();
    turn(Qt::RightToLeft);
    EXPECT_EQ(keys(), keysBefore);
    EXPECT_EQ(tables(), tableBefore);
}

TEST_F(RightToLeft, TilesLieAsTheTableLies) {
    room.workroom->goToTable();
    live(300);
    for (int quarter = 0; quarter < 2; ++quarter) {
        room.workroom->comfort()->setTurn(quarter);
        live(200);
        const auto before = tiles();
        ASSERT_GT(before.size(), 2u);
        const auto people = place(QStringLiteral("people"));
        const auto leave = place(QStringLiteral("leaveTable"));
        turn(Qt::RightToLeft);
        EXPECT_EQ(tiles(), before);
        expectNear(place(QStringLiteral("people")), otherSide(people), "people");
        expectNear(place(QStringLiteral("leaveTable")), otherSide(leave), "the way back");
        turn(Qt::LeftToRight);
        EXPECT_EQ(tiles(), before);
    }
}

TEST_F(RightToLeft, PassesRunAsReadingGoes) {
    const auto& pass = *room.workroom->pass();
    ASSERT_EQ(pass.number(), 1);
    ASSERT_GT(pass.count(), 1);
    key(Qt::Key_Right);
    EXPECT_EQ(pass.number(), 2);
    turn(Qt::RightToLeft);
    key(Qt::Key_Right);
    EXPECT_EQ(pass.number(), 1);
    key(Qt::Key_Left);
    EXPECT_EQ(pass.number(), 2);
}

TEST_F(RightToLeft, ALanguageBringsItsDirection) {
    EXPECT_EQ(language::directionOf(QStringLiteral("he")), Qt::RightToLeft);
    EXPECT_EQ(language::directionOf(QStringLiteral("ar")), Qt::RightToLeft);
    for (const QString& code : language::all())
        EXPECT_EQ(language::directionOf(code), Qt::LeftToRight) << code.toStdString();
    QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    room.workroom->comfort()->setLanguage(QStringLiteral("de"));
    EXPECT_EQ(QGuiApplication::layoutDirection(), Qt::LeftToRight);
    room.workroom->comfort()->setLanguage(QStringLiteral("en"));
}

} // namespace
} // namespace bastewright::app
