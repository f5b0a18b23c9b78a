#include "session/effective.h"
#include "session/live_session.h"
#include "unit/crew/made_session.h"
#include "unit/session/table_plan.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace bastewright {
namespace {

using made::Dice;

// Any events at all, most of them plausible: people tap what they see, and sometimes what they do
// not.
class Stream {
public:
    Stream(const Plan& plan, std::uint64_t seed)
        : plan_{plan}
        , dice_{seed} {}

    Event next(const std::vector<Event>& before) {
        Event e;
        e.id = "e" + std::to_string(++count_);
        e.atMs = made::kStartMs + std::int64_t{1000} * (count_ * 40 + dice_.between(-60, 60));
        if (dice_.once(200))
            e.atMs += dice_.between(-7200, 7200) * std::int64_t{1000}; // a clock was set
        if (before.empty())
            e.what = happened::Started{};
        else if (dice_.once(5))
            e.what = undo(before);
        else if (dice_.once(12))
            e = anyOf(before);
        else
            e.what = something();
        return e;
    }

private:
    template <class T>
    T anyOf(const std::vector<T>& of) {
        return of[static_cast<std::size_t>(dice_.upTo(static_cast<int>(of.size())))];
    }

    happened::Undone undo(const std::vector<Event>& before) {
        // Mostly one of the latest, as a person would.
        const auto size = static_cast<int>(before.size());
        const int back = dice_.once(4) ? dice_.upTo(size) : dice_.upTo(std::min(size, 3));
        return {before[static_cast<std::size_t>(size - 1 - back)].id};
    }

    What something() {
        const auto person = anyOf<std::string>({"Ada", "Bo", "Cai", "Nobody"});
        if (!dice_.once(3)) {
            Tick tick = dice_.once(2) ? Tick::opened : Tick::closed;
            if (dice_.once(6))
                tick = dice_.once(2) ? Tick::dotted : Tick::pressed;
            return happened::ZoneTick{
                tick, 0, dice_.once(20) ? "Z9" : anyOf(plan_.quilts[0].zones).id, person};
        }
        if (dice_.once(60))
            return happened::Ended{};
        using Come = happened::Presence::Kind;
        using Count = happened::Pins::Kind;
        const happened::Step step{.task = anyOf(plan_.tasks).id};
        const std::int64_t count = dice_.between(-3, 5);
        return anyOf<What>({step, step, step, happened::Released{.pass = dice_.between(1, 2)},
                            happened::Presence{Come::in, person},
                            happened::Presence{Come::out, person},
                            happened::Pins{Count::found, count}, happened::Pins{Count::back, count},
                            happened::Note{dice_.once(2) ? "a note" : ""}, happened::Paused{},
                            happened::Resumed{}, happened::PinsCounted{}});
    }

    const Plan& plan_;
    Dice dice_;
    int count_ = 0;
};

// A pass is let go once every zone of it is closed or left out, a palm has glided over it and the
// underside has been looked at.
void expectFinished(const LiveState& s, const Plan& plan, int quilt, int pass) {
    for (const Zone& z : plan.quilts[static_cast<std::size_t>(quilt)].zones)
        if (z.pass == pass && !s.setAside.contains({quilt, z.id})) {
            EXPECT_GE(s.zones.at({quilt, z.id}).state, ZoneState::closed) << z.id;
        }
    for (const Task& t : plan.tasks)
        if (t.job == quilt && t.pass == pass &&
            (t.kind == TaskKind::smooth || t.kind == TaskKind::checkUnderside)) {
            EXPECT_TRUE(s.doneTasks.contains(t.id)) << t.id;
        }
}

// What it means that an event counts, word for word (session/effective.h): every later taking back
// is asked in turn, and every taking back about its own target.
class Counting {
public:
    explicit Counting(const std::vector<Event>& events)
        : events_{events} {}

    /// Of the first `n` events.
    bool counts(std::size_t i, std::size_t n) const {
        if (refused(i))
            return false;
        for (std::size_t k = i + 1; k < n; ++k)
            if (const auto* undone = std::get_if<happened::Undone>(&events_[k].what);
                undone && placeOf(undone->target) == i && counts(k, n))
                return false;
        return true;
    }

private:
    std::size_t placeOf(const std::string& id) const {
        return static_cast<std::size_t>(std::ranges::find(events_, id, &Event::id) -
                                        events_.begin());
    }
    bool refused(std::size_t i) const {
        const Event& e = events_[i];
        if (placeOf(e.id) < i)
            return true; // stored already
        const auto* undone = std::get_if<happened::Undone>(&e.what);
        if (!undone)
            return false;
        const std::size_t target = placeOf(undone->target);
        return target >= i || events_[target].is<happened::Started>() || !counts(target, i);
    }

