#include "planners/whole/help.h"

#include "planners/whole/quilt.h"
#include "planners/whole/remedy.h"
#include "planners/whole/ways.h"
#include "ways/way.h"

#include <array>
#include <optional>

namespace bastewright {
namespace {

constexpr std::array kTried{Help::Kind::helper,   Help::Kind::table,      Help::Kind::offTheWall,
                            Help::Kind::iron,     Help::Kind::hourLonger, Help::Kind::anyStart,
                            Help::Kind::wholeTime};

int passesOf(const std::vector<QuiltPlan>& quilts) {
    int n = 0;
    for (const QuiltPlan& q : quilts)
        n += static_cast<int>(q.passes.size());
    return n;
}

/// Rows of so many points for each that would be needed at least leave free placing hardly anything
/// to save: with fewer it found at most one in seventy less (docs/computation/points.md).
constexpr double kRowsAreGood = 1.1;
/// Advice on more passes than these together would take too long.
constexpr int kPassesTried = 300;

/// Points wherever they are needed, about, for all quilts; none where they are already or no point
/// is saved.
std::optional<std::vector<PointsPlan>> fewestPoints(const Session& session,
                                                    const std::vector<PointsPlan>& points,
                                                    const WholeOptions& options,
                                                    std::stop_token stop) {
    std::vector<PointsPlan> out = points;
    bool fewer = false;
    for (std::size_t i = 0; i < points.size() && !stop.stop_requested(); ++i) {
        if (session.jobs[i].basting.layout == Basting::Layout::fewest ||
            double(points[i].points.size()) < kRowsAreGood * points[i].bound)
            continue;
        PointsPlan free = planPoints(
            session.jobs[i],
            {.layout = Basting::Layout::fewest, .glance = true, .memory = options.memory}, stop);
        if (free.points.size() < points[i].points.size()) {
            out[i] = std::move(free);
            fewer = true;
        }
    }
    return fewer ? std::optional{std::move(out)} : std::nullopt;
}

std::size_t count(const std::vector<PointsPlan>& points) {
    std::size_t n = 0;
    for (const PointsPlan& p : points)
        n += p.points.size();
    return n;
}

Sentence fewestOf(const std::vector<Job>& jobs, std::size_t fewest, std::size_t now) {
    const auto same = [&](const Way& way) {
        return std::ranges::all_of(jobs, [&](const Job& j) { return &wayOf(j) == &way; });
    };
    if (const auto way = std::ranges::find_if(allWays(), same); way != allWays().end())
        return way->words.fewest(std::int64_t(fewest), std::int64_t(now));
    return core::says("As few as possible, in no rows: %1 or fewer, not %2", fewest, now);
}

/// How a plan ends, without all that does not change it.
struct Outcome {
    Seconds finish{};
    int passes = 0;
    bool works = false;
};

Outcome outcomeOf(const Session& session, Groundwork& ground, std::stop_token stop) {
    const std::vector<LayerSizes> layers = layerSizes(session);
    std::vector<Shared> shared = shareRoom(session, layers, ground.points, ground.layouts, stop);
    if (stop.stop_requested()) // nobody asks for it any more
        return {};
    const ChosenWays chosen = chooseWays(session, std::move(shared), layers, ground.points,
                                         ground.layouts, std::move(stop), true);
    return {.finish = chosen.crew.finish,
            .passes = passesOf(chosen.quilts),
            .works = !chosen.crew.tasks.empty()};
}

} // namespace

std::vector<Help> whatWouldHelp(const Session& session, const Plan& plan, Groundwork& ground,
                                const WholeOptions& options, std::stop_token stop) {
    std::vector<Help> out;
    int tried = 0;
    const auto offer = [&](Help::Kind kind, const Sentence& change, const Session& other,
                           Groundwork& its) {
        if (stop.stop_requested() || tried + passesOf(plan.quilts) > kPassesTried)
            return;
        tried += passesOf(plan.quilts);
        const Outcome then = outcomeOf(other, its, stop);
        if (const Seconds saved = plan.finish - then.finish;
            !stop.stop_requested() && then.works && saved >= Seconds{60})
            out.push_back({kind, change, saved, passesOf(plan.quilts) - then.passes});
    };
    for (const Help::Kind kind : kTried)
        if (const auto remedy = remedyOf(kind, session))
            offer(kind, remedy->words, remedy->applied(session), ground);
    if (const bool many = tried + passesOf(plan.quilts) > kPassesTried; !many)
        if (auto free = fewestPoints(session, ground.points, options, stop)) {
            const Sentence change = fewestOf(session.jobs, count(*free), count(ground.points));
            Groundwork other{std::move(*free)};
            offer(Help::Kind::fewestPoints, change, session, other);
        }
    std::ranges::stable_sort(out, std::greater<>{}, &Help::saved);
    return out;
}

} // namespace bastewright
