#include "unit/store/shelf.h"

#include <gmock/gmock.h>

namespace bastewright {
namespace {

namespace fs = std::filesystem;
using made::filled;
using made::Folder;
using made::opened;
using made::tick;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

LibraryOptions withoutBackups() {
    auto options = made::ticking();
    options.backups = 0;
    return options;
}

// Everything is there for whoever opens the library next, with its log or without.
void expectTicks(const std::string& file, std::size_t ticks) {
    auto [library, findings] = opened(file, withoutBackups());
    EXPECT_THAT(findings, IsEmpty());
    EXPECT_THAT(library.events(1).value(), SizeIs(ticks));
}

TEST(Vanished, ARemovedLibraryIsPutBackAndTheTickGoesInAtTheSecondTry) {
    Folder f;
    auto [library, _] = opened(f.file(), withoutBackups());
    const auto session = filled(library, 20);
    fs::remove(f.file());
    const auto refused = library.append(session, tick("late"));
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error(),
                HasSubstr("The tick could not be stored: the library " + f.file() +
                          " had been removed while the program used it. It has been put back"));
    expectTicks(f.file(), 20);
    library.append(session, tick("late")).value();
    expectTicks(f.file(), 21);
    EXPECT_FALSE(f.has("library.put-back.sqlite"));
}

TEST(Vanished, ALogThatStaysBehindIsNotTakenForTheNewFiles) {
    Folder f;
    {
        auto [library, _] = opened(f.file(), withoutBackups());
        const auto session = filled(library, 20);
        fs::remove(f.file()); // the log stays
        EXPECT_FALSE(library.append(session, tick("late")));
        for (int n = 0; n < 5; ++n)
            library.append(session, tick("late " + std::to_string(n))).value();
    }
    expectTicks(f.file(), 25);
}

TEST(Vanished, ARemovedFolderIsMadeAgain) {
    Folder f;
    const auto file = f.file("data/library.sqlite");
    auto [library, _] = opened(file, withoutBackups());
    const auto session = filled(library, 20);
    fs::remove_all(f.file("data"));
    EXPECT_THAT(library.append(session, tick("late")).error(), HasSubstr("put back"));
    library.append(session, tick("late")).value();
    expectTicks(file, 21);
    EXPECT_EQ(fs::status(f.file("data")).permissions(), fs::perms::owner_all);
}

TEST(Vanished, AMovedLibraryStaysWhereItIsAndACopyTakesItsPlace) {
    Folder f;
    {
        auto [library, _] = opened(f.file(), withoutBackups());
        const auto session = filled(library, 20);
        fs::rename(f.file(), f.file("elsewhere.sqlite"));
        EXPECT_FALSE(library.append(session, tick("late")));
        library.append(session, tick("late")).value();
    }
    expectTicks(f.file(), 21);
}

TEST(Vanished, AFileThatTookItsPlaceIsLeftAloneAndOursKeptBesideIt) {
    Folder f;
    auto [library, _] = opened(f.file(), withoutBackups());
    const auto session = filled(library, 20);
    made::filledFile(f.file("other.sqlite"), 3);
    fs::rename(f.file("other.sqlite"), f.file());
    for (int n = 0; n < 3; ++n)
        EXPECT_THAT(library.append(session, tick("late")).error(),
                    HasSubstr("another file has taken the place of the library"));
    expectTicks(f.file("library.replaced-1.sqlite"), 20);
    EXPECT_FALSE(f.has("library.replaced-2.sqlite")) << "kept once";
    fs::remove(f.file("library.sqlite-wal")); // of the file that was moved away
    fs::remove(f.file("library.sqlite-shm"));
    expectTicks(f.file(), 3);
}

TEST(Vanished, UnderTwoWindowsItWaitsUntilOneIsClosed) {
    Folder f;
    auto [library, _] = opened(f.file(), withoutBackups());
    const auto session = filled(library, 20);
    {
        auto [second, __] = opened(f.file(), withoutBackups());
        fs::remove(f.file());
        EXPECT_THAT(library.append(session, tick("late")).error(),
                    HasSubstr("Close the other windows, then try again."));
        EXPECT_THAT(second.append(session, tick("late")).error(), HasSubstr("Close the other"));
    }
    EXPECT_THAT(library.append(session, tick("late")).error(), HasSubstr("put back"));
    library.append(session, tick("late")).value();
    expectTicks(f.file(), 21);
}

TEST(Vanished, WhereItCannotBePutBackThatIsSaid) {
    Folder f;
    const auto file = f.file("data/library.sqlite");
    auto [library, _] = opened(file, withoutBackups());
    const auto session = filled(library, 20);
    fs::remove_all(f.file("data"));
    std::ofstream{f.file("data")} << "a file where the folder was";
    const auto refused = library.append(session, tick("late"));
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error(), HasSubstr("could not be put back: "));
    fs::remove(f.file("data"));
    EXPECT_THAT(library.append(session, tick("late")).error(),
                HasSubstr("put back with everything"));
    expectTicks(file, 20);
}

} // namespace
} // namespace bastewright