    const std::vector<Event>& events_;
};

// What must hold of any state whatever has happened.
void expectSound(const LiveState& s, const Plan& plan) {
    std::int64_t pins = 0;
    for (const auto& [key, live] : s.zones)
        if (live.state >= ZoneState::open)
            pins += 10;
    EXPECT_EQ(s.pinsOut, pins);
    EXPECT_GE(s.pinsBack, 0);
    EXPECT_GE(s.currentPass[0], 1);
    EXPECT_LE(s.currentPass[0], 2);
    for (const auto& id : s.doneTasks)
        EXPECT_TRUE(std::ranges::find(plan.tasks, id, &Task::id) != plan.tasks.end()) << id;
    for (const auto& z : plan.quilts[0].zones)
        EXPECT_TRUE(z.pass <= s.currentPass[0] ||
                    s.zones.at({0, z.id}).state == ZoneState::waiting);
    for (const auto& [quilt, pass] : s.released)
        expectFinished(s, plan, quilt, pass);
    if (!s.started) {
        EXPECT_TRUE(s.doneTasks.empty());
        EXPECT_TRUE(s.undoable.empty());
    }
}

class AnyStream : public ::testing::TestWithParam<std::uint64_t> {};

TEST_P(AnyStream, EveryPrefixFoldsToASoundStateAndOneByOneEqualsAtOnce) {
    const Plan plan = made::pinnedPlan();
    const auto setting = made::smallSetting();
    Stream stream{plan, GetParam()};
    LiveSession live{made::smallSession(), plan};
    std::vector<Event> events;
    for (int n = 0; n < 150; ++n) {
        events.push_back(stream.next(events));
        live.add(events.back());
        const auto state = fold(plan, setting, events);
        expectSound(state, plan);
        // The live session drops what is stored already; the fold lists it as ignored.
        auto without = state;
        std::erase_if(without.ignored, [](const Sentence& why) {
            return why.english().ends_with("is stored already.");
        });
        ASSERT_EQ(live.state(), without) << "seed " << GetParam() << ", event " << n;
    }
}

TEST_P(AnyStream, AnEventCountsUnlessATakingBackThatCountsPointsAtIt) {
    const Plan plan = made::pinnedPlan();
    Stream stream{plan, GetParam()};
    std::vector<Event> events;
    for (int n = 0; n < 60; ++n)
        events.push_back(stream.next(events));
    const Counting counting{events};
    const auto inEffect = effective(events).inEffect;
    for (std::size_t i = 0; i < events.size(); ++i)
        EXPECT_EQ(inEffect[i], counting.counts(i, events.size()))
            << "seed " << GetParam() << ", event " << i;
}

TEST_P(AnyStream, StoringEverythingTwiceChangesNothing) {
    const Plan plan = made::pinnedPlan();
    Stream stream{plan, GetParam()};
    std::vector<Event> events, twice;
    for (int n = 0; n < 120; ++n)
        events.push_back(stream.next(events));
    std::vector<std::string> seen;
    for (const auto& e : events) {
        twice.push_back(e);
        twice.push_back(e);
    }
    const auto once = [&plan](const std::vector<Event>& all) {
        auto s = fold(plan, made::smallSetting(), all);
        std::erase_if(s.ignored, [](const Sentence& why) {
            return why.english().ends_with("is stored already.");
        });
        return s;
    };
    EXPECT_EQ(once(events), once(twice)) << "seed " << GetParam();
    EXPECT_EQ(forecast(plan, made::smallSetting(), once(events), events, 0).finish,
              forecast(plan, made::smallSetting(), once(twice), twice, 0).finish);
}

TEST_P(AnyStream, UndoRestoresTheEarlierStateExactlyAndUndoingThatTheLater) {
    const Plan plan = made::pinnedPlan();
    const auto setting = made::smallSetting();
    Stream stream{plan, GetParam()};
    std::vector<Event> events;
    for (int n = 0; n < 80; ++n) {
        const auto before = fold(plan, setting, events);
        Event e = stream.next(events);
        events.push_back(e);
        const auto after = fold(plan, setting, events);
        if (!Counting{events}.counts(events.size() - 1, events.size()) || e.is<happened::Started>())
            continue;
        const Event undo{"undo of " + e.id, 0, happened::Undone{e.id}};
        const Event again{"again " + e.id, 0, happened::Undone{undo.id}};
        const auto bare = [](LiveState s) {
            s.redoable.clear();
            return s;
        };
        auto longer = events;
        longer.push_back(undo);
        EXPECT_EQ(bare(fold(plan, setting, longer)), bare(before))
            << "seed " << GetParam() << ", event " << n;
        longer.push_back(again);
        EXPECT_EQ(bare(fold(plan, setting, longer)), bare(after))
            << "seed " << GetParam() << ", event " << n;
    }
}

TEST_P(AnyStream, PaceForecastAndElapsedStayWithinReason) {
    const Plan plan = made::pinnedPlan();
    const auto setting = made::smallSetting();
    Stream stream{plan, GetParam()};
    std::vector<Event> events;
    Seconds before{};
    for (int n = 0; n < 120; ++n) {
        events.push_back(stream.next(events));
        const auto state = fold(plan, setting, events);
        const auto now = elapsed(events, 0);
        EXPECT_GE(now, before) << "time never runs backwards; seed " << GetParam();
        before = now;
        for (const char* who : {"Ada", "Bo", "Cai"}) {
            const auto pace = learntPace(plan, events, who);
            EXPECT_GE(pace, 0.25);
            EXPECT_LE(pace, 4);
        }
        const auto f = forecast(plan, made::smallSetting(), state, events, 0);
        EXPECT_LE(f.early, f.finish);
        EXPECT_LE(f.finish, f.late);
        EXPECT_TRUE(!state.started || state.ended || f.finish >= now);
        EXPECT_GE(f.left, Seconds{0});
    }
}

INSTANTIATE_TEST_SUITE_P(Seeds, AnyStream, ::testing::Range<std::uint64_t>(1, 41));

} // namespace
} // namespace bastewright
