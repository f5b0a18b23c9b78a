#include "planners/points/pin_rule.h"

#include "ways/way.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace bastewright::points {
namespace {

constexpr double kSlack = 1e-7; // a few nanometres, for rounding only

struct Direction {
    int angle;
    Spot unit;
};

// Written out, so that no library's sine decides on which side of a rule a pin
// falls.
constexpr std::array<Direction, 8> kDirections{{{0, {1, 0}},
                                                {90, {0, 1}},
                                                {45, {kRoot2, kRoot2}},
                                                {135, {-kRoot2, kRoot2}},
                                                {30, {kRoot3, kHalf}},
                                                {60, {kHalf, kRoot3}},
                                                {120, {-kHalf, kRoot3}},
                                                {150, {-kRoot3, kHalf}}}};

/// A squared distance, `squared / per`; compared without dividing, as a search asks for millions.
struct Away {
    double squared, per;
    bool isBelow(double limit) const { return squared < limit * per; }
};

Away awayFrom(const Line& l, Spot p) {
    const Spot d = l.to - l.from, v = p - l.from;
    const double along = dot(v, d), length2 = dot(d, d);
    if (along <= 0)
        return {dot(v, v), 1};
    if (along >= length2)
        return {distanceSquared(p, l.to), 1};
    return {squared(cross(d, v)), length2};
}

double distance(Spot p, const Line& l) {
    const Away away = awayFrom(l, p);
    return std::sqrt(away.squared / away.per);
}

/// Of a place from a segment by its middle, unit and half length.
double distanceSquared(Spot p, Spot middle, Spot unit, double half) {
    const Spot v = p - middle;
    return distanceSquared(v, std::clamp(dot(v, unit), -half, half) * unit);
}

double turn(Spot a, Spot b, Spot c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool cross(const Line& a, const Line& b) {
    return turn(a.from, a.to, b.from) * turn(a.from, a.to, b.to) < 0 &&
           turn(b.from, b.to, a.from) * turn(b.from, b.to, a.to) < 0;
}

} // namespace

double distance(const Line& a, const Line& b) {
    if (cross(a, b))
        return 0;
    return std::min(
        {distance(a.from, b), distance(a.to, b), distance(b.from, a), distance(b.to, a)});
}

PinRule::PinRule(const Field& top, std::span<const Segment> seams, const Basting& basting)
    : top_{top}
    , edge_{wayOf(basting.with).point.isPatch() ? 0 : basting.edge.in()} {
    const WayPoint& point = wayOf(basting.with).point;
    halfLength_ = point.length(basting).in() / 2;
    if (point.clearOfSeams) {
        clear_ = basting.clear.in();
        for (const Segment& s : seams)
            lines_.push_back({{s.from.x.in(), s.from.y.in()}, {s.to.x.in(), s.to.y.in()}});
    }
    reach_ = halfLength_ + clear_;
    cell_ = std::max(1.0, reach_);
    cell_ = std::max(cell_, std::sqrt(std::max(1.0, top.area()) / 20000));
    columns_ = std::max(1, static_cast<int>(std::ceil(top.width() / cell_)));
    rows_ = std::max(1, static_cast<int>(std::ceil(top.length() / cell_)));
    cells_.resize(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_));
    const double far = reach_ + cell_ * kRoot2 + kSlack; // from a cell's middle
    const auto cellIndex = [&](double v, double from, int count) {
        return static_cast<int>(std::clamp(std::floor((v - from) / cell_), 0.0, count - 1.0));
    };
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const Line& l = lines_[i];
        const int c0 = cellIndex(std::min(l.from.x, l.to.x) - reach_, top.x0, columns_);
        const int c1 = cellIndex(std::max(l.from.x, l.to.x) + reach_, top.x0, columns_);
        const int r0 = cellIndex(std::min(l.from.y, l.to.y) - reach_, top.y0, rows_);
        const int r1 = cellIndex(std::max(l.from.y, l.to.y) + reach_, top.y0, rows_);
        for (int r = r0; r <= r1; ++r)
            for (int c = c0; c <= c1; ++c)
                if (awayFrom(l, {top.x0 + (c + 0.5) * cell_, top.y0 + (r + 0.5) * cell_})
                        .isBelow(squared(far)))
                    cells_[cell(c, r)].push_back(static_cast<int>(i));
    }
}

