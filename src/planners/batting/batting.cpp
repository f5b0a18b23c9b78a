#include "planners/batting/batting.h"

#include "planners/batting/best_join.h"
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
        return cleanest
                   ? core::says("Four corners meet at 1 place; no layout of as few joins avoids it.")
                   : core::says("Four corners meet at 1 place; no layout that was tried avoids it.");
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
        if (batting_.pack) {
            const auto pack = packNamed(*batting_.pack);
            if (!pack)
                return unknownPack();
            if (holds(pack->size, needed_))
                return fromPack(*pack);
            if (batting_.pieces.empty())
                return packTooSmall(*pack);
            out_.findings.push_back({Finding::Level::note, "/batting/pack",
                                     core::says("The %1 pack is smaller than the %2 needed, so "
                                                "pieces are joined to it.",
                                                named(*pack), text(needed_)),
                                     ""});
            batting_.pieces.push_back(
                {std::string{pack->name}, pack->size.width, pack->size.length, 1});
        }
        if (batting_.pieces.empty()) {
            if (const auto pack = smallestPack(needed_))
                return fromPack(*pack);
            return noPackHolds();
        }
        return fromPieces();
    }

private:
    Sentence text(Size s) const { return core::size(s.width, s.length, unit_); }
    Sentence named(const PackSize& p) const {
        return core::says("%1 (%2)", p.name, text(p.size));
    }
    void stop(std::string field, Sentence what, Sentence cure) {
        out_.findings.push_back(
            {Finding::Level::stop, std::move(field), std::move(what), std::move(cure)});
    }

    bool checkInput() {
        const auto length = [&](Length l) { return core::length(l, unit_); };
        if (needed_.width <= Length{} || needed_.length <= Length{})
            stop("/top", core::says("The batting would be %1; a size above 0 is accepted.", text(needed_)),
                 "");
        if (batting_.trim < Length{})
            stop("/batting/trim",
                 core::says("The trim is %1; 0 or more is accepted.", length(batting_.trim)), "");
        if (batting_.overlap < Length{})
            stop("/batting/overlap",
                 core::says("The overlap is %1; 0 or more is accepted.", length(batting_.overlap)),
                 "");
        if (out_.findings.empty() && std::min(needed_.width, needed_.length) <= batting_.overlap)
            stop("/batting/overlap",
                 core::says("The overlap of %1 is as large as the batting; less than its shorter "
                            "side is accepted.",
                            length(batting_.overlap)),
                 "");
        for (std::size_t i = 0; i < batting_.pieces.size(); ++i) {
            const BattingPiece& p = batting_.pieces[i];
            if (p.width <= Length{} || p.length <= Length{})
                stop("/batting/pieces/" + std::to_string(i),
                     core::says("Piece %1 is %2; a size above 0 each way is accepted.", p.name,
                                text({p.width, p.length})),
                     "");
        }
        return out_.findings.empty();
    }

    BattingOutcome fromPack(const PackSize& pack) {
        const bool turned = needed_.width > pack.size.width || needed_.length > pack.size.length;
        BattingPlan plan;
        plan.pack = pack.name;
        const Length w = turned ? needed_.length : needed_.width;
        const Length l = turned ? needed_.width : needed_.length;
        plan.pieces.push_back({plan.pack,
                               {Length{}, Length{}, needed_.width, needed_.length},
                               turned,
                               {Length{}, Length{}, w, l}});
        out_.plan = std::move(plan);
        return std::move(out_);
    }

    BattingOutcome unknownPack() {
        Sentences names;
        for (const PackSize& p : kPackSizes)
            names.emplace_back(p.name);
        stop("/batting/pack",
             core::says("No pack is called '%1'; accepted are %2.", *batting_.pack,
                        core::commaList(names)),
             "");
        return std::move(out_);
    }

    BattingOutcome packTooSmall(const PackSize& pack) {
        const auto larger = smallestPack(needed_);
        stop("/batting/pack",
             core::says("The %1 pack does not hold the %2 needed.", named(pack), text(needed_)),
             larger ? core::says("A %1 pack holds it.", named(*larger))
                    : core::says("Join further pieces to it, or use less overage."));
        return std::move(out_);
    }

    BattingOutcome noPackHolds() {
        const PackSize& largest = kPackSizes.back();
        const Length eaten = batting_.overlap + 2 * batting_.trim;
        stop("/batting",
             core::says("No pack holds the %1 needed; the largest is %2.", text(needed_),
                        named(largest)),
             eaten < largest.size.width
                 ? core::says("List the pieces to join; %1 such packs suffice.",
                              ceilDiv(needed_.width, largest.size.width - eaten) *
                                  ceilDiv(needed_.length, largest.size.length - eaten))
                 : core::says("List the pieces to join."));
        return std::move(out_);
    }

    BattingOutcome fromPieces() {
        const Pool pool = poolOf(batting_, needed_, unit_, kMostPieces, out_.findings);
        BestJoin join = bestJoin(pool, seams_, kWork);
        if (join.layout) {
            if (!join.fewest)
                out_.findings.push_back(
                    {Finding::Level::note, "/batting/pieces",
                     core::says("There are too many pieces to try all joins; there may be a way "
                                "with fewer."),
                     ""});
            return joined(pool, join, {});
        }
        const bool few = pool.blanks.size() <= kMostSplit;
        if (auto rescue = few ? splitOne(pool, seams_, kRescueWork) : std::nullopt)
            return joined(rescue->pool, rescue->join, {rescue->split});
        return notEnough(pool, join.fewest);
    }

    BattingOutcome joined(const Pool& pool, const BestJoin& join,
                          std::vector<BattingSplit> splits) {
        const JoinLayout& layout = *join.layout;
        out_.plan = planOf(pool, layout, unit_);
        if (batting_.pack)
            out_.plan->pack = *batting_.pack;
        const auto say = [&](Finding::Level level, Sentence what) {
            out_.findings.push_back({level, "/batting/pieces", std::move(what), ""});
        };
        for (const BattingSplit& s : splits)
            say(Finding::Level::note,
                s.acrossWidth
                    ? core::says("Whole pieces do not suffice, so piece %1 is cut in two first, at "
                                 "%2 of its width.",
                                 s.name, core::length(s.at, unit_))
                    : core::says("Whole pieces do not suffice, so piece %1 is cut in two first, at "
                                 "%2 of its length.",
                                 s.name, core::length(s.at, unit_)));
        if (layout.corners > 0)
            say(Finding::Level::warn, cornersMeet(layout.corners, join.cleanest));
        if (layout.alongSeams > 0)
            say(Finding::Level::warn,
                layout.alongSeams == 1
                    ? core::says("1 join runs along a backing seam; no layout that was tried avoids "
                                 "it.")
                    : core::says("%1 joins run along a backing seam; no layout that was tried "
                                 "avoids it.",
                                 layout.alongSeams));
        out_.plan->splits = std::move(splits);
        return std::move(out_);
    }

    BattingOutcome notEnough(const Pool& pool, bool proven) {
        const Size extra = leastExtra(pool, unit_);
        const auto pack = smallestPack(extra), whole = smallestPack(needed_);
        Sentence cure =
            pack ? core::says("One more piece of at least %1 would do; the smallest pack that holds "
                              "it is %2.",
                              text(extra), named(*pack))
                 : core::says("One more piece of at least %1 would do.", text(extra));
        if (whole && whole->name != pack->name) // what holds the whole holds the extra
            cure = core::says("%1 A %2 pack holds all of it.", std::move(cure), named(*whole));
        if (!pool.mayTurn) {
            Pool turning = pool;
            turning.mayTurn = true;
            std::uint64_t work = kRescueWork;
            if (fewestPieces(turning, int(pool.blanks.size()), work))
                cure = core::says("They suffice if pieces may be turned a quarter. Or: %1",
                                  std::move(cure));
        }
        stop("/batting/pieces",
             proven ? core::says("The pieces cannot be joined by straight cuts to the %1 needed.",
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
