#include "planners/points/row_search.h"

#include "planners/points/holes.h"
#include "planners/points/row_polish.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace bastewright::points {
namespace {

// By trials on tops with seams every 3 and 4 in, in sashing and in triangles.
constexpr double kWider = 0.1;         ///< inches; what polishing can make up for
constexpr double kPlainerWorth = 1.02; ///< so much more a plainer figure may take
constexpr int kMostBare = 300;
/// So many points a bare corner is worth when choices are compared that will be polished: little,
/// much.
constexpr std::array kWorths{0.33, 0.15, 0.08};
/// For a first plan, which is hardly polished.
constexpr double kFirstWorth = 2;
constexpr double kSingleWorth =
    0.7; ///< three corners round a hole; a point fills it, and is worth two in a row
constexpr std::size_t kKept = 2; ///< for each worth

struct Start {
    const RowFrame* frame;
    RowChoice choice;
    double pins = 0;
    int bare = 0;
    double cost(double worth) const { return pins + worth * bare; }
};

/// The best few by one worth, no two of the same make.
class Pool {
public:
    explicit Pool(double worth)
        : worth_{worth} {}
    /// So many bare corners would still be of interest.
    int mostBare(double pins) const {
        return starts_.size() < kKept ? kMostBare
                                      : int((starts_.back().cost(worth_) - pins) / worth_);
    }
    void offer(const Start& s) {
        const double cost = s.cost(worth_);
        const auto same = std::ranges::find_if(starts_, [&](const Start& o) {
            return o.frame == s.frame && o.choice.rows.size() == s.choice.rows.size() &&
                   o.choice.marks.odd.size() == s.choice.marks.odd.size() &&
                   o.choice.marks.even.size() == s.choice.marks.even.size();
        });
        if (same != starts_.end()) {
            if (same->cost(worth_) <= cost)
                return;
            starts_.erase(same);
        }
        starts_.push_back(s);
        std::ranges::stable_sort(starts_, {}, [&](const Start& o) { return o.cost(worth_); });
        if (starts_.size() > kKept)
            starts_.pop_back();
    }
    const std::vector<Start>& starts() const { return starts_; }

private:
    double worth_;
    std::vector<Start> starts_;
};

class Search {
public:
    Search(const Rules& rules, const RowWish& wish, std::stop_token stop)
        : rules_{rules}
        , wish_{wish}
        , stop_{std::move(stop)} {
        for (const auto along : {PinRows::Along::width, PinRows::Along::length})
            if (!wish.along || *wish.along == along)
                frames_.emplace_back(rules, along);
        if (wish.effort <= 0 && frames_.size() > 1)
            frames_.pop_back();
        if (first())
            pools_.emplace_back(kFirstWorth);
        else
            for (const double worth : kWorths)
                pools_.emplace_back(worth);
        // Points of a square grid: about what a laying costs.
        size_ = rules.top().area() / squared(rules.spacing);
    }

    std::optional<RowLayout> run() { return rules_.pin.seamless() ? plain() : amongSeams(); }

private:
    /// Only the first complete plan is wanted.
    bool first() const { return wish_.effort <= 0; }

    const RowFrame& frameOf(const RowChoice& c) const {
        return *std::ranges::find(frames_, c.along, &RowFrame::along);
    }

    RowLayout laid(const RowChoice& choice) {
        RowFit fit{rules_, frameOf(choice), places()};
        const int bare = fit.lay(choice, std::numeric_limits<int>::max());
        return {choice, fit.rows(), bare};
    }

    ClearPlaces& places() {
        if (!places_)
            places_.emplace(rules_);
        return *places_;
    }

    std::optional<RowLayout> plain() {
        std::vector<RowChoice> all;
        const auto fewest = [&](int level) {
            std::size_t least = std::numeric_limits<std::size_t>::max();
            for (const RowChoice& c : all)
                if (c.level <= level)
                    least = std::min(least, c.count());
            return least;
        };
        std::size_t most = std::numeric_limits<std::size_t>::max() / 2;
        for (const RowFrame& frame : frames_)
            for (const Lie lie : {Lie::along, Lie::across}) {
                if (lie == Lie::across && (rules_.pin.halfLength() <= 0 || first()))
                    continue;
                const RowOptions options =
                    rowOptions(rules_, frame, lie, wish_.measures, {.quick = first()});
                const auto least = fewestInRows(options);
                if (!least)
                    continue;
                most = std::min(most, *least);
                for (RowChoice& c :
                     coveringRows(frame, options, std::size_t(double(most) * kPlainerWorth) + 1))
                    all.push_back(std::move(c));
            }
        if (all.empty())
            return {};
        int level = 0;
        const std::size_t least = fewest(std::numeric_limits<int>::max());
        while (double(fewest(level)) > kPlainerWorth * double(least))
            ++level;
        return mostSlack(all, level, fewest(level) + 1);
    }

