#include "planners/batting/batting.h"

#include "planners/batting/best_join.h"
#include "planners/batting/new_batting.h"
#include "planners/batting/new_batting_words.h"
#include "planners/batting/pack_size.h"
#include "planners/batting/rescue.h"

#include <algorithm>

namespace bastewright {
namespace {

using namespace batting;

constexpr std::size_t kMostPieces = 20;
constexpr std::size_t kMostSplit =
    13; ///< of larger pools, hardly a split is tried before work runs out
// Steps of the search, about half a second, for joins of whole pieces, and for each attempt to
// rescue a job that has none.
constexpr std::uint64_t kWork = 40'000'000, kRescueWork = 20'000'000;

Sentence cornersMeet(int places, bool cleanest) {
    if (places == 1)
        return cleanest ? core::says(
                              "Four corners meet at 1 place; no layout of as few joins avoids it.")
                        : core::says(
                              "Four corners meet at 1 place; no layout that was tried avoids it.");
    return cleanest ? core::says("Four corners meet at %1 places; no layout of as few joins avoids "
                                 "it.",
                                 places)
                    : core::says("Four corners meet at %1 places; no layout that was tried avoids "
                                 "it.",
                                 places);
}

class Planner {
public:
    Planner(const Job& job, Size needed, const std::vector<Segment>& seams)
        : batting_{job.batting}
        , unit_{job.unit}
        , needed_{needed}
        , seams_{seams} {}

    BattingOutcome run() {
        if (!checkInput())
            return std::move(out_);
        Offered offered{{}, batting_.rolls};
        offered.packs.assign(kPackSizes.begin(), kPackSizes.end());
        if (batting_.rolls.empty())
            offered.rolls = Batting{}.rolls;
        if (batting_.pack) {
            const auto pack = packNamed(*batting_.pack, unit_);
            if (!pack)
                return unknownPack();
            if (batting_.pieces.empty() || holds(washed(pack->size), needed_))
                return bought({{*pack}, {}}, offered);
            const Size size = washed(pack->size);
            batting_.pieces.push_back({std::string{pack->name}, size.width, size.length, 1});
            return fromPieces(*pack);
        }
        if (batting_.roll)
            return bought({{}, {*batting_.roll}}, offered);
        if (batting_.pieces.empty())
            return bought(offered, offered);
        return fromPieces({});
    }

private:
    Sentence text(Size s) const { return core::size(s.width, s.length, unit_); }
    Sentence named(const PackSize& p) const { return core::says("%1 (%2)", p.name, text(p.size)); }
    void stop(Finding::Kind kind, std::string field, Sentence what, Sentence cure) {
        out_.findings.push_back(
            {kind, Finding::Level::stop, std::move(field), std::move(what), std::move(cure)});
    }
    void refuse(std::string field, Sentence what) {
        stop(Finding::Kind::input, std::move(field), std::move(what), {});
    }

    bool checkInput() {
        const auto length = [&](Length l) { return core::length(l, unit_); };
        if (needed_.width <= Length{} || needed_.length <= Length{})
            refuse("/top", core::says("The batting would be %1; a size above 0 is accepted.",
                                      text(needed_)));
        if (batting_.trim < Length{})
            refuse("/batting/trim",
                   core::says("The trim is %1; 0 or more is accepted.", length(batting_.trim)));
        if (batting_.overlap < Length{})
            refuse("/batting/overlap", core::says("The overlap is %1; 0 or more is accepted.",
                                                  length(batting_.overlap)));
        if (out_.findings.empty() && std::min(needed_.width, needed_.length) <= batting_.overlap)
            refuse("/batting/overlap",
                   core::says("The overlap of %1 is as large as the batting; less than its shorter "
                              "side is accepted.",
                              length(batting_.overlap)));
        for (std::size_t i = 0; i < batting_.pieces.size(); ++i) {
            const BattingPiece& p = batting_.pieces[i];
            if (p.width <= Length{} || p.length <= Length{})
                refuse("/batting/pieces/" + std::to_string(i),
                       core::says("Piece %1 is %2; a size above 0 each way is accepted.", p.name,
                                  text({p.width, p.length})));
        }
        return out_.findings.empty();
    }

    Size washed(Size s) const {
        const auto once = [&](Length l) {
            return Length::nanometres(
                std::int64_t(double(l.nm()) * (1 - batting_.shrinkPercent / 100)));
        };
        return batting_.shrinkPercent > 0 ? Size{once(s.width), once(s.length)} : s;
    }

