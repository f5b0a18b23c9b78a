#include "planners/passes/passes.h"
#include "planners/passes/predict.h"
#include "planners/rolls/lifting.h"

#include <optional>
#include <tuple>

namespace bastewright {
namespace {

/// Half a block; where there are none, half of the commonest one, 12 in (from memory).
Size halfBlock(const Top& top) {
    if (!top.grid)
        return {Length::inches(6), Length::inches(6)};
    return {top.grid->block / 2, top.grid->blockHeight() / 2};
}

/// The shortest of the shapes with the fewest passes, with its order.
bool settle(const PassRequest& request, const SeamLines& seams, Size beside, PassChoice& choice) {
    const LayoutInput in{.top = request.layers.top,
                         .surface = choice.workable,
                         .anchor = choice.anchor,
                         .row = request.job.basting.spacing,
                         .start = choice.start,
                         .seamsX = seams.x,
                         .seamsY = seams.y,
                         .besideX = beside.width,
                         .besideY = beside.length};
    const std::vector<Layout> all = layouts(in);
    if (all.empty())
        return false;
    choice.leastPasses = leastPasses(in);
    bool found = false;
    for (const Layout& layout : all) {
        if (layout.areas.size() > all.front().areas.size())
            break;
        const WorkingOrder order = bestOrder(layout);
        if (!found || order.shifted < choice.order.shifted) {
            choice.layout = layout;
            choice.order = order;
            found = true;
        }
    }
    return found;
}

Length largestShift(const PassChoice& choice) {
    Length most;
    for (std::size_t i = 1; i < choice.order.areas.size(); ++i)
        most = std::max(most, way(shiftBetween(choice.layout.areas[choice.order.areas[i - 1]],
                                               choice.layout.areas[choice.order.areas[i]])));
    return most;
}

/// From the quilt's middle to that of the first field.
Vec offCentre(const PassRequest& request, const PassChoice& choice) {
    const Rect& table = choice.layout.areas[choice.layout.first].table;
    const Point field = choice.workable.field.middle();
    const Size& top = request.layers.top;
    // Halves of odd nanometres are no offset.
    const auto plain = [](Length off) {
        return abs(off) <= Length::nanometres(2) ? Length{} : off;
    };
    return {plain(table.x0 + field.x - top.width / 2), plain(table.y0 + field.y - top.length / 2)};
}

/// What is left of some rectangles without another.
std::vector<Rect> without(const std::vector<Rect>& from, const Rect& hole) {
    std::vector<Rect> out;
    const auto keep = [&](const Rect& r) {
        if (!r.empty())
            out.push_back(r);
    };
    for (const Rect& r : from) {
        if (!r.overlaps(hole)) {
            out.push_back(r);
            continue;
        }
        const Length y0 = std::max(r.y0, hole.y0), y1 = std::min(r.y1, hole.y1);
        keep({r.x0, r.y0, r.x1, y0});
        keep({r.x0, y1, r.x1, r.y1});
        keep({r.x0, y0, hole.x0, y1});
        keep({hole.x1, y0, r.x1, y1});
    }
    return out;
}

/// What is worked in each pass, in working order: its area and the rows beside it that earlier ones
/// have left, less the rows it leaves to later ones.
std::vector<std::vector<Rect>> worked(const PassChoice& choice, Length row) {
    const auto& areas = choice.layout.areas;
    const auto& order = choice.order.areas;
    std::vector<std::vector<Rect>> out;
    for (std::size_t i = 0; i < order.size(); ++i) {
        const Rect& fresh = areas[order[i]].fresh;
        std::vector<Rect> pieces;
        for (std::size_t k = 0; k <= i; ++k)
            if (const Rect part = intersection(fresh.grown(row), areas[order[k]].fresh);
                !part.empty())
                pieces.push_back(part);
        // Places off a later area's corner may be farther from it than a row: they stay.
        for (std::size_t k = i + 1; k < order.size(); ++k) {
            const Rect& later = areas[order[k]].fresh;
            pieces = without(pieces, {later.x0 - row, later.y0, later.x1 + row, later.y1});
            pieces = without(pieces, {later.x0, later.y0 - row, later.x1, later.y1 + row});
        }
        out.push_back(std::move(pieces));
    }
    return out;
}

/// The farthest that any place of a stretch lies from the nearer open end of a side; nothing where
/// both are closed.
std::optional<Length> deepest(Interval stretch, Interval side, bool loOpen, bool hiOpen) {
    const Length fromLo = stretch.hi - side.lo, fromHi = side.hi - stretch.lo;
    if (loOpen && hiOpen)
        return std::min({fromLo, fromHi, side.size() / 2});
    if (loOpen)
        return fromLo;
    if (hiOpen)
        return fromHi;
    return {};
}

/// From an open side to the deepest place that is worked in any pass.
Length reachNeeded(const PassRequest& request, const PassChoice& choice) {
    Length most;
    const auto open = [&](Side s) {
        return std::ranges::find(choice.workable.closed, s) == choice.workable.closed.end();
    };
    const auto pieces = worked(choice, request.job.basting.spacing);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const Rect& table = choice.layout.areas[choice.order.areas[i]].table;
        for (const Rect& r : pieces[i]) {
            const auto x = deepest(r.x(), table.x(), open(Side::left), open(Side::right));
            const auto y = deepest(r.y(), table.y(), open(Side::head), open(Side::foot));
            if (x || y)
                most = std::max(most, x && y ? std::min(*x, *y) : x.value_or(y.value_or(Length{})));
        }
    }
    return most;
}

/// Why nothing fits on a surface.
Sentence unworkable(const PassChoice& choice, Length reach, Unit unit) {
    const Rect& field = choice.workable.field;
    if (field.empty())
        return core::says("no place on it is within a reach of %1", core::length(reach, unit));
    const Sentence size = core::size(field.width(), field.length(), unit);
    return choice.workable.whole
               ? core::says("only %1 of it is inside the rim, too little to shift the quilt along "
                            "in %2 passes",
                            size, kMostPasses)
               : core::says("only %1 of it is within a reach of %2, too little to shift the quilt "
                            "along in %3 passes",
                            size, core::length(reach, unit), kMostPasses);
}

/// "3 in to the right and 2 in towards the foot": where the quilt's middle lies beside another.
Sentence beside(Vec off, Unit unit) {
    const Sentence dx = core::length(abs(off.dx), unit), dy = core::length(abs(off.dy), unit);
    const Sentence across = off.dx < Length{} ? core::says("%1 to the right", dx)
                                              : core::says("%1 to the left", dx);
    const Sentence along = off.dy < Length{} ? core::says("%1 towards the foot", dy)
                                             : core::says("%1 towards the head", dy);
    if (off.dx != Length{} && off.dy != Length{})
        return core::says("%1 and %2", across, along);
    return off.dx == Length{} ? along : across;
}

/// What a person should know of a way beside its figures.
Sentence remarks(const PassRequest& request, const PassChoice& choice, Length reach) {
    const Unit unit = request.job.unit;
    const Vec off = choice.summary.offCentre;
    const bool centred = choice.start != Basting::Start::centred || off == Vec{};
    if (choice.workable.whole)
        return centred ? Sentence{}
                       : core::says("the middle of the quilt lies beside the middle of the table: "
                                    "%1",
                                    beside(off, unit));
    const Sentence part = core::says("only the part within a reach of %1 is used",
                                     core::length(reach, unit));
    return centred ? part
                   : core::says("%1; the middle of the quilt lies beside the middle of the part "
                                "that is used: %2",
                                part, beside(off, unit));
}

void sumUp(const PassRequest& request, Length reach, PassChoice& choice) {
    Alternative& a = choice.summary;
    a.surface = choice.surface.name;
    a.start = choice.start;
    a.quiltLengthAlongLength = choice.quiltLengthAlongLength;
    a.surfaceLength = choice.surface.length;
    a.surfaceWidth = choice.surface.width;
    if (!a.workable) {
        a.why = unworkable(choice, reach, request.job.unit);
        return;
    }
    a.passes = static_cast<int>(choice.layout.areas.size());
    a.largestShift = largestShift(choice);
    a.predicted = predictedTime(request, choice);
    if (a.passes > 1) {
        a.liftPeople = liftersFor(request);
        a.liftKilograms = quiltKilograms(request.job, request.layers.backing);
        a.lifts = a.liftPeople > 1 ? a.passes - 1 : 0;
        a.shifted = choice.order.shifted;
        a.outwardCost = a.shifted - shortestWay(choice.layout);
    }
    if (!choice.surface.floor) {
        a.offCentre = offCentre(request, choice);
        a.reach = reachNeeded(request, choice);
    }
    a.why = remarks(request, choice, reach);
}

/// The best way of a start on a surface; not workable where there is none.
PassChoice wayOf(const PassRequest& request, const SeamLines& seams, Size beside,
                 PassChoice choice) {
    choice.summary.workable = settle(request, seams, beside, choice);
    return choice;
}

/// A centred start that lies beside the middle by up to half a block, across, down or both; nothing
/// where that saves no pass.
std::optional<PassChoice> besideCentre(const PassRequest& request, const SeamLines& seams,
                                       const PassChoice& bare, std::size_t passes) {
    const Size half = halfBlock(request.job.top);
    std::optional<PassChoice> best;
    for (const Size& beside : {Size{half.width, {}}, Size{{}, half.length}, half}) {
        PassChoice c = wayOf(request, seams, beside, bare);
        if (c.summary.workable && c.layout.areas.size() < passes) {
            passes = c.layout.areas.size();
            best = std::move(c);
        }
    }
    return best;
}

} // namespace

