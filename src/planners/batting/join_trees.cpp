#include "planners/batting/join_cost.h"
#include "planners/batting/join_search.h"

#include <algorithm>

namespace bastewright::batting {

/// Shows, one after another, all trees over a subset that give at least a certain rectangle and
/// whose joins can be shorter than a limit. The tree in hand is a stack of nodes; nothing else is
/// kept.
struct JoinSearch::Grown {
    using Show = std::function<bool(int root)>; ///< false: enough
    struct Grew {
        JoinTree::Node node;
        int low;                  ///< first type in it, to show parts in one order only
        Cost byWidth, byLength{}; ///< of its joins
    };

    JoinSearch& search;
    std::int64_t limit;
    std::size_t& steps; ///< left before it stops short
    std::vector<Grew> stack{};

    int lowestType(Key key) const {
        for (std::size_t t = 0; t < search.types_.size(); ++t)
            if (search.countOf(key, t) > 0)
                return int(t);
        return -1;
    }

    /// `root` limits the last join: a part of a row is not such a row itself. `spent`: what joins
    /// outside this subset cost at least. False where it was told to stop, or ran out of steps.
    enum class Root { any, notBeside, notBelow };
    bool grow(Key key, std::int64_t width, std::int64_t length, Root root, std::int64_t spent,
              const Show& show) {
        const int size = search.sizeOf(key);
        if (spent + search.leastJoins(key, width, length) >= limit ||
            !search.holds(key, size, width, length))
            return true;
        if (size == 1)
            return growLeaf(lowestType(key), width, length, show);
        // The shortest first, so that the limit falls soon.
        std::vector<Split> splits;
        forEachPart(key, size, [&](Key part) {
            if (root != Root::notBeside)
                consider(part, key - part, width, length, true, spent, splits);
            if (root != Root::notBelow)
                consider(part, key - part, width, length, false, spent, splits);
        });
        std::ranges::stable_sort(splits, {}, &Split::least);
        for (const Split& s : splits) {
            if (s.least >= limit)
                break;
            if (!join(s, spent, show))
                return false;
        }
        return true;
    }

    std::int64_t shortest(int root, std::int64_t width, std::int64_t length) const {
        const Grew& g = stack[std::size_t(root)];
        return at(g.byWidth, width) + at(g.byLength, length);
    }

private:
    bool with(Grew grew, const Show& show) {
        if (steps == 0)
            return false;
        --steps;
        stack.push_back(std::move(grew));
        const bool more = show(int(stack.size()) - 1);
        stack.pop_back();
        return more;
    }

    bool growLeaf(int type, std::int64_t width, std::int64_t length, const Show& show) {
        const Box box = search.types_[std::size_t(type)].box;
        const auto leaf = [&](Box b, bool turned) {
            return b.width < width || b.length < length ||
                   with({{.item = type, .turned = turned, .width = b.width, .length = b.length},
                         type,
                         {{b.width, 0}},
                         {{b.length, 0}}},
                        show);
        };
        return leaf(box, false) && (!search.problem_.mayTurn || box.width == box.length ||
                                    leaf({box.length, box.width}, true));
    }

    /// Most of an extent that a subset gives; of one that was not built, what its area would.
    std::int64_t most(Key key, std::int64_t goal, std::int64_t across, bool beside) const {
        const int size = search.sizeOf(key);
        if (size > search.reach_)
            return std::min(goal, std::int64_t(search.areaOf(key) / double(across)) + 1);
        const Set* set = search.find(key, size);
        return !set ? -1 : beside ? widest(*set, across) : longest(*set, across);
    }

    /// Two parts that give a rectangle together, as far as is known.
    struct Split {
        Key a, b;
        bool beside;
        std::int64_t width, length;  ///< of both together
        std::int64_t needA, needB;   ///< of each, along the row, where the other gives its most
        std::int64_t leastA, leastB; ///< joins in each
        std::int64_t least;          ///< all joins of the tree
    };

    void consider(Key a, Key b, std::int64_t width, std::int64_t length, bool beside,
                  std::int64_t spent, std::vector<Split>& out) const {
        const std::int64_t goal = beside ? width : length, across = beside ? length : width;
        const std::int64_t mostA = most(a, goal, across, beside);
        if (mostA < 0)
            return;
        const std::int64_t mostB = most(b, goal, across, beside);
        if (mostB < 0 || mostA + mostB < goal)
            return;
        Split s{a,
                b,
                beside,
                width,
                length,
                std::max<std::int64_t>(1, goal - mostB),
                std::max<std::int64_t>(1, goal - mostA),
                0,
                0,
                0};
        s.leastA =
            beside ? search.leastJoins(a, s.needA, length) : search.leastJoins(a, width, s.needA);
        s.leastB =
            beside ? search.leastJoins(b, s.needB, length) : search.leastJoins(b, width, s.needB);
        s.least = spent + across + s.leastA + s.leastB;
        if (s.least < limit)
            out.push_back(s);
    }

