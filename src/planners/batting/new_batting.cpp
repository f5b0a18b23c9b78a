#include "planners/batting/new_batting.h"

#include "plan/trade_times.h"
#include "planners/batting/join_layout.h"
#include "planners/batting/new_batting_words.h"

#include <algorithm>
#include <cmath>

namespace bastewright::batting {
namespace {

/// What is left of a measure once it is washed, rounded down.
Length washed(Length bought, double shrinkPercent) {
    return shrinkPercent <= 0 ? bought
                              : Length::nanometres(std::int64_t(
                                    std::floor(double(bought.nm()) * (1 - shrinkPercent / 100))));
}

/// Length to buy off a roll so that `cut` is left: rounded up as it is sold.
Length toBuy(Length cut, double shrinkPercent, Unit unit) {
    const Length step = unit == Unit::inch ? Length::inch64ths(288) : Length::millimetres(50);
    Length raw = shrinkPercent <= 0 ? cut
                                    : Length::nanometres(std::int64_t(
                                          std::ceil(double(cut.nm()) / (1 - shrinkPercent / 100))));
    while (washed(raw, shrinkPercent) < cut)
        raw += Length::nanometres(1);
    return step * ceilDiv(raw, step);
}

/// Places across the batting at which parts may be joined, seen along one direction.
struct Joins {
    std::vector<Length> at;
    int alongSeams = 0;
};

class Maker {
public:
    Maker(const Batting& rules, const Offered& offered, Size needed, Unit unit,
          const std::vector<Segment>& seams)
        : rules_{rules}
        , offered_{offered}
        , needed_{needed}
        , unit_{unit}
        , seams_{seams}
        , overlap_{rules.overlap} {}

    std::vector<NewBatting> all() && {
        for (const PackSize& p : offered_.packs)
            onePack(p);
        if (out_.empty())
            for (const PackSize& p : offered_.packs)
                twoPacks(p);
        for (const Length width : offered_.rolls)
            for (const bool along : {true, false}) {
                lengths(width, along);
                withStrip(width, along);
            }
        return std::move(out_);
    }

private:
    /// Where parts that can be `caps` wide once joined meet, each as far on as can be: off the
    /// seams that run along where there is room, the last part not narrower than 6 in.
    std::optional<Joins> place(const std::vector<Length>& caps, Length across, bool along) const {
        Joins out;
        Length rest;
        for (const Length cap : caps)
            rest += cap;
        if (rest < across)
            return std::nullopt;
        Length from;
        for (std::size_t i = 0; i + 1 < caps.size(); ++i) {
            rest -= caps[i];
            const Length least = std::max(across - rest, from + kLeastShown);
            const Length most = std::min(from + caps[i], across - kLeastShown);
            if (most < least)
                return std::nullopt;
            from = offSeams(least, most, along);
            out.alongSeams += nearSeam(from, along);
            out.at.push_back(from);
        }
        return out;
    }

    bool nearSeam(Length at, bool along) const {
        return std::ranges::any_of(seams_, [&](const Segment& s) {
            return along ? s.from.x == s.to.x && abs(s.from.x - at) < kOffSeams
                         : s.from.y == s.to.y && abs(s.from.y - at) < kOffSeams;
        });
    }

    /// The furthest place that keeps off the seams, else the furthest.
    Length offSeams(Length least, Length most, bool along) const {
        std::vector<Length> places{most};
        for (const Segment& s : seams_)
            places.push_back((along ? s.from.x : s.from.y) - kOffSeams);
        std::ranges::sort(places, std::ranges::greater{});
        for (const Length at : places)
            if (least <= at && at <= most && !nearSeam(at, along))
                return at;
        return most;
    }

    Size usable(Size pack) const {
        return {washed(pack.width, rules_.shrinkPercent),
                washed(pack.length, rules_.shrinkPercent)};
    }

    void onePack(const PackSize& pack) {
        const Size size = usable(pack.size);
        if (!holds(size, needed_))
            return;
        const bool turned = needed_.width > size.width || needed_.length > size.length;
        NewBatting way;
        way.plan.pack = pack.name;
        way.plan.buy = {{std::string{pack.name}, pack.size.width, pack.size.length}};
        way.plan.pieces.push_back({"1",
                                   {Length{}, Length{}, needed_.width, needed_.length},
                                   turned,
                                   {Length{}, Length{}, turned ? needed_.length : needed_.width,
                                    turned ? needed_.width : needed_.length},
                                   0});
        add(std::move(way));
    }

