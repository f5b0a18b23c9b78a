#include "planners/crew/settle.h"

#include <algorithm>
#include <map>

namespace bastewright::crew {
namespace {

std::size_t ix(int i) {
    return static_cast<std::size_t>(i);
}

/// Shares this near to one another count as even, and may be traded for a shorter walk.
constexpr double kEven = 1.08;

class Settler {
public:
    Settler(const Problem& problem, Schedule& schedule, const SettleOptions& options,
            std::stop_token stop)
        : problem_(problem)
        , s_(schedule)
        , next_(followers(problem))
        , own_(problem.people.size())
        , stands_(problem.strips.size())
        , hours_(problem.people.size())
        , load_(problem.people.size(), 0)
        , walk_(problem.people.size(), 0)
        , looks_(options.looks)
        , zonesToo_(options.zonesToo)
        , stop_(std::move(stop)) {
        std::vector<char> able(problem.people.size(), 0);
        std::map<std::vector<int>, int> groups;
        for (int i = 0; i < problem.size(); ++i) {
            for (const Mode& m : problem.at(i).modes)
                able[ix(m.person)] = 1;
            group_.push_back(
                groups.try_emplace(problem.at(i).after, static_cast<int>(groups.size()))
                    .first->second);
            for (const int p : s_.crew[ix(i)]) {
                own_[ix(p)].push_back(i);
                load_[ix(p)] += length(i);
            }
            if (s_.strip[ix(i)] >= 0)
                stands_[ix(s_.strip[ix(i)])].push_back(i);
        }
        members_.resize(groups.size());
        for (int i = 0; i < problem.size(); ++i)
            if (problem.at(i).team == 1)
                members_[ix(group_[ix(i)])].push_back(i);
        for (std::size_t p = 0; p < own_.size(); ++p) {
            sortOwn(static_cast<int>(p));
            const Person& h = problem.people[p];
            hours_[p] = able[p] ? std::max(0, std::min(h.until, s_.finish) - h.from) : 0;
            walk_[p] = walkOf(static_cast<int>(p));
        }
    }

    void run() {
        for (bool walking : {false, true, false, true}) {
            walking_ = walking;
            for (int round = 0; round < 6 && !done(); ++round)
                if (!roundOfMoves())
                    break;
        }
        // Whoever came last may have become quicker.
        if (!s_.end.empty())
            s_.finish = *std::ranges::max_element(s_.end);
    }

    double spreadNow() const {
        double least = 1e18, most = 0;
        for (std::size_t p = 0; p < hours_.size(); ++p) {
            if (hours_[p] <= 0)
                continue;
            least = std::min(least, static_cast<double>(load_[p]) / hours_[p]);
            most = std::max(most, static_cast<double>(load_[p]) / hours_[p]);
        }
        return most == 0 ? 1 : least == 0 ? 1e9 : most / least;
    }

    std::int64_t walkedNow() const {
        std::int64_t sum = 0;
        for (const std::int64_t w : walk_)
            sum += w;
        return sum;
    }

private:
    bool done() const { return looks_ <= 0 || stop_.stop_requested(); }
    int length(int i) const { return s_.end[ix(i)] - s_.start[ix(i)]; }

    void sortOwn(int p) {
        std::ranges::sort(own_[ix(p)], [this](int a, int b) {
            return s_.start[ix(a)] != s_.start[ix(b)] ? s_.start[ix(a)] < s_.start[ix(b)] : a < b;
        });
    }

