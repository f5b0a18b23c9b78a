#pragma once

#include "planners/points/buckets.h"

#include <functional>
#include <limits>
#include <optional>
#include <set>
#include <span>
#include <stop_token>

namespace bastewright::points {

/// The least-cost choice of candidates that covers a field: every place within
/// `radius` of a chosen place, no two chosen places closer than `gap`.
///
/// A candidate is an orbit: all the places that are used together (copies of
/// one pin in every block, its mirror images). The field is stood for by
/// witnesses, single places that must be covered; whoever calls judges a choice
/// that covers them all continuously and adds what was missed as new witnesses
/// (`holes.h`), so that nothing is ever believed on samples.
///
/// Search: row weighting local search for set cover (Gao, Weise and Li, 'An
/// efficient local search heuristic with row weighting for the unicost set
/// covering problem', European Journal of Operational Research 246, 2015), with
/// the exclusive or of the covering candidates kept for each witness, so that
/// the only one left is known at once.
class CoverSearch {
public:
    CoverSearch(const Field& field, double radius, double gap);

    /// Ignored (-1) where its own places are closer than the gap.
    int addCandidate(std::span<const Spot> places, int cost);
    int addCandidate(Spot place, int cost) { return addCandidate({&place, 1}, cost); }
    /// False where no candidate covers it.
    bool addWitness(Spot at);

    void choose(int candidate);
    void drop(int candidate);
    /// Chosen, and never dropped by a search.
    void keep(int candidate);
    bool chosen(int candidate) const { return info_[at(candidate)].chosen; }
    bool clashes(int candidate) const;

    std::vector<int> choice() const;
    std::span<const Spot> places(int candidate) const;
    int cost(int candidate) const { return info_[at(candidate)].cost; }
    int cost() const { return cost_; }
    int size() const { return static_cast<int>(info_.size()); }

    /// Makes `choice` (ascending) what is chosen.
    void restore(const std::vector<int>& choice);
    const Buckets& chosenBuckets() const { return chosenBuckets_; }

    /// Judges a choice that covers every witness; adds what it missed as
    /// witnesses and returns false, or returns true where nothing was missed.
    using Judge = std::function<bool(CoverSearch&)>;

    struct Result {
        bool found = false;
        int cost = std::numeric_limits<int>::max();
        std::vector<int> choice; ///< ascending
    };
    struct Limits {
        int steps = 1000;
        int enough = 0;         ///< stop at this cost
        bool keepEqual = false; ///< report every judged choice as dear as the best,
                                ///< see `onFound`
        /// False ends the search.
        std::function<bool(const std::vector<int>&, int cost)> onFound;
        int below = std::numeric_limits<int>::max(); ///< only choices cheaper than
                                                     ///< this are wanted
        /// Only candidates wholly inside it are moved; everything else stays as it
        /// is.
        std::optional<Field> window;
    };
    /// Starts from the present choice (completed first) and leaves the best found
    /// chosen.
    Result search(const Limits& limits, Dice& dice, const Judge& judge, std::stop_token stop);

    /// Adds the best candidate at every open witness until none is open or
    /// nothing fits.
    void complete();
    /// Drops what no witness needs.
    void dropSpare();

private:
    struct Info {
        int firstPlace = 0, places = 0, cost = 1;
        long changed = 0;
        bool chosen = false, kept = false;
    };
    struct Witness {
        Spot at;
        double weight = 1;
        int covers = 0,
            exclusive = 0; ///< exclusive or of the chosen candidates that cover it
        int openIndex = -1;
    };
    static std::size_t at(int i) { return static_cast<std::size_t>(i); }

    void open(int witness);
    void close(int witness);
    int leastLoss(long now, int tabu) const;
    int bestFor(int witness, int room) const;
    bool makeWay(int witness, int room);
    bool movable(int candidate) const;

    Field field_;
    double radius_, gap_;
    std::vector<Info> info_;
    std::vector<double> score_; ///< chosen: weight only it covers; else: open weight it would cover
    Spots places_;
    std::vector<Witness> witnesses_;
    std::vector<std::vector<int>> covers_;   ///< candidate -> witnesses
    std::vector<std::vector<int>> coverers_; ///< witness -> candidates
    std::set<std::vector<int>> known_;       ///< the same, to find witnesses that are alike
    std::vector<int> open_;
    std::vector<int> chosen_;
    std::vector<int> chosenIndex_;
    std::vector<int> active_; ///< those of the chosen that the present search may drop
    std::optional<Field> window_;
    Buckets candidateBuckets_, witnessBuckets_, chosenBuckets_;
    int cost_ = 0;
    long clock_ = 1;
};

} // namespace bastewright::points
