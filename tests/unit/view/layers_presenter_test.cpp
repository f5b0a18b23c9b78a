#include "session/checked_plan.h"
#include "unit/view/qt_application.h"
#include "view/edit/field_model.h"
#include "view/plan/layers_presenter.h"
#include "view/plan/replanner.h"

#include <gtest/gtest.h>

using namespace bastewright;
using namespace bastewright::literals;

namespace {

/// 80 × 80 in at 42 usable, nothing for squaring: 5 1/2 yd with four seams, 7 3/8 yd with two, 5 yd
/// with another fabric.
Session eighty() {
    Session session;
    Job& job = session.jobs.emplace_back();
    job.name = "Samphire";
    job.top.width = {80_in};
    job.top.length = {80_in};
    job.basting.spacing = 8_in; // what is looked at here does not take many points
    job.backing.fabrics = {{.name = "slate", .usableWidth = 42_in}};
    job.backing.squaring = {};
    job.batting.pieces = {{"A", 60_in, 90_in, 1}, {"B", 40_in, 90_in, 1}};
    session.setting.room.tables = {Table{.length = 96_in, .width = 60_in}};
    session.setting.helpers.emplace_back().name = "Ada";
    return session;
}

struct Layers : testing::Test {
    JobEditor editor;
    FieldModel fields;
    PlanPresenter plan;
    std::optional<LayersPresenter> layers;

