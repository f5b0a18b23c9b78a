#include "planners/passes/cover_weighing.h"

#include <algorithm>
#include <set>

namespace bastewright {
namespace {

using Bits = CoverNeeds::Bits;

/// Above so many windows the sets are too many to look through.
constexpr std::size_t kMostExact = 10;

class Search {
public:
    Search(const CoverNeeds& needs, const CoverSearch& limits)
        : needs_{needs}
        , nodes_{limits.nodes}
        , enough_{limits.enough}
        , stop_{limits.stop} {}

    std::set<std::vector<Window>> found;
    bool cutShort() const { return nodes_ < 0 || stop_.stop_requested(); }

    void run(const Bits& left, std::size_t count) {
        if (--nodes_ < 0 || found.size() >= enough_ || stop_.stop_requested())
            return;
        if (std::ranges::all_of(left, [](std::uint64_t b) { return b == 0; })) {
            std::vector<Window> windows;
            for (const std::size_t i : chosen_)
                windows.push_back(needs_.window(i));
            std::ranges::sort(windows);
            found.insert(std::move(windows));
            return;
        }
        if (count == 0 || needs_.least(left, count) > count)
            return;
        for (const std::size_t i : needs_.by(needs_.hardest(left))) {
            Bits rest = left;
            for (std::size_t k = 0; k < rest.size(); ++k)
                rest[k] &= ~needs_.coverOf(i)[k];
            chosen_.push_back(i);
            run(rest, count - 1);
            chosen_.pop_back();
        }
    }

private:
    const CoverNeeds& needs_;
    int nodes_;
    std::size_t enough_;
    std::stop_token stop_;
    std::vector<std::size_t> chosen_;
};

} // namespace

FewestCover fewestCover(const Board& board, const Lie& lie, const FirstPass& first,
                        const std::vector<Candidate>& candidates, std::size_t most,
                        const CoverSearch& limits) {
    FewestCover out;
    const CoverNeeds needs{board, lie, first, candidates};
    if (!needs.sound() || !needs.coverable())
        return out;
    const auto ordered = [&](const auto& sets) {
        std::vector<Sequence> all;
        for (const std::vector<Window>& windows : sets)
            if (limits.stop.stop_requested())
                break;
            else if (auto s = bestOrder(board, lie, first, windows))
                all.push_back(*std::move(s));
        std::ranges::stable_sort(all, {}, &Sequence::cost);
        return all;
    };
    out.least = std::max<std::size_t>(1, needs.least(needs.all(), kMostPasses));
    bool all = most <= kMostExact; // looked through
    for (std::size_t n = out.least; n <= std::min(most, kMostExact); ++n) {
        Search search{needs, limits};
        search.run(needs.all(), n);
        all = all && !search.cutShort();
        out.sequences = ordered(search.found);
        if (!out.sequences.empty() || limits.stop.stop_requested())
            return out;
        if (out.least == n && search.found.empty() && !search.cutShort())
            out.least = n + 1;
    }
    // More windows than can be looked through: fewer and fewer, as long as some set has an order.
    for (std::size_t n = most; n >= out.least && !all; --n) {
        auto found = ordered(coversByWeighing(needs, n, limits));
        if (found.empty())
            break;
        out.sequences = std::move(found);
    }
    return out;
}

} // namespace bastewright
