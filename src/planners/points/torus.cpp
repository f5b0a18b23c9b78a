#include "planners/points/torus.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {

Torus::Torus(const Rules& rules, const BlockFrame& frame, int across, int down, int column, int row)
    : rules_{rules}
    , pitchX_{frame.pitchX}
    , pitchY_{frame.pitchY}
    , width_{frame.pitchX * across}
    , length_{frame.pitchY * down}
    , middle_{frame.blockX / 2, frame.blockY / 2}
    , corner_{frame.first.x + column * frame.pitchX, frame.first.y + row * frame.pitchY} {}

bool Torus::square() const {
    return std::abs(pitchX_ - pitchY_) < 1e-9 && std::abs(middle_.x - middle_.y) < 1e-9 &&
           std::abs(width_ - length_) < 1e-9;
}

Spot Torus::wrapped(Spot p) const {
    const auto wrap = [](double v, double period) {
        v -= std::floor(v / period) * period;
        return v > period - 1e-7 ? 0.0 : v;
    };
    return {wrap(p.x, width_), wrap(p.y, length_)};
}

Spot Torus::moved(Spot p, const Move& m) const {
    using enum Move::Turn;
    const double u = p.x - middle_.x, v = p.y - middle_.y;
    Spot to{u, v};
    switch (m.turn) {
    case stay:
        break;
    case mirrorX:
        to = {-u, v};
        break;
    case mirrorY:
        to = {u, -v};
        break;
    case halfTurn:
        to = {-u, -v};
        break;
    case turn:
        to = {-v, u};
        break;
    case turnBack:
        to = {v, -u};
        break;
    case diagonal:
        to = {v, u};
        break;
    case antiDiagonal:
        to = {-v, -u};
        break;
    }
    return wrapped(middle_ + to + Spot{m.across * pitchX_, m.down * pitchY_});
}

Spots Torus::orbit(Spot p, const Group& group) const {
    Spots out{p};
    for (std::size_t i = 0; i < out.size(); ++i)
        for (const Move& m : group) {
            const Spot q = moved(out[i], m);
            if (std::none_of(out.begin(), out.end(),
                             [&](Spot o) { return distanceSquared(o, q) < 1e-10; }))
                out.push_back(q);
        }
    return out;
}

Spots Torus::copies(const Spots& places) const {
    const int nx = static_cast<int>(std::ceil(rules_.radius / width_));
    const int ny = static_cast<int>(std::ceil(rules_.radius / length_));
    Spots out;
    for (const Spot p : places)
        for (int j = -ny; j <= ny; ++j)
            for (int i = -nx; i <= nx; ++i)
                if (const Spot q{p.x + i * width_, p.y + j * length_};
                    field().contains(q, rules_.radius))
                    out.push_back(q);
    return out;
}

Spots Torus::candidates(double raster) const {
    Spots out;
    for (double y = 0; y < length_ - 1e-7; y += raster)
        for (double x = 0; x < width_ - 1e-7; x += raster)
            if (allowed({x, y}))
                out.push_back({x, y});
    return out;
}

Spots Torus::leastBreach(Spot w) const {
    Spots out;
    for (const Spot s : rules_.leastBreach(corner_ + w))
        out.push_back(wrapped(s - corner_));
    return out;
}

} // namespace bastewright::points
