#include "planners/passes/rest.h"

#include "planners/passes/cover.h"
#include "planners/passes/predict.h"
#include "planners/surface/closed_sides.h"
#include "planners/surface/reachable.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace bastewright {
namespace {

/// Ways carried on after each pass, and the most new passes.
constexpr std::size_t kCarried = 24, kMostMore = 12;
/// Surfaces that are looked at, the largest first.
constexpr std::size_t kSurfaces = 10;

/// Makes a place a cut: in place of the one between the same two lines, or beside it where that is
/// needed for another edge.
void cutAt(AxisLines& lines, Length at, std::set<Length>& kept) {
    if (!kept.insert(at).second)
        return;
    const auto line = std::ranges::lower_bound(lines.at, at);
    const auto before = static_cast<std::size_t>(line - lines.at.begin());
    const auto same =
        std::ranges::find_if(lines.cuts, [&](const Cut& c) { return c.before == before; });
    if (same != lines.cuts.end() && !kept.contains(same->at) && same != lines.cuts.begin() &&
        same != std::prev(lines.cuts.end()))
        same->at = at;
    else
        lines.cuts.insert(std::ranges::upper_bound(lines.cuts, at, {}, &Cut::at), {at, before});
}

std::size_t cutOf(const AxisLines& lines, Length at) {
    return static_cast<std::size_t>(std::ranges::lower_bound(lines.cuts, at, {}, &Cut::at) -
                                    lines.cuts.begin());
}

/// The edges of what is basted are cuts, the top's own too.
void cutAtEdges(AxisLines& lines, const std::vector<Interval>& basted) {
    std::set<Length> kept{Length{}, lines.quilt};
    for (const Interval& i : basted) {
        cutAt(lines, i.lo, kept);
        cutAt(lines, i.hi, kept);
    }
}

std::vector<Rect> areasOf(std::span<const Pass> done) {
    std::vector<Rect> out;
    for (const Pass& p : done)
        out.insert(out.end(), p.fresh.parts.begin(), p.fresh.parts.end());
    return out;
}

/// Stretches of one axis worth a window: chains from both ends, outward from what is basted, and
/// that itself.
std::set<std::pair<std::size_t, std::size_t>>
stretches(const AxisLines& lines, const AxisTable& table, const std::vector<Interval>& basted) {
    std::set<std::pair<std::size_t, std::size_t>> out;
    const auto chain = [&](const AxisWindow& from) {
        for (const AxisWindow& w : outwardFrom(lines, table, table, from))
            if (w.lo < w.hi)
                out.emplace(w.lo, w.hi);
    };
    chain(lowEnd(lines, table));
    chain(highEnd(lines, table));
    if (const auto w = windowAt(lines, table, (lines.quilt - table.size) / 2))
        chain(*w);
    for (const Interval& i : basted)
        chain({cutOf(lines, i.lo), cutOf(lines, i.hi), i.lo});
    return out;
}

class Rest {
public:
    Rest(const Board& board, const Lie& lie, std::span<const Pass> done)
        : board_{board}
        , lie_{lie}
        , from_{done.back().table.x0, done.back().table.y0} {
        std::vector<Interval> x, y;
        std::vector<Window> basted;
        for (const Rect& r : areasOf(done)) {
            x.push_back(r.x());
            y.push_back(r.y());
            basted.push_back({cutOf(board.x, r.x0), cutOf(board.x, r.x1), cutOf(board.y, r.y0),
                              cutOf(board.y, r.y1)});
        }
        const Rect all = Region{areasOf(done)}.bounds();
        x.push_back(all.x());
        y.push_back(all.y());
        std::set<Window> windows;
        for (const auto& [x0, x1] : stretches(board.x, lie.x, x))
            for (const auto& [y0, y1] : stretches(board.y, lie.y, y))
                windows.insert({x0, x1, y0, y1});
        const Point middle{board.x.quilt / 2, board.y.quilt / 2};
        for (const Candidate& c :
             candidates(board, lie, {{middle.x, middle.y, middle.x, middle.y}, {}}))
            windows.insert(c.window);
        windows_.assign(windows.begin(), windows.end());
        std::vector<Window> cut = windows_;
        cut.insert(cut.end(), basted.begin(), basted.end());
        cells_ = cellsOf(board, cut);
        if (!cells_)
            return;
        basted_.assign(cells_->rows(), 0);
        for (const Window& w : basted)
            basted_ = joined(std::move(basted_), cellsIn(*cells_, w));
        whole_ = cellsIn(*cells_, {0, board.x.last(), 0, board.y.last()});
    }

