#pragma once

#include "planners/points/buckets.h"

#include <bit>
#include <functional>
#include <limits>
#include <optional>
#include <span>
#include <stop_token>
#include <unordered_map>

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
    /// True where another chosen candidate is closer than the gap.
    bool clashes(int candidate) const { return blocked_[at(candidate)] > 0; }

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
        int weight = 1;
        int covers = 0,
            exclusive = 0; ///< exclusive or of the chosen candidates that cover it
        int openIndex = -1;
    };
    /// Ascending candidates. Neighbours on a raster have numbers that follow each other: kept four
    /// at a time, so that scores are changed four at a time.
    struct Coverers {
        struct Four {
            int first;      ///< a multiple of four
            unsigned which; ///< bit i: first + i
        };
        std::vector<Four> fours;
        int count = 0;

        /// Above all there are already, or sorted afterwards.
        void add(int candidate) {
            const unsigned bit = 1U << (candidate % 4);
            if (const int first = candidate - candidate % 4;
                !fours.empty() && fours.back().first == first)
                fours.back().which |= bit;
            else
                fours.push_back({first, bit});
            ++count;
        }
        int last() const {
            return fours.back().first + static_cast<int>(std::bit_width(fours.back().which)) - 1;
        }
        void sort();
        template <class F>
        bool all(F&& f) const {
            for (const Four& four : fours)
                for (unsigned left = four.which; left != 0; left &= left - 1)
                    if (!f(four.first + std::countr_zero(left)))
                        return false;
            return true;
        }
        template <class F>
        void each(F&& f) const {
            all([&](int c) { return f(c), true; });
        }
    };
    static std::size_t at(int i) { return static_cast<std::size_t>(i); }

    void findTooNear(int candidate);
    /// Adds to the scores of all that cover a witness.
    void raise(int witness, int by);
    void open(int witness);
    void close(int witness);
    int leastLoss(long now, int tabu) const;
    int bestFor(int witness, int room) const;
    bool makeWay(int witness, int room);
    bool movable(int candidate) const;

    Field field_;
    double radius_, gap_;
    std::vector<Info> info_;
    std::vector<int> score_;   ///< chosen: weight only it covers; else: open weight it would cover;
                               ///< a multiple of four long
    std::vector<int> blocked_; ///< chosen candidates closer than the gap
    std::vector<std::vector<int>> tooNear_; ///< once it was chosen: candidates closer than the gap
    Spots places_;
    std::vector<Witness> witnesses_;
    std::vector<std::vector<int>> covers_;              ///< candidate -> witnesses
    std::vector<Coverers> coverers_;                    ///< witness -> candidates
    std::unordered_multimap<std::uint64_t, int> known_; ///< witnesses by who covers them
    std::vector<int> seen_;                             ///< in which look a candidate was last met
    int looked_ = 0;
    bool begun_ = false; ///< something was chosen
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
