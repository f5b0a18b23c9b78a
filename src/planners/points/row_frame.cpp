#include "planners/points/row_frame.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace bastewright::points {
namespace {

/// A seam counts as running right across from this share of the top on.
constexpr double kRightAcross = 0.4;

} // namespace

RowFrame::RowFrame(const Rules& rules, PinRows::Along along)
    : along_{along}
    , fine_{rules.fine} {
    const Spot size = toTop({rules.top().width(), rules.top().length()});
    across_ = size.x;
    down_ = size.y;
    // Seams that follow one line count together, however many pieces they are in.
    std::map<long, double> crossing, alongside;
    const auto key = [](double at) { return std::lround(at * 1e4); };
    const auto upright = [](Spot a, Spot b) { return std::abs(a.x - b.x) < 1e-7; };
    const auto level = [](Spot a, Spot b) { return std::abs(a.y - b.y) < 1e-7; };
    for (const Line& l : rules.pin.seams()) {
        const Spot a = fromTop(l.from), b = fromTop(l.to);
        if (upright(a, b))
            crossing[key(a.x)] += std::abs(a.y - b.y);
        else if (level(a, b))
            alongside[key(a.y)] += std::abs(a.x - b.x);
        else
            straight_ = false;
    }
    for (const auto& [at, length] : crossing)
        if (length >= kRightAcross * down_)
            crossing_.push_back(double(at) / 1e4);
        else
            straight_ = false;
    for (const auto& [at, length] : alongside)
        if (length >= kRightAcross * across_)
            alongside_.push_back(double(at) / 1e4);
        else
            straight_ = false;
}

ClearLines::ClearLines(double length, double fine, const std::vector<double>& seams, double room,
                       double edge)
    : fine_{fine} {
    const int count = int(std::floor(length / fine + 1e-9)) + 1;
    near_.assign(std::size_t(count), -1);
    std::vector<char> clear(std::size_t(count), 1);
    for (int i = 0; i < count; ++i)
        if (const double at = i * fine; at < edge - 1e-7 || at > length - edge + 1e-7)
            clear[std::size_t(i)] = 0;
    for (const double seam : seams) {
        const int from = std::max(0, int(std::floor((seam - room) / fine)));
        const int to = std::min(count - 1, int(std::ceil((seam + room) / fine)));
        for (int i = from; i <= to; ++i)
            if (std::abs(i * fine - seam) < room - 1e-7)
                clear[std::size_t(i)] = 0;
    }
    for (int i = 0, last = -1; i < count; ++i) {
        if (clear[std::size_t(i)] != 0)
            last = i;
        near_[std::size_t(i)] = last;
    }
    for (int i = count - 1, next = -1; i >= 0; --i) {
        if (clear[std::size_t(i)] != 0)
            next = i;
        int& near = near_[std::size_t(i)];
        if (near < 0 || (next >= 0 && next - i < i - near))
            near = next;
    }
    for (int i = 0; i < count; ++i)
        if (clear[std::size_t(i)] != 0) {
            first_ = first_ < 0 ? i : first_;
            last_ = i;
        }
}

int ClearLines::nearest(double at) const {
    const double i = std::clamp(std::floor(at / fine_ + 0.5 - 1e-9), 0.0, double(near_.size()) - 1);
    return near_[std::size_t(i)];
}

} // namespace bastewright::points
