#pragma once

#include "job/job.h"
#include "plan/layers.h"

#include <algorithm>
#include <bitset>
#include <cstdlib>
#include <map>
#include <optional>
#include <set>
#include <tuple>
#include <utility>
#include <vector>

/// Every way to piece a backing on a grid of half inches, without any of the planner's code: the
/// least that can be bought, and the least with every seam counted as a quarter of a yard. For jobs
/// whose measures are whole inches, with seam allowances of 1/2 in.
namespace bastewright::every_way {

inline constexpr int kSeam = 1;  // half inches
inline constexpr int kClear = 4; // seams keep 2 in off the centre line
inline constexpr std::int64_t kHalf = Length::kInch / 2;
inline constexpr std::int64_t kEighthYard = Length::inch64ths(288).nm();

struct Least {
    double bought = 1e9; ///< inches or money
    double score = 1e9;  ///< with what the seams are worth
};

class Everything {
public:
    explicit Everything(const Job& job)
        : rules_{job.backing}
        , least_{int(job.backing.leastPiece.in() * 2)}
        , outer_{std::max(least_, int(job.backing.overage.in() * 2) + 4)}
        , squaring_{int(job.backing.squaring.in() * 2)} {
        priced_ = std::ranges::all_of(rules_.fabrics,
                                      [](const Fabric& f) { return !f.buyable || f.price > 0; });
        double cheapest = 1e9;
        for (const Fabric& f : rules_.fabrics) {
            const int width = int(f.usableWidth.in() * 2), hand = int(f.onHand.in() * 2);
            const int index = int(&f - rules_.fabrics.data());
            if (hand > 0)
                bolts_.push_back({index, false, width, hand});
            if (f.buyable) {
                bolts_.push_back({index, true, width, 1 << 20});
                cheapest = std::min(cheapest, f.price);
            }
        }
        seamCost_ = priced_ ? rules_.seamWorth.in() / 36 * cheapest : rules_.seamWorth.in();
    }

    Least of(Size needed) {
        best_ = {};
        const int w = int(needed.width.in() * 2), l = int(needed.length.in() * 2);
        along(w, l);
        if (!rules_.oneWay)
            along(l, w);
        return best_;
    }

private:
    struct Bolt {
        int fabric;
        bool bought;
        int width, length;
    };
    /// A strip: its kind tells a column from a length; `most` is how wide it is cut.
    struct Strip {
        int most;
        bool whole;
        auto operator<=>(const Strip&) const = default;
    };
    using Places = std::bitset<800>;

    void along(int across, int height) {
        across_ = across;
        height_ = height;
        counts_.assign(bolts_.size(), 0);
        lengths(0, 0);
    }

    void lengths(std::size_t from, int count) {
        if (count > 0) {
            bool sewn = false;
            for (int split = -1; split < int(bolts_.size()); ++split) {
                if (split >= 0 && counts_[std::size_t(split)] == 0)
                    continue;
                const std::vector<Strip> strips = stripsOf(split);
                if (inSomeOrder(strips)) {
                    take(int(strips.size()) - 1, -1, {}, 0);
                    sewn = true;
                }
                if (rules_.column)
                    columns(strips);
            }
            // Lengths beyond those that can be sewn without a column only cost more.
            if (sewn || count == 9)
                return;
        }
        for (std::size_t b = from; b < bolts_.size(); ++b) {
            if (bolts_[b].length < (counts_[b] + 1) * (height_ + squaring_))
                continue;
            ++counts_[b];
            lengths(b, count + 1);
            --counts_[b];
        }
    }

    std::vector<Strip> stripsOf(int split) const {
        std::vector<Strip> out;
        for (int b = 0; b < int(bolts_.size()); ++b) {
            const int whole = counts_[std::size_t(b)] - (b == split);
            out.insert(out.end(), std::size_t(whole), {bolts_[std::size_t(b)].width, true});
            if (b == split)
                out.insert(out.end(), 2, {bolts_[std::size_t(b)].width / 2, false});
        }
        return out;
    }

    bool canBeSewn(const std::vector<Strip>& strips) const {
        Places allowed;
        for (int x = 0; x <= across_; ++x)
            allowed[std::size_t(x)] = rules_.centreSeam || std::abs(2 * x - across_) >= 2 * kClear;
        Places at;
        at[0] = true;
        for (std::size_t i = 0; i < strips.size(); ++i) {
            const int sides = (i > 0) + (i + 1 < strips.size());
            const int most = strips[i].most - sides * kSeam;
            int least = sides == 2 ? least_ : outer_;
            if (strips[i].whole)
                least = std::min(least, most);
            if (strips.size() == 1)
                least = 0;
            Places next;
            for (int w = least; w <= most; ++w)
                next |= at << std::size_t(w);
            at = i + 1 < strips.size() ? next & allowed : next;
        }
        return at[std::size_t(across_)];
    }

    bool inSomeOrder(std::vector<Strip> strips) {
        std::ranges::sort(strips);
        const auto [known, fresh] = orders_.try_emplace({strips, across_}, false);
        if (fresh)
            do {
                known->second = canBeSewn(strips);
            } while (!known->second && std::ranges::next_permutation(strips).found);
        return known->second;
    }

    /// A column as narrow as it can be, from every cloth.
    void columns(const std::vector<Strip>& lengths) {
        int all = 0;
        for (const Strip& s : lengths)
            all += s.most;
        const int seams = int(lengths.size());
        for (int width = std::max(least_ + kSeam, across_ + 2 * seams * kSeam - all);
             width <= across_; ++width) {
            std::vector<Strip> with = lengths;
            with.push_back({width, false});
            if (!inSomeOrder(with))
                continue;
            for (int f = 0; f < int(rules_.fabrics.size()); ++f)
                column(f, width, seams);
            return;
        }
    }