PinRule PinRule::withoutSeams() const {
    PinRule out = *this;
    out.lines_.clear();
    for (auto& cell : out.cells_)
        cell.clear();
    return out;
}

PinRule PinRule::withEdge(double edge) const {
    PinRule out = *this;
    out.edge_ = edge;
    return out;
}

const std::vector<int>& PinRule::near(Spot at) const {
    const int c = std::clamp(static_cast<int>((at.x - top_.x0) / cell_), 0, columns_ - 1);
    const int r = std::clamp(static_cast<int>((at.y - top_.y0) / cell_), 0, rows_ - 1);
    return cells_[cell(c, r)];
}

std::size_t PinRule::cell(int column, int row) const {
    return static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) +
           static_cast<std::size_t>(column);
}

Spot PinRule::half(int angle) const {
    const auto d = std::find_if(kDirections.begin(), kDirections.end(),
                                [&](const Direction& k) { return k.angle == angle; });
    return {d->unit.x * halfLength_, d->unit.y * halfLength_};
}

double PinRule::room(Spot at, int angle) const {
    const Spot h = half(angle);
    const Line pin{at - h, at + h};
    double least = clear_;
    for (const int i : near(at)) {
        least = std::min(least, distance(pin, lines_[static_cast<std::size_t>(i)]));
        if (least <= 0)
            break;
    }
    return least;
}

double PinRule::edgeRoom(Spot at, int angle) const {
    const Spot h = half(angle);
    const double hx = std::abs(h.x), hy = std::abs(h.y);
    return std::min(
        {at.x - hx - top_.x0, top_.x1 - at.x - hx, at.y - hy - top_.y0, top_.y1 - at.y - hy});
}

bool PinRule::fits(Spot at, Spot unit, std::span<const int> seams) const {
    if (clear_ <= kSlack)
        return true;
    const double least = squared(clear_ - kSlack);
    const Spot half = halfLength_ * unit;
    const Line pin{at - half, at + half};
    return std::ranges::all_of(seams, [&](int i) {
        const Line& seam = lines_[static_cast<std::size_t>(i)];
        return distanceSquared(seam.from, at, unit, halfLength_) >= least &&
               distanceSquared(seam.to, at, unit, halfLength_) >= least &&
               !awayFrom(seam, pin.from).isBelow(least) && !awayFrom(seam, pin.to).isBelow(least) &&
               !cross(pin, seam);
    });
}

std::optional<int> PinRule::angleAt(Spot at) const {
    // Seams too near to the middle forbid every direction, those out of reach none.
    constexpr std::size_t kMost = 16;
    std::array<int, kMost> close{};
    std::size_t count = 0;
    const std::vector<int>& all = near(at);
    const double forbidden = squared(std::max(0.0, clear_ - kSlack)), reached = squared(reach_);
    for (const int i : all) {
        const Away away = awayFrom(lines_[static_cast<std::size_t>(i)], at);
        if (away.isBelow(forbidden))
            return {};
        if (!away.isBelow(reached))
            continue;
        if (count < kMost)
            close[count] = i;
        ++count;
    }
    const std::span<const int> seams =
        count <= kMost ? std::span<const int>{close.data(), count} : std::span<const int>{all};
    for (const Direction& d : kDirections) {
        if (edgeRoom(at, d.angle) >= edge_ - kSlack && fits(at, d.unit, seams))
            return d.angle;
        if (halfLength_ <= 0)
            break;
    }
    return {};
}

PinRule::Room PinRule::mostRoom(Spot at) const {
    Room best;
    for (const Direction& d : kDirections) {
        if (edgeRoom(at, d.angle) < edge_ - kSlack)
            continue;
        const double here = room(at, d.angle);
        if (here > best.room + kSlack)
            best = {d.angle, here};
        if (halfLength_ <= 0)
            break;
    }
    return best;
}

} // namespace bastewright::points
