#include "unit/store/shelf.h"

#include <gtest/gtest.h>

/// A copy of the library's file alone, made with whatever copies files, while the library is open.
namespace bastewright {
namespace {

std::size_t ticksIn(const std::string& path, SessionId session) {
    auto copy = made::opened(path);
    return copy.library.events(session).value().size();
}

TEST(Copy, OfTheFileAloneHoldsEverythingOnceItIsTidied) {
    const made::Folder folder;
    auto library = made::opened(folder.file()).library;
    const auto session = made::filled(library, 20);
    ASSERT_TRUE(library.tidy());
    std::filesystem::copy_file(folder.file(), folder.file("copy.sqlite"));
    EXPECT_EQ(ticksIn(folder.file("copy.sqlite"), session), 20u);
    library.append(session, made::tick("later")).value();
    EXPECT_TRUE(library.tidy());
    std::filesystem::copy_file(folder.file(), folder.file("second.sqlite"));
    EXPECT_EQ(ticksIn(folder.file("second.sqlite"), session), 21u);
}

TEST(Copy, HoldsEverythingAfterClosingThoughAnotherWindowIsOpen) {
    const made::Folder folder;
    std::optional<Library> one{made::opened(folder.file()).library};
    const auto session = made::filled(*one, 5);
    const auto other = made::opened(folder.file()).library;
    ASSERT_EQ(other.events(session).value().size(), 5u);
    one->append(session, made::tick("last")).value();
    one.reset();
    std::filesystem::copy_file(folder.file(), folder.file("copy.sqlite"));
    EXPECT_EQ(ticksIn(folder.file("copy.sqlite"), session), 6u);
}

} // namespace
} // namespace bastewright
