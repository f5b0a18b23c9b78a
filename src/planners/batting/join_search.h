#pragma once

#include "plan/plan.h"

#include <cstdint>
#include <functional>
#include <unordered_map>
#include <vector>

namespace bastewright::batting {

/// Rectangles to be joined edge to edge, nothing lost at a join, into one that holds the target.
/// What overlap and trim eat is taken off sizes and target beforehand (see `Blanks`).
struct JoinProblem {
    Size target;
    std::vector<Size> items; ///< every side above zero
    bool mayTurn = false;
};

/// How pieces are put together: a tree of straight joins, each across all that is joined so far.
struct JoinTree {
    struct Node {
        int item = -1; ///< a piece; else two parts
        bool turned = false;
        int first = -1, second = -1;
        bool sideBySide = false;            ///< else one below the other
        std::int64_t width = 0, length = 0; ///< largest rectangle it gives, in nanometres
    };
    std::vector<Node> nodes;
    int root = -1;
};

enum class Possible { yes, no, unknown };

/// Exact search for straight-cut joins. Sub-assemblies are built for every subset of up to half the
/// pieces (equal pieces counted, not told apart) as a front of largest rectangles, and dropped as
/// soon as their area and that of the largest other pieces cannot reach the target's. From the
/// target downwards the smaller part of every join is one of them, taken off what is wanted, until
/// what is left is one of them too.
class JoinSearch {
public:
    static constexpr std::size_t kMostItems = 32;

    /// `work`: steps (pairs of subsets looked at, rectangles joined) before it gives up with
    /// `unknown`. `beam`: where above zero, only so many subsets of each size are kept, those that
    /// waste least; what it then finds is good, but what it does not find is unknown.
    JoinSearch(JoinProblem problem, std::uint64_t work, std::size_t beam = 0);

    /// Can so many pieces, all used, be joined to hold the target?
    Possible possible(int pieces);

    /// Least number of pieces whose area suffices; one more than there are where none does.
    int leastByArea() const;

    /// The subsets of pieces that do it, after `possible(k)` said yes, least area of pieces first;
    /// all of them where `knowsAll`.
    std::size_t ways() const { return full_.size(); }
    bool knowsAll() const { return !narrowed_ && !stoppedShort_; }

    /// Shows the trees of one of the subsets, each once up to the order of parts, with the length
    /// of its joins where they are shortest. `visit` returns a limit, and trees whose joins cannot
    /// be shorter than that are passed over. False where it stopped after `steps`.
    using Visit = std::function<std::int64_t(const JoinTree&, std::int64_t shortest)>;
    bool visitTrees(std::size_t way, std::int64_t limit, std::size_t& steps, const Visit& visit);

    /// Sub-assemblies (subset, rectangle) of up to so many pieces, whatever the others could add.
    struct Assembly {
        std::vector<int> items;
        std::int64_t width, length;
    };
    std::vector<Assembly> assemblies(int mostPieces);

    std::uint64_t workLeft() const { return work_; }

private:
    using Key = std::uint64_t;
    struct Box {
        std::int64_t width, length;
    };
    struct Set {
        Key key = 0;
        double used = 0;        ///< area of its pieces
        double rest = 0;        ///< most the others can add
        std::vector<Box> front; ///< by length; none longer is as wide
    };
    /// A rectangle of a set, in the order in which partners are looked for.
    struct Entry {
        std::int64_t edge, depth; ///< the edge to be joined, and the other side
        std::size_t set;
    };
    struct Level {
        std::vector<Set> sets;
        std::unordered_map<Key, std::size_t> index;
        std::vector<Entry> byLength, byWidth; ///< by edge
    };
    struct Type {
        Box box;
        std::vector<int> items;
        int shift = 0;
        Key mask = 0;
        double area = 0, edge = 0; ///< of one; half its edges for its area
    };

    /// A rectangle that was asked of a subset, and whether it can be.
    struct Known {
        std::vector<Box> can, cannot;
    };

    bool build(int pieces, int reach, bool prune);
    bool holds(Key key, int size, std::int64_t width, std::int64_t length);
    void fill(Key used, int left, std::int64_t width, std::int64_t length);
    template <class F>
    bool takeOff(Key free, int left, std::int64_t width, std::int64_t length, F&& rest);
    double areaOf(Key key) const;
    std::int64_t leastJoins(Key key, std::int64_t width, std::int64_t length) const;
    bool combineAll(int size, int i, int others, bool prune);
    bool combineTight(int size, int i, int others, bool beside);
    void close(Level& level);
    std::size_t open(Level& level, Key key, double used, int others, bool prune);
    static void keep(Set& set, Box box);
    template <class F>
    static void joinFronts(const std::vector<Box>& a, const std::vector<Box>& b, F&& offer);
    void leaf(Level& level, std::size_t type, int others, bool prune);
    double restOf(Key key, int others) const;
    bool fits(Key sum) const { return within(sum, capacity_); }
    bool within(Key part, Key whole) const {
        return (((whole | guards_) - part) & guards_) == guards_;
    }
    int countOf(Key key, std::size_t type) const {
        return int((key & types_[type].mask) >> types_[type].shift);
    }
    int sizeOf(Key key) const;
    const Set* find(Key key, int size) const;
    static std::int64_t widest(const Set& set, std::int64_t length);
    static std::int64_t longest(const Set& set, std::int64_t width);

    struct Grown; // trees under construction
    JoinTree treeOf(const Grown& grown, int root) const;

    JoinProblem problem_;
    std::uint64_t work_;
    const std::size_t beam_;
    bool narrowed_ = false;     ///< the beam left something out
    bool stoppedShort_ = false; ///< steps ran out on the way down
    Box target_{};
    double targetArea_ = 0;
    double spare_ = 0;            ///< most area that joins of the pieces in hand may waste
    std::vector<Type> types_;     ///< largest area first
    std::vector<double> largest_; ///< sum of the n largest pieces
    Key capacity_ = 0, guards_ = 0;
    std::vector<std::size_t> leanest_; ///< types by edge for their area, least first
    std::vector<Level> levels_;        ///< by number of pieces
    int reach_ = 0;                    ///< largest subsets built
    std::unordered_map<Key, Known> known_;
    std::vector<Key> full_; ///< whole subsets that reach the target
};

} // namespace bastewright::batting
