#include "property/live/afternoon.h"

#include "session/pins.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>

namespace bastewright::testing {
namespace {
using Kind = Change::Kind;
using ForPins = Change::ForPins;
} // namespace

Afternoon::Afternoon(std::uint64_t seed, Session session, Plan plan)
    : live_{std::move(session), std::move(plan)}
    , dice_{seed * 0x9e3779b97f4a7c15} { // seeds are steps into one row of throws
    store(happened::Started{});
}

int Afternoon::upTo(int n) {
    return dice_.upTo(std::max(1, n));
}

Seconds Afternoon::now() const {
    return Seconds{(nowMs_ - live_.state().startedMs) / 1000};
}

Sentence Afternoon::store(What what) {
    return live_.add({"e" + std::to_string(++events_), nowMs_, std::move(what)});
}

void Afternoon::tick(int times) {
    for (int k = 0; k < times && !live_.state().ended; ++k) {
        const auto turns = live_.turns();
        const int quilts = static_cast<int>(live_.plan().quilts.size());
        const int first = upTo(quilts);
        std::optional<What> next;
        for (int q = 0; q < quilts && !next; ++q) {
            const int quilt = (first + q) % quilts;
            for (const NextStep& step : turns.nextSteps(quilt)) {
                if (!step.ready || step.kind == NextStep::Kind::end)
                    continue;
                const auto answer =
                    turns.mayTick({.what = step.kind == NextStep::Kind::zone   ? Tap::What::zone
                                           : step.kind == NextStep::Kind::step ? Tap::What::step
                                                                               : Tap::What::release,
                                   .job = quilt,
                                   .zone = step.zone,
                                   .task = step.task,
                                   .pass = step.pass});
                if (answer.counts()) {
                    next = answer.what;
                    break;
                }
            }
        }
        if (!next)
            return;
        nowMs_ += 1000 * (5 + upTo(240));
        EXPECT_EQ(store(std::move(*next)), "");
    }
}

std::string Afternoon::anyHelper(bool present) {
    std::vector<std::string> some;
    for (const Helper& h : live_.session().setting.helpers)
        if (live_.state().present.contains(h.name) == present)
            some.push_back(h.name);
    return some.empty() ? std::string{}
                        : some[static_cast<std::size_t>(upTo(static_cast<int>(some.size())))];
}

std::optional<Change> Afternoon::anyOf(Kind kind) {
    Change c{.kind = kind};
    const Setting& setting = live_.session().setting;
    const auto& helpers = setting.helpers;
    switch (kind) {
    case Kind::personIn:
        c.person = anyHelper(false);
        return c.person.empty() ? std::nullopt : std::optional{c};
    case Kind::personOut:
        c.person = anyHelper(true);
        return live_.state().present.size() < 2 ? std::nullopt : std::optional{c};
    case Kind::swap:
        c.person = anyHelper(true);
        c.other = anyHelper(false);
        return c.person.empty() || c.other.empty() ? std::nullopt : std::optional{c};
    case Kind::guest:
        c.person = "Guest " + std::to_string(events_);
        return c;
    case Kind::hours:
        c.person = anyHelper(upTo(4) > 0);
        if (upTo(4) > 0)
            c.until = after(setting.start, now() + Seconds{60 * (5 + upTo(240))});
        return c.person.empty() ? std::nullopt : std::optional{c};
    case Kind::irons:
        c.count = setting.room.irons > 0 && upTo(2) == 0 ? -1 : 1;
        return c;
    case Kind::pins: {
        const auto pins = countPins(live_.plan(), setting, live_.state());
        c.count = upTo(3) == 0
                      ? 1 + upTo(200)
                      : -(1 + upTo(static_cast<int>(std::max<std::int64_t>(pins.left, 1))));
        c.forPins = std::array{ForPins::nothing, ForPins::widerRows, ForPins::dots,
                               ForPins::fewerZones}[static_cast<std::size_t>(upTo(4))];
        return c;
    }
    case Kind::tables:
        c.count = upTo(3) == 0 ? 1 + upTo(2) : -1;
        return c;
    case Kind::handOver: {
        c.job = upTo(static_cast<int>(live_.plan().quilts.size()));
        const auto& zones = live_.plan().quilts[static_cast<std::size_t>(c.job)].zones;
        if (zones.empty())
            return {};
        c.zone = zones[static_cast<std::size_t>(upTo(static_cast<int>(zones.size())))].id;
        c.person = helpers[static_cast<std::size_t>(upTo(static_cast<int>(helpers.size())))].name;
        return c;
    }
    case Kind::abandon:
        c.job = upTo(static_cast<int>(live_.plan().quilts.size()));
        return c;
    case Kind::goOn: {
        if (!live_.state().paused) {
            EXPECT_EQ(store(happened::Paused{}), "");
        }
        nowMs_ += 1000 * (600 + (upTo(3) == 0 ? 18 * 3600 : upTo(3600)));
        return c;
    }
    case Kind::planAgain:
        return c;
    }
    return {};
}

Change Afternoon::anyChange() {
    while (true)
        if (auto c = anyOf(static_cast<Kind>(upTo(static_cast<int>(Kind::planAgain) + 1))))
            return *c;
}

Proposal Afternoon::proposed(const Change& change) const {
    return propose(live_.session(), live_.plan(), live_.events(), live_.state(), change, nowMs_);
}

void Afternoon::keepOldPlan(const Proposal& proposal) {
    for (const What& f : proposal.facts)
        EXPECT_EQ(store(f), "");
}

void Afternoon::take(const Proposal& proposal) {
    keepOldPlan(proposal);
    EXPECT_EQ(store(acceptance(proposal)), "");
}

} // namespace bastewright::testing
