#include "planners/batting/join_search.h"

#include <algorithm>

namespace bastewright::batting {
namespace {

/// Nodes put on trees, for each tree asked for, before the showing of trees stops short.
constexpr std::size_t kStepsPerTree = 500;

} // namespace

/// Shows, one after another, all trees over a subset that give at least a certain rectangle. The
/// tree in hand is a stack of nodes; nothing else is kept.
struct JoinSearch::Grown {
    using Show = std::function<bool(int root)>; ///< false: enough

    const JoinSearch& search;
    std::size_t steps; ///< left before it stops short
    std::vector<JoinTree::Node> stack{};
    std::vector<int> low{}; ///< first type in each tree, to show parts in one order only

    int lowestType(Key key) const {
        for (std::size_t t = 0; t < search.types_.size(); ++t)
            if (search.countOf(key, t) > 0)
                return int(t);
        return -1;
    }

    /// `root` limits the last join: a part of a row is not such a row itself. False where it was
    /// told to stop, or ran out of steps.
    enum class Root { any, notBeside, notBelow };
    bool grow(Key key, std::int64_t width, std::int64_t length, Root root, const Show& show) {
        const Set* set = search.find(key);
        if (!set || search.widest(*set, length) < width)
            return true;
        if (search.sizeOf(key) == 1)
            return growLeaf(lowestType(key), width, length, show);
        return forEachPart(key, [&](Key part) {
            return (root == Root::notBeside || join(part, key - part, width, length, true, show)) &&
                   (root == Root::notBelow || join(part, key - part, width, length, false, show));
        });
    }

private:
    bool with(JoinTree::Node node, int lowest, const Show& show) {
        if (steps == 0)
            return false;
        --steps;
        stack.push_back(node);
        low.push_back(lowest);
        const bool more = show(int(stack.size()) - 1);
        stack.pop_back();
        low.pop_back();
        return more;
    }

    bool growLeaf(int type, std::int64_t width, std::int64_t length, const Show& show) {
        const Box box = search.types_[std::size_t(type)].box;
        if (box.width >= width && box.length >= length &&
            !with({.item = type, .width = box.width, .length = box.length}, type, show))
            return false;
        if (search.problem_.mayTurn && box.width != box.length && box.length >= width &&
            box.width >= length)
            return with({.item = type, .turned = true, .width = box.length, .length = box.width},
                        type, show);
        return true;
    }

    bool join(Key a, Key b, std::int64_t width, std::int64_t length, bool beside,
              const Show& show) {
        const Set *sa = search.find(a), *sb = search.find(b);
        if (!sa || !sb)
            return true;
        const std::int64_t goal = beside ? width : length;
        const std::int64_t mostA = beside ? search.widest(*sa, length) : search.longest(*sa, width);
        const std::int64_t mostB = beside ? search.widest(*sb, length) : search.longest(*sb, width);
        if (mostA < 0 || mostB < 0 || mostA + mostB < goal)
            return true;
        const auto growTo = [&](Key key, std::int64_t other, Root root, const Show& use) {
            const std::int64_t need = std::max<std::int64_t>(1, goal - other);
            return beside ? grow(key, need, length, root, use) : grow(key, width, need, root, use);
        };
        // A row of several parts is one row, however it is bracketed and ordered: it is shown once,
        // with the row so far first and its parts by their first piece.
        const int lowB = lowestType(b);
        return growTo(a, mostB, Root::any, [&](int ta) {
            const JoinTree::Node first = stack[std::size_t(ta)];
            if (first.item < 0 && first.sideBySide == beside &&
                low[std::size_t(first.second)] > lowB)
                return true;
            const Root notSame = beside ? Root::notBeside : Root::notBelow;
            return growTo(b, beside ? first.width : first.length, notSame, [&](int tb) {
                const JoinTree::Node second = stack[std::size_t(tb)];
                return with({.first = ta,
                             .second = tb,
                             .sideBySide = beside,
                             .width = beside ? first.width + second.width
                                             : std::min(first.width, second.width),
                             .length = beside ? std::min(first.length, second.length)
                                              : first.length + second.length},
                            low[std::size_t(ta)], show);
            });
        });
    }

    /// Every part of a subset that holds its first piece and leaves something: by counting through
    /// the parts, or through the subsets that were built, whichever are fewer.
    template <class F>
    bool forEachPart(Key key, F&& use) {
        std::vector<std::size_t> present;
        double parts = 1;
        for (std::size_t t = 0; t < search.types_.size(); ++t)
            if (const int n = search.countOf(key, t); n > 0) {
                present.push_back(t);
                parts *= n + 1;
            }
        const Key first = search.types_[present.front()].mask;
        const int size = search.sizeOf(key);
        std::size_t built = 0;
        for (int i = 1; i < size; ++i)
            built += search.levels_[std::size_t(i)].sets.size();
        if (double(built) < parts) {
            for (int i = 1; i < size; ++i)
                for (const Set& s : search.levels_[std::size_t(i)].sets)
                    if ((s.key & first) != 0 && search.within(s.key, key) && !use(s.key))
                        return false;
            return true;
        }
        const auto walk = [&](const auto& self, std::size_t i, Key part) -> bool {
            if (i == present.size())
                return part == key || use(part);
            const Key one = Key{1} << search.types_[present[i]].shift;
            const int have = search.countOf(key, present[i]);
            for (int n = i == 0 ? 1 : 0; n <= have; ++n)
                if (!self(self, i + 1, part + Key(n) * one))
                    return false;
            return true;
        };
        return walk(walk, 0, 0);
    }
};

JoinTree JoinSearch::treeOf(const std::vector<JoinTree::Node>& nodes, int root) const {
    JoinTree tree;
    std::vector<std::size_t> taken(types_.size());
    const auto copy = [&](const auto& self, int at) -> int {
        JoinTree::Node node = nodes[std::size_t(at)];
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

bool JoinSearch::visitTrees(std::size_t mostTrees,
                            const std::function<bool(const JoinTree&)>& visit) {
    Grown grown{*this, kStepsPerTree * mostTrees};
    std::size_t shown = 0;
    for (const Key key : full_)
        if (!grown.grow(key, target_.width, target_.length, Grown::Root::any, [&](int root) {
                return visit(treeOf(grown.stack, root)) && ++shown < mostTrees;
            }))
            return false;
    return true;
}

} // namespace bastewright::batting
