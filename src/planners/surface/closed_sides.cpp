#include "planners/surface/closed_sides.h"

#include <algorithm>

namespace bastewright {
namespace {

Side turned(Side drawn) {
    switch (drawn) {
    case Side::left:
        return Side::head;
    case Side::foot:
        return Side::left;
    case Side::right:
        return Side::foot;
    case Side::head:
        return Side::right;
    }
    return drawn;
}

} // namespace

std::vector<Side> closedSides(std::span<const Side> walls, bool quiltLengthAlongLength) {
    std::vector<Side> out;
    for (const Side s : kSides)
        if (std::ranges::any_of(
                walls, [&](Side w) { return (quiltLengthAlongLength ? turned(w) : w) == s; }))
            out.push_back(s);
    return out;
}

std::vector<Side> openSides(const std::vector<Side>& closed) {
    std::vector<Side> out;
    for (const Side s : kSides)
        if (std::ranges::find(closed, s) == closed.end())
            out.push_back(s);
    return out;
}

} // namespace bastewright