    /// The best of what was asked for; where that does not do, of everything, and that is said.
    BattingOutcome bought(const Offered& asked, const Offered& everything) {
        const auto compare = [&](const NewBatting& a, const NewBatting& b) {
            return takenBefore(a, b, batting_.pieceStrip);
        };
        std::vector<NewBatting> all = newBatting(batting_, everything, needed_, unit_, seams_);
        std::ranges::stable_sort(all, compare);
        std::vector<NewBatting> mine = newBatting(batting_, asked, needed_, unit_, seams_);
        std::ranges::stable_sort(mine, compare);
        const auto taken = [&](const std::vector<NewBatting>& of) {
            return std::ranges::find_if(
                of, [&](const NewBatting& n) { return batting_.pieceStrip || !n.pieceStrip; });
        };
        auto best = taken(mine);
        if (best == mine.end()) {
            out_.findings.push_back(
                {Finding::Kind::otherBatting, Finding::Level::warn,
                 batting_.pack ? "/batting/pack" : "/batting/roll",
                 core::says(
                     "What was asked for does not make the %1 needed, not even two joined, so "
                     "the batting is planned otherwise.",
                     text(needed_)),
                 ""});
            mine = all;
            best = taken(mine);
        }
        if (best == mine.end()) {
            stop(Finding::Kind::battingShort, "/batting/rolls",
                 core::says("No pack and no roll makes the %1 needed.", text(needed_)),
                 core::says("Enter a wider roll."));
            return std::move(out_);
        }
        out_.plan = best->plan;
        if (best->alongSeams > 0)
            saySeams(best->alongSeams);
        offer(*best, mine, all);
        return std::move(out_);
    }

    /// The chosen way, and of the others the best pack, the best rolls and what buys least.
    void offer(const NewBatting& chosen, const std::vector<NewBatting>& mine,
               const std::vector<NewBatting>& all) {
        constexpr std::size_t kMost = 5;
        auto& shown = out_.plan->alternatives;
        const auto add = [&](const NewBatting& n, bool taken) {
            const BattingPurchase& first = n.plan.buy.front();
            BattingAlternative a{first.pack,
                                 first.pack.empty() ? first.width : Length{},
                                 first.pack.empty() ? first.length : Length{},
                                 int(n.plan.joins.size()),
                                 n.plan.strip,
                                 n.pieceStrip,
                                 describe(n.plan, n.pieceStrip, unit_),
                                 taken};
            const bool known = std::ranges::any_of(shown, [&](const BattingAlternative& o) {
                return o.pack == a.pack && o.roll == a.roll && o.joins == a.joins &&
                       (o.pieceStrip == a.pieceStrip ||
                        (o.bought == a.bought && o.strip == a.strip));
            });
            if (!known && shown.size() < kMost)
                shown.push_back(std::move(a));
        };
        add(chosen, true);
        const auto least = [&](const std::vector<NewBatting>& of) {
            return std::ranges::min_element(of, {}, [](const NewBatting& n) { return n.area; });
        };
        add(*least(mine), false);
        if (const auto pack =
                std::ranges::find_if(all, [](const NewBatting& n) { return !n.plan.pack.empty(); });
            pack != all.end())
            add(*pack, false);
        add(*least(all), false);
        const auto outdone = [&](const NewBatting& n) {
            return std::ranges::any_of(all, [&](const NewBatting& o) {
                return o.plan.pack.empty() && o.area < n.area &&
                       o.plan.joins.size() <= n.plan.joins.size() && o.plan.strip <= n.plan.strip;
            });
        };
        for (const NewBatting& n : all)
            if (n.plan.pack.empty() && !outdone(n))
                add(n, false);
    }

    void saySeams(int joins) {
        out_.findings.push_back(
            {Finding::Kind::joinsOnSeams, Finding::Level::warn, "/batting/pieces",
             joins == 1 ? core::says("1 join runs along a backing seam; no layout that was tried "
                                     "avoids it.")
                        : core::says("%1 joins run along a backing seam; no layout that was tried "
                                     "avoids it.",
                                     joins),
             ""});
    }

    BattingOutcome unknownPack() {
        Sentences names;
        for (const PackSize& p : kPackSizes)
            names.emplace_back(p.name);
        stop(Finding::Kind::unknownPack, "/batting/pack",
             core::says("No pack is called '%1'; accepted are %2, or a size such as %3.",
                        *batting_.pack, core::commaList(names), text(kPackSizes[5].size)),
             "");
        return std::move(out_);
    }

