#include "planners/passes/nearby.h"

#include <algorithm>
#include <array>
#include <set>

namespace bastewright {
namespace {

/// A pull weighs more than any inches.
constexpr double kPullWeighs = 1e4;
/// Where the top lies whole: places looked at from both its ends on, the same ones on a larger
/// table, and how far beside those of the passes.
constexpr Length kLadder = Length::inches(6), kFarthest = Length::inches(60);
constexpr std::array kBeside{Length::inches(1), Length::inches(3), Length::inches(6)};

class Nearby {
public:
    Nearby(const LayoutInput& in, const Sequence& sequence, const StepCost& cost)
        : in_{in}
        , from_{sequence}
        , cost_{cost}
        , first_{keptFirst(in)} {}

    std::vector<Sequence> all() && {
        for (const int x : {-1, 0, 1})
            for (const int y : {-1, 0, 1})
                if (x != 0 || y != 0)
                    add(inOrder(in_.board, in_.lie, first_, from_.windows, towards(x, y, {})));
        aLittleOn();
        elsewhere();
        if (in_.start != Basting::Start::oneEnd) // rows of passes one after another
            otherOrders();
        for (std::size_t k = 0; k < from_.steps.size(); ++k)
            for (const auto& [x, y] : {std::pair{-1, 0}, {1, 0}, {0, -1}, {0, 1}})
                add(inOrder(in_.board, in_.lie, first_, from_.windows, towards(x, y, k)));
        otherBoundaries();
        return std::move(out_);
    }

private:
    const LayoutInput& in_;
    const Sequence& from_;
    const StepCost& cost_;
    FirstPass first_;
    std::vector<Sequence> out_;

    void add(std::optional<Sequence> s) {
        if (s && s->windows.size() <= from_.windows.size())
            out_.push_back(*std::move(s));
    }

    /// The table at the low (−1) or high (1) end of its places along an axis, in one pass or in
    /// all, and where it was along the other and in the others.
    StepCost towards(int x, int y, std::optional<std::size_t> only) const {
        return [this, x, y, only](const Cells&, const Step& step, const std::optional<Point>&) {
            const auto was = std::ranges::find(from_.steps, step.fresh, &Step::fresh);
            if (was == from_.steps.end())
                return 0.0;
            const bool here = !only || static_cast<std::size_t>(was - from_.steps.begin()) == *only;
            const auto along = [here](int way, Length at, Length before) {
                return here && way != 0 ? -way * at.in() : abs(at - before).in();
            };
            return kPullWeighs * double(step.pulls.size()) + along(x, step.at.x, was->at.x) +
                   along(y, step.at.y, was->at.y);
        };
    }

    /// The table a quarter or half of a spacing farther on: what is out of somebody's easy reach
    /// may fall between rows there.
    void aLittleOn() {
        for (const int quarters : {-2, -1, 1, 2})
            for (const bool across : {true, false}) {
                std::vector<Point> places;
                for (const Step& step : from_.steps) {
                    places.push_back(step.at);
                    (across ? places.back().x : places.back().y) += in_.row * quarters / 2;
                }
                add(inOrder(in_.board, in_.lie, first_, from_.windows, {}, places));
            }
    }

    /// Along an axis on which the top lies whole: anywhere, and a little beside where it was.
    void elsewhere() {
        for (const bool across : {true, false}) {
            const AxisLines& lines = across ? in_.board.x : in_.board.y;
            const Interval all = placesFor(lines, across ? in_.lie.x : in_.lie.y, 0, lines.last());
            if (all.lo >= all.hi)
                continue;
            std::set<Length> at;
            for (Length off; off <= std::min(all.size(), kFarthest); off += kLadder) {
                at.insert(all.lo + off);
                at.insert(all.hi - off);
            }
            for (const Length by : kBeside)
                for (const Step& step : from_.steps)
                    for (const bool back : {true, false})
                        at.insert((across ? step.at.x : step.at.y) + (back ? -by : by));
            for (const Length to : at) {
                std::vector<Point> places;
                for (const Step& step : from_.steps) {
                    places.push_back(step.at);
                    (across ? places.back().x : places.back().y) = to;
                }
                add(inOrder(in_.board, in_.lie, first_, from_.windows, {}, places));
            }
        }
    }

    void addOrder(const std::vector<Window>& windows) {
        add(inOrder(in_.board, in_.lie, first_, windows, cost_));
        add(inOrder(in_.board, in_.lie, first_, windows));
    }

    void otherOrders() {
        auto windows = from_.windows;
        std::reverse(windows.begin() + 1, windows.end());
        addOrder(windows);
        std::ranges::reverse(windows = from_.windows);
        addOrder(windows);
        for (std::size_t k = 0; k + 1 < from_.windows.size(); ++k) {
            windows = from_.windows;
            std::swap(windows[k], windows[k + 1]);
            addOrder(windows);
        }
    }

    void otherBoundaries() {
        for (const auto end : {&Window::x0, &Window::x1, &Window::y0, &Window::y1}) {
            const bool across = end == &Window::x0 || end == &Window::x1;
            const auto last =
                static_cast<std::ptrdiff_t>(across ? in_.board.x.last() : in_.board.y.last());
            std::set<std::size_t> cuts;
            for (const Window& w : from_.windows)
                cuts.insert(w.*end);
            for (const std::size_t cut : cuts)
                for (const int by : {-2, -1, 1, 2}) {
                    const auto to = static_cast<std::ptrdiff_t>(cut) + by;
                    if (cut == 0 || static_cast<std::ptrdiff_t>(cut) == last || to <= 0 ||
                        to >= last)
                        continue;
                    auto windows = from_.windows;
                    for (Window& w : windows)
                        if (w.*end == cut)
                            w.*end = static_cast<std::size_t>(to);
                    if (std::ranges::all_of(
                            windows, [](const Window& w) { return w.x0 < w.x1 && w.y0 < w.y1; }))
                        add(inOrder(in_.board, in_.lie, first_, windows, cost_));
                }
        }
    }
};

} // namespace

std::vector<Sequence> nearby(const LayoutInput& in, const Sequence& sequence,
                             const StepCost& cost) {
    return Nearby{in, sequence, cost}.all();
}

} // namespace bastewright
