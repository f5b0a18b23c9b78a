#include "planners/batting/join_cost.h"

#include <algorithm>

namespace bastewright::batting {
namespace {

void append(Cost& cost, Stretch s) {
    if (!cost.empty() && cost.back().slope == s.slope)
        cost.back().size += s.size;
    else
        cost.push_back(s);
}

} // namespace

std::int64_t total(const Cost& cost) {
    std::int64_t sum = 0;
    for (const Stretch s : cost)
        sum += s.size;
    return sum;
}

std::int64_t at(const Cost& cost, std::int64_t extent) {
    std::int64_t sum = 0;
    for (const Stretch s : cost) {
        const std::int64_t used = std::min(extent, s.size);
        sum += used * s.slope;
        if ((extent -= used) == 0)
            break;
    }
    return sum;
}

Cost shared(const Cost& a, const Cost& b) {
    Cost out;
    std::int64_t leftA = 0, leftB = 0; // of the stretches in hand
    for (auto ia = a.begin(), ib = b.begin(); ia != a.end() && ib != b.end();) {
        leftA = leftA > 0 ? leftA : ia->size;
        leftB = leftB > 0 ? leftB : ib->size;
        const std::int64_t size = std::min(leftA, leftB);
        append(out, {size, ia->slope + ib->slope + 1});
        if ((leftA -= size) == 0)
            ++ia;
        if ((leftB -= size) == 0)
            ++ib;
    }
    return out;
}

Cost following(const Cost& a, const Cost& b) {
    Cost out;
    out.reserve(a.size() + b.size());
    for (auto ia = a.begin(), ib = b.begin(); ia != a.end() || ib != b.end();) {
        const bool first = ib == b.end() || (ia != a.end() && ia->slope <= ib->slope);
        append(out, first ? *ia++ : *ib++);
    }
    return out;
}

} // namespace bastewright::batting
