#include "planners/crew/bound.h"

#include "planners/crew/edge_room.h"
#include "planners/crew/stage.h"

#include <algorithm>
#include <numeric>

namespace bastewright::crew {
namespace {

std::size_t ix(int i) {
    return static_cast<std::size_t>(i);
}

/// Earliest starts, each activity waiting for whole stages and not only for the longest chain.
class Heads {
public:
    Heads(const Problem& problem, int& branches)
        : problem_(problem)
        , branches_(branches)
        , order_(orderByKey(problem, followers(problem),
                            std::vector<double>(problem.activities.size())))
        , place_(problem.activities.size())
        , gate_(problem.activities.size(), -1)
        , start_(problem.activities.size(), 0) {
        for (std::size_t k = 0; k < order_.size(); ++k)
            place_[ix(order_[k])] = static_cast<int>(k);
        for (const int i : order_)
            visit(i);
        const auto next = followers(problem);
        std::vector<int> last;
        for (const int i : order_)
            if (next[ix(i)].empty())
                last.push_back(i);
        // Of a whole session the work against the hours says as much, and sooner.
        if (order_.size() <= kSmall)
            end_ = stageEnd(gateOf(last), last);
    }

    const std::vector<int>& starts() const { return start_; }

    /// When everything can have ended.
    int end() const { return end_; }

private:
    static constexpr std::size_t kSmall = 300;

    void visit(int i) {
        const auto& after = problem_.at(i).after;
        int start = std::max(problem_.from, firstHour(problem_.at(i)));
        for (const int b : after)
            start = std::max(start, std::min(kNever, start_[ix(b)] + shortest(problem_.at(b))));
        gate_[ix(i)] = gateOf(after);
        if (after.size() > 1)
            start = std::max(start, stageEnd(gate_[ix(i)], after));
        start_[ix(i)] = start;
    }

    /// When enough people for it have come.
    int firstHour(const Activity& a) const {
        if (a.team == 0)
            return 0;
        std::vector<int> from;
        for (const Mode& m : a.modes)
            from.push_back(problem_.people[ix(m.person)].from);
        std::ranges::nth_element(from, from.begin() + (a.team - 1));
        return from[ix(a.team - 1)];
    }

    /// The last activity that every way to all of these leads through; -1 for none.
    int gateOf(const std::vector<int>& after) const {
        if (after.empty())
            return -1;
        int gate = after.front();
        for (const int b : after) {
            int other = b;
            while (gate != other) {
                if (gate < 0 || other < 0)
                    return -1;
                if (place_[ix(gate)] > place_[ix(other)])
                    gate = gate_[ix(gate)];
                else
                    other = gate_[ix(other)];
            }
        }
        return gate;
    }

    /// How early everything between a gate and those that lead on can have ended.
    int stageEnd(int gate, std::vector<int> open) {
        std::vector<int> stage;
        std::vector<char>& seen = seen_;
        seen.assign(problem_.activities.size(), 0);
        while (!open.empty()) {
            const int b = open.back();
            open.pop_back();
            if (b == gate || seen[ix(b)])
                continue;
            seen[ix(b)] = 1;
            stage.push_back(b);
            open.insert(open.end(), problem_.at(b).after.begin(), problem_.at(b).after.end());
        }
        if (stage.size() < 2)
            return 0;
        const Stage s{problem_, stage, start_};
        int end = std::max({s.byWork(), s.byCount(), s.byTools()});
        if (end < kNever)
            end = s.exact(endByEdges(problem_, stage, start_, end, branches_), branches_);
        return end;
    }

    const Problem& problem_;
    int& branches_;
    std::vector<int> order_, place_;
    std::vector<int> gate_; ///< the last activity every way from the beginning leads through
    std::vector<int> start_;
    int end_ = 0;
    std::vector<char> seen_;
};

/// Everything that starts late and has much after it, against everybody's hours.
int byIntervals(const Problem& problem, const std::vector<int>& head, const std::vector<int>& tail,
                int bound) {
    constexpr std::size_t kCuts = 24;
    std::vector<int> all(problem.activities.size());
    std::iota(all.begin(), all.end(), 0);
    const Stage stage{problem, all, head};
    std::vector<int> cuts = tail;
    std::ranges::sort(cuts);
    cuts.erase(std::unique(cuts.begin(), cuts.end()), cuts.end());
    const std::size_t step = std::max<std::size_t>(1, cuts.size() / kCuts);
    for (std::size_t k = 0; k < cuts.size(); k += step) {
        const int end = stage.byWork(tail, cuts[k], std::max(0, bound - cuts[k]));
        bound = std::max(bound, std::min(kNever, end + cuts[k]));
    }
    return bound;
}

/// What follows an activity does not know when that will be: hours are left out.
Problem openMirror(const Problem& problem) {
    Problem open = problem;
    open.booked.clear();
    for (Person& p : open.people)
        p = {};
    return mirrored(open, 0);
}

} // namespace

int lowerBound(const Problem& problem, const BoundOptions& options) {
    if (problem.activities.empty())
        return 0;
    int branches = options.branches / 2;
    const Heads heads{problem, branches};
    const auto& head = heads.starts();
    branches = options.branches / 2;
    const Problem back = openMirror(problem);
    const auto tail = Heads{back, branches}.starts();
    int bound = heads.end();
    for (int i = 0; i < problem.size(); ++i)
        bound =
            std::max(bound, std::min(kNever, head[ix(i)] + shortest(problem.at(i)) + tail[ix(i)]));
    return byIntervals(problem, head, tail, bound);
}

} // namespace bastewright::crew