    /// Steps and cells of the cheapest of the fewest passes, at most so many; nothing where there
    /// are none.
    std::optional<Sequence> fewest(std::size_t most) const {
        if (!cells_)
            return {};
        std::vector<State> carried{{basted_, from_, {}, 0}};
        for (std::size_t n = 0; n < most && !carried.empty(); ++n) {
            std::map<CellSet, State> next;
            for (const State& s : carried)
                goOn(s, next);
            if (const auto all = next.find(whole_); all != next.end()) {
                Sequence out;
                out.steps = std::move(all->second.steps);
                out.cells = *cells_;
                return out;
            }
            carried.clear();
            for (auto& [set, state] : next)
                carried.push_back(std::move(state));
            std::ranges::stable_sort(carried, {}, [&](const State& s) {
                return std::pair{-pointsIn(*cells_, s.basted), s.cost};
            });
            if (carried.size() > kCarried)
                carried.resize(kCarried);
        }
        return {};
    }

private:
    struct State {
        CellSet basted;
        Point at;
        std::vector<Step> steps;
        double cost;
    };

    void goOn(const State& s, std::map<CellSet, State>& next) const {
        std::set<CellSet> tried;
        for (const Window& w : windows_) {
            CellSet after = joined(s.basted, cellsIn(*cells_, w));
            if (after == s.basted || !tried.insert(after).second)
                continue;
            const auto step = stepInto(board_, lie_, *cells_, s.basted, w, {}, s.at);
            if (!step || step->points == 0)
                continue;
            State on = s;
            on.basted = std::move(after);
            on.at = step->endsAt();
            on.steps.push_back(*step);
            on.cost = costOf(board_, on.steps);
            const auto [known, isNew] = next.try_emplace(on.basted, on);
            if (!isNew && on.cost < known->second.cost)
                known->second = std::move(on);
        }
    }

    const Board& board_;
    const Lie& lie_;
    Point from_;
    std::vector<Window> windows_;
    std::optional<Cells> cells_;
    CellSet basted_, whole_;
};

} // namespace

std::optional<PassChoice> choiceForRest(const PassRequest& request,
                                        std::span<const Arrangement> surfaces,
                                        std::span<const Pass> done, Basting::Start start) {
    if (done.empty())
        return {};
    const Board given = boardOf(request);
    AxisLines across = given.x, down = given.y;
    std::vector<Interval> x, y;
    for (const Rect& r : areasOf(done)) {
        x.push_back(r.x());
        y.push_back(r.y());
    }
    cutAtEdges(across, x);
    cutAtEdges(down, y);
    const auto board =
        std::make_shared<const Board>(boardWith(std::move(across), std::move(down), given.points));

    std::vector<const Arrangement*> largest;
    for (const Arrangement& a : surfaces)
        largest.push_back(&a);
    std::ranges::stable_sort(largest, std::greater<>{}, [](const Arrangement* a) {
        return areaSquareInches({{}, {}, a->length, a->width});
    });
    if (largest.size() > kSurfaces)
        largest.resize(kSurfaces);

    std::optional<PassChoice> best;
    std::size_t most = kMostMore;
    const auto rank = [](const PassChoice& c) {
        return std::tuple{c.sequence.steps.size(), c.summary.predicted, c.surface.tables.size()};
    };
    for (const Arrangement* surface : largest)
        for (const bool along : {false, true}) {
            if (along && surface->floor)
                continue;
            if (request.stop.stop_requested() && best)
                return best;
            PassChoice choice{.surface = *surface,
                              .quiltLengthAlongLength = along,
                              .start = start,
                              .board = board,
                              .lie = lieOf(request, *surface, along)};
            auto sequence = Rest{*board, choice.lie, done}.fewest(most);
            if (!sequence)
                continue;
            choice.sequence = std::move(*sequence);
            most = choice.sequence.steps.size();
            Alternative& a = choice.summary;
            a.surface = surface->name;
            a.start = start;
            a.quiltLengthAlongLength = along;
            a.surfaceLength = surface->length;
            a.surfaceWidth = surface->width;
            a.predicted = predictedTime(request, choice, detailedPasses(request, choice));
            a.chosen = true;
            if (!best || rank(choice) < rank(*best))
                best = std::move(choice);
        }
    return best;
}

Length deepestPlace(const QuiltPlan& quilt, std::span<const PlacedPoint> points) {
    Length out;
    if (quilt.surface.floor)
        return out;
    const std::vector<Side> open = openSides(quilt.surface.closed);
    for (const Pass& pass : quilt.passes)
        for (const PlacedPoint& p : points)
            if (pass.fresh.contains(p.at))
                out = std::max(out, nearestDepth(p.at, pass.table, open).value_or(Length{}));
    return out;
}

} // namespace bastewright
