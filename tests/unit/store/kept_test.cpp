#include "unit/store/shelf.h"
#include "unit/store/spoil.h"

#include <gmock/gmock.h>

#include <iterator>

namespace bastewright {
namespace {

using made::Folder;
using made::must;
using made::opened;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

std::vector<std::string> namesOf(const Library& library, KeptKind kind) {
    std::vector<std::string> out;
    const auto all = library.kept(kind).value();
    for (const auto& kept : all)
        out.push_back(kept.name);
    return out;
}

void runSql(const std::string& file, const std::string& sql) {
    sqlite3* db = nullptr;
    sqlite3_open(file.c_str(), &db);
    char* problem = nullptr;
    EXPECT_EQ(sqlite3_exec(db, sql.c_str(), nullptr, nullptr, &problem), SQLITE_OK) << problem;
    sqlite3_close(db);
}

/// A library as version 1 of the program made it, with one job.
void makeVersionOne(const std::string& file) {
    runSql(file, R"sql(
CREATE TABLE jobs (id INTEGER PRIMARY KEY AUTOINCREMENT, name TEXT NOT NULL, text TEXT NOT NULL,
    created_ms INTEGER NOT NULL, changed_ms INTEGER NOT NULL, removed_ms INTEGER) STRICT;
CREATE TABLE sessions (id INTEGER PRIMARY KEY AUTOINCREMENT, job INTEGER NOT NULL,
    name TEXT NOT NULL, session TEXT NOT NULL, plan TEXT NOT NULL, started_ms INTEGER NOT NULL,
    ended INTEGER NOT NULL DEFAULT 0) STRICT;
CREATE TABLE events (sequence INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE,
    session INTEGER NOT NULL REFERENCES sessions (id), stored_ms INTEGER NOT NULL,
    event TEXT NOT NULL) STRICT;
CREATE INDEX events_of_session ON events (session, sequence);
CREATE TABLE settings (key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
INSERT INTO jobs (name, text, created_ms, changed_ms) VALUES ('Harbour Lights', '{}', 1, 1);
PRAGMA application_id = 0x42415354;
PRAGMA user_version = 1;
)sql");
}

std::string bytesOf(const std::string& file) {
    std::ifstream in{file, std::ios::binary};
    return {std::istreambuf_iterator<char>{in}, {}};
}

TEST(Kept, IsKeptAcrossOpeningsByKindAndNameTheLatestUsedFirst) {
    Folder f;
    {
        auto [library, _] = opened(f.file());
        EXPECT_THAT(namesOf(library, KeptKind::person), IsEmpty());
        must(library.keep(KeptKind::person, "Ada", "1"));
        must(library.keep(KeptKind::person, "Bo", "2"));
        must(library.keep(KeptKind::room, "Ada", "3"));
        must(library.keep(KeptKind::person, "Ada", "4"));
    }
    auto [library, _] = opened(f.file());
    EXPECT_THAT(namesOf(library, KeptKind::person), ElementsAre("Ada", "Bo"));
    EXPECT_THAT(namesOf(library, KeptKind::room), ElementsAre("Ada"));
    EXPECT_THAT(namesOf(library, KeptKind::supplies), IsEmpty());
    EXPECT_EQ(library.kept(KeptKind::person).value().front().text, "4");
    EXPECT_EQ(library.kept(KeptKind::room).value().front().text, "3");
}

TEST(Kept, IsRenamedButNeverOverAnother) {
    Folder f;
    auto [library, _] = opened(f.file());
    must(library.keep(KeptKind::room, "Saltmarsh Hall", "1"));
    must(library.keep(KeptKind::room, "Upstairs", "2"));
    const auto refused = library.renameKept(KeptKind::room, "Upstairs", "Saltmarsh Hall");
    ASSERT_FALSE(refused.has_value());
    EXPECT_THAT(refused.error(), HasSubstr("kept already"));
    must(library.renameKept(KeptKind::room, "Upstairs", "Loft"));
    must(library.renameKept(KeptKind::room, "Loft", "Loft"));
    must(library.renameKept(KeptKind::room, "not kept", "Cellar"));
    EXPECT_THAT(namesOf(library, KeptKind::room), ElementsAre("Loft", "Saltmarsh Hall"));
    EXPECT_EQ(library.kept(KeptKind::room).value().front().text, "2");
}

TEST(Kept, WhoIsForgottenIsNotLeftInTheFile) {
    Folder f;
    {
        auto [library, _] = opened(f.file());
        must(library.keep(KeptKind::person, "Gwendoline", "her reach"));
        must(library.keep(KeptKind::person, "Ada", "1"));
    }
    EXPECT_THAT(bytesOf(f.file()), HasSubstr("Gwendoline"));
    {
        auto [library, _] = opened(f.file());
        must(library.forgetKept(KeptKind::person, "Gwendoline"));
        must(library.forgetKept(KeptKind::person, "nobody"));
        EXPECT_THAT(namesOf(library, KeptKind::person), ElementsAre("Ada"));
    }
    EXPECT_THAT(bytesOf(f.file()), Not(HasSubstr("Gwendoline")));
    EXPECT_THAT(bytesOf(f.file()), Not(HasSubstr("her reach")));
}

TEST(Kept, ALibraryOfTheFirstVersionIsReadAndCanKeep) {
    Folder f;
    makeVersionOne(f.file());
    {
        auto [library, findings] = opened(f.file());
        EXPECT_THAT(findings, IsEmpty());
        EXPECT_EQ(library.jobs().value().size(), 1U);
        must(library.keep(KeptKind::supplies, "Blue tin", "1"));
    }
    auto [library, findings] = opened(f.file());
    EXPECT_THAT(findings, IsEmpty());
    EXPECT_EQ(library.loadJob(1).value(), "{}");
    EXPECT_THAT(namesOf(library, KeptKind::supplies), ElementsAre("Blue tin"));
}

TEST(Kept, IsSavedFromADamagedLibrary) {
    Folder f;
    {
        auto [library, _] = opened(f.file());
        made::filled(library, 3);
        must(library.keep(KeptKind::person, "Ada", "1"));
    }
    std::streamoff page = 0;
    const auto root = made::rootOf(f.file(), "events", page);
    made::spoil(f.file(), (root - 1) * page, page);
    auto options = made::ticking();
    options.backups = 0;
    auto [library, findings] = opened(f.file(), options);
    EXPECT_FALSE(findings.empty());
    EXPECT_THAT(namesOf(library, KeptKind::person), ElementsAre("Ada"));
}

TEST(Kept, ADamagedLibraryOfTheFirstVersionIsMended) {
    Folder f;
    makeVersionOne(f.file());
    std::streamoff page = 0;
    const auto root = made::rootOf(f.file(), "settings", page);
    made::spoil(f.file(), (root - 1) * page, page);
    auto [library, findings] = opened(f.file());
    EXPECT_FALSE(findings.empty());
    EXPECT_EQ(library.loadJob(1).value(), "{}");
    must(library.keep(KeptKind::room, "Saltmarsh Hall", "1"));
    EXPECT_THAT(namesOf(library, KeptKind::room), Contains("Saltmarsh Hall"));
}

TEST(Kept, IsWorthABackup) {
    Folder f;
    made::filledFile(f.file(), 1);
    opened(f.file()); // makes the first backup
    { must(opened(f.file()).library.keep(KeptKind::person, "Ada", "1")); }
    opened(f.file());
    EXPECT_THAT(bytesOf(f.file("library.backup-1.sqlite")), HasSubstr("Ada"));
}

} // namespace
} // namespace bastewright
