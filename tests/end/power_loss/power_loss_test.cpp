#include "support/disk/disk.h"
#include "support/disk/failing.h"
#include "unit/store/shelf.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <fcntl.h>
#include <map>
#include <set>
#include <unistd.h>

namespace bastewright {
namespace {

namespace fs = std::filesystem;
using made::Disk;
using made::Folder;
using made::opened;
using Kind = Disk::Step::Kind;
using ::testing::IsEmpty;

// BASTEWRIGHT_CUTS sets how often the power goes in each test, BASTEWRIGHT_SEED at which moments.
long fromEnvironment(const char* name, long usual) {
    const char* value = std::getenv(name);
    return value ? std::stol(value) : usual;
}

std::uint64_t seedOfRun() {
    static const auto seed =
        static_cast<std::uint64_t>(fromEnvironment("BASTEWRIGHT_SEED", std::random_device{}()));
    return seed;
}

/// What was acknowledged, and at which moment.
using Acknowledged = std::map<std::string, std::size_t>;

/// A note whose text fills pages unevenly, now and then several at once.
Event unevenNote(int n) {
    const auto length = static_cast<std::size_t>(n * 7919 % (n % 5 == 0 ? 60'000 : 700));
    return {"t" + std::to_string(n), 0, happened::Note{std::string(length, 'x')}};
}

void tickInto(Library& library, SessionId session, int from, int to, const Disk& disk,
              Acknowledged& acknowledged) {
    for (int n = from; n <= to; ++n) {
        const auto note = unevenNote(n);
        library.append(session, note).value();
        acknowledged[note.id] = disk.now();
    }
}

std::set<std::string> ticksIn(Library& library) {
    std::set<std::string> out;
    const auto sessions = library.sessions().value();
    for (const auto& session : sessions) {
        const auto events = library.events(session.id).value();
        for (const auto& event : events)
            EXPECT_TRUE(out.insert(event.id).second) << event.id << " is there twice";
    }
    return out;
}

/// Moments worth a cut: evenly spread ones, and those just before and after a flush.
std::vector<std::size_t> moments(const Disk& disk, long count, std::mt19937_64& dice) {
    std::vector<std::size_t> flushes;
    for (std::size_t i = 0; i < disk.now(); ++i)
        if (disk.steps()[i].kind == Kind::flush || disk.steps()[i].kind == Kind::flushFolder)
            flushes.push_back(i);
    std::vector<std::size_t> out;
    for (long i = 0; i < count; ++i)
        out.push_back(i % 2 == 0 ? dice() % (disk.now() + 1)
                                 : flushes[dice() % flushes.size()] + dice() % 2);
    return out;
}

// Cuts the power again and again; every time the library opens without a complaint and holds what
// it had acknowledged, each once.
void cutAgainAndAgain(const Disk& disk, const Acknowledged& acknowledged, const char* what) {
    std::mt19937_64 dice{seedOfRun()};
    const auto cuts = fromEnvironment("BASTEWRIGHT_CUTS", 60);
    std::size_t lateOnes = 0;
    const made::WithoutFlushing quick;
    Folder after;
    for (const auto moment : moments(disk, cuts, dice)) {
        disk.cut(moment, dice, after.path());
        auto [library, findings] = opened(after.file());
        ASSERT_THAT(findings, IsEmpty()) << "seed " << seedOfRun() << ", step " << moment;
        const auto stored = ticksIn(library);
        std::size_t promised = 0;
        for (const auto& [id, since] : acknowledged) {
            if (since > moment)
                continue;
            ++promised;
            ASSERT_TRUE(stored.contains(id))
                << id << " is lost; seed " << seedOfRun() << ", step " << moment;
        }
        ASSERT_LE(stored.size(), promised + 1) << "only the tick under way may be there as well";
        lateOnes += stored.size() - promised;
        if (!stored.empty()) // and the work goes on
            library.append(library.sessions().value().front().id, made::tick("afterwards")).value();
    }
    std::printf("seed %llu: %s: %zu steps, %ld cuts, %zu ticks, none lost, %zu times the one under "
                "way was there as well\n",
                static_cast<unsigned long long>(seedOfRun()), what, disk.now(), cuts,
                acknowledged.size(), lateOnes);
}

TEST(PowerLoss, ANewLibraryKeepsEveryAcknowledgedTick) {
    Folder f;
    Disk disk{f.path()};
    Acknowledged acknowledged;
    {
        auto [library, _] = opened(f.file());
        const auto session = made::filled(library, 0);
        tickInto(library, session, 1, 60, disk, acknowledged);
    }
    disk.stop();
    cutAgainAndAgain(disk, acknowledged, "a new library");
}

TEST(PowerLoss, ALibraryWithItsLogFoldedBackAndItsBackupsKeepsThemToo) {
    Folder f;
    Disk disk{f.path()};
    Acknowledged acknowledged;
    SessionId session = 0;
    {
        auto [library, _] = opened(f.file());
        session = made::filled(library, 0);
        tickInto(library, session, 1, 320, disk, acknowledged); // more than the log takes at once
    }
    for (int time = 1; time <= 3; ++time) { // opened again, with a backup each time
        auto [library, findings] = opened(f.file());
        EXPECT_THAT(findings, IsEmpty());
        tickInto(library, session, 320 + time * 10 - 9, 320 + time * 10, disk, acknowledged);
    }
    disk.stop();
    cutAgainAndAgain(disk, acknowledged, "folding back and backups");
}

TEST(PowerLoss, WhileADamagedLibraryIsMendedLosesNothingThatCouldBeRead) {
    Folder f;
    constexpr int kBefore = 80, kAfter = 40;
    SessionId session = 0;
    {
        auto [library, _] = opened(f.file());
        session = made::filled(library, kBefore);
    }
    {
        auto [library, _] = opened(f.file()); // the backup
        for (int n = kBefore + 1; n <= kBefore + kAfter; ++n)
            library.append(session, made::tick("t" + std::to_string(n))).value();
    }
    {
        // The last pages are spoilt: some later ticks and their index.
        std::fstream file{f.file(), std::ios::in | std::ios::out | std::ios::binary};
        file.seekp(-4096, std::ios::end);
        file << std::string(4096, '\xA5');
    }
    Disk disk{f.path()};
    std::set<std::string> mended;
    {
        auto [library, findings] = opened(f.file());
        ASSERT_EQ(findings.size(), 1u);
        mended = ticksIn(library);
    }
    disk.stop();
    ASSERT_GE(mended.size(), std::size_t{kBefore});

    std::mt19937_64 dice{seedOfRun()};
    const auto cuts = fromEnvironment("BASTEWRIGHT_CUTS", 60);
    const made::WithoutFlushing quick;
    Folder after;
    for (const auto moment : moments(disk, cuts, dice)) {
        disk.cut(moment, dice, after.path());
        auto [library, _] = opened(after.file());
        const auto stored = ticksIn(library);
        ASSERT_TRUE(std::ranges::includes(stored, mended))
            << mended.size() - stored.size() << " ticks fewer; seed " << seedOfRun() << ", step "
            << moment;
    }
}

// The disk itself has to be able to lose something, or the tests above show nothing.
TEST(PowerLoss, TheDiskForgetsWhatWasNotFlushedAndTearsIt) {
    Folder f;
    Disk disk{f.path()};
    const int file = ::open(f.file("note").c_str(), O_WRONLY | O_CREAT, 0600);
    const std::string safe(2048, 's'), unsafe(2048, 'u');
    ASSERT_EQ(::write(file, safe.data(), safe.size()), 2048);
    ::fsync(file);
    const int folder = ::open(f.path().c_str(), O_RDONLY);
    ::fsync(folder);
    ::close(folder);
    ASSERT_EQ(::write(file, unsafe.data(), unsafe.size()), 2048);
    ::close(file);
    fs::rename(f.file("note"), f.file("moved"));
    disk.stop();

    std::mt19937_64 dice{1};
    std::set<std::string> seen;
    std::set<std::string> names;
    Folder after;
    for (int n = 0; n < 200; ++n) {
        disk.cut(disk.now(), dice, after.path());
        const auto name = after.has("note") ? "note" : "moved";
        names.insert(name);
        std::ifstream in{after.file(name), std::ios::binary};
        const std::string text{std::istreambuf_iterator<char>{in}, {}};
        ASSERT_EQ(text.substr(0, 2048), safe) << "what was flushed stays";
        seen.insert(text);
    }
    EXPECT_EQ(names.size(), 2u);
    EXPECT_TRUE(seen.contains(safe) && seen.contains(safe + unsafe));
    EXPECT_GT(seen.size(), 5u) << "torn in several ways";
    // Before the folder was flushed there need not be a file at all.
    bool gone = false;
    for (int n = 0; n < 50; ++n) {
        disk.cut(2, dice, after.path());
        gone = gone || !after.has("note");
    }
    EXPECT_TRUE(gone);
}

} // namespace
} // namespace bastewright
