#include "planners/crew/crew.h"
#include "planners/crew/zone_points.h"
#include "planners/whole/help.h"
#include "session/private/change_words.h"
#include "session/private/other_passes.h"
#include "session/private/rest_planning.h"
#include "session/private/tables_taken.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <optional>
#include <set>

namespace bastewright {
namespace {

/// Surfaces are tried in every order of so many; of more in the order of their numbers only.
constexpr std::size_t kOrders = 4;

/// Takes of these tables those that are there, and says which.
Sizes takeThere(std::vector<Table>& room, const Sizes& tables) {
    Sizes out;
    for (const auto& [size, count] : tables)
        for (Table& t : room)
            if (sizeOf(t.length, t.width) == size && out[size] < count) {
                const int some = std::min(count - out[size], t.count);
                t.count -= some;
                out[size] += some;
            }
    std::erase_if(room, [](const Table& t) { return t.count <= 0; });
    std::erase_if(out, [](const auto& some) { return some.second <= 0; });
    return out;
}

/// Takes tables away; false, and nothing is taken, where they are not all there.
bool takeFrom(std::vector<Table>& room, const Sizes& tables) {
    std::vector<Table> left = room;
    if (takeThere(left, tables) != tables)
        return false;
    room = std::move(left);
    return true;
}

std::vector<Table> asTables(const Sizes& sizes) {
    std::vector<Table> out;
    for (const auto& [size, count] : sizes)
        out.push_back({.length = size.second, .width = size.first, .count = count});
    return out;
}

/// Where every quilt lies that is not finished, while surfaces are given anew. A quilt in its last
/// pass stays where it lies, and the tables under it are not given to others.
class Tables {
public:
    Tables(const Session& session, const Plan& plan, const LiveState& state,
           const RestPlanning& planning)
        : room_{session.setting.room.tables}
        , plan_{plan}
        , planning_{planning}
        , points_{pointsOfZones(plan.quilts)}
        , taken_{tablesTaken(plan, state)} {
        for (int q = 0; q < std::ssize(plan.quilts); ++q)
            if (!isOffTheTables(plan, state, q))
                quilts_[plan.quilts[static_cast<std::size_t>(q)].surface.number].push_back(q);
    }

    const std::vector<std::vector<PlacedPoint>>& points() const { return points_; }

    /// Every quilt is in its last pass, or finished.
    bool isNothingLeft() const {
        return std::ranges::none_of(quilts_, [this](const auto& s) { return goesOn(s.first); });
    }

    /// In what order surfaces keep their tables: who comes late may have to do without.
    std::vector<std::vector<int>> orders() const {
        std::vector<int> numbers;
        for (const auto& [number, quilts] : quilts_)
            if (!isInLastPass(number))
                numbers.push_back(number);
        std::vector<std::vector<int>> out{numbers};
        if (numbers.size() <= kOrders)
            while (std::ranges::next_permutation(numbers).found)
                out.push_back(numbers);
        return out;
    }

    /// The surfaces that cannot stay, when they are asked in this order: after those with a quilt
    /// in its last pass, which only quilts that follow it leave.
    std::set<int> moving(const std::vector<int>& order) const {
        std::set<int> out;
        std::vector<Table> left = room_;
        for (const auto& [number, tables] : taken_)
            if (isInLastPass(number) && takeThere(left, tables) != tables && goesOn(number))
                out.insert(number);
        for (const int number : order)
            if (!takeFrom(left, taken_.at(number)))
                out.insert(number);
        return out;
    }

    /// New passes for all quilts of these surfaces, on the tables that nobody has, else after the
    /// quilts of another surface on theirs; nothing where some quilt finds no place, and who would
    /// have to be finished before is then in `waitsFor`.
    std::optional<std::vector<Moved>> lay(const std::set<int>& moving, int& waitsFor) const {
        std::map<int, Sizes> taken;
        std::map<int, std::vector<int>> quilts;
        std::vector<Table> left = room_;
        for (const bool inLastPass : {true, false})
            for (const auto& [number, tables] : taken_)
                if (isInLastPass(number) == inLastPass && (inLastPass || !moving.contains(number)))
                    taken.emplace(number, takeThere(left, tables));
        for (const auto& [number, all] : quilts_)
            for (const int q : all)
                if (!moving.contains(number) || planning_.isOver(q))
                    quilts[number].push_back(q);
        std::vector<Moved> out;
        for (const int number : moving) {
            const std::vector<Table> tables = withoutOthers(taken, number);
            Sizes used = isInLastPass(number) ? taken.at(number) : Sizes{};
            for (const int q : quilts_.at(number)) {
                if (planning_.isOver(q))
                    continue;
                auto there = layOn(q, tables);
                int on = number;
                for (const auto& [other, some] : taken) {
                    if (there)
                        break;
                    if (!mayFollow(q, quilts.at(other), waitsFor))
                        continue;
                    there = layOn(q, asTables(some));
                    on = other;
                }
                if (!there)
                    return {};
                there->surface.number = on;
                quilts[on].push_back(q);
                if (on == number)
                    atLeast(used, tablesOf(there->surface));
                out.push_back({q, *std::move(there)});
            }
            if (!used.empty())
                taken.insert_or_assign(number, std::move(used));
        }
        return out;
    }

