#include "unit/store/shelf.h"

#include <gmock/gmock.h>
#include <sqlite3.h>

#include <chrono>
#include <fcntl.h>
#include <functional>
#include <optional>
#include <sys/file.h>
#include <sys/wait.h>
#include <unistd.h>

namespace bastewright {
namespace {

namespace fs = std::filesystem;
using made::filled;
using made::filledFile;
using made::Folder;
using made::opened;
using made::tick;
using ::testing::HasSubstr;
using ::testing::SizeIs;

// Runs in a child process that has no special rights, so that permissions bind even where the tests
// are run by an administrator. What it returns must be empty.
void asSomebodyElse(const Folder& folder, const std::function<std::string()>& work) {
    int pipe[2];
    ASSERT_EQ(::pipe(pipe), 0);
    const auto child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
        std::string wrong = "cannot give up rights";
        if (::geteuid() != 0 || (::setgid(65534) == 0 && ::setuid(65534) == 0))
            wrong = work();
        [[maybe_unused]] const auto written = ::write(pipe[1], wrong.data(), wrong.size());
        ::_exit(0);
    }
    ::close(pipe[1]);
    std::string wrong(4096, '\0');
    const auto size = ::read(pipe[0], wrong.data(), wrong.size());
    ::close(pipe[0]);
    ::waitpid(child, nullptr, 0);
    EXPECT_EQ(wrong.substr(0, static_cast<std::size_t>(std::max<ssize_t>(size, 0))), "")
        << folder.path();
}

void readableByAll(const Folder& folder) {
    fs::permissions(folder.path(), fs::perms{0555});
    for (const auto& file : fs::directory_iterator{folder.path()})
        fs::permissions(file.path(), fs::perms{0444});
}

TEST(Trouble, AFolderThatCannotBeWrittenIsSaidInOneSentence) {
    Folder f;
    readableByAll(f);
    asSomebodyElse(f, [&f]() -> std::string {
        const auto library = Library::open(f.file(), made::ticking());
        if (library)
            return "opened a library in a read-only folder";
        const auto said = library.error().english();
        if (said.find("cannot be written to") == std::string::npos)
            return said;
        const auto deeper = Library::open(f.file("new/library.sqlite"), made::ticking());
        if (deeper)
            return "made a folder in a read-only folder";
        const auto deep = deeper.error().english();
        return deep.find("could not be made") == std::string::npos ? deep : "";
    });
}

TEST(Trouble, ALibraryThatMayOnlyBeReadIsRefused) {
    Folder f;
    filledFile(f.file(), 3);
    readableByAll(f);
    asSomebodyElse(f, [&f]() -> std::string {
        const auto library = Library::open(f.file(), made::ticking());
        if (library)
            return "opened a read-only library";
        const auto said = library.error().english();
        return said.find("cannot be written to") == std::string::npos ? said : "";
    });
    fs::permissions(f.path(), fs::perms::owner_all);
    fs::permissions(f.file(), fs::perms{0600});
    EXPECT_THAT(opened(f.file()).library.events(1).value(), SizeIs(3)) << "and left as it was";
}

TEST(Trouble, AFullDiskRefusesTheTickAndKeepsTheRest) {
    Folder f;
    auto options = made::ticking();
    options.pageLimit = 40;
    auto [library, _] = opened(f.file(), options);
    const auto session = filled(library, 0);
    Event big{.what = happened::Note{std::string(3000, 'n')}};
    int stored = 0;
    std::string refused;
    while (refused.empty() && stored < 200) {
        big.id = "big " + std::to_string(stored + 1);
        if (const auto done = library.append(session, big))
            ++stored;
        else
            refused = done.error().english();
    }
    EXPECT_THAT(refused, HasSubstr("The tick could not be stored: the disk is full. Free some"));
    EXPECT_GT(stored, 5);
    EXPECT_THAT(library.events(session).value(), SizeIs(stored));
    EXPECT_THAT(library.addJob("x", std::string(30'000, 'x')).error(), HasSubstr("disk is full"));

    // Space is made, and the very same tick goes in.
    options.pageLimit = 0;
    auto [later, __] = opened(f.file(), options);
    later.append(session, big).value();
    EXPECT_THAT(later.events(session).value(), SizeIs(stored + 1));
}

// A second connection of the tests' own that holds the write lock, as another program would.
class Holder {
public:
    explicit Holder(const std::string& file) {
        sqlite3_open(file.c_str(), &db_);
        sqlite3_exec(db_, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr);
    }
    Holder(const Holder&) = delete;
    Holder& operator=(const Holder&) = delete;
    ~Holder() { sqlite3_close(db_); }

private:
    sqlite3* db_ = nullptr;
};

TEST(Trouble, ALockedLibraryIsWaitedForAndThenRefused) {
    Folder f;
    auto [library, _] = opened(f.file());
    const auto session = filled(library, 1);
    {
        const Holder holder{f.file()};
        const auto begun = std::chrono::steady_clock::now();
        EXPECT_THAT(library.append(session, tick("late")).error(),
                    HasSubstr("another window of the program is writing"));
        const auto waited = std::chrono::steady_clock::now() - begun;
        EXPECT_GE(waited, std::chrono::milliseconds{80});
        EXPECT_LT(waited, std::chrono::seconds{5});
        EXPECT_THAT(library.events(session).value(), SizeIs(1)) << "reading goes on";
    }
    library.append(session, tick("late")).value();
    EXPECT_THAT(library.events(session).value(), SizeIs(2));
}

TEST(Trouble, AHeldLibraryIsOpenedAndReadAndItsTicksGoInLater) {
    Folder f;
    filledFile(f.file(), 1);
    std::optional<Holder> holder{std::in_place, f.file()};
    auto [library, findings] = opened(f.file());
    EXPECT_FALSE(anyStop(findings));
    EXPECT_THAT(library.events(1).value(), SizeIs(1));
    EXPECT_THAT(library.append(1, tick("late")).error(),
                HasSubstr("another window of the program is writing"));
    holder.reset();
    library.append(1, tick("late")).value();
    EXPECT_THAT(library.events(1).value(), SizeIs(2));
}

TEST(Trouble, ALibraryThatAnotherWindowMendsIsSaidAndOpenedAfterwards) {
    Folder f;
    filledFile(f.file(), 1);
    const int mending =
        ::open(f.file("library.sqlite.lock").c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
    ASSERT_EQ(::flock(mending, LOCK_EX), 0);
    EXPECT_THAT(Library::open(f.file(), made::ticking()).error(),
                HasSubstr("Another window of the program is mending the library"));
    ::close(mending);
    EXPECT_THAT(opened(f.file()).library.events(1).value(), SizeIs(1));
}

TEST(Trouble, ALibraryOfANewerVersionIsLeftAlone) {
    Folder f;
    opened(f.file()).library.addJob("a", "{}").value();
    sqlite3* db = nullptr;
    sqlite3_open(f.file().c_str(), &db);
    sqlite3_exec(db, "PRAGMA user_version = 99", nullptr, nullptr, nullptr);
    sqlite3_close(db);
    const auto library = Library::open(f.file(), made::ticking());
    ASSERT_FALSE(library.has_value());
    EXPECT_THAT(library.error(), HasSubstr("newer version"));
    EXPECT_FALSE(f.has("library.damaged-1.sqlite"));
}

TEST(Trouble, AnotherProgramsDatabaseIsLeftAlone) {
    Folder f;
    sqlite3* db = nullptr;
    sqlite3_open(f.file().c_str(), &db);
    sqlite3_exec(db, "CREATE TABLE theirs (x)", nullptr, nullptr, nullptr);
    sqlite3_close(db);
    const auto library = Library::open(f.file(), made::ticking());
    ASSERT_FALSE(library.has_value());
    EXPECT_THAT(library.error(), HasSubstr("another program's database"));
}

TEST(Trouble, AFolderInTheLibrarysPlaceIsSaid) {
    Folder f;
    fs::create_directory(f.file());
    EXPECT_THAT(Library::open(f.file(), made::ticking()).error(), HasSubstr("a folder where"));
}

TEST(Trouble, EventsCannotBeChangedOrRemovedBehindTheLibrarysBack) {
    Folder f;
    filledFile(f.file(), 3);
    sqlite3* db = nullptr;
    sqlite3_open(f.file().c_str(), &db);
    EXPECT_NE(sqlite3_exec(db, "DELETE FROM events", nullptr, nullptr, nullptr), SQLITE_OK);
    EXPECT_NE(sqlite3_exec(db, "UPDATE events SET event = ''", nullptr, nullptr, nullptr),
              SQLITE_OK);
    sqlite3_close(db);
    EXPECT_THAT(opened(f.file()).library.events(1).value(), SizeIs(3));
}

TEST(Trouble, TheFileIsInWriteAheadModeAndFullySynchronised) {
    Folder f;
    auto [library, _] = opened(f.file());
    sqlite3* db = nullptr;
    sqlite3_open(f.file().c_str(), &db);
    sqlite3_stmt* s = nullptr;
    sqlite3_prepare_v2(db, "PRAGMA journal_mode", -1, &s, nullptr);
    sqlite3_step(s);
    EXPECT_STREQ(reinterpret_cast<const char*>(sqlite3_column_text(s, 0)), "wal");
    sqlite3_finalize(s);
    sqlite3_close(db);
}

} // namespace
} // namespace bastewright
