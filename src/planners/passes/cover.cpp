#include "planners/passes/cover_weighing.h"

#include <algorithm>
#include <set>

namespace bastewright {
namespace {

using Bits = CoverNeeds::Bits;

/// Above so many windows the sets are too many to look through.
constexpr std::size_t kMostExact = 10;

/// So many sets of so many windows are ordered: with few it takes no time, and people share some
/// far better than others.
std::size_t setsOf(std::size_t windows) {
    return windows <= 3 ? 64 : windows <= 5 ? 32 : 8;
}

/// Looks for an order of every set that is found.
class Orders {
public:
    Orders(const Board& board, const Lie& lie, const FirstPass& first, std::size_t sets)
        : board_{board}
        , lie_{lie}
        , first_{first}
        , sets_{sets} {}

    /// False where enough sets were tried.
    bool add(const std::vector<Window>& windows) {
        if (auto s = bestOrder(board_, lie_, first_, windows))
            all_.push_back(*std::move(s));
        return ++tried_ < sets_;
    }

    std::vector<Sequence> cheapestFirst() && {
        std::ranges::stable_sort(all_, {}, &Sequence::cost);
        return std::move(all_);
    }

private:
    const Board& board_;
    const Lie& lie_;
    const FirstPass& first_;
    std::vector<Sequence> all_;
    std::size_t sets_, tried_ = 0;
};

class Search {
public:
    Search(const CoverNeeds& needs, const CoverSearch& limits, Orders& orders)
        : needs_{needs}
        , nodes_{limits.nodes}
        , stop_{limits.stop}
        , orders_{orders} {}

    std::set<std::vector<Window>> found;
    bool cutShort() const { return nodes_ < 0 || stop_.stop_requested(); }

    void run(const Bits& left, std::size_t count) {
        if (enough_ || --nodes_ < 0 || stop_.stop_requested())
            return;
        if (std::ranges::all_of(left, [](std::uint64_t b) { return b == 0; })) {
            std::vector<Window> windows;
            for (const std::size_t i : chosen_)
                windows.push_back(needs_.window(i));
            std::ranges::sort(windows);
            if (const auto [at, isNew] = found.insert(std::move(windows)); isNew)
                enough_ = !orders_.add(*at);
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
    bool enough_ = false;
    std::stop_token stop_;
    Orders& orders_;
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
    out.least = std::max<std::size_t>(1, needs.least(needs.all(), kMostPasses));
    bool all = most <= kMostExact; // looked through
    for (std::size_t n = out.least; n <= std::min(most, kMostExact); ++n) {
        Orders orders{board, lie, first, setsOf(n)};
        Search search{needs, limits, orders};
        search.run(needs.all(), n);
        all = all && !search.cutShort();
        out.sequences = std::move(orders).cheapestFirst();
        if (!out.sequences.empty() || limits.stop.stop_requested())
            return out;
        if (out.least == n && search.found.empty() && !search.cutShort())
            out.least = n + 1;
    }
    // More windows than can be looked through: fewer and fewer, as long as some set has an order.
    for (std::size_t n = most; n >= out.least && !all; --n) {
        Orders orders{board, lie, first, setsOf(n)};
        coversByWeighing(needs, n, limits,
                         [&](const auto& windows) { return orders.add(windows); });
        auto found = std::move(orders).cheapestFirst();
        if (found.empty())
            break;
        out.sequences = std::move(found);
    }
    return out;
}

} // namespace bastewright