    /// With more tables: quilts that need fewer passes on their own and those that nobody has.
    std::vector<Moved> fewerPasses() const {
        std::vector<Moved> out;
        auto taken = taken_;
        for (auto& [number, mine] : taken) {
            const std::vector<Table> tables = withoutOthers(taken, number);
            std::vector<Table> free = tables;
            if (!takeFrom(free, mine) || free.empty())
                continue;
            Sizes used;
            std::vector<Moved> fewer;
            for (const int q : quilts_.at(number)) {
                const auto& was = plan_.quilts[static_cast<std::size_t>(q)];
                auto there = planning_.isOver(q) ? std::nullopt : layOn(q, tables);
                const bool better = there && there->passes.size() < was.passes.size();
                atLeast(used, tablesOf(better ? there->surface : was.surface));
                if (better)
                    fewer.push_back({q, *std::move(there)});
            }
            if (fewer.empty())
                continue;
            mine = used;
            std::ranges::move(fewer, std::back_inserter(out));
        }
        return out;
    }

private:
    bool isInLastPass(int surface) const {
        return std::ranges::any_of(quilts_.at(surface),
                                   [this](int q) { return planning_.isOver(q); });
    }
    bool goesOn(int surface) const {
        return !std::ranges::all_of(quilts_.at(surface),
                                    [this](int q) { return planning_.isOver(q); });
    }

    /// The room less what the others have: a surface's own tables and the free ones.
    std::vector<Table> withoutOthers(const std::map<int, Sizes>& taken, int surface) const {
        std::vector<Table> out = room_;
        for (const auto& [other, theirs] : taken)
            if (other != surface)
                takeThere(out, theirs);
        return out;
    }

    std::optional<QuiltPlan> layOn(int q, const std::vector<Table>& tables) const {
        if (tables.empty() && !room_.empty())
            return {};
        const auto at = static_cast<std::size_t>(q);
        return planning_.lay(q, points_[at], tables);
    }

    /// Quilts of one surface follow one another in the order of the session: a quilt can come after
    /// those before it, and before those of which nothing lies on the tables yet.
    bool mayFollow(int q, const std::vector<int>& others, int& waitsFor) const {
        for (const int other : others)
            if (other > q && planning_.kept(other) > 0) {
                waitsFor = other;
                return false;
            }
        return true;
    }

    std::vector<Table> room_;
    const Plan& plan_;
    const RestPlanning& planning_;
    std::vector<std::vector<PlacedPoint>> points_;
    std::map<int, Sizes> taken_;             ///< by surface
    std::map<int, std::vector<int>> quilts_; ///< not finished, by surface
};

} // namespace

OtherPasses onOtherTables(const Session& session, const Plan& plan, const LiveState& state,
                          const ReplanOptions& options, std::stop_token stop) {
    const RestPlanning planning{session, plan, state, options, stop};
    const Tables tables{session, plan, state, planning};
    if (tables.isNothingLeft())
        return noOtherPasses(core::says("No pass is left to be planned otherwise."));
    if (planning.isNothingKept())
        return planning.anew(planAllPoints(session, {}, std::move(stop)));
    const auto orders = tables.orders();
    if (tables.moving(orders.front()).empty()) {
        auto fewer = tables.fewerPasses();
        return fewer.empty() ? noOtherPasses(noTableServes())
                             : planning.withPeople(std::move(fewer), tables.points());
    }
    std::optional<OtherPasses> best;
    std::set<std::set<int>> tried;
    int waitsFor = -1;
    for (const auto& order : orders) {
        const auto moving = tables.moving(order);
        if (!tried.insert(moving).second || (best && stop.stop_requested()))
            continue;
        auto moved = tables.lay(moving, waitsFor);
        if (!moved)
            continue;
        auto one = planning.withPeople(*std::move(moved), tables.points());
        if (!best || !best->refused.empty() ||
            (one.refused.empty() && one.plan.finish < best->plan.finish))
            best = std::move(one);
    }
    if (best)
        return *std::move(best);
    if (waitsFor >= 0)
        return noOtherPasses(core::says(
            "There are no tables for what is left of all quilts. Finish %1 first, or add a table: "
            "then the others go on.",
            quiltNamed(plan, waitsFor)));
    return noOtherPasses(noTableServes());
}

} // namespace bastewright
