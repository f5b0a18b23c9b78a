#include "planners/whole/help.h"

#include "planners/whole/remedy.h"

#include <array>
#include <future>
#include <optional>

namespace bastewright {
namespace {

constexpr std::array kTried{Help::Kind::helper,   Help::Kind::table,      Help::Kind::offTheWall,
                            Help::Kind::iron,     Help::Kind::hourLonger, Help::Kind::anyStart,
                            Help::Kind::wholeTime};

int passesOf(const Plan& plan) {
    int n = 0;
    for (const QuiltPlan& q : plan.quilts)
        n += static_cast<int>(q.passes.size());
    return n;
}

/// Points wherever they are needed, for all quilts; none where they are already or no point is
/// saved.
std::optional<std::vector<PointsPlan>> fewestPoints(const Session& session,
                                                    const std::vector<PointsPlan>& points,
                                                    const WholeOptions& options,
                                                    std::stop_token stop) {
    std::vector<PointsPlan> out = points;
    bool fewer = false;
    for (std::size_t i = 0; i < points.size() && !stop.stop_requested(); ++i) {
        if (session.jobs[i].basting.layout == Basting::Layout::fewest)
            continue;
        PointsPlan free = planPoints(
            session.jobs[i],
            {.effort = options.effort, .layout = Basting::Layout::fewest, .memory = options.memory},
            stop);
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
    const auto all = [&](Basting::With with) {
        return std::ranges::all_of(jobs, [&](const Job& j) { return j.basting.with == with; });
    };
    if (all(Basting::With::pins))
        return core::says("Fewest pins, in no rows: %1, not %2", fewest, now);
    if (all(Basting::With::dots))
        return core::says("Fewest dots, in no rows: %1, not %2", fewest, now);
    return core::says("Fewest points, in no rows: %1, not %2", fewest, now);
}

} // namespace

std::vector<Help> whatWouldHelp(const Session& session, const Plan& plan,
                                const std::vector<PointsPlan>& points, const WholeOptions& options,
                                std::stop_token stop) {
    std::vector<Help> out;
    const auto offer = [&](Help::Kind kind, const Sentence& change, const Plan& other) {
        const Seconds saved = plan.finish - other.finish;
        const int passes = passesOf(plan) - passesOf(other);
        if (!other.tasks.empty() && saved >= Seconds{60})
            out.push_back({kind, change, saved, passes});
    };
    // Takes longest and shares nothing with the others.
    auto fewest = std::async(std::launch::async,
                             [&] { return fewestPoints(session, points, options, stop); });
    for (const Help::Kind kind : kTried) {
        if (stop.stop_requested())
            break;
        if (const auto remedy = remedyOf(kind, session))
            offer(kind, remedy->words, planAround(remedy->applied(session), points, options, stop));
    }
    if (const auto free = fewest.get(); free && !stop.stop_requested())
        offer(Help::Kind::fewestPoints, fewestOf(session.jobs, count(*free), count(points)),
              planAround(session, *free, options, stop));
    std::ranges::stable_sort(out, std::greater<>{}, &Help::saved);
    return out;
}

} // namespace bastewright