    /// Of all with so many points at most, the one that leaves hands most room.
    std::optional<RowLayout> mostSlack(const std::vector<RowChoice>& all, int level,
                                       std::size_t most) {
        const RowChoice* best = nullptr;
        double slack = -1;
        for (const RowChoice& c : all) {
            if (c.level > level || c.count() > most)
                continue;
            if (const double s = slackOf(frameOf(c), c, rules_.radius); s > slack + 1e-4) {
                slack = s;
                best = &c;
            }
            if (first())
                break;
        }
        return laid(*best);
    }

    std::optional<RowLayout> amongSeams() {
        sample();
        std::vector<Start> starts;
        for (const Pool& pool : pools_)
            for (const Start& s : pool.starts())
                if (std::ranges::none_of(starts, [&](const Start& o) {
                        return o.frame == s.frame && o.choice.rows == s.choice.rows &&
                               o.choice.marks.odd == s.choice.marks.odd;
                    }))
                    starts.push_back(s);
        if (starts.empty())
            return {};
        const auto shifts = int(std::clamp((first() ? 1e5 : 4e5) / size_, 30.0, 600.0));
        if (first())
            starts.resize(1);
        for (const int round : {0, 1, 2}) {
            if (first() && round > 0)
                break;
            for (Start& s : starts)
                polish(s, shifts * std::max(1, wish_.effort) * (round + 1));
            std::ranges::stable_sort(starts, {},
                                     [](const Start& s) { return s.cost(kSingleWorth); });
            starts.resize(std::min(starts.size(), std::size_t(4 - round)));
        }
        loosen(starts.front(), shifts);
        return laid(starts.front().choice);
    }

    void sample() {
        const int budget = first() ? 8 : int(std::clamp(3e5 / size_, 20.0, 300.0));
        Rules wider = rules_;
        wider.radius += kWider;
        for (const RowFrame& frame : frames_) {
            const RowOptions options = rowOptions(wider, frame, Lie::anyhow, wish_.measures,
                                                  {.quick = first(), .all = true});
            if (options.ribbons.empty() || options.rows.empty())
                continue;
            const auto least = fewestInRows(options);
            if (!least)
                continue;
            RowFit fit{rules_, frame, places()};
            Dice dice{1};
            int laid = 0;
            // Most pairs do not cover, or need too many.
            for (long pick = 0; pick < 400L * budget && laid < budget && !stop_.stop_requested();
                 ++pick) {
                const auto& ribbons = options.ribbons[dice.below(options.ribbons.size())];
                const auto& rows = options.rows[dice.below(options.rows.size())];
                const auto most = std::size_t(double(*least) * 1.35);
                const auto c = combined(frame, ribbons, rows, dice.below(2) == 1, most);
                if (!c)
                    continue;
                int bare = -1;
                for (const Pool& pool : pools_)
                    bare = std::max(bare, std::min(kMostBare, pool.mostBare(double(c->count()))));
                if (bare < 0)
                    continue;
                ++laid;
                const int left = fit.lay(*c, bare);
                if (left > bare)
                    continue;
                for (Pool& pool : pools_)
                    pool.offer({&frame, *c, double(fit.pins()), left});
            }
        }
    }

    void polish(Start& s, int shifts) {
        if (s.bare == 0)
            return;
        RowPolish polish{rules_, *s.frame, places()};
        Dice dice{2};
        s.bare = polish.polish(s.choice, shifts, dice, stop_);
        s.pins = double(polish.fit().pins());
    }

    /// More room for hands with the same number of points, by steps of 1/64 in.
    void loosen(Start& s, int shifts) {
        if (s.bare > 0 || first())
            return;
        for (int i = 1; i <= 16 && !stop_.stop_requested(); ++i) {
            Rules stricter = rules_;
            stricter.radius -= i / 64.0;
            RowPolish polish{stricter, *s.frame, places()};
            Dice dice{3};
            RowChoice next = s.choice;
            if (polish.polish(next, shifts, dice, stop_) > 0 ||
                double(polish.fit().pins()) != s.pins)
                return;
            s.choice = std::move(next);
        }
    }

    const Rules& rules_;
    const RowWish& wish_;
    std::stop_token stop_;
    std::vector<RowFrame> frames_;
    std::optional<ClearPlaces> places_;
    double size_ = 1;
    std::vector<Pool> pools_;
};

} // namespace

std::size_t RowLayout::pins() const {
    return std::accumulate(rows.begin(), rows.end(), std::size_t{0},
                           [](std::size_t n, const FittedRow& row) { return n + row.size(); });
}

std::optional<RowLayout> rowsFor(const Rules& rules, const RowWish& wish, std::stop_token stop) {
    return Search{rules, wish, std::move(stop)}.run();
}

int slack64ths(const Spots& points, const Rules& rules) {
    const auto holds = [&](int k) { return covered(points, rules.top(), rules.radius - k / 64.0); };
    int lo = 0, hi = 1;
    for (; hi <= 64 && holds(hi); hi *= 2)
        lo = hi;
    for (hi = std::min(hi, 65); hi - lo > 1;)
        (holds((lo + hi) / 2) ? lo : hi) = (lo + hi) / 2;
    return lo;
}

} // namespace bastewright::points