    void column(int fabric, int width, int seams) {
        int hand = -1, bought = -1;
        for (int b = 0; b < int(bolts_.size()); ++b)
            if (bolts_[std::size_t(b)].fabric == fabric)
                (bolts_[std::size_t(b)].bought ? bought : hand) = b;
        const int usable = int(rules_.fabrics[std::size_t(fabric)].usableWidth.in() * 2);
        const int left = hand < 0
                             ? 0
                             : bolts_[std::size_t(hand)].length -
                                   counts_[std::size_t(hand)] * (height_ + squaring_) - squaring_;
        for (int mine = 0; mine <= 5; ++mine)
            for (const bool turned : {false, true}) {
                if (mine == 0 && turned)
                    continue;
                if (mine > 0 && (left < least_ + 2 * kSeam ||
                                 (turned ? mine * width > left : mine * width > usable) ||
                                 (turned && rules_.oneWay)))
                    continue;
                const int handBlock = turned ? usable : left;
                for (int more = bought < 0 ? 0 : mine == 0; mine + more <= 5; ++more) {
                    if (more == 0 && bought >= 0 && mine == 0)
                        continue;
                    blocks(bought, width, seams, mine, handBlock, more, usable, turned);
                    if (bought < 0)
                        break;
                }
            }
    }

    void blocks(int bought, int width, int seams, int mine, int handBlock, int more, int usable,
                bool handTurned) {
        const int all = mine + more;
        const int sewn = seams + all - 1;
        if (more == 0) {
            if ((mine >= 2 || handTurned) && shortest(mine, handBlock, 0) == 0)
                take(sewn, -1, {}, 0);
            return;
        }
        if (all >= 2 && more * width <= usable)
            if (const auto block = shortest(mine, handBlock, more))
                take(sewn, bought, *block, 1);
        if (!rules_.oneWay)
            if (const auto block = shortest(mine, handBlock, more);
                block && *block <= usable * kHalf)
                take(sewn, bought, std::int64_t(more) * width * kHalf, 1);
    }

    /// Least length (nm) of each of `more` blocks, so that with `mine` of `handBlock` they make the
    /// height and no join lies on the fold; 0 where none are asked for and the rest does it.
    std::optional<std::int64_t> shortest(int mine, int handBlock, int more) const {
        const int all = mine + more;
        std::optional<std::int64_t> best;
        for (const bool handFirst : {true, false}) {
            const auto isHand = [&](int i) { return handFirst ? i < mine : i >= more; };
            const auto least = [&](int from, int to, int reach2) -> std::optional<std::int64_t> {
                // Blocks from … to make at least reach2 quarter inches.
                std::int64_t have = 0;
                int open = 0;
                for (int i = from; i <= to; ++i) {
                    const int ends = (i > 0) + (i + 1 < all);
                    have -= 2 * ends * kSeam;
                    if (isHand(i))
                        have += 2 * handBlock;
                    else
                        ++open;
                }
                const std::int64_t missing = std::max<std::int64_t>(0, reach2 - have) * (kHalf / 2);
                if (open == 0)
                    return missing == 0 ? std::optional<std::int64_t>{0} : std::nullopt;
                return (missing + open - 1) / open;
            };
            const auto whole = least(0, all - 1, 2 * height_);
            if (!whole)
                continue;
            const std::int64_t floor = more == 0 ? 0 : (least_ + 2 * kSeam) * kHalf;
            if (rules_.centreSeam) {
                const std::int64_t l = std::max(*whole, floor);
                best = std::min(best.value_or(l), l);
                continue;
            }
            // Some block reaches over the fold, a seam allowance to both sides.
            for (int over = 0; over < all; ++over) {
                const int reach = height_ + 2 * kSeam; // half of it, in quarter inches
                if (over * least_ * 2 > height_ - 2 * kSeam ||
                    (all - 1 - over) * least_ * 2 > height_ - 2 * kSeam)
                    continue;
                const auto before = least(0, over, over + 1 == all ? 2 * height_ : reach);
                const auto behind = least(over, all - 1, over == 0 ? 2 * height_ : reach);
                if (!before || !behind)
                    continue;
                const std::int64_t l = std::max({*whole, *before, *behind, floor});
                best = std::min(best.value_or(l), l);
            }
        }
        return best;
    }

    /// Counts what a layout costs; `cloth` nm more are cut from bolt `of`, in `pieces` lengths.
    void take(int seams, int of, std::int64_t cloth, int pieces) {
        double cost = 0;
        for (int b = 0; b < int(bolts_.size()); ++b) {
            const Bolt& bolt = bolts_[std::size_t(b)];
            std::int64_t cut =
                std::int64_t(counts_[std::size_t(b)]) * (height_ + squaring_) * kHalf;
            if (b == of)
                cut += cloth + pieces * squaring_ * kHalf;
            if (!bolt.bought || cut == 0)
                continue;
            const double inches =
                Length::nanometres((cut + kEighthYard - 1) / kEighthYard * kEighthYard).in();
            cost += priced_ ? inches / 36 * rules_.fabrics[std::size_t(bolt.fabric)].price : inches;
        }
        best_.bought = std::min(best_.bought, cost);
        best_.score = std::min(best_.score, cost + seams * seamCost_);
    }

    const Backing& rules_;
    const int least_, outer_, squaring_;
    bool priced_ = false;
    double seamCost_ = 0;
    std::vector<Bolt> bolts_;
    std::vector<int> counts_;
    int across_ = 0, height_ = 0;
    Least best_;
    std::map<std::pair<std::vector<Strip>, int>, bool> orders_;
};

} // namespace bastewright::every_way