    void twoPacks(const PackSize& pack) {
        for (const bool along : {true, false})
            for (const int turns : {0, 1, 2, 3}) {
                const Size first = trimmed(pack, (turns & 1) != 0);
                const Size second = trimmed(pack, (turns & 2) != 0);
                const Length across = along ? needed_.width : needed_.length;
                const Length height = along ? needed_.length : needed_.width;
                const auto wide = [&](Size s) { return along ? s.width : s.length; };
                const auto tall = [&](Size s) { return along ? s.length : s.width; };
                if (tall(first) < height || tall(second) < height)
                    continue;
                const auto joins = place(
                    {wide(first) - overlap_.before, wide(second) - overlap_.after}, across, along);
                if (!joins)
                    continue;
                NewBatting way;
                way.plan.pack = pack.name;
                way.plan.buy.assign(2, {std::string{pack.name}, pack.size.width, pack.size.length});
                way.alongSeams = joins->alongSeams;
                for (const int i : {0, 1}) {
                    const Interval shown =
                        i == 0 ? Interval{Length{}, joins->at[0]} : Interval{joins->at[0], across};
                    piece(way, std::to_string(i + 1), {shown, along, height, (turns >> i & 1) != 0},
                          {rules_.trim, rules_.trim}, i);
                }
                joinBetween(way, joins->at, along, height);
                add(std::move(way));
            }
    }

    Size trimmed(const PackSize& pack, bool turned) const {
        const Size s = usable(pack.size);
        const Size t{s.width - 2 * rules_.trim, s.length - 2 * rules_.trim};
        return turned ? Size{t.length, t.width} : t;
    }

    /// As few lengths side by side as are wide enough.
    void lengths(Length width, bool along) {
        const Length across = along ? needed_.width : needed_.length;
        const Length height = along ? needed_.length : needed_.width;
        const Length w = washed(width, rules_.shrinkPercent);
        std::vector<Length> caps{w};
        while (w * std::int64_t(caps.size()) - rules_.overlap * (std::int64_t(caps.size()) - 1) <
               across) {
            caps.back() = capOf(w, caps.size() - 1);
            caps.push_back(w - overlap_.after);
        }
        const auto joins = place(caps, across, along);
        if (!joins)
            return;
        NewBatting way;
        way.alongSeams = joins->alongSeams;
        offRoll(way, *joins, {along, across, height}, caps.size(), {});
        const Length cut = height * std::int64_t(caps.size());
        finishRoll(std::move(way), width, cut);
    }

    /// Widest that length number i may show with a join behind it.
    Length capOf(Length w, std::size_t i) const {
        return i == 0 ? w - overlap_.before : w - rules_.overlap;
    }

    /// One length fewer, and what is missing as a strip turned a quarter.
    void withStrip(Length width, bool along) {
        const Length across = along ? needed_.width : needed_.length;
        const Length height = along ? needed_.length : needed_.width;
        const Length w = washed(width, rules_.shrinkPercent);
        if (w >= across)
            return;
        std::vector<Length> caps{capOf(w, 0)};
        Length sum = caps[0];
        while (sum + w - overlap_.after < across) {
            caps.push_back(capOf(w, caps.size()));
            sum += caps.back();
        }
        // As narrow as it may be; wider only where the join behind the lengths has no other place.
        const Length strip = std::max(across - sum, kLeastShown);
        caps.push_back(strip);
        auto joins = place(caps, across, along);
        if (!joins)
            return;
        Joins between = blocks(w, height, !along);
        joins->alongSeams += between.alongSeams;
        between.at.insert(between.at.begin(), Length{});
        NewBatting way;
        way.pieceStrip = true;
        way.alongSeams = joins->alongSeams;
        offRoll(way, *joins, {along, across, height}, caps.size() - 1, between.at);
        const Length cut = height * (std::int64_t(caps.size()) - 1) +
                           (strip + overlap_.after) * std::int64_t(between.at.size());
        finishRoll(std::move(way), width, cut);
    }

    /// Where as few lengths of a strip as are long enough meet: even where they can be, off the
    /// seams.
    Joins blocks(Length w, Length height, bool along) const {
        // As far as n of them reach from an edge, with a join behind the last.
        const auto reach = [&](std::int64_t n, Length behind) {
            return w * n - rules_.overlap * (n - 1) - behind;
        };
        std::int64_t n = 1;
        while (reach(n, Length{}) < height)
            ++n;
        Joins out;
        for (std::int64_t i = 1; i < n; ++i) {
            const Length before = i == 1 ? Length{} : out.at.back();
            const Length most =
                std::min(i == 1 ? reach(1, overlap_.before) : before + w - rules_.overlap,
                         height - kLeastShown);
            const Length least = height - reach(n - i, overlap_.after);
            const Length even = std::clamp(height * i / n, least, std::max(least, most));
            const Length at = nearSeam(even, along) ? offSeams(least, most, along) : even;
            out.alongSeams += nearSeam(at, along);
            out.at.push_back(at);
        }
        return out;
    }

    struct Lie {
        bool along;
        Length across, height;
    };

