#include "planners/points/remembered_tiles.h"

#include "planners/points/line_clip.h"
#include "planners/points/memory_store.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace bastewright::points {
namespace {

PatternMemory::Store::TileKey keyOf(const Rules& rules, const BlockFrame& frame,
                                    const TileRequest& request) {
    const auto rounded = [](double v) { return std::round(v * 1e7) / 1e7; };
    const Spot corner{frame.first.x + request.column * frame.pitchX,
                      frame.first.y + request.row * frame.pitchY};
    const Field tile{corner.x, corner.y, corner.x + request.across * frame.pitchX,
                     corner.y + request.down * frame.pitchY};
    const PinRule& pin = rules.pin;
    PatternMemory::Store::TileKey key{tile.width(),
                                      tile.length(),
                                      frame.blockX,
                                      frame.blockY,
                                      static_cast<double>(request.across),
                                      static_cast<double>(request.down),
                                      (request.quick ? 1.0 : 0.0) + (request.pair ? 2.0 : 0.0),
                                      static_cast<double>(request.steps),
                                      static_cast<double>(request.most),
                                      static_cast<double>(request.below),
                                      rules.spacing,
                                      rules.radius,
                                      rules.gap,
                                      rules.fine,
                                      rules.step,
                                      pin.halfLength(),
                                      pin.clear(),
                                      pin.edge(),
                                      std::remainder(corner.x - rules.anchor.x, rules.step),
                                      std::remainder(corner.y - rules.anchor.y, rules.step)};
    const double far = pin.edge() + pin.halfLength() + 2 * rules.radius;
    for (const double d : {tile.x0 - rules.top().x0, rules.top().x1 - tile.x1,
                           tile.y0 - rules.top().y0, rules.top().y1 - tile.y1})
        key.push_back(std::min(d, far));
    for (double& v : key)
        v = rounded(v);
    std::vector<std::array<double, 4>> seams;
    const Field near = tile.grown(pin.clear() + pin.halfLength() + rules.radius);
    for (const Line& l : pin.seams())
        if (const auto part = clipped(l, near)) {
            const Spot a = part->from - corner, b = part->to - corner;
            seams.push_back({rounded(a.x), rounded(a.y), rounded(b.x), rounded(b.y)});
        }
    std::sort(seams.begin(), seams.end());
    for (const auto& s : seams)
        key.insert(key.end(), s.begin(), s.end());
    return key;
}

} // namespace

std::vector<TilePattern> rememberedTiles(PatternMemory* memory, const Rules& rules,
                                         const BlockFrame& frame, const TileRequest& request,
                                         std::stop_token stop) {
    if (memory == nullptr)
        return tilePatterns(rules, frame, request, stop);
    const auto key = keyOf(rules, frame, request);
    if (auto known = memory->store().tiles.find(key))
        return *known;
    auto found = tilePatterns(rules, frame, request, stop);
    if (!stop.stop_requested())
        memory->store().tiles.keep(key, found);
    return found;
}

} // namespace bastewright::points
