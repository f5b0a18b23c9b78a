#include "session/private/remaining.h"

#include "job/job_json.h"
#include "session/private/plan_index.h"

#include <algorithm>

namespace bastewright {
namespace {

// A learnt factor takes a pace no further than this from the trade's.

// Of work in hand a tenth is always left, for nobody has ticked it yet.
constexpr int kLeastShare = 10;

// Hands work in hand to shadows of its people, who are free at once and do nothing else; the people
// themselves are free when it is done.
void keepInHand(std::size_t activity, const ReplanOptions& options, const std::vector<Hand>& hands,
                Remaining& r) {
    const Task& task = *r.tasks[activity];
    auto& people = r.model.problem.people;
    auto& a = r.model.problem.activities[activity];
    std::vector<crew::Mode> own;
    int seconds = a.team == 0 ? a.seconds : 0;
    for (const auto& who : task.people) {
        const auto hand =
            std::ranges::find(hands, who, [](const Hand& h) { return h.helper.name; });
        const auto mode =
            std::ranges::find(a.modes, static_cast<int>(hand - hands.begin()), &crew::Mode::person);
        if (mode == a.modes.end())
            return; // they no longer may, or reach it: it is anybody's
        own.push_back(*mode);
        seconds = std::max(seconds, mode->seconds);
    }
    const auto at = options.inHand.find(task.id);
    const auto spent = at == options.inHand.end() ? 0 : static_cast<int>(at->second.count());
    seconds = std::max(seconds - std::max(spent, 0), (seconds + kLeastShare - 1) / kLeastShare);
    a.seconds = seconds;
    a.team = static_cast<int>(own.size());
    for (auto& mode : own) {
        auto& real = people[static_cast<std::size_t>(mode.person)];
        real.from = std::max(real.from, seconds);
        r.shadows.push_back(static_cast<std::size_t>(mode.person));
        mode.person = static_cast<int>(people.size());
        mode.seconds = seconds;
        if (!task.places.empty())
            standAt(task.places.front(), mode, r.model);
        people.push_back({});
    }
    a.modes = std::move(own);
    r.inHand.insert(activity);
}

// Breaks are told from the session's start; what is left is planned from now.
void countFromNow(std::vector<crew::Booking>& booked, Seconds now) {
    const auto passed = static_cast<int>(now.count());
    for (auto& b : booked) {
        b.start = std::max(0, b.start - passed);
        b.end -= passed;
    }
    std::erase_if(booked, [](const crew::Booking& b) { return b.end <= b.start; });
}

bool inEachOthersWay(const Task& a, const Task& b) {
    return a.job == b.job && !a.places.empty() && !b.places.empty() &&
           a.places.front().side == b.places.front().side &&
           a.places.front().along.overlaps(b.places.front().along);
}

} // namespace

void standAt(const StandingPlace& place, crew::Mode& mode, crew::Model& model) {
    auto& spots = model.problem.spots;
    const auto at = place.along.lo.nm();
    for (int k = mode.firstSpot; k < mode.endSpot; ++k) {
        const crew::Spot spot = spots[static_cast<std::size_t>(k)];
        if (model.edges[static_cast<std::size_t>(spot.strip)].side != place.side || at < spot.lo ||
            at > spot.hi)
            continue;
        mode.firstSpot = static_cast<int>(spots.size());
        mode.endSpot = mode.firstSpot + 1;
        spots.push_back({.strip = spot.strip, .lo = at, .hi = at, .want = at});
        return;
    }
}

double paceWith(const Helper& helper, const ReplanOptions& options) {
    const auto learnt = options.pace.find(helper.name);
    if (learnt == options.pace.end())
        return helper.pace;
    return std::clamp(helper.pace * learnt->second, limits::kSlowestPace, limits::kFastestPace);
}

std::vector<Hand> handsOf(const Setting& setting, const LiveState& state,
                          const ReplanOptions& options) {
    const auto now = static_cast<int>(options.now.count());
    std::vector<Hand> out;
    for (const auto& helper : setting.helpers) {
        Hand hand{helper, crew::hoursOf(helper, setting.start),
                  state.present.contains(helper.name)};
        if (!hand.present && hand.hours.from <= now)
            continue; // gone, or not come
        if (hand.present && hand.hours.until <= now)
            hand.hours.until = crew::kNever; // stays on
        hand.hours.from = hand.present ? 0 : hand.hours.from - now;
        if (hand.hours.until < crew::kNever)
            hand.hours.until -= now;
        hand.helper.pace = paceWith(helper, options);
        out.push_back(std::move(hand));
    }
    return out;
}

std::vector<const Task*> tasksInHand(const Plan& plan, const LiveState& state, int irons) {
    std::vector<const Task*> out;
    std::set<std::string_view> busy;
    for (const auto& t : plan.tasks) {
        if (state.doneTasks.contains(t.id))
            continue;
        const bool next = std::ranges::all_of(t.people, [&](const std::string& who) {
            return state.present.contains(who) && !busy.contains(who);
        });
        busy.insert(t.people.begin(), t.people.end());
        if (!next || !mayStart(t, state) || (t.people.empty() && t.kind != TaskKind::cool))
            continue;
        if (t.kind == TaskKind::press && --irons < 0)
            continue;
        if (std::ranges::none_of(out, [&t](const Task* o) { return inEachOthersWay(*o, t); }))
            out.push_back(&t);
    }
    return out;
}

Remaining remainingOf(const Session& session, const Plan& plan, const LiveState& state,
                      const std::vector<Hand>& hands, const ReplanOptions& options) {
    Remaining r;
    draftRest(session, plan, state, hands, options.now, r);
    std::vector<Helper> helpers;
    for (const auto& h : hands)
        helpers.push_back(h.helper);
    r.model = crew::modelOf(session, helpers, plan.quilts, r.drafts);
    for (std::size_t k = 0; k < hands.size(); ++k)
        r.model.problem.people[k] = hands[k].hours;
    countFromNow(r.model.problem.booked, options.now);
    for (const Task* t : tasksInHand(plan, state, session.setting.room.irons))
        keepInHand(static_cast<std::size_t>(std::ranges::find(r.tasks, t) - r.tasks.begin()),
                   options, hands, r);
    return r;
}

} // namespace bastewright
