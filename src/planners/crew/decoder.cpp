#include "planners/crew/decoder.h"

#include <algorithm>
#include <cassert>

namespace bastewright::crew {
namespace {
std::size_t ix(int i) {
    return static_cast<std::size_t>(i);
}

/// Of spans that do not overlap, in order. Most work is added near the end: looked for from there.
auto firstEndingAfter(const auto& list, int time) {
    auto next = list.end();
    for (int steps = 0; next != list.begin() && std::prev(next)->end > time; ++steps) {
        if (steps == 8)
            return std::partition_point(list.begin(), next,
                                        [time](const auto& b) { return b.end <= time; });
        --next;
    }
    return next;
}

} // namespace

Decoder::Decoder(const Problem& problem)
    : problem_(problem)
    , profile_(problem.tools)
    , profileBooked_(problem.tools)
    , busy_(problem.people.size())
    , booked_(problem.people.size())
    , standing_(problem)
    , load_(problem.people.size())
    , over_(problem.people.size()) {
    readHours();
}

void Decoder::readHours() {
    profileBooked_.clear();
    for (auto& list : booked_)
        list.clear();
    for (const Booking& b : problem_.booked) {
        if (b.person >= 0)
            booked_[ix(b.person)].push_back({b.start, b.end});
        if (!b.demand.empty())
            profileBooked_.take(b.start, b.end - b.start, b.demand);
    }
    for (auto& list : booked_)
        std::ranges::sort(list, {}, &Busy::start);
}

/// The first time from `ready` on at which a person is free for so long; kNever beyond their hours.
int Decoder::freeFrom(int person, int ready, int seconds, bool overtime) const {
    const Person& h = problem_.people[ix(person)];
    int start = std::max(ready, h.from);
    const auto& list = busy_[ix(person)];
    auto next = firstEndingAfter(list, start);
    for (; next != list.end() && next->start < start + seconds; ++next)
        start = std::max(start, next->end);
    return overtime || start + seconds <= h.until ? start : kNever;
}

/// How long a person free at `time` stays free; -1 where busy or away, and then when that ends.
/// `freeAgain` is always the next time at which the answer could be better.
int Decoder::gapEnd(int person, int time, bool overtime, int& freeAgain) const {
    const Person& h = problem_.people[ix(person)];
    freeAgain = kNever;
    if (time < h.from) {
        freeAgain = h.from;
        return -1;
    }
    const int until = overtime ? kNever : h.until;
    const auto& list = busy_[ix(person)];
    const auto next = firstEndingAfter(list, time);
    if (next == list.end())
        return time < until ? until : -1;
    freeAgain = next->end;
    return next->start <= time ? -1 : std::min(next->start, until);
}

/// `besides` is somebody it is not to be; -1 for nobody.
Decoder::Choice Decoder::chooseOne(const Activity& a, int ready, int only, int besides,
                                   bool overtime) const {
    Choice best;
    struct {
        int firstSpot = -1, start = 0, seconds = 0;
        Standing::Room room{};
    } asked;
    for (const Mode& m : a.modes) {
        if ((only >= 0 && m.person != only) || m.person == besides)
            continue;
        if (ready + m.seconds > best.end)
            break; // the rest are slower still
        int start = ready;
        Standing::Room room;
        for (;;) {
            start = freeFrom(m.person, start, m.seconds, overtime);
            if (start >= kNever || start + m.seconds > best.end)
                break;
            if (!a.demand.empty()) {
                const int t = profile_.earliest(start, m.seconds, a.demand);
                if (t > start) {
                    start = t;
                    continue;
                }
            }
            if (m.firstSpot == m.endSpot)
                break;
            // Equal people are asked after one another.
            if (asked.firstSpot != m.firstSpot || asked.start != start ||
                asked.seconds != m.seconds)
                asked = {m.firstSpot, start, m.seconds,
                         standing_.find(m, start, start + m.seconds)};
            room = asked.room;
            if (room.strip >= 0)
                break;
            start = std::max(start + 1, room.retry);
        }
        if (start >= kNever)
            continue;
        const int end = start + m.seconds;
        const bool sooner = end < best.end;
        const bool lighter =
            end == best.end && best.person >= 0 && load_[ix(m.person)] < load_[ix(best.person)];
        if (sooner || lighter)
            best = {m.person, start, end, room};
    }
    return best;
}

int Decoder::gatherTeam(const Activity& a, int ready, bool overtime, std::vector<int>& team) const {
    const std::size_t people = a.modes.size();
    std::vector<int> until(people);
    int bestStart = kNever, bestEnd = kNever;
    const int least = shortest(a);
    for (int time = ready; time < kNever && time + least < bestEnd;) {
        int nextTime = kNever;
        for (std::size_t k = 0; k < people; ++k) {
            int again;
            until[k] = gapEnd(a.modes[k].person, time, overtime, again);
            if (again > time)
                nextTime = std::min(nextTime, again);
        }
        // The quickest team first: people up to some slowness, all free for that long.
        for (std::size_t k = 0; k < people; ++k) {
            const int seconds = a.modes[k].seconds;
            if (k + 1 < people && a.modes[k + 1].seconds == seconds)
                continue;
            if (time + seconds >= bestEnd)
                break;
            std::vector<int> free;
            for (std::size_t j = 0; j <= k; ++j)
                if (until[j] >= time + seconds)
                    free.push_back(a.modes[j].person);
            if (static_cast<int>(free.size()) < a.team)
                continue;
            std::ranges::stable_sort(free, {}, [this](int p) { return load_[ix(p)]; });
            free.resize(ix(a.team));
            std::ranges::sort(free);
            team = free;
            bestStart = time;
            bestEnd = time + seconds;
            break;
        }
        time = nextTime;
    }
    return bestStart;
}

void Decoder::schedule(int i, int only, Schedule& out) {
    const Activity& a = problem_.at(i);
    int ready = problem_.from;
    for (const int b : a.after)
        ready = std::max(ready, out.end[ix(b)]);
    auto& team = out.crew[ix(i)];
    team.clear();
    out.strip[ix(i)] = -1;
    int start = ready, seconds = a.seconds;
    if (a.team == 0) {
        if (!a.demand.empty())
            start = profile_.earliest(ready, seconds, a.demand);
    } else if (a.team == 1) {
        const bool others = a.apart >= 0 && !out.crew[ix(a.apart)].empty();
        const int besides = others ? out.crew[ix(a.apart)].front() : -1;
        Choice c = chooseOne(a, ready, only, besides, false);
        if (c.person < 0)
            c = chooseOne(a, ready, only, besides, true);
        assert(c.person >= 0);
        start = c.start;
        seconds = c.end - c.start;
        team.push_back(c.person);
        out.strip[ix(i)] = c.room.strip;
        out.place[ix(i)] = c.room.place;
        if (c.room.strip >= 0)
            standing_.take(c.room, c.start, c.end);
    } else {
        start = gatherTeam(a, ready, false, team);
        if (start >= kNever)
            start = gatherTeam(a, ready, true, team);
        assert(start < kNever);
        seconds = 0;
        for (const Mode& m : a.modes)
            if (std::ranges::find(team, m.person) != team.end())
                seconds = std::max(seconds, m.seconds);
    }
    const int end = start + seconds;
    if (!a.demand.empty())
        profile_.take(start, seconds, a.demand);
    for (const int p : team) {
        auto& list = busy_[ix(p)];
        auto at = list.end();
        while (at != list.begin() && std::prev(at)->start > start)
            --at;
        list.insert(at, {start, end});
        load_[ix(p)] += seconds;
        over_[ix(p)] = std::max(over_[ix(p)], end - problem_.people[ix(p)].until);
    }
    out.start[ix(i)] = start;
    out.end[ix(i)] = end;
    out.finish = std::max(out.finish, end);
}

void Decoder::build(std::span<const int> order, std::span<const int> who, Schedule& out) {
    profile_ = profileBooked_;
    busy_ = booked_;
    standing_.clear();
    std::ranges::fill(load_, 0);
    std::ranges::fill(over_, 0);
    const std::size_t n = problem_.activities.size();
    out.start.assign(n, 0);
    out.end.assign(n, 0);
    out.crew.resize(n);
    for (auto& team : out.crew)
        team.clear();
    out.strip.assign(n, -1);
    out.place.assign(n, 0);
    out.finish = 0;
    for (const int i : order)
        schedule(i, who.empty() ? -1 : who[ix(i)], out);
    out.overtime = 0;
    for (const int o : over_)
        out.overtime += o;
}

} // namespace bastewright::crew
