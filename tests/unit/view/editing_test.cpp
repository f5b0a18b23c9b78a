#include "view/edit/field_model.h"
#include "view/edit/job_editor.h"

#include <gtest/gtest.h>

using namespace bastewright;
using namespace bastewright::literals;

namespace {

Session harbour() {
    Session session;
    Job job;
    job.name = "Harbour Lights";
    job.top.grid = BlockGrid{.columns = 7,
                             .rows = 9,
                             .block = 10_in,
                             .blockLength = {},
                             .sashing = 2_in,
                             .border = 3_in,
                             .innerX = {},
                             .innerY = {}};
    job.top.width = {88_in};
    job.top.length = {112_in};
    session.jobs = {job};
    session.setting.room.tables = {Table{}};
    session.setting.helpers.emplace_back().name = "Ada";
    return session;
}

struct Editing : testing::Test {
    JobEditor editor;
    FieldModel fields;

    Editing() {
        editor.open(harbour());
        fields.setEditor(&editor);
    }
    QString shown(const QString& key) const {
        for (int row = 0; row < fields.rowCount(); ++row)
            if (fields.data(fields.index(row), FieldModel::KeyRole) == key)
                return fields.data(fields.index(row), FieldModel::ValueRole).toString();
        return QStringLiteral("no field ") + key;
    }
};

TEST_F(Editing, LengthsAreShownAndTakenInTheJobsUnit) {
    fields.setSection(FieldModel::Section::Basting);
    EXPECT_EQ(shown("spacing"), "4\u00a0in");
    EXPECT_EQ(fields.take("spacing", "3 5/8"), "");
    EXPECT_EQ(editor.job().basting.spacing, 3.625_in);
    EXPECT_EQ(shown("spacing"), "3⅝\u00a0in");
}

TEST_F(Editing, LengthsAboveEightyFourInchesAreNotCutToThirtyTwoBits) {
    EXPECT_EQ(fields.take("length0", "119 7/8"), "");
    EXPECT_EQ(editor.job().top.length.front(), 119.875_in);
    EXPECT_EQ(shown("length0"), "119⅞\u00a0in");
}

TEST_F(Editing, WhatDoesNotFitChangesNothingAndIsSaidInOneSentence) {
    const auto before = editor.session();
    const QString nonsense = fields.take("width0", "wide");
    EXPECT_TRUE(nonsense.contains("wide")) << nonsense.toStdString();
    const QString tooLarge = fields.take("width0", "2000 in");
    EXPECT_TRUE(tooLarge.contains("240")) << tooLarge.toStdString();
    EXPECT_EQ(editor.session(), before);
    EXPECT_FALSE(editor.canUndo());
}

TEST_F(Editing, BlocksLeaveWhatIsMeasuredAsItIs) {
    EXPECT_EQ(fields.take("columns", "6"), "");
    EXPECT_EQ(editor.job().top.width, std::vector{88_in});
    const QString tooMany = fields.take("columns", "8");
    EXPECT_TRUE(tooMany.contains("the blocks alone need 94\u00a0in across"))
        << tooMany.toStdString();
    EXPECT_EQ(editor.job().top.grid->columns, 6);
}

TEST_F(Editing, TheSizeFollowsTheBlocksWhereTheyMakeIt) {
    EXPECT_EQ(fields.take("sizefrom", "1"), "");
    EXPECT_EQ(fields.take("columns", "8"), "");
    EXPECT_EQ(editor.job().top.width, std::vector{100_in});
    EXPECT_EQ(fields.summary(), "100 × 112\u00a0in, 8 × 9 blocks");
}

TEST_F(Editing, EveryChangeUndoesAndRedoes) {
    const auto first = editor.session();
    fields.setSection(FieldModel::Section::People);
    EXPECT_EQ(fields.take("helper0/reach", "30"), "");
    EXPECT_EQ(fields.take("helper0/until", "15:00"), "");
    EXPECT_EQ(fields.take("add", ""), "");
    const auto last = editor.session();
    EXPECT_EQ(last.setting.helpers.size(), 2u);
    for (int i = 0; i < 3; ++i)
        editor.undo();
    EXPECT_EQ(editor.session(), first);
    EXPECT_FALSE(editor.canUndo());
    for (int i = 0; i < 3; ++i)
        editor.redo();
    EXPECT_EQ(editor.session(), last);
    EXPECT_FALSE(editor.canRedo());
}

TEST_F(Editing, AChangeAfterUndoForgetsWhatCouldBeRedone) {
    EXPECT_EQ(fields.take("name", "Samphire"), "");
    editor.undo();
    EXPECT_EQ(fields.take("name", "Knots"), "");
    EXPECT_FALSE(editor.canRedo());
    EXPECT_EQ(editor.title(), "Knots");
}

TEST_F(Editing, TakingTheSameValueIsNoChange) {
    EXPECT_EQ(fields.take("width0", "88"), "");
    EXPECT_FALSE(editor.canUndo());
}

TEST_F(Editing, OptionalValuesCanBeTakenAway) {
    fields.setSection(FieldModel::Section::People);
    EXPECT_EQ(fields.take("helper0/from", "14:15"), "");
    EXPECT_EQ(shown("helper0/from"), "14:15");
    EXPECT_EQ(fields.take("helper0/from", ""), "");
    EXPECT_EQ(shown("helper0/from"), "");
}

TEST_F(Editing, WallsAreNamedAsTheTablesAreDrawn) {
    fields.setSection(FieldModel::Section::Room);
    EXPECT_EQ(fields.take("wall-head", "1"), "");
    EXPECT_EQ(editor.session().setting.room.walls, std::vector{Side::head});
    EXPECT_EQ(fields.take("wall-head", "0"), "");
    EXPECT_TRUE(editor.session().setting.room.walls.empty());
}

TEST_F(Editing, TablesThatAreToStayApartAreInAnotherGroup) {
    fields.setSection(FieldModel::Section::Room);
    EXPECT_EQ(shown("table0/group"), "no field table0/group") << "one kind stands together";
    EXPECT_EQ(fields.take("addtable", ""), "");
    EXPECT_EQ(shown("table1/group"), "With the others");
    EXPECT_EQ(fields.take("table1/group", "1"), "");
    EXPECT_EQ(editor.session().setting.room.tables[1].group, "B");
    EXPECT_EQ(shown("table1/group"), "Apart, in group B");
    EXPECT_EQ(fields.take("table0/group", "2"), "");
    EXPECT_EQ(editor.session().setting.room.tables[0].group, "C");
    EXPECT_EQ(fields.take("table0/group", "0"), "");
    EXPECT_EQ(editor.session().setting.room.tables[0].group, "");
}

TEST_F(Editing, CentimetresShowMillimetres) {
    EXPECT_EQ(fields.take("unit", "1"), "");
    EXPECT_EQ(shown("width0"), "223.5\u00a0cm");
    EXPECT_EQ(fields.take("width0", "223.5"), "");
    EXPECT_EQ(editor.job().top.width.front(), 2235_mm);
}

TEST_F(Editing, EverySectionListsFieldsWithKeysOfTheirOwn) {
    for (const auto section :
         {FieldModel::Section::Quilt, FieldModel::Section::Basting, FieldModel::Section::Layers,
          FieldModel::Section::Room, FieldModel::Section::People, FieldModel::Section::Boxes}) {
        fields.setSection(section);
        QStringList keys;
        for (int row = 0; row < fields.rowCount(); ++row)
            keys << fields.data(fields.index(row), FieldModel::KeyRole).toString();
        EXPECT_GT(keys.size(), 2);
        EXPECT_EQ(keys.removeDuplicates(), 0);
    }
}

} // namespace