    std::int64_t walkOf(int p) const {
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

    std::int64_t between(int a, int b) const {
        return walk(problem_.strips[ix(s_.strip[ix(a)])], s_.place[ix(a)],
                    problem_.strips[ix(s_.strip[ix(b)])], s_.place[ix(b)]);
    }

    static const Mode* modeOf(const Activity& a, int person) {
        for (const Mode& m : a.modes)
            if (m.person == person)
                return &m;
        return nullptr;
    }

    // --- A change is made, judged, and taken back where it is no good.

    struct Was {
        int activity, start, end, strip;
        std::int64_t place;
        std::vector<int> crew;
    };

    void take(int i) {
        was_.push_back(
            {i, s_.start[ix(i)], s_.end[ix(i)], s_.strip[ix(i)], s_.place[ix(i)], s_.crew[ix(i)]});
        lift(i);
    }

    void lift(int i) {
        for (const int p : s_.crew[ix(i)]) {
            std::erase(own_[ix(p)], i);
            load_[ix(p)] -= length(i);
        }
        if (s_.strip[ix(i)] >= 0)
            std::erase(stands_[ix(s_.strip[ix(i)])], i);
    }

    void put(int i) {
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

    void takeBack() {
        for (const Was& w : was_)
            if (placed(w.activity))
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

    bool placed(int i) const {
        const auto& own = own_[ix(s_.crew[ix(i)].front())];
        return std::ranges::find(own, i) != own.end();
    }

    /// Puts a lifted activity to other people from `start` on; false where that is not possible.
    bool tryAt(int i, std::vector<int> crew, int start, int slotEnd) {
        const Activity& a = problem_.at(i);
        int seconds = 0;
        const Mode* mode = nullptr;
        for (const int p : crew) {
            const Mode* m = modeOf(a, p);
            if (m == nullptr)
                return false;
            seconds = std::max(seconds, m->seconds);
            mode = m;
        }
        const int end = start + seconds;
        if (end > s_.finish || (!a.demand.empty() && end > slotEnd))
            return false;
        for (const int b : a.after)
            if (s_.end[ix(b)] > start)
                return false;
        for (const int f : next_[ix(i)])
            if (s_.start[ix(f)] < end)
                return false;
        for (const int p : crew)
            if (!freeAt(p, start, end))
                return false;
        s_.start[ix(i)] = start;
        s_.end[ix(i)] = end;
        s_.crew[ix(i)] = std::move(crew);
        s_.strip[ix(i)] = -1;
        if (a.team == 1 && mode->firstSpot != mode->endSpot && !findPlace(i, *mode))
            return false;
        put(i);
        return true;
    }

    bool freeAt(int p, int start, int end) const {
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
    bool findPlace(int i, const Mode& mode) {
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

    /// Keeps the change just made where it helps.
    bool judge(const std::vector<int>& people, double unevenBefore, std::int64_t walkBefore) {
        const double uneven = unevenness(people);
        std::int64_t walkNow = 0;
        std::vector<std::int64_t> walks;
        for (const int p : people) {
            walks.push_back(walkOf(p));
            walkNow += walks.back();
        }
        const bool good = walking_ ? walkNow < walkBefore &&
                                         (uneven <= unevenBefore + 1e-6 || spreadNow() <= kEven)
                                   : uneven < unevenBefore - 1e-6;
        if (good)
            for (std::size_t k = 0; k < people.size(); ++k)
                walk_[ix(people[k])] = walks[k];
        return good;
    }

    double unevenness(const std::vector<int>& people) const {
        double sum = 0;
        for (const int p : people)
            if (hours_[ix(p)] > 0)
                sum += static_cast<double>(load_[ix(p)]) * load_[ix(p)] / hours_[ix(p)];
        return sum;
    }

    std::int64_t walkBefore(const std::vector<int>& people) const {
        std::int64_t sum = 0;
        for (const int p : people)
            sum += walk_[ix(p)];
        return sum;
    }

    /// Somebody else in place of one of the people of an activity (or, alone, at another place).
    bool handOver(int i, int from, int to) {
        --looks_;
        std::vector<int> people{from};
        if (to != from)
            people.push_back(to);
        const double uneven = unevenness(people);
        const std::int64_t walked = walkBefore(people);
        std::vector<int> crew = s_.crew[ix(i)];
        std::ranges::replace(crew, from, to);
        std::ranges::sort(crew);
        const int start = s_.start[ix(i)], end = s_.end[ix(i)];
        // A team whose time changes changes everybody's load.
        for (const int p : crew)
            if (std::ranges::find(people, p) == people.end())
                people.push_back(p);
        const double all = people.size() > 2 ? unevenness(people) : uneven;
        const std::int64_t allWalked = people.size() > 2 ? walkBefore(people) : walked;
        was_.clear();
        take(i);
        if (tryAt(i, std::move(crew), start, end) && judge(people, all, allWalked))
            return true;
        takeBack();
        return false;
    }

    /// Two one-person activities change people and times.
    bool exchange(int i, int j) {
        --looks_;
        const int p = s_.crew[ix(i)].front(), q = s_.crew[ix(j)].front();
        std::vector<int> people{p};
        if (q != p)
            people.push_back(q);
        const double uneven = unevenness(people);
        const std::int64_t walked = walkBefore(people);
        const int startI = s_.start[ix(i)], startJ = s_.start[ix(j)];
        const int endI = s_.end[ix(i)], endJ = s_.end[ix(j)];
        was_.clear();
        take(i);
        take(j);
        if (tryAt(i, {q}, startJ, endJ) && tryAt(j, {p}, startI, endI) &&
            judge(people, uneven, walked))
            return true;
        takeBack();
        return false;
    }

    bool roundOfMoves() {
        bool changed = false;
        for (int i = 0; i < problem_.size() && !done(); ++i) {
            const Activity& a = problem_.at(i);
            if (a.team == 0 || (!zonesToo_ && s_.strip[ix(i)] >= 0))
                continue;
            const std::vector<int> crew = s_.crew[ix(i)];
            for (const int from : crew)
                for (const Mode& m : a.modes) {
                    const bool in =
                        std::ranges::find(s_.crew[ix(i)], m.person) != s_.crew[ix(i)].end();
                    if (done() || (in && (m.person != from || !walking_ || a.team > 1)))
                        continue;
                    if (handOver(i, from, m.person)) {
                        changed = true;
                        break;
                    }
                }
            if (a.team != 1)
                continue;
            for (const int j : members_[ix(group_[ix(i)])])
                if (j > i && !done() && exchange(i, j))
                    changed = true;
        }
        return changed;
    }

    const Problem& problem_;
    Schedule& s_;
    std::vector<std::vector<int>> next_;
    std::vector<std::vector<int>> own_;    ///< activities by person, by start
    std::vector<std::vector<int>> stands_; ///< activities by strip
    std::vector<int> group_;               ///< activities that wait for the same
    std::vector<std::vector<int>> members_;
    std::vector<int> hours_, load_;
    std::vector<std::int64_t> walk_;
    std::vector<Was> was_;
    std::vector<std::int64_t> others_; ///< places taken beside the one looked for
    bool walking_ = false;
    int looks_;
    bool zonesToo_;
    std::stop_token stop_;
};

} // namespace

void settle(const Problem& problem, Schedule& schedule, const SettleOptions& options,
            std::stop_token stop) {
    Settler{problem, schedule, options, std::move(stop)}.run();
}

double spread(const Problem& problem, const Schedule& schedule) {
    Schedule copy = schedule;
    return Settler{problem, copy, {}, {}}.spreadNow();
}

std::int64_t walked(const Problem& problem, const Schedule& schedule) {
    Schedule copy = schedule;
    return Settler{problem, copy, {}, {}}.walkedNow();
}

} // namespace bastewright::crew
