#include "planners/crew/pair.h"

#include "planners/crew/decoder.h"
#include "planners/crew/settle.h"

#include <algorithm>
#include <array>
#include <map>
#include <tuple>

namespace bastewright::crew {
namespace {

std::size_t ix(int i) {
    return static_cast<std::size_t>(i);
}

/// How the table is shared: by which axis, and how many zones of each half are anybody's.
struct Share {
    bool headAndFoot = true;
    int anybodys = 0;
};

class Pair {
public:
    Pair(const Model& model, const Drafts& drafts, const std::vector<QuiltPlan>& quilts)
        : model_(model)
        , drafts_(drafts)
        , quilts_(quilts)
        , tail_(tails(model.problem, 2)) {}

    Schedule build(const Share& share) {
        const std::size_t n = drafts_.tasks.size();
        std::vector<int> who(n, -1);
        std::vector<double> key = tail_;
        // The zones of one half in one stage of the work, along the table.
        Halves halves;
        for (std::size_t i = 0; i < n; ++i) {
            const TaskDraft& d = drafts_.tasks[i];
            if (d.zone < 0)
                continue;
            const auto [half, along] = placeOf(d, share);
            halves[{d.job, d.pass, d.wave, d.kind, half}].emplace_back(along, static_cast<int>(i));
        }
        const auto firstPerson = shareOut(halves);
        for (auto& [stage, zones] : halves) {
            std::ranges::stable_sort(zones, {}, [](const auto& z) { return z.first; });
            // There and back: closing begins where placing ended.
            if (std::get<3>(stage) == TaskKind::closePins)
                std::ranges::reverse(zones);
            const int half = std::get<4>(stage), count = static_cast<int>(zones.size());
            const int person =
                half < 0 ? -1 : half ^ firstPerson.at({std::get<0>(stage), std::get<1>(stage)});
            for (int k = 0; k < count; ++k) {
                const int i = zones[ix(k)].second;
                key[ix(i)] -= 1e-3 * (k + 1);
                if (person >= 0 && drafts_.tasks[ix(i)].apart < 0 && k < count - share.anybodys && can(i, person))
                    who[ix(i)] = person;
            }
        }
        Schedule s;
        Decoder{model_.problem}.build(orderByKey(model_.problem, followers(model_.problem), key),
                                      who, s);
        return s;
    }

private:
    /// Activities with how far along the table they are, by quilt, pass, wave, kind and half.
    using Halves =
        std::map<std::tuple<int, int, int, TaskKind, int>, std::vector<std::pair<Length, int>>>;

    /// Who takes the first half of each pass: the larger half goes to whoever has had less so far.
    std::map<std::pair<int, int>, int> shareOut(const Halves& halves) const {
        std::map<std::pair<int, int>, std::array<int, 2>> work;
        for (const auto& [stage, zones] : halves)
            if (const int half = std::get<4>(stage); half >= 0)
                for (const auto& [along, i] : zones)
                    work[{std::get<0>(stage), std::get<1>(stage)}][ix(half)] +=
                        shortest(model_.problem.at(i));
        std::map<std::pair<int, int>, int> first;
        std::array<int, 2> had{};
        for (const auto& [pass, half] : work) {
            const bool swap = (half[0] > half[1]) == (had[0] > had[1]) && had[0] != had[1];
            first[pass] = swap ? 1 : 0;
            had[0] += half[swap ? 1 : 0];
            had[1] += half[swap ? 0 : 1];
        }
        return first;
    }

    bool can(int activity, int person) const {
        const auto& modes = model_.problem.at(activity).modes;
        return std::ranges::find(modes, person, &Mode::person) != modes.end();
    }

    /// Which half a zone is in (0: foot or left, 1: head or right, -1: astride), and how far along.
    std::pair<int, Length> placeOf(const TaskDraft& d, const Share& share) const {
        const QuiltPlan& q = quilts_[ix(d.job)];
        const Rect& area = q.zones[ix(d.zone)].area;
        for (const Pass& p : q.passes)
            if (p.number == d.pass) {
                const Point zone = area.middle(), table = p.fresh.bounds().middle();
                const Length across = share.headAndFoot ? table.y - zone.y : zone.x - table.x;
                const Length half = (share.headAndFoot ? area.length() : area.width()) / 4;
                return {across > half    ? 1
                        : across < -half ? 0
                                         : -1,
                        share.headAndFoot ? zone.x : zone.y};
            }
        return {-1, {}};
    }

    const Model& model_;
    const Drafts& drafts_;
    const std::vector<QuiltPlan>& quilts_;
    std::vector<double> tail_;
};

} // namespace

std::optional<Schedule> mirroredPair(const Model& model, const Drafts& drafts,
                                     const std::vector<QuiltPlan>& quilts) {
    const bool oneTable = std::ranges::all_of(quilts, [&](const QuiltPlan& q) {
        return q.surface.number == quilts.front().surface.number;
    });
    if (model.problem.people.size() != 2 || !oneTable || drafts.tasks.empty())
        return {};
    Pair pair{model, drafts, quilts};
    std::optional<Schedule> best;
    std::int64_t bestWalk = 0;
    for (const int anybodys : {0, 1, 2})
        for (const bool headAndFoot : {true, false}) {
            Schedule s = pair.build({headAndFoot, anybodys});
            const std::int64_t walk = walked(model.problem, s);
            if (!best || better(s, *best) || (!better(*best, s) && walk < bestWalk)) {
                best = std::move(s);
                bestWalk = walk;
            }
        }
    return best;
}

} // namespace bastewright::crew
