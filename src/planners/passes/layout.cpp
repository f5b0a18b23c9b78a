#include "planners/passes/layout.h"

#include "planners/passes/pinwheel.h"
#include "planners/passes/placing.h"
#include "planners/passes/strips.h"

#include <algorithm>

namespace bastewright {
namespace {

AxisCuts cutsFor(const LayoutInput& in, const AxisRoom& room, Length beside,
                 const std::vector<Length>& seams) {
    if (in.start == Basting::Start::centred && beside > Length{})
        if (auto cuts = besideCentreCuts(room, beside, seams))
            return *std::move(cuts);
    return in.start == Basting::Start::centred ? centredCuts(room, seams) : fewestCuts(room, seams);
}

/// Rows of areas: the first row cut by `middle`, the others by `others`.
Layout rows(const LayoutInput& in, Shape shape, const AxisCuts& down, const AxisCuts& middle,
            const AxisCuts& others) {
    Layout out;
    out.shape = shape;
    std::vector<std::vector<std::size_t>> index(down.runs());
    const auto cutsOf = [&](std::size_t row) -> const AxisCuts& {
        return row == down.first ? middle : others;
    };
    for (std::size_t row = 0; row < down.runs(); ++row) {
        const AxisCuts& cuts = cutsOf(row);
        for (std::size_t i = 0; i < cuts.runs(); ++i) {
            index[row].push_back(out.areas.size());
            if (row == down.first && i == cuts.first)
                out.first = out.areas.size();
            out.areas.push_back(
                placed(in, {cuts.run(i).lo, down.run(row).lo, cuts.run(i).hi, down.run(row).hi},
                       {fieldStart(cuts, i, in.surface.field.width()),
                        fieldStart(down, row, in.surface.field.length())}));
        }
    }
    for (std::size_t row = 0; row < down.runs(); ++row) {
        const AxisCuts& cuts = cutsOf(row);
        for (std::size_t i = 0; i < cuts.runs(); ++i) {
            FreshArea& area = out.areas[index[row][i]];
            if (i < cuts.first)
                area.needs.push_back(index[row][i + 1]);
            if (i > cuts.first)
                area.needs.push_back(index[row][i - 1]);
            if (row == down.first)
                continue;
            const std::size_t inner = row < down.first ? row + 1 : row - 1;
            for (const std::size_t k : index[inner])
                if (out.areas[k].fresh.x().overlaps(area.fresh.x()))
                    area.needs.push_back(k);
        }
    }
    return out;
}

} // namespace

std::vector<Layout> layouts(const LayoutInput& in) {
    const AxisRoom rx = roomX(in), ry = roomY(in);
    if (in.surface.field.empty() || (rx.field <= rx.anchor && rx.quilt > rx.field) ||
        (ry.field <= ry.anchor && ry.quilt > ry.field))
        return {};
    if (freeCount(rx) * freeCount(ry) > std::int64_t{kMostPasses})
        return {};
    std::vector<Layout> out;
    const auto count = [](const Layout& l) { return l.areas.size(); };
    const AxisCuts x = cutsFor(in, rx, in.besideX, in.seamsX);
    const AxisCuts y = cutsFor(in, ry, in.besideY, in.seamsY);
    out.push_back(rows(in, Shape::grid, y, x, x));
    const AxisCuts freeX = freeCuts(rx, in.seamsX), freeY = freeCuts(ry, in.seamsY);
    if (freeX.runs() < x.runs() && y.runs() > 1)
        out.push_back(rows(in, Shape::brickRows, y, x, freeX));
    if (freeY.runs() < y.runs() && x.runs() > 1) {
        const LayoutInput turned = exchanged(in);
        out.push_back(exchanged(rows(turned, Shape::brickRows, x, y, freeY), Shape::brickColumns));
    }
    const auto least = [&] { return std::ranges::min(out, {}, count).areas.size(); };
    if (in.besideX == Length{} && in.besideY == Length{}) {
        // The two turn either way; the second need not be better, as its shifts may be shorter.
        if (auto wheel = pinwheel(in, least() + 1))
            out.push_back(*std::move(wheel));
        if (auto wheel = pinwheel(exchanged(in), least() + 1))
            out.push_back(exchanged(*std::move(wheel), Shape::pinwheel));
        if (auto cut = strips(in, least()))
            out.push_back(*std::move(cut));
    }
    std::erase_if(out, [](const Layout& l) { return l.areas.size() > kMostPasses; });
    std::ranges::stable_sort(out, {}, count);
    return out;
}

int leastPasses(const LayoutInput& in) {
    const AxisRoom rx = roomX(in), ry = roomY(in);
    if (rx.quilt <= rx.field)
        return static_cast<int>(freeCount(ry));
    if (ry.quilt <= ry.field)
        return static_cast<int>(freeCount(rx));
    return static_cast<int>(ceilDiv(rx.quilt, rx.field) * ceilDiv(ry.quilt, ry.field));
}

} // namespace bastewright
