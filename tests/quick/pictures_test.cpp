#include "quick/whole_window.h"
#include "sheets/pictures/top_photo.h"
#include "view/photo/photo_desk.h"

#include <QPainter>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace bastewright::app {
namespace {

struct Pictures : WholeWindow {
    Workroom& work() { return *room.workroom; }
    const Session& session() { return work().editor()->session(); }
    void replanned() {
        live(200); // several changes make one plan
        ASSERT_TRUE(until([this] { return planned(); }));
    }
    /// At the table, until the backing lies and is clamped.
    void upToTheHolds() {
        room.surroundings->setStill(true);
        room.workroom->goToTable();
        auto& step = *room.workroom->step();
        for (int i = 0; i < 6 && step.rounds().size() < 2; ++i) {
            for (const auto& check : {"cautions", "palm-glides", "underside", "spare"})
                if (step.asks())
                    step.answer(QLatin1String(check), true);
            room.workroom->board()->doStep();
            live(LiveController::kOneTapMs + 10); // sooner would be the same tap
        }
        ASSERT_GT(step.rounds().size(), 1);
    }
    static std::vector<QQuickItem*> everythingIn(QQuickItem* item) {
        std::vector<QQuickItem*> all{item};
        for (std::size_t i = 0; i < all.size(); ++i)
            for (auto* child : all[i]->childItems())
                if (child->isVisible())
                    all.push_back(child);
        return all;
    }
};

TEST_F(Pictures, TablesAreDraggedApartAndTogetherAndWallsAreTapped) {
    pane("room");
    const Session before = session();
    drag(QStringLiteral("table1"), {0, 290}); // down, well away
    ASSERT_TRUE(session().setting.room.together);
    EXPECT_EQ(*session().setting.room.together,
              (PushedTogether{Length::inches(72), Length::inches(30)}));
    replanned();
    tap(QStringLiteral("edge0"));
    EXPECT_NE(session().setting.room.walls, before.setting.room.walls);
    replanned();
    tap(QStringLiteral("undo"));
    tap(QStringLiteral("undo"));
    EXPECT_EQ(session(), before);
    replanned();
    tap(QStringLiteral("addTable"));
    EXPECT_EQ(session().setting.room.tables.front().count, 3);
    replanned();
    tap(QStringLiteral("table0"));
    tap(QStringLiteral("removeTable"));
    EXPECT_EQ(session().setting.room.tables.front().count, 2);
}

TEST_F(Pictures, PeopleAreDraggedToASideAndSentThereByKeys) {
    pane("people");
    live(400);
    const auto* view = find(QStringLiteral("peopleView"));
    const auto* person = find(QStringLiteral("person-Ada"));
    ASSERT_TRUE(view && person);
    // Up to the near side of the tables, which are drawn in the middle.
    const QPointF at = person->mapToScene({person->width() / 2, person->height() / 2});
    const QRectF surface = work().tables()->surface();
    ASSERT_FALSE(surface.isEmpty());
    const auto* table = find(QStringLiteral("table0"));
    ASSERT_TRUE(table);
    drag(QStringLiteral("person-Ada"),
         table->mapToScene({table->width() / 2, table->height() + 20}) - at);
    EXPECT_EQ(session().setting.helpers[0].side, Side::foot);
    replanned();
    EXPECT_TRUE(planned());
    auto* bo = find(QStringLiteral("person-Bo"));
    ASSERT_TRUE(bo);
    bo->forceActiveFocus();
    key(Qt::Key_Right);
    EXPECT_EQ(session().setting.helpers[1].side, Side::right);
    key(Qt::Key_Delete);
    EXPECT_FALSE(session().setting.helpers[1].side);
    tap(QStringLiteral("person-Cai"));
    tap(QStringLiteral("keepTo2"));
    EXPECT_EQ(session().setting.helpers[2].side, Side::left);
}

TEST_F(Pictures, TheTopFollowsWhatIsTypedAndSeamsAreDrawnOnIt) {
    pane("quilt");
    tap(QStringLiteral("field-columns"));
    tap(QStringLiteral("key-6"));
    EXPECT_EQ(work().top()->sizeText(), QStringLiteral("88 × 112\u00a0in"))
        << "what was measured stays";
    EXPECT_TRUE(work().top()->gridText().contains(QStringLiteral("76 × 112\u00a0in")));
    key(Qt::Key_Escape);
    EXPECT_EQ(work().top()->gridText(), QString{});
    EXPECT_FALSE(work().editor()->canUndo());
    const Session before = session();
    tap(QStringLiteral("field-columns"));
    tap(QStringLiteral("key-6"));
    tap(QStringLiteral("take"));
    EXPECT_EQ(work().top()->sizeText(), QStringLiteral("88 × 112\u00a0in"));
    EXPECT_TRUE(work().top()->gridText().contains(QStringLiteral("76 × 112\u00a0in")));
    tap(QStringLiteral("takeGrid"));
    EXPECT_EQ(work().top()->sizeText(), QStringLiteral("76 × 112\u00a0in"));
    tap(QStringLiteral("undo"));
    tap(QStringLiteral("undo"));
    EXPECT_EQ(session(), before);
    EXPECT_TRUE(find(QStringLiteral("topPicture"))) << "Escape left more than the value";
    tap(QStringLiteral("drawSeam"));
    const auto* picture = find(QStringLiteral("topPicture"));
    ASSERT_TRUE(picture);
    const QPointF middle{picture->width() / 2, picture->height() / 2};
    tapAt(picture->mapToScene(middle + QPointF{-40, 30}));
    tapAt(picture->mapToScene(middle + QPointF{40, -30}));
    ASSERT_EQ(session().jobs.front().top.seams.size(), 1u);
    const auto seam = session().jobs.front().top.seams.front();
    EXPECT_EQ(seam.from.x.nm() % Length::inch64ths(16).nm(), 0);
    EXPECT_LT(seam.from.x, seam.to.x);
    EXPECT_GT(seam.from.y, seam.to.y);
    tap(QStringLiteral("isItSquare"));
    tap(QStringLiteral("lastSeam"));
    EXPECT_TRUE(session().jobs.front().top.seams.empty());
}

TEST_F(Pictures, APhotoIsStraightenedByItsMarksAndFabricsArePicked) {
    pane("quilt");
    const Session before = session();
    tap(QStringLiteral("photoAndFabrics"));
    tap(QStringLiteral("fabric1"));
    tap(QStringLiteral("swatch12"));
    ASSERT_EQ(session().jobs.front().top.fabrics.size(), 4u);
    EXPECT_EQ(session().jobs.front().top.fabrics[1], (Colour{0xb5, 0x32, 0x3c}));
    key(Qt::Key_Escape);
    replanned();
    auto* photos = room.window->findChild<PhotoDesk*>();
    ASSERT_TRUE(photos);
    const QTemporaryDir photosFolder;
    const QString path = photosFolder.filePath(QStringLiteral("top.png"));
    QImage taken{640, 480, QImage::Format_RGB32};
    taken.fill(Qt::darkGray);
    QPainter{&taken}.fillRect(160, 60, 300, 380, Qt::red);
    ASSERT_TRUE(taken.save(path));
    photos->open(QUrl::fromLocalFile(path));
    ASSERT_TRUE(until([&] { return photos->picking(); }));
    live(100);
    const auto* view = find(QStringLiteral("photoCorners"));
    ASSERT_TRUE(view);
    const auto place = view->property("place").toRectF();
    const QPointF corners[] = {{160, 60}, {460, 60}, {460, 440}, {160, 440}};
    for (int i = 0; i < 4; ++i) {
        const QPointF now = photos->corners()[i];
        drag(QStringLiteral("corner%1").arg(i),
             {(corners[i].x() / 640 - now.x()) * place.width(),
              (corners[i].y() / 480 - now.y()) * place.height()});
        EXPECT_NEAR(photos->corners()[i].x() * 640, corners[i].x(), 4) << i;
        EXPECT_NEAR(photos->corners()[i].y() * 480, corners[i].y(), 4) << i;
    }
    auto* last = find(QStringLiteral("corner3"));
    ASSERT_TRUE(last);
    last->forceActiveFocus();
    const QPointF at = photos->corners()[3];
    key(Qt::Key_Right);
    key(Qt::Key_Up);
    EXPECT_GT(photos->corners()[3].x(), at.x());
    EXPECT_LT(photos->corners()[3].y(), at.y());
    tap(QStringLiteral("takePhoto"));
    EXPECT_FALSE(find(QStringLiteral("photoCorners")));
    const Photo& kept = session().jobs.front().top.photo;
    ASSERT_FALSE(kept.empty());
    const QColor middle = sheets::photoInColour(kept).pixelColor(kept.width() / 2, 3);
    EXPECT_GT(middle.red(), 200) << "only the quilt";
    replanned();
    tap(QStringLiteral("undo"));
    tap(QStringLiteral("undo"));
    EXPECT_EQ(session(), before);
    photos->open(QUrl::fromLocalFile(photosFolder.path()));
    ASSERT_TRUE(until([&] { return !photos->busy(); }));
    EXPECT_TRUE(find(QStringLiteral("photoProblem")));
}

TEST_F(Pictures, AnotherWayIsTakenAndARowShowsHowItIsPlaced) {
    pane("ways");
    const auto& all = work().plan()->quilt().plan()->alternatives;
    std::size_t other = 0;
    while (other < all.size() && (all[other].chosen || !all[other].workable))
        ++other;
    ASSERT_LT(other, all.size());
    const auto wanted = all[other];
    tap(QStringLiteral("wayCard%1").arg(other));
    auto* way = find(QStringLiteral("takeWay%1").arg(other));
    ASSERT_TRUE(way);
    QMetaObject::invokeMethod(way, "clicked");
    replanned();
    const auto& now = work().plan()->quilt().plan()->alternatives.front();
    EXPECT_TRUE(now.chosen);
    EXPECT_EQ(now.surfaceLength, wanted.surfaceLength);
    EXPECT_EQ(now.passes, wanted.passes);
    pane("basting");
    const auto* picture = find(QStringLiteral("picture"));
    ASSERT_TRUE(picture);
    tapAt(picture->mapToScene({picture->width() / 2, picture->height() / 2}));
    EXPECT_TRUE(find(QStringLiteral("rowsCard")));
    tap(QStringLiteral("closeRows"));
    EXPECT_FALSE(find(QStringLiteral("rowsCard")));
}

TEST_F(Pictures, ACureIsShownBeforeAndAfterAndAFigureOpensToItsWhy) {
    const Session before = session();
    pane("findings");
    int at = 0;
    while (at < work().remedies()->findings()->count() &&
           work().remedies()->findings()->rows()[at][3].toString().isEmpty())
        ++at;
    tap(QStringLiteral("cure%1").arg(at));
    EXPECT_NE(session(), before);
    EXPECT_TRUE(find(QStringLiteral("trialCard")));
    replanned();
    EXPECT_FALSE(work().remedies()->after().isEmpty());
    tap(QStringLiteral("takeTrialBack"));
    EXPECT_EQ(session(), before);
    EXPECT_FALSE(find(QStringLiteral("trialCard")));
    replanned();
    tap(QStringLiteral("closePane"));
    tap(QStringLiteral("figure-passes"));
    EXPECT_TRUE(find(QStringLiteral("whySheetClose")));
    tap(QStringLiteral("whySheetClose"));
}

// The picture of the holds stands on small devices too, and no number lies on another or is cut
// off: on a small laptop, on a tablet of 10 in held upright, and on one of 7 in, where people make
// room for it.
TEST_F(Pictures, HoldsHaveRoomOnSmallDevices) {
    upToTheHolds();
    const struct {
        int width, height;
        qreal density;
        bool people;
    } devices[] = {{1024, 600, 4, true},
                   {800, 1280, 5.9, true},
                   {1024, 600, 5.9, false},
                   {1280, 800, 5.9, true}};
    const auto numbers = std::size_t(room.workroom->step()->holds()->count());
    ASSERT_GT(numbers, 8u);
    for (const auto& device : devices)
        for (const char* language : {"en", "de"}) {
            SCOPED_TRACE(std::to_string(device.width) + " at " + std::to_string(device.density) +
                         " " + language);
            room.workroom->comfort()->setLanguage(QString::fromLatin1(language));
            room.workroom->comfort()->setDensity(device.density);
            room.window->resize(device.width, device.height);
            settle(*room.window);
            auto* holds = find(QStringLiteral("holds"));
            ASSERT_TRUE(holds);
            EXPECT_EQ(find(QStringLiteral("people")) != nullptr, device.people);
            std::vector<QRectF> discs;
            for (auto* item : everythingIn(holds))
                if (item->objectName() == QLatin1String("hold"))
                    discs.push_back(item->mapRectToItem(holds, item->boundingRect()));
            ASSERT_EQ(discs.size(), numbers);
            for (std::size_t i = 0; i < discs.size(); ++i) {
                EXPECT_TRUE(holds->boundingRect().adjusted(-1, -1, 1, 1).contains(discs[i])) << i;
                for (std::size_t k = 0; k < i; ++k) {
                    const QRectF both = discs[i] & discs[k];
                    EXPECT_LE(std::min(both.width(), both.height()), 0.5) << i << " " << k;
                }
            }
        }
    room.workroom->comfort()->setLanguage(QStringLiteral("en"));
}

// Where layers are held, the picture of the holds stands in place of the zones, and a tap lights
// the next number.
TEST_F(Pictures, HoldsAreLitOneNumberAfterTheOther) {
    auto& step = *room.workroom->step();
    upToTheHolds();
    const auto* holds = usable(QStringLiteral("holds"));
    ASSERT_TRUE(holds);
    EXPECT_FALSE(find(QStringLiteral("tiles")));
    EXPECT_EQ(holds->property("round").toInt(), step.rounds().at(0));
    tap(QStringLiteral("holds"));
    EXPECT_EQ(holds->property("round").toInt(), step.rounds().at(1));
}

} // namespace
} // namespace bastewright::app
