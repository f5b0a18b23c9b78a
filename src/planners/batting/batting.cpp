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
                                     "The " + named(*pack) + " pack is smaller than the " +
                                         text(needed_) + " needed, so pieces are joined to it.",
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
    std::string text(Size s) const {
        return format(s.width, unit_, false) + " × " + format(s.length, unit_);
    }
    std::string named(const PackSize& p) const {
        return std::string{p.name} + " (" + text(p.size) + ")";
    }
    void stop(std::string field, std::string what, std::string cure) {
        out_.findings.push_back(
            {Finding::Level::stop, std::move(field), std::move(what), std::move(cure)});
    }

    bool checkInput() {
        const auto notBelowZero = [&](Length l, const char* field, const char* what) {
            if (l < Length{})
                stop(field,
                     std::string{what} + " is " + format(l, unit_) + "; 0 or more is accepted.",
                     "");
        };
        if (needed_.width <= Length{} || needed_.length <= Length{})
            stop("/top", "The batting would be " + text(needed_) + "; a size above 0 is accepted.",
                 "");
        notBelowZero(batting_.trim, "/batting/trim", "The trim");
        notBelowZero(batting_.overlap, "/batting/overlap", "The overlap");
        if (out_.findings.empty() && std::min(needed_.width, needed_.length) <= batting_.overlap)
            stop("/batting/overlap",
                 "The overlap of " + format(batting_.overlap, unit_) +
                     " is as large as the batting; less than its shorter side is accepted.",
                 "");
        for (std::size_t i = 0; i < batting_.pieces.size(); ++i) {
            const BattingPiece& p = batting_.pieces[i];
            if (p.width <= Length{} || p.length <= Length{})
                stop("/batting/pieces/" + std::to_string(i),
                     "Piece " + p.name + " is " + text({p.width, p.length}) +
                         "; a size above 0 each way is accepted.",
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
        std::string names;
        for (const PackSize& p : kPackSizes)
            names += (names.empty() ? "" : ", ") + std::string{p.name};
        stop("/batting/pack",
             "No pack is called '" + *batting_.pack + "'; accepted are " + names + ".", "");
        return std::move(out_);
    }

    BattingOutcome packTooSmall(const PackSize& pack) {
        std::string cure = "Join further pieces to it, or use less overage.";
        if (const auto larger = smallestPack(needed_))
            cure = "A " + named(*larger) + " pack holds it.";
        stop("/batting/pack",
             "The " + named(pack) + " pack does not hold the " + text(needed_) + " needed.", cure);
        return std::move(out_);
    }

    BattingOutcome noPackHolds() {
        const PackSize& largest = kPackSizes.back();
        const Length eaten = batting_.overlap + 2 * batting_.trim;
        std::string cure = "List the pieces to join";
        if (eaten < largest.size.width)
            cure += "; " +
                    std::to_string(ceilDiv(needed_.width, largest.size.width - eaten) *
                                   ceilDiv(needed_.length, largest.size.length - eaten)) +
                    " such packs suffice";
        stop("/batting",
             "No pack holds the " + text(needed_) + " needed; the largest is " + named(largest) +
                 ".",
             cure + ".");
        return std::move(out_);
    }

    BattingOutcome fromPieces() {
        const Pool pool = poolOf(batting_, needed_, unit_, kMostPieces, out_.findings);
        BestJoin join = bestJoin(pool, seams_, kWork);
        if (join.layout) {
            if (!join.fewest)
                out_.findings.push_back(
                    {Finding::Level::note, "/batting/pieces",
                     "There are too many pieces to try all joins; there may be a way with fewer.",
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
        const auto say = [&](Finding::Level level, std::string what) {
            out_.findings.push_back({level, "/batting/pieces", std::move(what), ""});
        };
        for (const BattingSplit& s : splits)
            say(Finding::Level::note, "Whole pieces do not suffice, so piece " + s.name +
                                          " is cut in two first, at " + format(s.at, unit_) +
                                          " of its " + (s.acrossWidth ? "width." : "length."));
        if (layout.corners > 0)
            say(Finding::Level::warn,
                "Four corners meet at " + std::to_string(layout.corners) +
                    (layout.corners == 1 ? " place" : " places") +
                    (join.cleanest ? "; no layout of as few joins avoids it."
                                   : "; no layout that was tried avoids it."));
        if (layout.alongSeams > 0)
            say(Finding::Level::warn,
                std::to_string(layout.alongSeams) +
                    (layout.alongSeams == 1 ? " join runs" : " joins run") +
                    " along a backing seam; no layout that was tried avoids it.");
        out_.plan->splits = std::move(splits);
        return std::move(out_);
    }

    BattingOutcome notEnough(const Pool& pool, bool proven) {
        const Size extra = leastExtra(pool, unit_);
        std::string cure = "One more piece of at least " + text(extra) + " would do";
        const auto pack = smallestPack(extra), whole = smallestPack(needed_);
        if (pack)
            cure += "; the smallest pack that holds it is " + named(*pack);
        cure += ".";
        if (whole && whole->name != pack->name) // what holds the whole holds the extra
            cure += " A " + named(*whole) + " pack holds all of it.";
        if (!pool.mayTurn) {
            Pool turning = pool;
            turning.mayTurn = true;
            std::uint64_t work = kRescueWork;
            if (fewestPieces(turning, int(pool.blanks.size()), work))
                cure = "They suffice if pieces may be turned a quarter. Or: " + cure;
        }
        stop("/batting/pieces",
             "The pieces cannot be joined by straight cuts to the " + text(needed_) + " needed" +
                 (proven ? "" : ", as far as the search went") + ".",
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
