#include "end/kill_store/writer_process.h"
#include "unit/store/shelf.h"

#include <gmock/gmock.h>
#include <sqlite3.h>

#include <algorithm>
#include <chrono>
#include <random>
#include <set>

namespace bastewright {
namespace {

using made::Folder;
using made::opened;
using made::WriterProcess;
using std::chrono::milliseconds;
using std::chrono::seconds;
using std::chrono::steady_clock;
using ::testing::IsEmpty;
using ::testing::SizeIs;

// BASTEWRIGHT_KILLS sets how often (40), BASTEWRIGHT_SEED which moments.
long fromEnvironment(const char* name, long usual) {
    const char* value = std::getenv(name);
    return value ? std::stol(value) : usual;
}

// SQLite's full check, which also reads every index against its table.
std::string integrity(const std::string& file) {
    sqlite3* db = nullptr;
    sqlite3_open(file.c_str(), &db);
    sqlite3_stmt* s = nullptr;
    sqlite3_prepare_v2(db, "PRAGMA integrity_check", -1, &s, nullptr);
    std::string out;
    while (sqlite3_step(s) == SQLITE_ROW)
        out += reinterpret_cast<const char*>(sqlite3_column_text(s, 0));
    sqlite3_finalize(s);
    sqlite3_close(db);
    return out;
}

TEST(KillStore, EveryAcknowledgedTickSurvivesAKillAtAnyMoment) {
    Folder f;
    const auto kills = fromEnvironment("BASTEWRIGHT_KILLS", 40);
    const auto seed = static_cast<std::uint64_t>(
        fromEnvironment("BASTEWRIGHT_SEED", static_cast<long>(std::random_device{}())));
    RecordProperty("seed", std::to_string(seed));
    std::mt19937_64 dice{seed};
    std::set<std::string> acknowledged;
    std::size_t unacknowledged = 0;
    milliseconds slowest{0};

    for (long kill = 1; kill <= kills; ++kill) {
        WriterProcess writer{f.file(), "k" + std::to_string(kill)};
        // One in eight dies while it is still opening; the others after it has begun.
        if (dice() % 8 != 0)
            writer.readFor(seconds{30}, "k" + std::to_string(kill) + "-1");
        writer.readFor(milliseconds{static_cast<long>(dice() % 150)});
        writer.kill();
        ASSERT_THAT(writer.remarks(), IsEmpty()) << "seed " << seed << ", kill " << kill;
        for (const auto& id : writer.ticks())
            ASSERT_TRUE(acknowledged.insert(id).second) << id;

        const auto begun = steady_clock::now();
        auto [library, findings] = opened(f.file(), {.nowMs = {}, .busyMs = 20'000});
        std::set<std::string> stored;
        const auto sessions = library.openSessions().value();
        for (const auto& session : sessions) {
            const auto events = library.events(session.id).value();
            for (const auto& event : events)
                stored.insert(event.id);
        }
        slowest = std::max(slowest,
                           std::chrono::duration_cast<milliseconds>(steady_clock::now() - begun));
        ASSERT_THAT(findings, IsEmpty()) << "seed " << seed << ", kill " << kill;
        ASSERT_TRUE(std::ranges::includes(stored, acknowledged))
            << "a tick is lost; seed " << seed << ", kill " << kill;
        // At most the tick in flight can be stored and not yet acknowledged.
        ASSERT_LE(stored.size(), acknowledged.size() + static_cast<std::size_t>(kill))
            << "seed " << seed;
        unacknowledged = stored.size() - acknowledged.size();
    }
    EXPECT_EQ(integrity(f.file()), "ok") << "seed " << seed;
    EXPECT_LT(slowest, seconds{2}) << "a restart that keeps nobody waiting";
    std::printf("seed %llu: %ld kills, %zu ticks acknowledged, none lost, %zu stored without their "
                "acknowledgement, slowest restart %lld ms\n",
                static_cast<unsigned long long>(seed), kills, acknowledged.size(), unacknowledged,
                static_cast<long long>(slowest.count()));
}

TEST(KillStore, ATickRepeatedAfterAKillIsThereOnce) {
    Folder f;
    {
        WriterProcess writer{f.file(), "tablet"};
        writer.readFor(seconds{30}, "tablet-20");
        writer.kill();
    }
    // Nobody knows which of the last ones arrived, so all are reported again.
    WriterProcess again{f.file(), "tablet", 60};
    ASSERT_TRUE(again.finish(seconds{60}));
    EXPECT_THAT(again.ticks(), SizeIs(60));
    auto [library, _] = opened(f.file());
    const auto events = library.events(1).value();
    std::set<std::string> ids;
    for (const auto& e : events)
        EXPECT_TRUE(ids.insert(e.id).second) << e.id << " is there twice";
    EXPECT_GE(ids.size(), 60u);
}

TEST(KillStore, TwoProcessesOnOneLibraryLoseNothing) {
    Folder f;
    made::filledFile(f.file(), 0); // the session both write to
    constexpr long kTicks = 100;
    WriterProcess one{f.file(), "one", kTicks}, two{f.file(), "two", kTicks};
    ASSERT_TRUE(one.finish(seconds{120}));
    ASSERT_TRUE(two.finish(seconds{120}));
    EXPECT_THAT(one.remarks(), IsEmpty());
    EXPECT_THAT(two.remarks(), IsEmpty());
    auto [library, findings] = opened(f.file());
    EXPECT_THAT(findings, IsEmpty());
    EXPECT_THAT(library.events(1).value(), SizeIs(2 * kTicks));
    EXPECT_EQ(integrity(f.file()), "ok");
}

TEST(KillStore, OneProcessKilledLeavesTheOtherAtWork) {
    Folder f;
    made::filledFile(f.file(), 0);
    WriterProcess steady{f.file(), "steady", 150};
    std::size_t acknowledged = 0;
    for (int n = 0; n < 5; ++n) {
        WriterProcess victim{f.file(), "victim" + std::to_string(n)};
        victim.readFor(milliseconds{150});
        victim.kill();
        acknowledged += victim.ticks().size();
    }
    ASSERT_TRUE(steady.finish(seconds{120}));
    EXPECT_THAT(steady.remarks(), IsEmpty());
    auto [library, findings] = opened(f.file());
    EXPECT_THAT(findings, IsEmpty());
    EXPECT_GE(library.events(1).value().size(), 150 + acknowledged);
    EXPECT_EQ(integrity(f.file()), "ok");
}

} // namespace
} // namespace bastewright
