#include "job/job.h"

#include "job/spacings.h"

#include <algorithm>
#include <cmath>

namespace bastewright {

Rect topRect(const Top& top) {
    const auto largest = [](const std::vector<Length>& readings) {
        return readings.empty() ? Length{} : *std::max_element(readings.begin(), readings.end());
    };
    return {Length{}, Length{}, largest(top.width), largest(top.length)};
}

Rect topEnvelope(const Top& top) {
    const Rect area = topRect(top);
    const Length width = area.width(), length = area.length();
    if (top.diagonals.size() != 2 || width <= Length{} || length <= Length{})
        return area;
    const double d = top.diagonals[0].in(), e = top.diagonals[1].in();
    const double lean = std::abs(d * d - e * e) / 4;
    return {Length{}, Length{}, width + Length::nearestInches(lean / width.in()),
            length + Length::nearestInches(lean / length.in())};
}

Rect squared(const BattingPiece& piece) {
    Rect out{Length{}, Length{}, piece.width, piece.length};
    if (piece.diagonals.size() != 2 || piece.width <= Length{} || piece.length <= Length{})
        return out;
    const double d = piece.diagonals[0].in(), e = piece.diagonals[1].in();
    const double lean = std::abs(d * d - e * e) / 4, w = piece.width.in(), l = piece.length.in();
    // Rounded down to a 64th: a piece is never taken for larger than it is.
    const auto less = [](double in) {
        return Length::inch64ths(std::int64_t(std::floor(std::max(0.0, in) * 64)));
    };
    if (lean <= 0)
        return out;
    if ((w - lean / w) * l >= w * (l - lean / l))
        out.x1 = less(w - lean / w);
    else
        out.y1 = less(l - lean / l);
    return out;
}

Spacings spacingsOf(Basting::With with) {
    if (with == Basting::With::spray)
        return {Length::inches(10), Length::inches(18), Length::inches(18)};
    return {Length::inches(1), Length::inches(4), Length::inches(12)};
}

Basting bastedWith(Basting basting, Basting::With with) {
    const Length usual = spacingsOf(with).usual;
    if (usual != spacingsOf(basting.with).usual) {
        basting.spacing = usual;
        basting.measure.reset();
    }
    basting.with = with;
    return basting;
}

bool seamsAreSewn(const Job& job) {
    // Free-motion, single tacks and lines across the seams pass over seams anywhere, so keeping
    // pins off the seams gains nothing there; undecided keeps the choice open.
    return job.quilting.method == Quilting::Method::inTheDitch ||
           job.quilting.method == Quilting::Method::undecided;
}

} // namespace bastewright
