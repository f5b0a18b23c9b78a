#include "unit/store/shelf.h"

#include <gmock/gmock.h>
#include <sqlite3.h>

namespace bastewright {
namespace {

using made::Folder;
using made::must;
using made::opened;
using ::testing::IsEmpty;
using ::testing::SizeIs;

std::size_t jobsIn(const std::string& file) {
    auto options = made::ticking();
    options.backups = 0;
    return opened(file, options).library.jobs().value().size();
}

TEST(Backups, TheLastThreeStatesAreKeptAtOpening) {
    Folder f;
    for (int n = 0; n < 6; ++n) {
        auto [library, findings] = opened(f.file());
        EXPECT_THAT(findings, IsEmpty());
        library.addJob("job " + std::to_string(n), "{}").value();
    }
    EXPECT_FALSE(f.has("library.backup-4.sqlite"));
    EXPECT_FALSE(f.has("library.backup-new.sqlite"));
    EXPECT_FALSE(f.has("library.backup-1.sqlite-wal")) << "a backup is one file";
    // The newest was made when the library was opened for the sixth time, with five jobs in it.
    EXPECT_EQ(jobsIn(f.file("library.backup-1.sqlite")), 5u);
    EXPECT_EQ(jobsIn(f.file("library.backup-2.sqlite")), 4u);
    EXPECT_EQ(jobsIn(f.file("library.backup-3.sqlite")), 3u);
}

TEST(Backups, OpeningWithoutAChangeKeepsTheOlderStates) {
    Folder f;
    opened(f.file()).library.addJob("a", "{}").value();
    opened(f.file()).library.addJob("b", "{}").value();
    for (int n = 0; n < 5; ++n) {
        auto [library, _] = opened(f.file());
        must(library.setLastScreen("screen " + std::to_string(n)));
    }
    EXPECT_EQ(jobsIn(f.file("library.backup-1.sqlite")), 2u);
    EXPECT_EQ(jobsIn(f.file("library.backup-2.sqlite")), 1u);
    EXPECT_FALSE(f.has("library.backup-3.sqlite"));
}

TEST(Backups, HoldWhatIsStillInTheWriteAheadLog) {
    Folder f;
    auto [first, _] = opened(f.file());
    const auto session = made::filled(first, 25); // stays open, so nothing is folded back yet
    auto [second, findings] = opened(f.file());
    EXPECT_THAT(findings, IsEmpty());
    auto options = made::ticking();
    options.backups = 0;
    auto [backup, __] = opened(f.file("library.backup-1.sqlite"), options);
    EXPECT_THAT(backup.events(session).value(), SizeIs(25));
}

TEST(Backups, NoneAreMadeWhereNoneAreWanted) {
    Folder f;
    auto options = made::ticking();
    options.backups = 0;
    opened(f.file(), options).library.addJob("a", "{}").value();
    opened(f.file(), options);
    EXPECT_FALSE(f.has("library.backup-1.sqlite"));
}

} // namespace
} // namespace bastewright
