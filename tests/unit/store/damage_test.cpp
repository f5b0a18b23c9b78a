#include "unit/store/shelf.h"
#include "unit/store/spoil.h"

#include <gmock/gmock.h>

namespace bastewright {
namespace {

namespace fs = std::filesystem;
using made::filled;
using made::filledFile;
using made::Folder;
using made::opened;
using made::rootOf;
using made::spoil;
using made::tick;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

std::uintmax_t sizeOf(const std::string& file) {
    return fs::file_size(file);
}

TEST(Damage, AFileThatIsNoDatabaseIsPutAsideAndANewLibraryMade) {
    Folder f;
    std::ofstream{f.file()} << std::string(5000, 'x');
    auto [library, findings] = opened(f.file());
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].level, Finding::Level::warn);
    EXPECT_THAT(findings[0].text, HasSubstr("put aside as library.damaged-1.sqlite"));
    EXPECT_THAT(findings[0].text, HasSubstr("nothing could be read"));
    EXPECT_EQ(sizeOf(f.file("library.damaged-1.sqlite")), 5000u) << "kept as it was";
    EXPECT_THAT(library.jobs().value(), IsEmpty());
    library.addJob("a", "{}").value();
    EXPECT_THAT(opened(f.file()).findings, IsEmpty());
}

TEST(Damage, ALibraryWithItsHeadGoneComesBackFromTheBackup) {
    Folder f;
    filledFile(f.file(), 30);
    opened(f.file()).library.addJob("after the backup", "{}").value(); // backup 1: without this one
    spoil(f.file(), 0, 4096);
    auto [library, findings] = opened(f.file());
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_THAT(findings[0].text,
                HasSubstr("from the last backup (1 quilt, 1 session and 30 events)"));
    EXPECT_THAT(library.jobs().value(), SizeIs(1));
    EXPECT_THAT(library.events(1).value(), SizeIs(30));
}

TEST(Damage, WhatTheDamageLeftIsReadAndAddedToTheBackup) {
    Folder f;
    SessionId session = 0;
    {
        auto [library, _] = opened(f.file());
        session = filled(library, 200); // enough for several pages of events
    }
    {
        auto [library, _] = opened(f.file()); // backs the 200 up
        for (int n = 201; n <= 400; ++n)
            library.append(session, tick("t" + std::to_string(n))).value();
    }
    std::streamoff pageSize = 0;
    rootOf(f.file(), "events", pageSize);
    // One page in the middle of the file: some events and some of the index over them.
    const auto pages = static_cast<std::streamoff>(sizeOf(f.file())) / pageSize;
    spoil(f.file(), pages / 2 * pageSize, pageSize);

    auto [library, findings] = opened(f.file());
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_THAT(findings[0].text, HasSubstr("could still be read after it ("));
    const auto events = library.events(session).value();
    EXPECT_GE(events.size(), 200u) << "at least the backup";
    EXPECT_GT(events.size(), 350u) << "and most of what came after it";
    for (std::size_t i = 1; i < events.size(); ++i)
        EXPECT_LT(std::stoi(events[i - 1].id.substr(1)), std::stoi(events[i].id.substr(1)))
            << "still in order";
    library.append(session, tick("after")).value();
    EXPECT_THAT(opened(f.file()).findings, IsEmpty());
}

TEST(Damage, WithoutABackupWhatCanBeReadIsSaved) {
    Folder f;
    auto options = made::ticking();
    options.backups = 0;
    {
        auto [library, _] = opened(f.file(), options);
        filled(library, 50);
    }
    std::streamoff pageSize = 0;
    const auto root = rootOf(f.file(), "events_of_session", pageSize); // only an index
    spoil(f.file(), (root - 1) * pageSize, pageSize);
    auto [library, findings] = opened(f.file(), options);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_THAT(library.events(1).value(), SizeIs(50)) << "the index holds nothing of its own";
    EXPECT_THAT(library.jobs().value(), SizeIs(1));
}

