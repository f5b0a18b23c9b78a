#include "job/job_json.h"
#include "unit/view/qt_application.h"
#include "view/shelf_model.h"

#include <QFile>
#include <QTemporaryDir>
#include <gtest/gtest.h>

using namespace bastewright;

namespace {

struct Shelf : testing::Test {
    QTemporaryDir folder;
    std::optional<Library> library;
    std::optional<ShelfModel> shelf;

    Shelf() {
        needApplication();
        auto opened = Library::open(folder.filePath("library.sqlite").toStdString());
        library.emplace(std::move(opened.value().library));
        shelf.emplace(&*library);
    }
    QString at(int row, int role) const { return shelf->data(shelf->index(row), role).toString(); }
    QUrl file(const QString& name) const { return QUrl::fromLocalFile(folder.filePath(name)); }
};

TEST_F(Shelf, ANewQuiltIsANewCard) {
    EXPECT_GT(shelf->addNew(), 0);
    ASSERT_EQ(shelf->count(), 1);
    EXPECT_EQ(at(0, ShelfModel::SizeRole), "60 × 72 in");
    EXPECT_EQ(at(0, ShelfModel::StateRole), "new");
}

TEST_F(Shelf, WhatIsSavedOpensEqual) {
    const auto job = shelf->addNew();
    ASSERT_TRUE(shelf->saveFile(job, file("a.json")));
    const auto again = shelf->openFile(file("a.json"));
    ASSERT_GT(again, 0);
    EXPECT_EQ(library->loadJob(job), library->loadJob(again));
}

TEST_F(Shelf, ABadFileIsRefusedInASentence) {
    QFile bad{folder.filePath("bad.json")};
    ASSERT_TRUE(bad.open(QIODevice::WriteOnly));
    bad.write(R"({"format": "bastewright-job", "version": 1, "top": {"width": -3, "length": 60}})");
    bad.close();
    EXPECT_EQ(shelf->openFile(file("bad.json")), 0);
    EXPECT_TRUE(shelf->problem().contains("width")) << shelf->problem().toStdString();
    EXPECT_EQ(shelf->openFile(file("missing.json")), 0);
    EXPECT_FALSE(shelf->problem().isEmpty());
    EXPECT_EQ(shelf->count(), 0);
}

TEST_F(Shelf, SavingWhereNothingCanBeWrittenSaysSo) {
    const auto job = shelf->addNew();
    EXPECT_FALSE(shelf->saveFile(job, file("no/such/folder/a.json")));
    EXPECT_FALSE(shelf->problem().isEmpty());
}

TEST_F(Shelf, WhatIsRemovedComesBack) {
    const auto job = shelf->addNew();
    const auto text = library->loadJob(job);
    shelf->remove(job);
    EXPECT_EQ(shelf->count(), 0);
    EXPECT_EQ(shelf->removed(), "New quilt");
    shelf->undoRemove();
    ASSERT_EQ(shelf->count(), 1);
    EXPECT_EQ(library->loadJob(job), text);
    EXPECT_TRUE(shelf->removed().isEmpty());
}

TEST_F(Shelf, ACopyIsNamedAsOne) {
    shelf->copy(shelf->addNew());
    ASSERT_EQ(shelf->count(), 2);
    EXPECT_TRUE(QStringList({at(0, ShelfModel::TitleRole), at(1, ShelfModel::TitleRole)})
                    .contains("New quilt (copy)"));
}

TEST_F(Shelf, CardsTellHowFarAJobIs) {
    const auto job = shelf->addNew();
    ASSERT_TRUE(library->setSetting(plannedKey(job), "1"));
    shelf->refresh();
    EXPECT_EQ(at(0, ShelfModel::StateRole), "planned");
    const auto session = library->startSession(job, {.session = "{}", .plan = "{}"});
    ASSERT_TRUE(session);
    shelf->refresh();
    EXPECT_EQ(at(0, ShelfModel::StateRole), "session");
}

} // namespace
