#include "planners/passes/reached_share.h"

#include "planners/passes/reach.h"
#include "planners/surface/closed_sides.h"
#include "planners/surface/helper_order.h"
#include "planners/surface/reachable.h"

#include <algorithm>
#include <array>

namespace bastewright {
namespace {

/// A point that nobody gets to counts as so many that everybody gets to (from memory); the crew's
/// plan tells of it.
constexpr double kNobody = 4;

} // namespace

ReachedShare::ReachedShare(const std::vector<Helper>& all, const Lie& lie,
                           bool quiltLengthAlongLength)
    : floor_{lie.floor}
    , open_{openSides(lie)} {
    const auto add = [&](const Helper& h) {
        const double pace = soundPace(h.pace);
        if (h.side) {
            const std::array kept{*h.side};
            keeping_.push_back({pace, h.reach, leaningReach(h),
                                closedSides(kept, quiltLengthAlongLength).front()});
        } else {
            easily_.push_back({h.reach, pace});
            leaning_.push_back({leaningReach(h), pace});
        }
        quickest_.push_back(pace);
        paces_ += pace;
        farthest_ = std::max(farthest_, leaningReach(h));
    };
    // Sums of paces are the same to the last digit in whatever order people are listed.
    const std::vector<Helper> helpers = inOneOrder(all);
    for (const Helper& h : helpers)
        if (h.pins)
            add(h);
    if (quickest_.empty())
        for (const Helper& h : helpers)
            add(h);
    if (quickest_.empty())
        add(Helper{});
    std::ranges::sort(quickest_, std::greater<>{});
    for (auto* reaches : {&easily_, &leaning_}) {
        std::ranges::stable_sort(*reaches, std::greater<>{}, &Reach::at);
        for (std::size_t k = 1; k < reaches->size(); ++k)
            (*reaches)[k].paces += (*reaches)[k - 1].paces;
    }
}

double ReachedShare::shareAt(Point place, const Rect& table) const {
    const auto nearest = nearestDepth(place, table, open_);
    if (!nearest)
        return 0;
    const auto pacesTo = [&](const std::vector<Reach>& reaches) {
        const auto beyond =
            std::ranges::upper_bound(reaches, *nearest, std::greater<>{}, &Reach::at);
        return beyond == reaches.begin() ? 0 : std::prev(beyond)->paces;
    };
    // Who leans for it does two thirds of what the others do.
    double share = pacesTo(leaning_) / kLeaningFactor + pacesTo(easily_) * (1 - 1 / kLeaningFactor);
    for (const Person& p : keeping_) {
        if (std::ranges::find(open_, p.side) == open_.end())
            continue;
        const Length d = depthFrom(place, table, p.side);
        share += d <= p.reach ? p.pace : d <= p.leaning ? p.pace / kLeaningFactor : 0;
    }
    return share;
}

double ReachedShare::roomAt(const Rect& table, Side side) const {
    const std::size_t places = placesAlong(extent(table, side).size());
    double out = 0;
    for (std::size_t k = 0; k < std::min(places, quickest_.size()); ++k)
        out += quickest_[k];
    return out;
}

double ReachedShare::points(const Rect& table, std::span<const Point> worked) const {
    if (floor_)
        return double(worked.size());
    double all = 0;
    PerSide<double> only{};
    for (const Point& p : worked) {
        const double share = shareAt(p, table);
        const double seconds = share > 0 ? 1 / share : kNobody / paces_;
        all += seconds;
        std::optional<Side> one;
        int sides = 0;
        for (const Side s : open_)
            if (depthFrom(p, table, s) <= farthest_) {
                one = s;
                ++sides;
            }
        if (sides == 1)
            only[*one] += seconds * share / roomAt(table, *one);
    }
    for (const Side s : kSides)
        all = std::max(all, only[s]);
    return all * paces_;
}

double ReachedShare::points(const Board& board, const Lie& lie, const Cells& cells,
                            const Step& step) const {
    if (floor_)
        return step.points;
    const Region fresh = regionOf(board, cells, step.fresh);
    std::vector<std::vector<Point>> worked(step.pulls.size() + 1);
    for (const Point& p : board.points)
        if (fresh.contains(p))
            worked[step.pullOf(board, p)].push_back(p);
    double out = 0;
    for (std::size_t k = 0; k < worked.size(); ++k) {
        const Point at = k < step.pulls.size() ? step.pulls[k].at : step.at;
        out += points({at.x, at.y, at.x + lie.x.size, at.y + lie.y.size}, worked[k]);
    }
    return out;
}

} // namespace bastewright
