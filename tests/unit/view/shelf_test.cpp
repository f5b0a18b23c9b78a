#include "job/job_json.h"
#include "unit/view/qt_application.h"
#include "view/base/file_name.h"
#include "view/shelf/shelf_model.h"

#include <QFile>
#include <QFileInfo>
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
    qint64 addNew() {
        Setting setting;
        setting.room.tables = {Table{}};
        setting.helpers.emplace_back().name = "Ada";
        return shelf->addNew(setting);
    }
    QString at(int row, int role) const { return shelf->data(shelf->index(row), role).toString(); }
    QUrl file(const QString& name) const { return QUrl::fromLocalFile(folder.filePath(name)); }
};

TEST_F(Shelf, ANewQuiltIsANewCard) {
    EXPECT_GT(addNew(), 0);
    ASSERT_EQ(shelf->count(), 1);
    EXPECT_EQ(at(0, ShelfModel::SizeRole), "60 × 72\u00a0in");
    EXPECT_EQ(at(0, ShelfModel::StateRole), "new");
}

TEST_F(Shelf, WhatIsSavedOpensEqual) {
    const auto job = addNew();
    ASSERT_TRUE(shelf->saveFile(job, file("a.json")));
    ASSERT_TRUE(library->removeJob(job));
    const auto again = shelf->openFile(file("a.json"));
    ASSERT_GT(again, 0);
    EXPECT_NE(again, job);
    EXPECT_EQ(library->loadJob(job), library->loadJob(again));
}

TEST_F(Shelf, TheSameFileAgainIsTheSameJobUntilThatIsChanged) {
    QFile kept{folder.filePath("kept.json")};
    ASSERT_TRUE(kept.open(QIODevice::WriteOnly));
    kept.write(R"({"name": "Tide", "top": {"width": 50, "length": 60}})");
    kept.close();
    const auto job = shelf->openFile(file("kept.json"));
    ASSERT_GT(job, 0);
    EXPECT_EQ(shelf->openFile(file("kept.json")), job);
    EXPECT_EQ(shelf->count(), 1);
    ASSERT_TRUE(
        library->saveJob(job, "Tide", R"({"name": "Tide", "top": {"width": 51, "length": 60}})"));
    EXPECT_NE(shelf->openFile(file("kept.json")), job);
    EXPECT_EQ(shelf->count(), 2);
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

TEST_F(Shelf, AnyTitleIsTheNameOfAFileInItsFolder) {
    const QString stitches = QString{QChar{0xD83E}} + QChar{0xDDF5}; // a spool, in two halves
    const std::pair<QString, QString> titles[] = {
        {"Harbour Lights", "Harbour Lights"},
        {"../../etc/passwd", "Quilt..-..-etc-passwd"},
        {".hidden", "Quilt.hidden"},
        {" ", "Quilt"},
        {"A: \"B\" <C>|*?\\", "A- -B- -C-----"},
        {"Überwurf für Zoë", "Überwurf für Zoë"},
        {QString{"a\nb\0c"}, "a-b"},
        {QString(200, 'x'), QString(80, 'x')},
        {QString(79, 'x') + stitches, QString(79, 'x')},
    };
    for (const auto& [title, name] : titles)
        EXPECT_EQ(fileName(title).toStdString(), name.toStdString());
    library->addJob("../up", R"({"name": "../up", "top": {"width": 50, "length": 60}})").value();
    shelf->refresh();
    const QString written =
        shelf->saveInto(shelf->data(shelf->index(0), ShelfModel::JobRole).toLongLong(),
                        QUrl::fromLocalFile(folder.path()));
    EXPECT_EQ(QFileInfo{written}.absolutePath(), folder.path());
    EXPECT_TRUE(QFile::exists(written));
}

TEST_F(Shelf, SavingWhereNothingCanBeWrittenSaysSo) {
    const auto job = addNew();
    EXPECT_FALSE(shelf->saveFile(job, file("no/such/folder/a.json")));
    EXPECT_FALSE(shelf->problem().isEmpty());
}

TEST_F(Shelf, WhatIsRemovedComesBack) {
    const auto job = addNew();
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
    shelf->copy(addNew());
    ASSERT_EQ(shelf->count(), 2);
    EXPECT_TRUE(QStringList({at(0, ShelfModel::TitleRole), at(1, ShelfModel::TitleRole)})
                    .contains("New quilt (copy)"));
}

TEST_F(Shelf, CardsTellHowFarAJobIs) {
    const auto job = addNew();
    ASSERT_TRUE(library->setSetting(plannedKey(job), "1"));
    shelf->refresh();
    EXPECT_EQ(at(0, ShelfModel::StateRole), "planned");
    const auto session = library->startSession(job, {.session = "{}", .plan = "{}"});
    ASSERT_TRUE(session);
    shelf->refresh();
    EXPECT_EQ(at(0, ShelfModel::StateRole), "session");
}

} // namespace
