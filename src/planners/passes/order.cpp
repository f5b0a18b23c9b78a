#include "planners/passes/order.h"

#include <algorithm>
#include <unordered_set>

namespace bastewright {
namespace {

constexpr double kSecondsAnInch = 2, kPull = 240;
/// A pass that is not worth its shift costs as much as one that is.
constexpr double kNotWorthIt = 600;
constexpr int kLeastPoints = 8;
constexpr int kLeastShare = 20; ///< one part in so many

double inches(Point from, Point to) {
    return abs(to.x - from.x).in() + abs(to.y - from.y).in();
}

double costOfStep(const Board& board, const Step& step, const std::optional<Point>& before) {
    double cost = costOfMoving(step, before);
    const auto all = static_cast<int>(board.points.size());
    if (step.points < kLeastPoints || step.points * kLeastShare < all)
        cost += kNotWorthIt;
    if (step.points == 0)
        cost += 10 * kNotWorthIt;
    return cost;
}

class OrderSearch {
public:
    OrderSearch(const Board& board, const Lie& lie, const FirstPass& first, const Cells& cells,
                const std::vector<Window>& windows, int looks)
        : board_{board}
        , lie_{lie}
        , first_{first}
        , cells_{cells}
        , windows_{windows}
        , looks_{looks} {}

    bool run() {
        for (std::size_t i = 0; i < windows_.size(); ++i) {
            if (!mayBeFirst(board_, first_, windows_[i]))
                continue;
            const CellSet none(cells_.rows(), 0);
            if (const auto step =
                    stepInto(board_, lie_, cells_, none, windows_[i], first_.places(), {}))
                take(i, *step, step->fresh, 0);
        }
        return found_;
    }

    std::vector<std::size_t> best;
    std::vector<Step> bestSteps;

private:
    const Board& board_;
    const Lie& lie_;
    const FirstPass& first_;
    const Cells& cells_;
    const std::vector<Window>& windows_;
    int looks_;
    bool found_ = false;
    double least_ = 0;
    std::uint64_t done_ = 0;
    std::vector<std::size_t> order_;
    std::vector<Step> steps_;
    std::unordered_set<std::uint64_t> dead_; ///< sets that no order completes

    bool take(std::size_t i, const Step& step, const CellSet& basted, double cost) {
        order_.push_back(i);
        steps_.push_back(step);
        done_ |= std::uint64_t{1} << i;
        const bool some = on(basted, cost);
        done_ &= ~(std::uint64_t{1} << i);
        order_.pop_back();
        steps_.pop_back();
        return some;
    }

    /// True where some order completes the set done so far, or the search was cut short.
    bool on(const CellSet& basted, double cost) {
        if (order_.size() == windows_.size()) {
            const double whole = costOf(board_, steps_);
            if (!found_ || whole < least_) {
                found_ = true;
                least_ = whole;
                best = order_;
                bestSteps = steps_;
            }
            return true;
        }
        if (dead_.contains(done_))
            return false;
        struct Next {
            double cost;
            std::size_t index;
            Step step;
        };
        std::vector<Next> all;
        const Point at = steps_.back().endsAt();
        for (std::size_t i = 0; i < windows_.size(); ++i) {
            if ((done_ >> i & 1) != 0)
                continue;
            --looks_;
            if (auto step = stepInto(board_, lie_, cells_, basted, windows_[i], {}, at)) {
                const double here = costOfStep(board_, *step, at);
                all.push_back({here, i, std::move(*step)});
            }
        }
        std::ranges::sort(all, {}, &Next::cost);
        bool some = false;
        for (const Next& n : all) {
            if (found_ && (cost + n.cost >= least_ || looks_ < 0)) {
                some = true; // not looked into
                continue;
            }
            if (looks_ < -kPatience)
                return true;
            some = take(n.index, n.step, joined(basted, n.step.fresh), cost + n.cost) || some;
        }
        if (!some)
            dead_.insert(done_);
        return some;
    }

    /// So many looks more where nothing has been found yet.
    static constexpr int kPatience = 4'000;
};

} // namespace

std::optional<Rect> FirstPass::places() const {
    if (!fixed)
        return {};
    constexpr Length far = Length::inches(10'000);
    return Rect{anyX ? -far : fixed->x, anyY ? -far : fixed->y, anyX ? far : fixed->x,
                anyY ? far : fixed->y};
}

bool mayBeFirst(const Board& board, const FirstPass& first, const Window& window) {
    return first.held.empty() || areaOf(board, window).contains(first.held);
}

double costOfMoving(const Step& step, const std::optional<Point>& before) {
    double cost = before ? kSecondsAnInch * inches(*before, step.at) : 0;
    Point at = step.at;
    for (const Pull& pull : step.pulls) {
        cost += kPull + kSecondsAnInch * inches(at, pull.at);
        at = pull.at;
    }
    return cost;
}

double costOf(const Board& board, const std::vector<Step>& steps) {
    double cost = 0, squares = 0;
    Point at;
    for (const Step& s : steps) {
        cost += costOfStep(board, s, &s == steps.data() ? std::nullopt : std::optional{at});
        squares += double(s.points) * s.points;
        at = s.endsAt();
    }
    // As long as the passes are equal this is nothing.
    const double all = std::max<double>(1, double(board.points.size()));
    const double even = all * all / double(steps.size());
    return cost + 200 * (squares - even) / even;
}

std::optional<Sequence> bestOrder(const Board& board, const Lie& lie, const FirstPass& first,
                                  const std::vector<Window>& windows, int looks) {
    auto cells = cellsOf(board, windows);
    if (!cells || windows.empty() || windows.size() > kMostPasses)
        return {};
    OrderSearch search{board, lie, first, *cells, windows, looks};
    if (!search.run())
        return {};
    Sequence out;
    for (const std::size_t i : search.best)
        out.windows.push_back(windows[i]);
    out.steps = std::move(search.bestSteps);
    out.cells = *std::move(cells);
    out.cost = costOf(board, out.steps);
    return out;
}

std::optional<Sequence> inOrder(const Board& board, const Lie& lie, const FirstPass& first,
                                const std::vector<Window>& windows, const StepCost& cost,
                                std::span<const Point> places) {
    auto cells = cellsOf(board, windows);
    if (!cells || windows.empty() || !mayBeFirst(board, first, windows.front()))
        return {};
    Sequence out;
    CellSet basted(cells->rows(), 0);
    std::optional<Point> at;
    for (std::size_t k = 0; k < windows.size(); ++k) {
        auto within = k == 0 ? first.places() : std::nullopt;
        if (!places.empty()) {
            const Point& here = places[k];
            if (within && !within->contains(here))
                return {};
            within = Rect{here.x, here.y, here.x, here.y};
        }
        auto step = stepInto(board, lie, *cells, basted, windows[k], within, at, cost);
        if (!step)
            return {};
        basted = joined(std::move(basted), step->fresh);
        at = step->endsAt();
        out.steps.push_back(*std::move(step));
    }
    const std::uint64_t row =
        cells->columns() >= 64 ? ~std::uint64_t{0} : (std::uint64_t{1} << cells->columns()) - 1;
    if (std::ranges::any_of(basted, [&](std::uint64_t r) { return r != row; }))
        return {};
    out.windows = windows;
    out.cells = *std::move(cells);
    out.cost = costOf(board, out.steps);
    return out;
}

} // namespace bastewright
