#include "planners/crew/busy_hands.h"

#include <algorithm>
#include <cassert>

namespace bastewright::crew {
namespace {

std::size_t ix(int i) {
    return static_cast<std::size_t>(i);
}

} // namespace

BusyHands::BusyHands(const Problem& problem)
    : problem_(problem)
    , next_(followers(problem))
    , standing_(problem) {
    assert(problem.booked.empty());
}

bool BusyHands::free(int person, int now, int seconds, bool overtime) const {
    const Person& p = problem_.people[ix(person)];
    return busyUntil_[ix(person)] <= now && !held_[ix(person)] && p.from <= now &&
           (overtime || now + seconds <= p.until);
}

bool BusyHands::toolsFree(const Activity& a) const {
    for (std::size_t k = 0; k < a.demand.size(); ++k)
        if (tools_[k] + a.demand[k] > problem_.tools[k])
            return false;
    return true;
}

void BusyHands::begin(int i, std::vector<int> team, int now, int seconds, Schedule& out) {
    const Activity& a = problem_.at(i);
    for (const int p : team) {
        busyUntil_[ix(p)] = now + seconds;
        load_[ix(p)] += seconds;
        over_[ix(p)] = std::max(over_[ix(p)], now + seconds - problem_.people[ix(p)].until);
        --idle_;
    }
    for (std::size_t k = 0; k < a.demand.size(); ++k)
        tools_[k] += a.demand[k];
    out.start[ix(i)] = now;
    out.end[ix(i)] = now + seconds;
    out.finish = std::max(out.finish, now + seconds);
    out.crew[ix(i)] = std::move(team);
    running_.push_back({now + seconds, i});
    std::ranges::push_heap(running_, std::ranges::greater{}, &Running::end);
}

bool BusyHands::startOne(int i, int now, bool overtime, Schedule& out) {
    const Activity& a = problem_.at(i);
    const Mode* best = nullptr;
    Standing::Room where;
    const bool others = a.apart >= 0 && !out.crew[ix(a.apart)].empty();
    for (const Mode& m : a.modes) {
        if (others && out.crew[ix(a.apart)].front() == m.person)
            continue;
        if (best != nullptr && m.seconds > best->seconds)
            break;
        if (!free(m.person, now, m.seconds, overtime) ||
            (best != nullptr && load_[ix(m.person)] >= load_[ix(best->person)]))
            continue;
        Standing::Room room;
        if (m.firstSpot != m.endSpot) {
            room = standing_.find(m, now, now + m.seconds);
            if (room.strip < 0)
                continue;
        }
        best = &m;
        where = room;
    }
    if (best == nullptr)
        return false;
    if (where.strip >= 0)
        standing_.take(where, now, now + best->seconds);
    out.strip[ix(i)] = where.strip;
    out.place[ix(i)] = where.place;
    begin(i, {best->person}, now, best->seconds, out);
    return true;
}

bool BusyHands::startTeam(int i, int now, bool overtime, bool mayHold, bool& held, Schedule& out) {
    const Activity& a = problem_.at(i);
    std::vector<int> team;
    for (const Mode& m : a.modes) {
        if (!free(m.person, now, m.seconds, overtime))
            continue;
        team.push_back(m.person);
        if (static_cast<int>(team.size()) == a.team) {
            std::ranges::sort(team);
            begin(i, std::move(team), now, m.seconds, out);
            return true;
        }
    }
    if (mayHold) {
        for (const int p : team) {
            held_[ix(p)] = 1;
            --idle_;
        }
        held = true;
    }
    return false;
}

void BusyHands::build(std::span<const double> urgency, Schedule& out) {
    const std::size_t n = problem_.activities.size(), people = problem_.people.size();
    out.start.assign(n, 0);
    out.end.assign(n, 0);
    out.crew.assign(n, {});
    out.strip.assign(n, -1);
    out.place.assign(n, 0);
    out.finish = 0;
    standing_.clear();
    busyUntil_.assign(people, 0);
    load_.assign(people, 0);
    over_.assign(people, 0);
    tools_.assign(problem_.tools.size(), 0);
    waits_.assign(n, 0);
    running_.clear();
    const auto before = [&](int a, int b) {
        return urgency[ix(a)] != urgency[ix(b)] ? urgency[ix(a)] > urgency[ix(b)] : a < b;
    };
    std::vector<int> ready;
    const auto add = [&](int i) { ready.insert(std::ranges::lower_bound(ready, i, before), i); };
    for (std::size_t i = 0; i < n; ++i) {
        waits_[i] = static_cast<int>(problem_.activities[i].after.size());
        if (waits_[i] == 0)
            add(static_cast<int>(i));
    }
    std::vector<int> arrivals;
    for (const Person& p : problem_.people)
        arrivals.push_back(p.from);
    std::ranges::sort(arrivals);

    std::size_t done = 0;
    for (int now = problem_.from; done < n;) {
        held_.assign(people, 0);
        // Where nobody is left within their hours, somebody stays.
        bool overtime = false;
        do {
            idle_ = 0;
            for (std::size_t p = 0; p < people; ++p)
                idle_ += busyUntil_[p] <= now && problem_.people[p].from <= now ? 1 : 0;
            bool held = false;
            std::erase_if(ready, [&](int i) {
                const Activity& a = problem_.at(i);
                if ((a.team > 0 && idle_ <= 0) || !toolsFree(a))
                    return false;
                if (a.team == 0) {
                    begin(i, {}, now, a.seconds, out);
                    return true;
                }
                return a.team == 1 ? startOne(i, now, overtime, out)
                                   : startTeam(i, now, overtime, !held, held, out);
            });
            overtime = running_.empty() && !ready.empty() && arrivals.back() <= now && !overtime;
            if (overtime)
                held_.assign(people, 0);
        } while (overtime);

        const auto coming = std::ranges::upper_bound(arrivals, now);
        int then = coming == arrivals.end() ? kNever : *coming;
        if (!running_.empty())
            then = std::min(then, running_.front().end);
        assert(then < kNever);
        now = then;
        while (!running_.empty() && running_.front().end <= now) {
            const int i = running_.front().activity;
            std::ranges::pop_heap(running_, std::ranges::greater{}, &Running::end);
            running_.pop_back();
            ++done;
            const Activity& a = problem_.at(i);
            for (std::size_t k = 0; k < a.demand.size(); ++k)
                tools_[k] -= a.demand[k];
            for (const int f : next_[ix(i)])
                if (--waits_[ix(f)] == 0)
                    add(f);
        }
    }
    out.overtime = 0;
    for (const int o : over_)
        out.overtime += std::max(0, o);
}

} // namespace bastewright::crew
