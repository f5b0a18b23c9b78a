#include "planners/crew/handing_out.h"

#include <algorithm>
#include <cstdlib>

namespace bastewright::crew {
namespace {

std::size_t ix(int i) {
    return static_cast<std::size_t>(i);
}

const Mode* modeOf(const Activity& a, int person) {
    for (const Mode& m : a.modes)
        if (m.person == person)
            return &m;
    return nullptr;
}

} // namespace

HandingOut::HandingOut(const Problem& problem, Schedule& schedule)
    : problem_(problem)
    , s_(schedule)
    , next_(followers(problem))
    , own_(problem.people.size())
    , stands_(problem.strips.size())
    , load_(problem.people.size(), 0) {
    for (int i = 0; i < problem.size(); ++i)
        put(i);
}

int HandingOut::length(int i) const {
    return s_.end[ix(i)] - s_.start[ix(i)];
}

void HandingOut::take(int i) {
    was_.push_back(
        {i, s_.start[ix(i)], s_.end[ix(i)], s_.strip[ix(i)], s_.place[ix(i)], s_.crew[ix(i)]});
    lift(i);
}

void HandingOut::lift(int i) {
    for (const int p : s_.crew[ix(i)]) {
        std::erase(own_[ix(p)], i);
        load_[ix(p)] -= length(i);
    }
    if (s_.strip[ix(i)] >= 0)
        std::erase(stands_[ix(s_.strip[ix(i)])], i);
}

void HandingOut::put(int i) {
    for (const int p : s_.crew[ix(i)]) {
        auto& own = own_[ix(p)];
        own.insert(std::ranges::upper_bound(own, s_.start[ix(i)], {},
                                            [this](int k) { return s_.start[ix(k)]; }),
                   i);
        load_[ix(p)] += length(i);
    }
    if (s_.strip[ix(i)] >= 0)
        stands_[ix(s_.strip[ix(i)])].push_back(i);
}

void HandingOut::takeBack() {
    for (const Was& w : was_)
        if (given(w.activity))
            lift(w.activity);
    for (const Was& w : was_) {
        s_.start[ix(w.activity)] = w.start;
        s_.end[ix(w.activity)] = w.end;
        s_.strip[ix(w.activity)] = w.strip;
        s_.place[ix(w.activity)] = w.place;
        s_.crew[ix(w.activity)] = w.crew;
        put(w.activity);
    }
}

bool HandingOut::given(int i) const {
    const auto& own = own_[ix(s_.crew[ix(i)].front())];
    return std::ranges::find(own, i) != own.end();
}

bool HandingOut::give(int i, std::vector<int> crew, int start, int toolsUntil) {
    const Activity& a = problem_.at(i);
    int seconds = 0;
    const Mode* mode = nullptr; // of the last; of one alone where the place counts
    for (const int p : crew) {
        const Mode* m = modeOf(a, p);
        if (m == nullptr)
            return false;
        seconds = std::max(seconds, m->seconds);
        mode = m;
    }
    const int end = start + seconds;
    if (end > s_.finish || (!a.demand.empty() && end > toolsUntil))
        return false;
    for (const int b : a.after)
        if (s_.end[ix(b)] > start)
            return false;
    for (const int f : next_[ix(i)])
        if (s_.start[ix(f)] < end)
            return false;
    for (const int p : crew)
        if (!freeAt(p, start, end) || (a.apart >= 0 && given(a.apart) && has(a.apart, p)))
            return false;
    s_.start[ix(i)] = start;
    s_.end[ix(i)] = end;
    s_.crew[ix(i)] = std::move(crew);
    s_.strip[ix(i)] = -1;
    if (a.team == 1 && mode != nullptr && mode->firstSpot != mode->endSpot && !findPlace(i, *mode))
        return false;
    put(i);
    return true;
}

bool HandingOut::has(int i, int person) const {
    return std::ranges::find(s_.crew[ix(i)], person) != s_.crew[ix(i)].end();
}

bool HandingOut::freeAt(int p, int start, int end) const {
    const Person& h = problem_.people[ix(p)];
    if (start < h.from || end > h.until)
        return false;
    for (const Booking& b : problem_.booked)
        if (b.person == p && b.start < end && start < b.end)
            return false;
    for (const int k : own_[ix(p)]) {
        if (s_.start[ix(k)] >= end)
            break;
        if (s_.end[ix(k)] > start)
            return false;
    }
    return true;
}

/// The free place with the shortest walk from the person's task before and to the one after.
bool HandingOut::findPlace(int i, const Mode& mode) {
    int before = -1, after = -1;
    for (const int k : own_[ix(mode.person)]) {
        if (s_.strip[ix(k)] < 0)
            continue;
        if (s_.start[ix(k)] < s_.start[ix(i)])
            before = k;
        else if (after < 0)
            after = k;
    }
    std::int64_t bestCost = 0;
    int bestStrip = -1;
    std::int64_t bestPlace = 0;
    for (int k = mode.firstSpot; k < mode.endSpot; ++k) {
        const Spot& spot = problem_.spots[ix(k)];
        const std::int64_t room = problem_.strips[ix(spot.strip)].room;
        others_.clear();
        for (const int o : stands_[ix(spot.strip)])
            if (s_.start[ix(o)] < s_.end[ix(i)] && s_.start[ix(i)] < s_.end[ix(o)])
                others_.push_back(s_.place[ix(o)]);
        const auto offer = [&](std::int64_t place) {
            if (place < spot.lo || place > spot.hi)
                return;
            for (const std::int64_t o : others_)
                if (place < o + room && o < place + room)
                    return;
            s_.strip[ix(i)] = spot.strip;
            s_.place[ix(i)] = place;
            std::int64_t cost = std::abs(place - spot.want) / 4;
            if (before >= 0)
                cost += between(before, i);
            if (after >= 0)
                cost += between(i, after);
            if (bestStrip < 0 || cost < bestCost) {
                bestCost = cost;
                bestStrip = spot.strip;
                bestPlace = place;
            }
        };
        offer(spot.want);
        offer(spot.lo);
        offer(spot.hi);
        for (const std::int64_t o : others_) {
            offer(o - room);
            offer(o + room);
        }
    }
    s_.strip[ix(i)] = bestStrip;
    s_.place[ix(i)] = bestPlace;
    return bestStrip >= 0;
}

std::int64_t HandingOut::walkOf(int p) const {
    std::int64_t sum = 0;
    int last = -1;
    for (const int i : own_[ix(p)]) {
        if (s_.strip[ix(i)] < 0)
            continue;
        if (last >= 0)
            sum += between(last, i);
        last = i;
    }
    return sum;
}

std::int64_t HandingOut::between(int a, int b) const {
    return walk(problem_.strips[ix(s_.strip[ix(a)])], s_.place[ix(a)],
                problem_.strips[ix(s_.strip[ix(b)])], s_.place[ix(b)]);
}

} // namespace bastewright::crew