    /// Pieces of `whole` lengths, and of a strip from places `blocks` along its height.
    void offRoll(NewBatting& way, const Joins& joins, Lie lie, std::size_t whole,
                 const std::vector<Length>& blocks) const {
        std::vector<Length> edges{Length{}};
        edges.insert(edges.end(), joins.at.begin(), joins.at.end());
        edges.push_back(lie.across);
        Length y;
        for (std::size_t i = 0; i < whole; ++i) {
            piece(way, std::to_string(i + 1),
                  {{edges[i], edges[i + 1]}, lie.along, lie.height, !lie.along}, {Length{}, y}, 0);
            y += lie.height;
        }
        const Interval strip{edges[edges.size() - 2], edges.back()};
        for (std::size_t i = 0; i < blocks.size(); ++i) {
            const Interval run{blocks[i], i + 1 < blocks.size() ? blocks[i + 1] : lie.height};
            std::string name = std::to_string(whole + 1);
            if (blocks.size() > 1)
                name += char('a' + i);
            BattingPiecePlaced p{std::move(name), area(strip, run, lie.along), lie.along, {}, 0};
            p.onPiece = cutFor(p, {Length{}, y});
            y = p.onPiece.y1;
            way.plan.pieces.push_back(std::move(p));
            if (i > 0) {
                const Rect r = area(strip, run, lie.along);
                join(way, lie.along ? Segment{{r.x0, r.y0}, {r.x1, r.y0}}
                                    : Segment{{r.x0, r.y0}, {r.x0, r.y1}});
            }
        }
        joinBetween(way, joins.at, lie.along, lie.height);
    }

    static Rect area(Interval across, Interval along, bool lengthwise) {
        return lengthwise ? Rect{across.lo, along.lo, across.hi, along.hi}
                          : Rect{along.lo, across.lo, along.hi, across.hi};
    }

    struct Placed {
        Interval shown;
        bool along;
        Length height;
        bool turned;
    };

    void piece(NewBatting& way, std::string name, Placed at, Point from, int bought) const {
        BattingPiecePlaced p{std::move(name),
                             area(at.shown, {Length{}, at.height}, at.along),
                             at.turned,
                             {},
                             bought};
        p.onPiece = cutFor(p, from);
        way.plan.pieces.push_back(std::move(p));
    }

    /// What is cut for a piece, with what the joins round it eat, from a place on.
    Rect cutFor(const BattingPiecePlaced& p, Point from) const {
        const Length w = p.area.width() + (p.area.x0 > Length{} ? overlap_.after : Length{}) +
                         (p.area.x1 < needed_.width ? overlap_.before : Length{});
        const Length l = p.area.length() + (p.area.y0 > Length{} ? overlap_.after : Length{}) +
                         (p.area.y1 < needed_.length ? overlap_.before : Length{});
        return {from.x, from.y, from.x + (p.turned ? l : w), from.y + (p.turned ? w : l)};
    }

    void joinBetween(NewBatting& way, const std::vector<Length>& at, bool along,
                     Length height) const {
        for (const Length x : at)
            join(way,
                 along ? Segment{{x, Length{}}, {x, height}} : Segment{{Length{}, x}, {height, x}});
    }

    static void join(NewBatting& way, Segment s) {
        way.plan.joins.push_back(s);
        way.plan.strip += (s.to.x - s.from.x) + (s.to.y - s.from.y);
    }

    void finishRoll(NewBatting way, Length width, Length cut) {
        way.plan.buy = {{"", width, toBuy(cut, rules_.shrinkPercent, unit_)}};
        add(std::move(way));
    }

    void add(NewBatting way) {
        for (const BattingPurchase& b : way.plan.buy)
            way.area += b.width.in() * b.length.in();
        way.plan.joinCost = joinCost(way.plan, unit_);
        way.plan.toBring = toBring(way.plan, unit_);
        out_.push_back(std::move(way));
    }

    const Batting& rules_;
    const Offered& offered_;
    const Size needed_;
    const Unit unit_;
    const std::vector<Segment>& seams_;
    const Overlap overlap_;
    std::vector<NewBatting> out_;
};

} // namespace

std::vector<NewBatting> newBatting(const Batting& rules, const Offered& offered, Size needed,
                                   Unit unit, const std::vector<Segment>& seams) {
    return Maker{rules, offered, needed, unit, seams}.all();
}

bool takenBefore(const NewBatting& a, const NewBatting& b, bool savings) {
    const auto rank = [&](const NewBatting& n) {
        const bool roll = n.plan.buy.front().pack.empty();
        return std::tuple(savings ? n.area : 0.0, n.plan.joins.size(), n.alongSeams, n.plan.strip,
                          n.plan.joins.empty() && roll, n.area, roll);
    };
    return rank(a) < rank(b);
}

Sentence joinCost(const BattingPlan& plan, Unit unit) {
    if (plan.joins.empty())
        return {};
    using namespace trade_times;
    const double seconds =
        kJoinBatting * double(plan.joins.size()) + kJoinBattingYard * plan.strip.in() / 36;
    const Seconds about{std::int64_t(std::ceil(seconds / 300)) * 300};
    const Sentence strip = core::length(plan.strip, unit);
    return plan.joins.size() == 1
               ? core::says("The join takes %1 of joining strip and about %2.", strip, about)
               : core::says("The %1 joins take %2 of joining strip and about %3.",
                            plan.joins.size(), strip, about);
}

} // namespace bastewright::batting
