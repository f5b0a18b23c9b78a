#include "planners/crew/rests.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace bastewright::crew {
namespace {

/// How uneven two spans may be, in square minutes, for a break between passes: a quarter of an hour
/// either way.
constexpr double kWithinPass = 450;

/// A call, or one part of a call that is too long to go on without a break.
struct Part {
    std::size_t call = 0;
    int start = 0, end = 0;
    bool begins = true; ///< of its call
};

std::vector<Part> partsOf(std::span<const CallSpan> calls) {
    std::vector<Part> out;
    for (std::size_t k = 0; k < calls.size(); ++k) {
        const int length = calls[k].end - calls[k].start;
        const int parts = std::max(1, (length + kBreakAtLast - 1) / kBreakAtLast);
        for (int p = 0; p < parts; ++p)
            out.push_back({k, calls[k].start + length * p / parts,
                           calls[k].start + length * (p + 1) / parts, p == 0});
    }
    return out;
}

/// Work up to a part, cut by so many breaks.
struct Chain {
    double cost = 0;
    std::size_t from = 0; ///< where the last span begins
};

std::set<std::string> withoutTold(int lastRest, std::span<const CallSpan> calls, int beyond) {
    const std::vector<Part> parts = partsOf(calls);
    const std::size_t n = parts.size();
    if (n == 0 || parts.back().end - lastRest <= beyond)
        return {};
    // best[b][j]: the first j parts are done, with b breaks so far.
    std::vector<std::vector<std::optional<Chain>>> best;
    const auto add = [&](std::size_t b, std::size_t from, std::size_t to, double before) {
        const int begin = b == 0 ? lastRest : parts[from].start;
        const int length = (to > from ? parts[to - 1].end : parts[from].start) - begin;
        if (length > kBreakAtLast && to > from)
            return false;
        const double minutes = length / 60.0;
        const bool within = b > 0 && !(parts[from].begins && calls[parts[from].call].opensPass);
        const double cost = before + minutes * minutes + (within ? kWithinPass : 0);
        auto& at = best[b][to];
        if (!at || cost < at->cost - 1e-9)
            at = Chain{cost, from};
        return true;
    };
    for (std::size_t b = 0; b <= n; ++b) {
        best.emplace_back(n + 1);
        if (b == 0) {
            // A break before anything else is one where people come tired.
            for (std::size_t to = lastRest < parts.front().start ? 0 : 1; to <= n; ++to)
                if (!add(0, 0, to, 0))
                    break;
        } else {
            for (std::size_t from = 0; from < n; ++from)
                if (best[b - 1][from])
                    for (std::size_t to = from + 1; to <= n; ++to)
                        if (!add(b, from, to, best[b - 1][from]->cost))
                            break;
        }
        if (b == 0 || !best[b][n])
            continue;
        std::set<std::string> out;
        for (std::size_t to = n, k = b; k > 0; --k) {
            to = best[k][to]->from;
            if (parts[to].begins)
                out.insert(calls[parts[to].call].id);
        }
        return out;
    }
    return {};
}

} // namespace

double leastRests(double since, double work, double most) {
    if (since + work <= kProposeBeyond)
        return 0;
    // Whoever comes tired has the first break at once.
    return kBreakLasts * std::max(1.0, std::floor((std::min(since, most) + work - 1) / most));
}

std::set<std::string> restsBefore(int lastRest, std::span<const CallSpan> calls,
                                  std::span<const PlannedBreak> told, int beyond) {
    std::set<std::string> out;
    std::size_t from = 0;
    for (std::size_t k = 0; k <= calls.size(); ++k) {
        int rested = lastRest;
        if (k < calls.size() && k > 0)
            for (const PlannedBreak& b : told)
                if (const auto until = static_cast<int>(b.end.count());
                    until > calls[k - 1].start && until <= calls[k].start)
                    rested = std::max(rested, until);
        if (k < calls.size() && rested == lastRest)
            continue;
        out.merge(withoutTold(lastRest, calls.subspan(from, k - from), beyond));
        from = k;
        lastRest = rested;
    }
    return out;
}

} // namespace bastewright::crew