    Layers() {
        needApplication();
        layers.emplace(&plan, &editor);
        fields.setEditor(&editor);
        fields.setSection(FieldModel::Section::Layers);
        open(eighty());
    }
    void open(const Session& session) {
        editor.open(session);
        replan();
    }
    void replan() {
        Session session = editor.session();
        Plan made = checkedPlan(session);
        plan.show(
            std::make_shared<Planned>(withBackingWays({std::move(session), std::move(made)})));
    }
    QString cell(int row, int column) { return layers->choices()->rows()[row][column].toString(); }
    bool mayTake(int row) { return layers->choices()->rows()[row][6].toBool(); }
    int rowOf(const QString& bought) {
        for (int row = 0; row < layers->choices()->count(); ++row)
            if (cell(row, 0) == bought)
                return row;
        return -1;
    }
};

TEST_F(Layers, OfferEveryWayWithItsPrice) {
    ASSERT_GE(layers->choices()->count(), 3);
    EXPECT_GE(rowOf("5\u00a0yd"), 0);
    EXPECT_GE(rowOf("7⅜\u00a0yd"), 0);
    const int chosen = rowOf("5½\u00a0yd");
    ASSERT_GE(chosen, 0);
    EXPECT_EQ(layers->shown(), chosen);
    EXPECT_EQ(cell(chosen, 1), "4 seams");
    EXPECT_FALSE(mayTake(chosen));
    EXPECT_FALSE(layers->previewing());
    EXPECT_EQ(layers->backing()->panels.size(), 5u);
}

TEST_F(Layers, AWayIsLookedAtWithoutBeingTaken) {
    const auto before = editor.session();
    layers->setShown(rowOf("7⅜\u00a0yd"));
    EXPECT_TRUE(layers->previewing());
    ASSERT_TRUE(layers->backing());
    EXPECT_EQ(layers->backing()->panels.size(), 3u);
    EXPECT_EQ(editor.session(), before);
    layers->setShown(99);
    EXPECT_EQ(layers->shown(), rowOf("7⅜\u00a0yd"));
}

TEST_F(Layers, EveryWayCanBeTakenAndThePlanFollows) {
    for (int row = 0; row < layers->choices()->count(); ++row) {
        if (!mayTake(row))
            continue;
        const QString bought = cell(row, 0), seams = cell(row, 1);
        EXPECT_EQ(layers->take(row), "") << bought.toStdString();
        replan();
        const int taken = layers->shown();
        EXPECT_EQ(cell(taken, 0), bought);
        EXPECT_EQ(cell(taken, 1), seams);
        EXPECT_TRUE(layers->choices()->rows()[taken][5].toBool());
        EXPECT_FALSE(layers->previewing());
        editor.undo();
        replan();
        EXPECT_EQ(editor.session(), eighty());
    }
}

TEST_F(Layers, TheLeastBoughtIsTakenBackWithoutARest) {
    EXPECT_EQ(layers->take(rowOf("7⅜\u00a0yd")), "");
    ASSERT_TRUE(editor.job().backing.way);
    replan();
    EXPECT_EQ(layers->take(rowOf("5½\u00a0yd")), "");
    EXPECT_FALSE(editor.job().backing.way);
}

TEST_F(Layers, WhatIsThePlanAlreadyIsNotTaken) {
    EXPECT_NE(layers->take(layers->shown()), "");
    EXPECT_NE(layers->take(-1), "");
    EXPECT_FALSE(editor.canUndo());
}

TEST_F(Layers, SayWhatSquaringAndCreepLeaveOfTheOverage) {
    const auto& rows = layers->spare()->rows();
    ASSERT_EQ(rows.size(), 2);
    for (const auto& row : rows)
        EXPECT_EQ(row[1].toString(), "fine") << row[2].toString().toStdString();
    EXPECT_EQ(rows[0][2].toString(), "4\u00a0in of overage on every side, in every pass. Layers "
                                     "creep up to ½\u00a0in while they "
                                     "are basted: 3½\u00a0in are left to trim square.");
    Session session = eighty();
    session.jobs[0].top.diagonals = {114_in, 112_in};
    open(session);
    // (114² − 112²) / (8 × 80) is 0.7 in of it on a side.
    EXPECT_TRUE(
        layers->spare()->rows()[0][2].toString().contains("The top leans and takes ¾\u00a0in"))
        << layers->spare()->rows()[0][2].toString().toStdString();
}

TEST_F(Layers, TheBattingCanBeBoughtAnotherWay) {
    Session session = eighty();
    session.jobs[0].batting.pieces.clear();
    session.jobs[0].top.width = {120_in};
    session.jobs[0].top.length = {120_in};
    open(session);
    ASSERT_GE(layers->battingChoices()->count(), 2);
    EXPECT_TRUE(layers->battingChoices()->rows()[0][1].toBool());
    const QString other = layers->battingChoices()->rows()[1][0].toString();
    EXPECT_EQ(layers->takeBatting(1), "");
    replan();
    EXPECT_EQ(layers->battingChoices()->rows()[0][0].toString(), other);
    EXPECT_NE(layers->takeBatting(99), "");
    editor.undo();
    EXPECT_FALSE(editor.job().batting.roll);
}

TEST_F(Layers, OnHandIsTypedInYards) {
    EXPECT_EQ(fields.take("fabric0/hand", "2 3/4"), "");
    EXPECT_EQ(editor.job().backing.fabrics[0].onHand, 99_in);
    EXPECT_EQ(fields.take("fabric0/hand", "50 in"), "");
    EXPECT_EQ(editor.job().backing.fabrics[0].onHand, 50_in);
}

TEST_F(Layers, APackIsTypedByItsSize) {
    EXPECT_EQ(fields.take("ownpack", "80 x 100"), "");
    EXPECT_EQ(editor.job().batting.pack, "80 x 100");
    EXPECT_NE(fields.take("ownpack", "large"), "");
    EXPECT_EQ(fields.take("ownroll", "60"), "");
    EXPECT_EQ(editor.job().batting.roll, 60_in);
}

TEST_F(Layers, ABackingMeasuredTooSmallStopsWithItsCure) {
    EXPECT_EQ(fields.take("backwidth", "79"), "");
    EXPECT_EQ(fields.take("backlength", "88"), "");
    replan();
    EXPECT_FALSE(layers->hasBacking());
    const auto& first = layers->spare()->rows().front();
    EXPECT_EQ(first[1].toString(), "stop");
    EXPECT_TRUE(first[3].toString().contains("5\u00a0in more, which leaves half"))
        << first[3].toString().toStdString();
}

TEST_F(Layers, ATopThatLeansHasLessToSpare) {
    Session session = eighty();
    session.jobs[0].top.diagonals = {114_in, 112_in};
    open(session);
    // (114² − 112²) / (4 × 80) is 1.4 in more taken up each way.
    for (const Side side : kSides)
        EXPECT_NEAR(plan.quilt().plan()->passes.front().backingSpare[side].in(), 4 - 0.70625, 1e-6);
}

TEST_F(Layers, WithoutAWayToMakeThemSaySo) {
    Session session = eighty();
    session.jobs[0].backing.fabrics = {
        {.name = "slate", .usableWidth = 42_in, .onHand = 60_in, .buyable = false}};
    open(session);
    EXPECT_FALSE(layers->hasBacking());
    EXPECT_EQ(layers->choices()->count(), 0);
    EXPECT_NE(layers->backingText(), "");
    EXPECT_EQ(layers->cloths(), 0);
    EXPECT_EQ(layers->clothName(0), "");
}

TEST_F(Layers, NewClothsHaveNamesOfTheirOwn) {
    EXPECT_EQ(fields.take("addfabric", ""), "");
    EXPECT_EQ(fields.take("addfabric", ""), "");
    const auto& all = editor.job().backing.fabrics;
    ASSERT_EQ(all.size(), 3u);
    EXPECT_EQ(all[1].name, "Fabric 2");
    EXPECT_EQ(all[2].name, "Fabric 3");
    EXPECT_EQ(fields.take("fabric1/remove", ""), "");
    EXPECT_EQ(fields.take("addfabric", ""), "");
    EXPECT_EQ(editor.job().backing.fabrics.back().name, "Fabric 4");
}

TEST_F(Layers, PacksAreNamedInTheJobsUnit) {
    const auto packs = [&] {
        for (int row = 0; row < fields.rowCount(); ++row)
            if (fields.data(fields.index(row), FieldModel::KeyRole) == "pack")
                return fields.data(fields.index(row), FieldModel::ChoicesRole).toStringList();
        return QStringList{};
    };
    Session session = eighty();
    session.jobs[0].batting.pieces.clear();
    open(session);
    ASSERT_EQ(packs().size(), 12); // fewest joins, seven packs, four rolls
    EXPECT_EQ(packs()[6], "Queen, 90 × 108\u00a0in");
    session.jobs[0].unit = Unit::centimetre;
    open(session);
    EXPECT_TRUE(packs()[6].endsWith("cm")) << packs()[6].toStdString();
}

/// Bad input through the screen's own fields: one sentence, nothing changed.
TEST_F(Layers, WhatIsNotAcceptedIsSaidInOneSentenceAndNothingIsLost) {
    struct {
        const char *key, *value, *says;
    } const kBad[] = {
        {"fabric0/usable", "0", "6\u00a0in"},
        {"fabric0/usable", "none", "none"},
        {"fabric0/hand", "-2", "-72"},
        {"piece0/width", "0", "0"},
        {"backover", "30", "24\u00a0in"},
        {"seam", "-1", "-1"},
        {"shrink", "40", "20"},
        {"backwidth", "2", "6\u00a0in"},
        {"trim", "9", "6\u00a0in"},
    };
    for (const auto& bad : kBad) {
        const auto before = editor.session();
        const QString said = fields.take(bad.key, bad.value);
        EXPECT_TRUE(said.contains(QString::fromUtf8(bad.says)))
            << bad.key << ": " << said.toStdString();
        EXPECT_TRUE(said.contains(": ") && said.contains("enter")) << said.toStdString();
        EXPECT_FALSE(said.contains(QLatin1Char('\n'))) << said.toStdString();
        EXPECT_EQ(editor.session(), before) << bad.key;
    }
    EXPECT_FALSE(editor.canUndo());
}

/// What a field accepts and a planner cannot use is planned, refused in one sentence, and kept.
TEST_F(Layers, WhatCannotBeMadeIsSaidInOneFindingAndNothingIsLost) {
    struct {
        const char* what;
        void (*spoil)(Session&);
        const char *field, *says;
    } const kBad[] = {
        {"no cloth", [](Session& s) { s.jobs[0].backing.fabrics.clear(); }, "/backing/fabrics",
         "No backing fabric is listed"},
        {"pieces smaller than the trim",
         [](Session& s) {
             s.jobs[0].batting.pieces = {{"scrap", 2_in, 2_in, 1}};
         },
         "/batting/pieces", "scrap"},
        {"an overage larger than the cloth",
         [](Session& s) {
             s.jobs[0].backing.overage = 20_in;
             s.jobs[0].backing.fabrics[0].usableWidth = 18_in;
         },
         "/backing/overage", "overage"},
    };
    for (const auto& bad : kBad) {
        Session session = eighty();
        bad.spoil(session);
        open(session);
        int found = 0;
        for (const Finding& f : plan.quilt().planned()->plan.findings)
            found += f.field.find(bad.field) != std::string::npos &&
                     f.text.english().find(bad.says) != std::string::npos;
        EXPECT_EQ(found, 1) << bad.what;
        EXPECT_EQ(editor.session(), session) << bad.what;
    }
}

} // namespace
