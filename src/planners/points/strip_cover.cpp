#include "planners/points/strip_cover.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {

StripCover::StripCover(double radius, double fine, double length)
    : radius_{radius}
    , fine_{fine}
    , length_{length} {
    for (int i = 0; i * fine / 2 < radius; ++i)
        heights_.push_back(height(i * fine / 2));
}

double StripCover::height(double away) const {
    return away < radius_ ? std::sqrt(radius_ * radius_ - away * away) : 0.0;
}

double StripCover::widest(const RibbonMarks& marks) const {
    return widest(marks, 0, length_);
}

double StripCover::widest(const RibbonMarks& marks, double from, double to) const {
    if (marks.odd.empty() || marks.even.empty())
        return 0;
    double least = 1e9;
    // At the middles of one ribbon's marks, the nearest mark of the other.
    const auto walk = [&](const std::vector<int>& own, const std::vector<int>& other) {
        const auto begin = std::lower_bound(own.begin(), own.end(), int(std::floor(from / fine_)));
        std::size_t i = begin == own.begin() ? 0 : std::size_t(begin - own.begin()) - 1;
        std::size_t k = 0;
        for (; i + 1 < own.size() && own[i] * fine_ <= to; ++i) {
            const int half = own[i + 1] - own[i], twice = own[i + 1] + own[i];
            const auto away = [&](std::size_t at) { return std::abs(2 * other[at] - twice); };
            while (k + 1 < other.size() && away(k + 1) <= away(k))
                ++k;
            if (std::size_t(half) >= heights_.size())
                return 0.0;
            const auto near = std::size_t(away(k));
            least = std::min(least, heights_[std::size_t(half)] +
                                        (near < heights_.size() ? heights_[near] : 0));
        }
        return least;
    };
    if (walk(marks.odd, marks.even) <= 0 || walk(marks.even, marks.odd) <= 0)
        return 0;
    const auto end = [&](double a, double b) {
        least = a < radius_ && b < radius_ ? std::min(least, height(a) + height(b)) : 0.0;
    };
    if (from <= 0)
        end(marks.odd.front() * fine_, marks.even.front() * fine_);
    if (to >= length_)
        end(length_ - marks.odd.back() * fine_, length_ - marks.even.back() * fine_);
    return least;
}

double StripCover::edge(const std::vector<int>& marks) const {
    if (marks.empty())
        return 0;
    double least = std::min(height(marks.front() * fine_), height(length_ - marks.back() * fine_));
    for (std::size_t i = 1; i < marks.size(); ++i)
        least = std::min(least, height((marks[i] - marks[i - 1]) * fine_ / 2));
    return least;
}

} // namespace bastewright::points