bool startsAsAskedFor(const Job& job, const Alternative& way) {
    using enum Basting::Start;
    switch (job.basting.start) {
    case best:
        return true;
    case centred:
        return way.start == centred && way.offCentre == Vec{};
    case besideMiddle:
        return way.start == besideMiddle || (way.start == centred && way.offCentre != Vec{});
    case oneEnd:
        return way.start == oneEnd;
    }
    return true;
}

bool liesAsAskedFor(const Job& job, const Alternative& way) {
    return job.basting.along == Basting::Along::either ||
           (job.basting.along == Basting::Along::tableLength) == way.quiltLengthAlongLength;
}

bool standsAsAskedFor(const Room& room, const Alternative& way) {
    return !room.together || *room.together == PushedTogether{way.surfaceLength, way.surfaceWidth};
}

bool isAskedFor(const Job& job, const Room& room, const Alternative& way) {
    // On the floor there is nothing to push together and no side to lie along.
    if (room.tables.empty())
        return startsAsAskedFor(job, way);
    return startsAsAskedFor(job, way) && liesAsAskedFor(job, way) && standsAsAskedFor(room, way);
}

std::vector<PassChoice> passChoices(const PassRequest& request,
                                    std::span<const Arrangement> surfaces) {
    const SeamLines seams = seamLines(request.job.top);
    const Length reach = commonReach(request.setting.helpers);
    std::vector<PassChoice> out;
    for (const Arrangement& surface : surfaces)
        for (const bool along : {false, true}) {
            // On the floor the quilt is not turned to suit anything.
            if (surface.floor && along)
                continue;
            for (const Basting::Start start : {Basting::Start::centred, Basting::Start::besideMiddle}) {
                PassChoice bare{
                    .surface = surface, .quiltLengthAlongLength = along, .start = start};
                bare.workable = workable(surface, request.setting.room, along, reach);
                if (surface.floor)
                    bare.workable.field = {
                        {}, {}, request.layers.top.width, request.layers.top.length};
                bare.anchor = anchorStrip(request.job.basting);
                out.push_back(wayOf(request, seams, {}, bare));
                const std::size_t passes = out.back().layout.areas.size();
                if (start == Basting::Start::centred && passes > 1)
                    if (auto c = besideCentre(request, seams, bare, passes))
                        out.push_back(*std::move(c));
            }
        }
    for (PassChoice& c : out) {
        sumUp(request, reach, c);
        c.asked = isAskedFor(request.job, request.setting.room, c.summary);
    }
    const auto rank = [](const PassChoice& c) {
        return std::tuple{!c.summary.workable, !c.asked,
                          c.summary.predicted, c.surface.tables.size()};
    };
    std::ranges::stable_sort(out, {}, rank);
    return out;
}

} // namespace bastewright