    bool join(const Split& s, std::int64_t spent, const Show& show) {
        const std::int64_t goal = s.beside ? s.width : s.length;
        const std::int64_t outside = spent + (s.beside ? s.length : s.width);
        const auto growTo = [&](Key key, std::int64_t need, Root root, std::int64_t others,
                                const Show& use) {
            return s.beside ? grow(key, need, s.length, root, others, use)
                            : grow(key, s.width, need, root, others, use);
        };
        const Root notSame = s.beside ? Root::notBeside : Root::notBelow;
        // The one of which least is known goes first: the other has what it gives exactly.
        const bool bFirst = search.sizeOf(s.b) > search.reach_;
        const std::int64_t need = bFirst ? s.needB : s.needA;
        const auto first = [&](int t1) {
            if (!bFirst && sameRowAfter(t1, s.b, s.beside))
                return true;
            const JoinTree::Node& n = stack[std::size_t(t1)].node;
            const std::int64_t rest =
                std::max<std::int64_t>(1, goal - (s.beside ? n.width : n.length));
            const std::int64_t joins =
                s.beside ? shortest(t1, need, s.length) : shortest(t1, s.width, need);
            return growTo(bFirst ? s.a : s.b, rest, bFirst ? Root::any : notSame, outside + joins,
                          [&](int t2) {
                              const int ta = bFirst ? t2 : t1, tb = bFirst ? t1 : t2;
                              return (bFirst && sameRowAfter(ta, s.b, s.beside)) ||
                                     with(joined(ta, tb, s.beside), show);
                          });
        };
        return growTo(bFirst ? s.b : s.a, need, bFirst ? notSame : Root::any,
                      outside + (bFirst ? s.leastA : s.leastB), first);
    }

    /// A row of several parts is one row, however it is bracketed and ordered: it is shown once,
    /// with the row so far first and its parts by their first piece.
    bool sameRowAfter(int first, Key next, bool beside) const {
        const JoinTree::Node& n = stack[std::size_t(first)].node;
        return n.item < 0 && n.sideBySide == beside &&
               stack[std::size_t(n.second)].low > lowestType(next);
    }

    Grew joined(int ta, int tb, bool beside) const {
        const Grew &a = stack[std::size_t(ta)], &b = stack[std::size_t(tb)];
        const JoinTree::Node &m = a.node, &n = b.node;
        return {{.first = ta,
                 .second = tb,
                 .sideBySide = beside,
                 .width = beside ? m.width + n.width : std::min(m.width, n.width),
                 .length = beside ? std::min(m.length, n.length) : m.length + n.length},
                a.low,
                beside ? following(a.byWidth, b.byWidth) : shared(a.byWidth, b.byWidth),
                beside ? shared(a.byLength, b.byLength) : following(a.byLength, b.byLength)};
    }

    /// Every part of a subset that holds its first piece and leaves something: by counting through
    /// the parts, or through the subsets that were built, whichever are fewer.
    template <class F>
    void forEachPart(Key key, int size, F&& use) const {
        const int most = std::min(size - 1, search.reach_);
        const Key first = search.types_[std::size_t(lowestType(key))].mask;
        std::vector<std::size_t> present;
        double parts = 1;
        for (std::size_t t = 0; t < search.types_.size(); ++t)
            if (const int n = search.countOf(key, t); n > 0) {
                present.push_back(t);
                parts *= n + 1;
            }
        std::size_t built = 0;
        for (int i = 1; i <= most; ++i)
            built += search.levels_[std::size_t(i)].sets.size();
        if (double(built) < parts) {
            for (int i = 1; i <= most; ++i)
                for (const Set& s : search.levels_[std::size_t(i)].sets) {
                    if (!search.within(s.key, key))
                        continue;
                    if ((s.key & first) != 0)
                        use(s.key);
                    // The rest comes by itself where it was built.
                    const Key rest = key - s.key;
                    if (size - i > search.reach_ && (rest & first) != 0)
                        use(rest);
                }
            return;
        }
        const auto walk = [&](const auto& self, std::size_t i, Key part) -> void {
            if (i == present.size()) {
                if (part != key)
                    use(part);
                return;
            }
            const Key one = Key{1} << search.types_[present[i]].shift;
            const int have = search.countOf(key, present[i]);
            for (int n = i == 0 ? 1 : 0; n <= have; ++n)
                self(self, i + 1, part + Key(n) * one);
        };
        walk(walk, 0, 0);
    }
};

JoinTree JoinSearch::treeOf(const Grown& grown, int root) const {
    JoinTree tree;
    std::vector<std::size_t> taken(types_.size());
    const auto copy = [&](const auto& self, int at) -> int {
        JoinTree::Node node = grown.stack[std::size_t(at)].node;
        if (node.item >= 0) {
            const auto type = std::size_t(node.item);
            node.item = types_[type].items[taken[type]++];
        } else {
            node.first = self(self, node.first);
            node.second = self(self, node.second);
        }
        tree.nodes.push_back(node);
        return int(tree.nodes.size()) - 1;
    };
    tree.root = copy(copy, root);
    return tree;
}

bool JoinSearch::visitTrees(std::size_t way, std::int64_t limit, std::size_t& steps,
                            const Visit& visit) {
    Grown grown{*this, limit, steps};
    const bool all =
        grown.grow(full_[way], target_.width, target_.length, Grown::Root::any, 0, [&](int root) {
            const std::int64_t joins = grown.shortest(root, target_.width, target_.length);
            if (joins < grown.limit)
                grown.limit = std::min(grown.limit, visit(treeOf(grown, root), joins));
            return true;
        });
    return all && !stoppedShort_;
}

} // namespace bastewright::batting
