#include "planners/crew/settle.h"

#include "planners/crew/handing_out.h"

#include <algorithm>
#include <map>
#include <numeric>

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
        , out_(problem, schedule)
        , hours_(problem.people.size())
        , walk_(problem.people.size(), 0)
        , looks_(options.looks)
        , zonesToo_(options.zonesToo)
        , stop_(std::move(stop)) {
        std::vector<char> able(problem.people.size(), 0);
        std::map<std::vector<int>, int> groups;
        for (int i = 0; i < problem.size(); ++i) {
            for (const Mode& m : problem.at(i).modes)
                able[ix(m.person)] = 1;
            const int next = static_cast<int>(groups.size());
            group_.push_back(groups.try_emplace(problem.at(i).after, next).first->second);
        }
        members_.resize(groups.size());
        for (int i = 0; i < problem.size(); ++i)
            if (problem.at(i).team == 1)
                members_[ix(group_[ix(i)])].push_back(i);
        for (std::size_t p = 0; p < hours_.size(); ++p) {
            const Person& h = problem.people[p];
            hours_[p] = able[p] ? std::max(0, std::min(h.until, s_.finish) - h.from) : 0;
            for (const Booking& b : problem.booked) // breaks are not hours
                if (b.person == static_cast<int>(p))
                    hours_[p] -= std::max(0, std::min({b.end, h.until, s_.finish}) -
                                                 std::max(b.start, h.from));
            hours_[p] = std::max(0, hours_[p]);
            walk_[p] = out_.walkOf(static_cast<int>(p));
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
            const double share = static_cast<double>(out_.load(static_cast<int>(p))) / hours_[p];
            least = std::min(least, share);
            most = std::max(most, share);
        }
        return most == 0 ? 1 : least == 0 ? 1e9 : most / least;
    }

    std::int64_t walkedNow() const {
        return std::accumulate(walk_.begin(), walk_.end(), std::int64_t{0});
    }

private:
    bool done() const { return looks_ <= 0 || stop_.stop_requested(); }

    /// What a change does to the people it touches.
    struct Before {
        std::vector<int> people;
        double uneven;
        std::int64_t walked = 0;
    };

    Before before(std::vector<int> people) const {
        Before b{std::move(people), 0, 0};
        b.uneven = unevenness(b.people);
        for (const int p : b.people)
            b.walked += walk_[ix(p)];
        return b;
    }

    double unevenness(const std::vector<int>& people) const {
        double sum = 0;
        for (const int p : people)
            if (hours_[ix(p)] > 0)
                sum += static_cast<double>(out_.load(p)) * out_.load(p) / hours_[ix(p)];
        return sum;
    }

    /// Keeps the change just made where it helps.
    bool judge(const Before& b) {
        const double uneven = unevenness(b.people);
        if (!walking_ && uneven >= b.uneven - 1e-6)
            return false;
        std::vector<std::int64_t> walks;
        for (const int p : b.people)
            walks.push_back(out_.walkOf(p));
        if (walking_) {
            const auto now = std::accumulate(walks.begin(), walks.end(), std::int64_t{0});
            if (now >= b.walked || (uneven > b.uneven + 1e-6 && spreadNow() > kEven))
                return false;
        }
        for (std::size_t k = 0; k < walks.size(); ++k)
            walk_[ix(b.people[k])] = walks[k];
        return true;
    }

    /// Somebody else in place of one of the people of an activity (or, alone, at another place).
    bool handOver(int i, int from, int to) {
        --looks_;
        std::vector<int> crew = s_.crew[ix(i)], touched = crew;
        if (to != from)
            touched.push_back(to);
        const Before b = before(std::move(touched));
        std::ranges::replace(crew, from, to);
        std::ranges::sort(crew);
        const int start = s_.start[ix(i)], end = s_.end[ix(i)];
        out_.forget();
        out_.take(i);
        if (out_.give(i, std::move(crew), start, end) && judge(b))
            return true;
        out_.takeBack();
        return false;
    }

    /// Two one-person activities change people and times.
    bool exchange(int i, int j) {
        --looks_;
        if (problem_.at(i).demand != problem_.at(j).demand)
            return false;
        const int p = s_.crew[ix(i)].front(), q = s_.crew[ix(j)].front();
        const Before b = before(p == q ? std::vector{p} : std::vector{p, q});
        const int startI = s_.start[ix(i)], startJ = s_.start[ix(j)];
        const int endI = s_.end[ix(i)], endJ = s_.end[ix(j)];
        out_.forget();
        out_.take(i);
        out_.take(j);
        if (out_.give(i, {q}, startJ, endJ) && out_.give(j, {p}, startI, endI) && judge(b))
            return true;
        out_.takeBack();
        return false;
    }

    bool handOverToAnybody(int i) {
        const Activity& a = problem_.at(i);
        bool changed = false;
        const std::vector<int> crew = s_.crew[ix(i)];
        for (const int from : crew)
            for (const Mode& m : a.modes) {
                const auto& now = s_.crew[ix(i)];
                const bool in = std::ranges::find(now, m.person) != now.end();
                const bool elsewhere = walking_ && a.team == 1 && m.person == from;
                if (done() || (in && !elsewhere))
                    continue;
                if (handOver(i, from, m.person)) {
                    changed = true;
                    break;
                }
            }
        return changed;
    }

    bool roundOfMoves() {
        bool changed = false;
        for (int i = 0; i < problem_.size() && !done(); ++i) {
            const Activity& a = problem_.at(i);
            if (a.team == 0 || (!zonesToo_ && s_.strip[ix(i)] >= 0))
                continue;
            changed = handOverToAnybody(i) || changed;
            if (a.team != 1)
                continue;
            for (const int j : members_[ix(group_[ix(i)])])
                if (j > i && !done())
                    changed = exchange(i, j) || changed;
        }
        return changed;
    }

    const Problem& problem_;
    Schedule& s_;
    HandingOut out_;
    std::vector<int> group_; ///< of each activity: those that wait for the same
    std::vector<std::vector<int>> members_;
    std::vector<int> hours_;
    std::vector<std::int64_t> walk_;
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
