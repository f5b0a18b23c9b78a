#include "planners/points/row_search.h"

#include "planners/points/holes.h"
#include "planners/points/row_front.h"
#include "planners/points/row_rounds.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace bastewright::points {
namespace {

// By trials on tops with seams every 3 and 4 in, in sashing and in triangles.
constexpr double kWider = 0.1;         ///< inches; what polishing can make up for
constexpr double kPlainerWorth = 1.02; ///< so much more a plainer figure may take

/// How many choices are laid in each direction, and how many corners those may leave bare that are
/// of interest, as a share of the points of a square grid. A row that runs along a straight seam
/// leaves many bare, which one shift closes; at slanted seams polishing takes the time.
struct Sample {
    double laid, bare;
};
constexpr Sample kStraight{450, 1}, kSlanted{360, 0.5};

/// For a first plan, which is hardly polished.
constexpr double kFirstWorth = 2;
/// What is polished: so many choices of those that are cheapest at one worth.
struct Chosen {
    double worth;
    std::size_t count;
};
constexpr std::array kChosen{Chosen{RowRounds::kCornerWorth, 3}, Chosen{0.25, 6}, Chosen{0.12, 6}};

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
        // Points of a square grid: about what a laying costs.
        size_ = rules.top().area() / squared(rules.spacing);
        front_ = RowFront{first() ? RowFit::kTooMany : int(sampled().bare * size_)};
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
        const int bare = fit.lay(choice);
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

    Sample sampled() const { return frames_.front().straight() ? kStraight : kSlanted; }

    std::optional<RowLayout> amongSeams() {
        sample();
        if (first())
            return amongFirst();
        std::vector<RowStart> starts;
        for (const auto& [worth, count] : kChosen)
            for (RowStart& s : front_.cheapest(worth, count))
                if (std::ranges::none_of(starts,
                                         [&](const RowStart& o) { return o.pins == s.pins; }))
                    starts.push_back(std::move(s));
        if (starts.empty())
            return {};
        const double shifts = std::clamp(4e5 / size_, 30.0, 1500.0) * wish_.effort;
        return laid(RowRounds{rules_, places(), stop_}.best(std::move(starts), int(shifts)).choice);
    }

    std::optional<RowLayout> amongFirst() {
        std::vector<RowStart> starts = front_.cheapest(kFirstWorth, 1);
        if (starts.empty())
            return {};
        RowRounds{rules_, places(), stop_}.polish(starts.front(),
                                                  {int(std::clamp(1e5 / size_, 30.0, 600.0))});
        return laid(starts.front().choice);
    }

    void sample() {
        const int budget = first() ? 8 : int(sampled().laid * std::clamp(1e3 / size_, 0.1, 1.0));
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
            double cheapest = 1e9;
            // Most pairs do not cover, or need too many.
            for (long pick = 0; pick < 400L * budget && laid < budget && !stop_.stop_requested();
                 ++pick) {
                const auto& ribbons = options.ribbons[dice.below(options.ribbons.size())];
                const auto& rows = options.rows[dice.below(options.rows.size())];
                const auto most = std::size_t(double(*least) * 1.35);
                const auto c = combined(frame, ribbons, rows, dice.below(2) == 1, most);
                if (!c)
                    continue;
                // Of a first plan only the cheapest goes on.
                const int bare =
                    std::min(front_.mostBare(c->count()),
                             first() ? int((cheapest - double(c->count())) / kFirstWorth)
                                     : RowFit::kTooMany);
                if (bare < 0)
                    continue;
                ++laid;
                const int left = fit.lay(*c, bare);
                if (left > bare)
                    continue;
                const RowStart start{&frame, *c, double(fit.pins()), left};
                cheapest = std::min(cheapest, start.cost(kFirstWorth));
                front_.offer(start);
            }
        }
    }

    const Rules& rules_;
    const RowWish& wish_;
    std::stop_token stop_;
    std::vector<RowFrame> frames_;
    std::optional<ClearPlaces> places_;
    double size_ = 1;
    RowFront front_{0};
};

} // namespace

std::size_t RowLayout::pins() const {
    return std::accumulate(rows.begin(), rows.end(), std::size_t{0},
                           [](std::size_t n, const FittedRow& row) { return n + row.size(); });
}

RowLayout straightRows(const RowFrame& frame, RowChoice choice) {
    const double fine = frame.fine();
    RowLayout out;
    for (std::size_t i = 0; i < choice.rows.size(); ++i) {
        FittedRow& line = out.rows.emplace_back();
        for (const int mark : choice.marksOf(i))
            line.push_back({mark, {mark * fine, choice.rows[i] * fine}});
    }
    out.choice = std::move(choice);
    return out;
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
