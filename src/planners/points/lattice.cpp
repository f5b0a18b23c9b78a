#include "planners/points/lattice.h"

#include "planners/points/line_clip.h"

#include <array>
#include <cmath>

namespace bastewright::points {
namespace {

constexpr double kFlat = 1e-9; // area of steps that span no plane

/// Corners of the cell round a point of a reduced lattice: the middles of the circles round the six
/// triangles that meet there.
std::array<Spot, 6> cellCorners(Spot a, Spot b) {
    const double area = cross(a, b), aa = dot(a, a), bb = dot(b, b);
    const Spot c{(b.y * aa - a.y * bb) / (2 * area), (a.x * bb - b.x * aa) / (2 * area)};
    const Spot d = c - b, e = c - a;
    return {c, d, e, -1 * c, -1 * d, -1 * e};
}

} // namespace

Lattice Lattice::reduced() const {
    Lattice l = *this;
    for (int i = 0; i < 50; ++i) { // far more than steps of any size here need
        if (dot(l.aside, l.aside) < dot(l.along, l.along))
            std::swap(l.along, l.aside);
        const double k = std::round(dot(l.along, l.aside) / dot(l.along, l.along));
        if (k == 0)
            break;
        l.aside = l.aside - k * l.along;
    }
    if (dot(l.along, l.aside) < 0)
        l.aside = -1 * l.aside;
    return l;
}

double Lattice::reach() const {
    const Lattice l = reduced();
    const double area = std::abs(cross(l.along, l.aside));
    if (!(area >= kFlat)) // nor where a step became nothing
        return 1e9;
    const Spot third = l.aside - l.along;
    return std::sqrt(dot(l.along, l.along) * dot(l.aside, l.aside) * dot(third, third)) /
           (2 * area);
}

Spots pointsFor(const Lattice& lattice, const Field& field) {
    Spots out;
    const Lattice l = lattice.reduced();
    const Spot a = l.along, b = l.aside;
    const double area = cross(a, b), aa = dot(a, a);
    if (!(std::abs(area) >= kFlat))
        return out;
    const auto corners = cellCorners(a, b);
    const Field wide = field.grown(std::sqrt(dot(corners[0], corners[0])));
    const Spot middle{(wide.x0 + wide.x1) / 2, (wide.y0 + wide.y1) / 2};
    const double far = (wide.width() + wide.length()) / std::sqrt(aa) + 1;
    double lo = 1e18, hi = -1e18;
    for (const double x : {wide.x0, wide.x1})
        for (const double y : {wide.y0, wide.y1}) {
            const double j = cross(a, Spot{x, y} - l.first) / area;
            lo = std::min(lo, j);
            hi = std::max(hi, j);
        }
    for (double j = std::ceil(lo); j <= hi; ++j) {
        const Spot row = l.first + j * b;
        const Spot start = row + std::round(dot(middle - row, a) / aa) * a;
        const auto part = clipped({start - far * a, start + far * a}, wide);
        if (!part)
            continue;
        const double last = std::floor(dot(part->to - start, a) / aa + 1e-9);
        for (double i = std::ceil(dot(part->from - start, a) / aa - 1e-9); i <= last; ++i) {
            const Spot p = start + i * a;
            if (field.contains(p) || std::any_of(corners.begin(), corners.end(),
                                                 [&](Spot c) { return field.contains(p + c); }))
                out.push_back(p);
        }
    }
    return out;
}

} // namespace bastewright::points