TEST(Damage, ATruncatedLibraryIsMendedWhereverItEnds) {
    Folder whole;
    {
        auto [library, _] = opened(whole.file());
        filled(library, 200);
    }
    opened(whole.file()).library.addJob("after the backup", "{}").value();
    const auto size = sizeOf(whole.file());
    for (const std::uintmax_t left :
         {std::uintmax_t{0}, std::uintmax_t{1}, std::uintmax_t{99}, std::uintmax_t{512},
          std::uintmax_t{4096}, size / 2, size - 4096}) {
        Folder f;
        fs::copy(whole.path(), f.path(), fs::copy_options::recursive);
        fs::resize_file(f.file(), left);
        auto [library, findings] = opened(f.file());
        ASSERT_THAT(findings, SizeIs(1)) << left;
        EXPECT_THAT(findings[0].text, HasSubstr("made from the last backup")) << left;
        EXPECT_THAT(library.events(1).value(), SizeIs(200)) << left;
        EXPECT_EQ(sizeOf(f.file("library.damaged-1.sqlite")), left) << "kept as it was found";
    }
}

TEST(Damage, ALibraryThatIsGoneComesBackFromTheBackup) {
    Folder f;
    filledFile(f.file(), 30);
    opened(f.file()).library.addJob("after the backup", "{}").value();
    fs::remove(f.file());
    auto [library, findings] = opened(f.file());
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_THAT(
        findings[0].text,
        HasSubstr("There was no library where it should be; a new one has taken its place, made "
                  "from the last backup (1 quilt, 1 session and 30 events)."));
    EXPECT_THAT(library.events(1).value(), SizeIs(30));
    EXPECT_THAT(opened(f.file()).findings, IsEmpty()) << "said once";
}

TEST(Damage, AnEmptyFileWithoutABackupIsANewLibrary) {
    Folder f;
    std::ofstream{f.file()};
    EXPECT_THAT(opened(f.file()).findings, IsEmpty());
    EXPECT_FALSE(f.has("library.damaged-1.sqlite"));
}

TEST(Damage, ASecondDamagedFileGetsANameOfItsOwn) {
    Folder f;
    for (int n = 1; n <= 2; ++n) {
        opened(f.file()).library.addJob("a", "{}").value();
        spoil(f.file(), 0, 100);
        EXPECT_THAT(opened(f.file()).findings, SizeIs(1));
    }
    EXPECT_TRUE(f.has("library.damaged-1.sqlite"));
    EXPECT_TRUE(f.has("library.damaged-2.sqlite"));
}

TEST(Damage, TheOldLogIsNeverTakenForTheNewFiles) {
    Folder f;
    auto options = made::ticking();
    options.backups = 0;
    filledFile(f.file(), 20);
    {
        // A process that died leaves its log behind: copy one while the library is open.
        auto [library, _] = opened(f.file(), options);
        library.append(1, tick("late")).value();
        fs::copy_file(f.file("library.sqlite-wal"), f.file("log"));
    }
    fs::rename(f.file("log"), f.file("library.sqlite-wal"));
    const auto size = static_cast<std::streamoff>(sizeOf(f.file()));
    spoil(f.file(), 0, size);
    std::size_t jobs = 0;
    {
        auto [library, findings] = opened(f.file(), options);
        EXPECT_THAT(findings, SizeIs(1));
        EXPECT_TRUE(f.has("library.damaged-1.sqlite-wal")) << "it stays with its own file";
        jobs = library.jobs().value().size();
        library.addJob("new", "{}").value();
    }
    auto [again, none] = opened(f.file(), options);
    EXPECT_THAT(none, IsEmpty());
    EXPECT_THAT(again.jobs().value(), SizeIs(jobs + 1));
}

TEST(Damage, ALogThatHoldsEverythingMendsTheFileByItself) {
    Folder f;
    {
        auto [library, _] = opened(f.file());
        filled(library, 20);
        fs::copy_file(f.file("library.sqlite-wal"), f.file("log"));
    }
    fs::rename(f.file("log"), f.file("library.sqlite-wal"));
    spoil(f.file(), 0, static_cast<std::streamoff>(sizeOf(f.file())));
    auto [library, findings] = opened(f.file());
    EXPECT_THAT(findings, IsEmpty());
    EXPECT_THAT(library.events(1).value(), SizeIs(20));
}

TEST(Damage, IsNotMendedUnderAnotherProcess) {
    Folder f;
    filledFile(f.file(), 5);
    auto [library, _] = opened(f.file());
    spoil(f.file(), 0, 100);
    const auto second = Library::open(f.file(), made::ticking());
    ASSERT_FALSE(second.has_value());
    EXPECT_THAT(second.error(), HasSubstr("another window of the program still has it open"));
    EXPECT_FALSE(f.has("library.damaged-1.sqlite"));
}

} // namespace
} // namespace bastewright
