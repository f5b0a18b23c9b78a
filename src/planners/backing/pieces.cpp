#include "planners/backing/arrangement.h"
#include "planners/backing/backing.h"

#include <algorithm>
#include <string>
#include <tuple>

namespace bastewright::backing {
namespace {

/// Cuts are counted along what is on hand of a cloth, and on along what is bought of it.
Length startOf(const Problem& problem, const Bolt& bolt) {
    return bolt.bought ? problem.rules.fabrics[std::size_t(bolt.fabric)].onHand : Length{};
}

class Cutter {
public:
    Cutter(const Problem& problem, const std::vector<Bolt>& bolts, const Layout& layout)
        : problem_{problem}
        , bolts_{bolts}
        , layout_{layout}
        , height_{problem.height(layout.along)}
        , next_(bolts.size())
        , flank_(bolts.size()) {}

    void strip(const Strip& s, Interval place, bool first, bool last) {
        if (s.bolt < 0)
            return column(place, std::to_string(++number_), !first + !last);
        const auto b = std::size_t(s.bolt);
        const Length width = place.size() + (!first + !last) * problem_.rules.seam;
        // The second flank comes from the length the first was cut from.
        int index;
        Length x;
        std::string name;
        if (s.flank && flank_[b].open) {
            index = flank_[b].index;
            x = flank_[b].used;
            name = flank_[b].name + 'b';
        } else {
            index = next_[b]++;
            name = std::to_string(++number_);
            if (s.flank) {
                flank_[b] = {true, index, width, name};
                name += 'a';
            }
        }
        const Length y =
            startOf(problem_, bolts_[b]) + phase(b) + lengthStart(index, height_, problem_.rules);
        cut(s.bolt, {x, y, x + width, y + height_}, name, false);
        panel(nameOf(bolts_[b].fabric), place, {Length{}, height_}, name);
    }

    void joins(ColumnJoins joins) { joins_ = std::move(joins); }

    /// Cuts as the job lists the fabrics, each from its beginning.
    Pieces finished() {
        const auto& fabrics = problem_.rules.fabrics;
        std::ranges::stable_sort(pieces_.cuts, {}, [&](const ClothCut& c) {
            return std::tuple{std::ranges::find(fabrics, c.fabric, &Fabric::name), c.onCloth.y0,
                              c.onCloth.x0};
        });
        return std::move(pieces_);
    }

private:
    struct Flank {
        bool open = false;
        int index = 0;
        Length used;
        std::string name;
    };

    /// Where a print must match and some panels are cut from a length on hand, the bought length
    /// may start up to a repeat late.
    Length phase(std::size_t b) const {
        if (!bolts_[b].bought || problem_.rules.repeat <= Length{})
            return {};
        for (std::size_t o = 0; o < bolts_.size(); ++o)
            if (o != b && bolts_[o].fabric == bolts_[b].fabric && layout_.lengths[o] > 0)
                return problem_.rules.repeat;
        return {};
    }

    void column(Interval place, const std::string& name, int sides) {
        const Column& c = *layout_.column;
        const Length width = place.size() + sides * problem_.rules.seam;
        if (c.fabric < 0) // of a cloth that is not listed: cut from whatever is found
            return panel(std::string{kUnlistedCloth}, place, {Length{}, height_}, name);
        const int n = c.blocks();
        int taken[2] = {0, 0};
        for (int i = 0; i < n; ++i) {
            const Interval run{i == 0 ? Length{} : joins_.at[std::size_t(i) - 1],
                               i == n - 1 ? height_ : joins_.at[std::size_t(i)]};
            const bool hand = joins_.handFirst ? i < c.fromHand.count : i >= c.fromBought.count;
            const Blocks& source = hand ? c.fromHand : c.fromBought;
            const auto b = std::size_t(source.bolt);
            const Length tall = run.size() + ((i > 0) + (i + 1 < n)) * problem_.rules.seam;
            const Length y = startOf(problem_, bolts_[b]) +
                             clothFor(layout_.lengths[b], height_, problem_.rules) +
                             problem_.rules.squaring;
            const Length aside = taken[hand]++ * width;
            const Rect at = source.turned ? Rect{Length{}, y + aside, tall, y + aside + width}
                                          : Rect{aside, y, aside + width, y + tall};
            const std::string block = n == 1 ? name : name + char('a' + i);
            cut(source.bolt, at, block, source.turned);
            panel(nameOf(c.fabric), place, run, block);
        }
    }

    const std::string& nameOf(int fabric) const {
        return problem_.rules.fabrics[std::size_t(fabric)].name;
    }

    void cut(int bolt, Rect at, std::string piece, bool turned) {
        const Bolt& b = bolts_[std::size_t(bolt)];
        pieces_.cuts.push_back({nameOf(b.fabric), at, std::move(piece), turned, !b.bought});
    }

    void panel(std::string fabric, Interval across, Interval along, std::string name) {
        const Rect area = layout_.along ? Rect{across.lo, along.lo, across.hi, along.hi}
                                        : Rect{along.lo, across.lo, along.hi, across.hi};
        pieces_.panels.push_back({std::move(fabric), area, std::move(name)});
    }

    const Problem& problem_;
    const std::vector<Bolt>& bolts_;
    const Layout& layout_;
    const Length height_;
    std::vector<int> next_;
    std::vector<Flank> flank_;
    ColumnJoins joins_;
    Pieces pieces_;
    int number_ = 0;
};

} // namespace

Pieces piecesOf(const Problem& problem, const std::vector<Bolt>& bolts, const Layout& layout,
                const Arrangement& arrangement) {
    Cutter cutter{problem, bolts, layout};
    cutter.joins(arrangement.joins);
    const std::size_t n = arrangement.strips.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Length lo = i == 0 ? Length{} : arrangement.seams[i - 1];
        const Length hi = i + 1 == n ? problem.across(layout.along) : arrangement.seams[i];
        cutter.strip(arrangement.strips[i], {lo, hi}, i == 0, i + 1 == n);
    }
    return cutter.finished();
}

} // namespace bastewright::backing