    BattingOutcome fromPieces(const std::optional<PackSize>& pack) {
        const auto withPack = [&](BattingOutcome out) {
            if (!out.plan)
                return out;
            if (pack)
                for (BattingPiecePlaced& p : out.plan->pieces)
                    if (p.name == pack->name) {
                        p.bought = 0;
                        out.plan->pack = pack->name;
                        out.plan->buy = {
                            {std::string{pack->name}, pack->size.width, pack->size.length}};
                    }
            if (pack && !out.plan->buy.empty())
                out.findings.push_back({Finding::Kind::packJoined, Finding::Level::note,
                                        "/batting/pack",
                                        core::says("The %1 pack is smaller than the %2 needed, so "
                                                   "pieces are joined to it.",
                                                   named(*pack), text(needed_)),
                                        ""});
            out.plan->joinCost = joinCost(*out.plan, unit_);
            out.plan->toBring = toBring(*out.plan, unit_);
            return out;
        };
        const Pool pool = poolOf(batting_, needed_, unit_, kMostPieces, out_.findings);
        BestJoin join = bestJoin(pool, seams_, kWork);
        if (join.layout) {
            if (!join.fewest)
                out_.findings.push_back(
                    {Finding::Kind::joinsUntried, Finding::Level::note, "/batting/pieces",
                     core::says("There are too many pieces to try all joins; there may be a way "
                                "with fewer."),
                     ""});
            return withPack(joined(pool, join, {}));
        }
        const bool few = pool.blanks.size() <= kMostSplit;
        if (auto rescue = few ? splitOne(pool, seams_, kRescueWork) : std::nullopt)
            return withPack(joined(rescue->pool, rescue->join, {rescue->split}));
        return notEnough(pool, join.fewest);
    }

    BattingOutcome joined(const Pool& pool, const BestJoin& join,
                          std::vector<BattingSplit> splits) {
        const JoinLayout& layout = *join.layout;
        out_.plan = planOf(pool, layout, unit_);
        const auto say = [&](Finding::Kind kind, Finding::Level level, Sentence what) {
            out_.findings.push_back({kind, level, "/batting/pieces", std::move(what), ""});
        };
        for (const BattingSplit& s : splits)
            say(Finding::Kind::pieceCut, Finding::Level::note,
                s.acrossWidth
                    ? core::says("Whole pieces do not suffice, so piece %1 is cut in two first, at "
                                 "%2 of its width.",
                                 s.name, core::length(s.at, unit_))
                    : core::says("Whole pieces do not suffice, so piece %1 is cut in two first, at "
                                 "%2 of its length.",
                                 s.name, core::length(s.at, unit_)));
        if (layout.corners > 0)
            say(Finding::Kind::cornersMeet, Finding::Level::warn,
                cornersMeet(layout.corners, join.cleanest));
        if (layout.alongSeams > 0)
            saySeams(layout.alongSeams);
        out_.plan->splits = std::move(splits);
        return std::move(out_);
    }

    BattingOutcome notEnough(const Pool& pool, bool proven) {
        const Size extra = leastExtra(pool, unit_);
        const auto pack = smallestPack(extra), whole = smallestPack(needed_);
        Sentence cure =
            pack
                ? core::says("One more piece of at least %1 would do; the smallest pack that holds "
                             "it is %2.",
                             text(extra), named(*pack))
                : core::says("One more piece of at least %1 would do.", text(extra));
        if (whole && whole->name != pack->name) // what holds the whole holds the extra
            cure = core::says("%1 A %2 pack holds all of it.", std::move(cure), named(*whole));
        std::vector<NewBatting> rolls =
            newBatting(batting_, {{}, batting_.rolls}, needed_, unit_, seams_);
        std::erase_if(rolls, [](const NewBatting& n) { return n.pieceStrip; });
        if (!whole && !rolls.empty()) {
            const NewBatting& best = *std::ranges::min_element(
                rolls, [](const auto& a, const auto& b) { return takenBefore(a, b, false); });
            cure =
                core::says("%1 Or buy new: %2", std::move(cure), describe(best.plan, false, unit_));
        }
        if (!pool.mayTurn) {
            Pool turning = pool;
            turning.mayTurn = true;
            std::uint64_t work = kRescueWork;
            if (fewestPieces(turning, int(pool.blanks.size()), work))
                cure = core::says("They suffice if pieces may be turned a quarter. Or: %1",
                                  std::move(cure));
        }
        stop(Finding::Kind::battingShort, "/batting/pieces",
             proven
                 ? core::says("The pieces cannot be joined by straight cuts to the %1 needed.",
                              text(needed_))
                 : core::says("The pieces cannot be joined by straight cuts to the %1 needed, as "
                              "far as the search went.",
                              text(needed_)),
             cure);
        return std::move(out_);
    }

    Batting batting_;
    Unit unit_;
    Size needed_;
    const std::vector<Segment>& seams_;
    BattingOutcome out_;
};

} // namespace

BattingOutcome planBatting(const Job& job, Size needed, const std::vector<Segment>& backingSeams) {
    return Planner{job, needed, backingSeams}.run();
}

} // namespace bastewright
