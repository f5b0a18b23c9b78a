#include "support/disk/failing.h"
#include "unit/store/shelf.h"
#include "unit/store/spoil.h"

#include <gmock/gmock.h>

#include <cerrno>
#include <set>

namespace bastewright {
namespace {

using made::FailingDisk;
using made::filled;
using made::Folder;
using made::opened;
using made::tick;
using ::testing::AnyOf;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

constexpr int kBefore = 10, kMore = 12;

Event bigTick(int n) {
    return {"more " + std::to_string(n), 0, happened::Note{std::string(2500, 'n')}};
}

auto saysSo(int error) {
    return error == ENOSPC ? HasSubstr("the disk is full. Free some space and try again.")
                           : HasSubstr("the disk reported an error.");
}

// The disk fails at its nth call, whichever that is, and at every one after it.
class AtEveryCall : public testing::TestWithParam<int> {
    const made::WithoutFlushing quick_;
};

TEST_P(AtEveryCall, ATickIsStoredOrRefusedInASentenceAndNothingIsLost) {
    std::size_t refusals = 0;
    for (std::size_t after = 0; after < 60; after += after < 20 ? 1 : 4) {
        Folder f;
        auto [library, _] = opened(f.file());
        const auto session = filled(library, kBefore);
        std::set<std::string> acknowledged;
        {
            const FailingDisk disk{f.path(), GetParam(), after};
            for (int n = 0; n < kMore; ++n) {
                const auto done = library.append(session, bigTick(n));
                if (done) {
                    acknowledged.insert(bigTick(n).id);
                    continue;
                }
                ++refusals;
                ASSERT_THAT(done.error().english(),
                            AnyOf(saysSo(GetParam()), HasSubstr("the disk reported an error.")))
                    << after;
                ASSERT_THAT(done.error(), HasSubstr("The tick could not be stored: "));
            }
        }
        // Space is made: the same ticks go in, and everything is there once.
        for (int n = 0; n < kMore; ++n)
            library.append(session, bigTick(n)).value();
        auto [again, findings] = opened(f.file());
        EXPECT_THAT(findings, IsEmpty()) << after;
        const auto events = again.events(session).value();
        std::set<std::string> ids;
        for (const auto& event : events)
            EXPECT_TRUE(ids.insert(event.id).second) << event.id;
        EXPECT_THAT(ids, SizeIs(kBefore + kMore)) << after;
    }
    EXPECT_GT(refusals, 60u) << "the disk did fail";
}

TEST_P(AtEveryCall, OpeningFailsInASentenceOrWorksAndNothingIsLost) {
    for (std::size_t after = 0; after < 40; after += 2) {
        Folder f;
        made::filledFile(f.file(), kBefore); // a backup is due at the next opening
        {
            const FailingDisk disk{f.path(), GetParam(), after};
            if (const auto library = Library::open(f.file(), made::ticking()); !library) {
                EXPECT_THAT(library.error().english(),
                            AnyOf(HasSubstr("the disk is full"),
                                  HasSubstr("the disk reported an error"),
                                  HasSubstr("cannot be written to")))
                    << after;
            } else {
                for (const auto& finding : library->findings)
                    EXPECT_THAT(finding.text, HasSubstr("No backup could be made: ")) << after;
                EXPECT_THAT(library->library.events(1).value(), SizeIs(kBefore)) << after;
            }
        }
        EXPECT_FALSE(f.has("library.damaged-1.sqlite")) << after;
        EXPECT_FALSE(f.has("library.backup-new.sqlite")) << "a half-made backup is taken away";
        auto [library, findings] = opened(f.file());
        EXPECT_THAT(findings, IsEmpty()) << after;
        EXPECT_THAT(library.events(1).value(), SizeIs(kBefore)) << after;
    }
}

TEST_P(AtEveryCall, ADamagedLibraryThatCannotBeMendedNowIsLeftForLater) {
    auto options = made::ticking();
    options.backups = 0; // everything has to be read from the damaged file
    bool told = false;
    for (std::size_t after = 0; after < 90; after += 4) {
        Folder f;
        {
            auto [library, _] = opened(f.file(), options);
            filled(library, kBefore);
            for (int n = 0; n < kMore; ++n)
                library.append(1, bigTick(n)).value();
        }
        std::streamoff page = 0;
        const auto root = made::rootOf(f.file(), "events_of_session", page);
        made::spoil(f.file(), (root - 1) * page, page); // an index: every row can still be read
        std::string refused;
        {
            const FailingDisk disk{f.path(), GetParam(), after};
            if (const auto library = Library::open(f.file(), options); !library)
                refused = library.error().english();
        }
        told |= refused.starts_with("The library is damaged and no new one could be made: ");
        auto [library, _] = opened(f.file(), options);
        EXPECT_THAT(library.events(1).value(), SizeIs(kBefore + kMore)) << after << ' ' << refused;
        EXPECT_TRUE(f.has("library.damaged-1.sqlite")) << "kept as it was found";
    }
    EXPECT_TRUE(told);
}

INSTANTIATE_TEST_SUITE_P(FailingDisk, AtEveryCall, testing::Values(ENOSPC, EIO),
                         [](const auto& error) {
                             return error.param == ENOSPC ? "Full" : "Broken";
                         });

} // namespace
} // namespace bastewright
