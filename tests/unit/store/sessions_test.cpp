#include "unit/store/shelf.h"

#include <gmock/gmock.h>

#include <thread>

namespace bastewright {
namespace {

using made::filled;
using made::Folder;
using made::must;
using made::opened;
using made::tick;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

TEST(Sessions, KeepTheirStartAndTheirEventsInOrder) {
    Folder f;
    SessionId id = 0;
    const Event full{"full", 1'800'000'000'123,
                     happened::Answer{2, "check-1", "{\"a plan\": \"with \\\"quotes\\\"\"}", -3}};
    {
        auto [library, _] = opened(f.file());
        id = filled(library, 3);
        library.append(id, full).value();
    }
    auto [library, _] = opened(f.file());
    EXPECT_EQ(library.sessionStart(id).value(), (SessionStart{"{}", R"({"tasks":[]})"}));
    const auto events = library.events(id).value();
    ASSERT_THAT(events, SizeIs(4));
    EXPECT_EQ(events[0], tick("t1"));
    EXPECT_EQ(events[2], tick("t3"));
    EXPECT_EQ(events[3], full);
    const auto entry = library.openSessions().value().at(0);
    EXPECT_EQ(entry.name, "Harbour Lights");
    EXPECT_EQ(entry.events, 4);
}

TEST(Sessions, TheSameIdIsStoredOnce) {
    Folder f;
    auto [library, _] = opened(f.file());
    const auto id = filled(library, 2);
    const auto first = library.append(id, tick("again")).value();
    EXPECT_EQ(library.append(id, tick("again")).value(), first);
    EXPECT_THAT(library.events(id).value(), SizeIs(3));
    EXPECT_GT(library.append(id, tick("next")).value(), first);
}

TEST(Sessions, AnIdThatIsTakenByAnotherEventIsRefused) {
    Folder f;
    auto [library, _] = opened(f.file());
    const auto id = filled(library, 1);
    EXPECT_THAT(library.append(id, tick("t1", "B7")).error(), HasSubstr("under the id t1"));
    const auto other = filled(library, 0);
    EXPECT_THAT(library.append(other, tick("t1")).error(), HasSubstr("under the id t1"));
    EXPECT_THAT(library.append(id, tick("")).error(), HasSubstr("without an id"));
    EXPECT_THAT(library.append(99, tick("x")).error(), HasSubstr("no session number 99"));
    EXPECT_THAT(library.sessionStart(99).error(), HasSubstr("no session number 99"));
    EXPECT_THAT(library.events(id).value(), SizeIs(1));
    EXPECT_THAT(library.events(other).value(), IsEmpty());
}

TEST(Sessions, EndAndAreOpenAgainWhenTheEndIsTakenBack) {
    Folder f;
    auto [library, _] = opened(f.file());
    const auto id = filled(library, 1);
    library.append(id, {"end", 0, happened::Ended{}}).value();
    EXPECT_THAT(library.openSessions().value(), IsEmpty());
    ASSERT_THAT(library.sessions().value(), SizeIs(1));
    EXPECT_TRUE(library.sessions().value()[0].ended);

    library.append(id, {"undo", 0, happened::Undone{"end"}}).value();
    EXPECT_THAT(library.openSessions().value(), SizeIs(1));
    library.append(id, {"undo the undo", 0, happened::Undone{"undo"}}).value();
    EXPECT_THAT(library.openSessions().value(), IsEmpty());
}

TEST(Sessions, OutliveTheRemovalOfTheirJob) {
    Folder f;
    auto [library, _] = opened(f.file());
    const auto id = filled(library, 1);
    must(library.removeJob(library.jobs().value()[0].id));
    EXPECT_THAT(library.openSessions().value(), SizeIs(1));
    EXPECT_THAT(library.events(id).value(), SizeIs(1));
}

TEST(Sessions, ASecondConnectionSeesTheTicksOfTheFirst) {
    Folder f;
    auto [one, _] = opened(f.file());
    const auto id = filled(one, 1);
    auto [two, __] = opened(f.file());
    const auto before = two.revision();
    EXPECT_EQ(two.revision(), before);
    one.append(id, tick("new")).value();
    EXPECT_NE(two.revision(), before);
    EXPECT_THAT(two.events(id).value(), SizeIs(2));
}

TEST(Sessions, ManyThreadsWithALibraryEachLoseNothing) {
    Folder f;
    auto options = made::ticking();
    options.busyMs = 20'000;
    auto [library, _] = opened(f.file(), options);
    const auto id = filled(library, 0);
    constexpr int kThreads = 4, kTicks = 50;
    std::vector<std::thread> threads;
    for (int t = 0; t < kThreads; ++t)
        threads.emplace_back([&f, options, id, t] {
            auto own = made::opened(f.file(), options).library;
            for (int n = 0; n < kTicks; ++n)
                own.append(id, tick(std::to_string(t) + "-" + std::to_string(n))).value();
        });
    for (auto& t : threads)
        t.join();
    EXPECT_THAT(library.events(id).value(), SizeIs(kThreads * kTicks));
}

} // namespace
} // namespace bastewright
