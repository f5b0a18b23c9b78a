#include "planners/whole/help.h"

#include "planners/whole/quilt.h"
#include "planners/whole/ways.h"

#include <optional>

namespace bastewright {
namespace {

int passesOf(const Plan& plan) {
    int n = 0;
    for (const QuiltPlan& q : plan.quilts)
        n += static_cast<int>(q.passes.size());
    return n;
}

constexpr std::chrono::minutes kLastMinute{24 * 60 - 1};

struct Variant {
    Help::Kind kind;
    Sentence change;
    Session session;
};

std::string freeName(const std::vector<Helper>& helpers) {
    for (std::size_t n = helpers.size() + 1;; ++n) {
        std::string name = "Helper " + std::to_string(n);
        if (std::ranges::find(helpers, name, &Helper::name) == helpers.end())
            return name;
    }
}

std::vector<Variant> variants(const Session& session) {
    std::vector<Variant> out;
    const auto with = [&](Help::Kind kind, Sentence change, auto edit) {
        Variant v{kind, std::move(change), session};
        edit(v.session.setting);
        out.push_back(std::move(v));
    };
    with(Help::Kind::helper, core::says("One more helper"), [](Setting& s) {
        Helper h;
        h.name = freeName(s.helpers);
        s.helpers.push_back(h);
    });
    if (!session.setting.room.tables.empty()) {
        const Table& t = session.setting.room.tables.front();
        const Unit unit = session.jobs.front().unit;
        with(Help::Kind::table,
             core::says("One more table of %1", core::size(t.width, t.length, unit)),
             [](Setting& s) { ++s.room.tables.front().count; });
        if (!session.setting.room.walls.empty())
            with(Help::Kind::offTheWall, core::says("Tables pulled away from the wall"),
                 [](Setting& s) { s.room.walls.clear(); });
    }
    if (std::ranges::any_of(session.jobs,
                            [](const Job& j) { return j.basting.with == Basting::With::dots; }))
        with(Help::Kind::iron, core::says("One more iron"), [](Setting& s) { ++s.room.irons; });
    if (std::ranges::any_of(session.setting.helpers,
                            [](const Helper& h) { return h.until.has_value(); }))
        with(Help::Kind::hourLonger, core::says("Everybody an hour longer"), [](Setting& s) {
            for (Helper& h : s.helpers)
                if (h.until)
                    h.until->sinceMidnight =
                        std::min(h.until->sinceMidnight + std::chrono::minutes{60}, kLastMinute);
        });
    if (std::ranges::any_of(session.jobs,
                            [](const Job& j) { return j.basting.start != Basting::Start::best; })) {
        with(Help::Kind::anyStart, core::says("The quickest of all starts"), [](Setting&) {});
        for (Job& j : out.back().session.jobs)
            j.basting.start = Basting::Start::best;
    }
    if (std::ranges::any_of(session.setting.helpers,
                            [](const Helper& h) { return h.until || h.from; }))
        with(Help::Kind::wholeTime, core::says("Everybody there from start to end"),
             [](Setting& s) {
                 for (Helper& h : s.helpers)
                     h.from = h.until = {};
             });
    return out;
}

/// Rows of so many points for each that would be needed at least leave free placing hardly anything
/// to save: with fewer it found at most one in seventy less (docs/computation/points.md).
constexpr double kRowsAreGood = 1.1;
/// Advice on more passes than these together would take too long.
constexpr int kPassesTried = 300;

/// Points wherever they are needed, for all quilts; none where they are already or no point is
/// saved.
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

/// How a plan ends, without all that does not change it.
struct Outcome {
    Seconds finish{};
    int passes = 0;
    bool works = false;
};

Outcome outcomeOf(const Session& session, Groundwork& ground, const WholeOptions& options,
                  std::stop_token stop) {
    std::vector<LayerSizes> layers;
    for (const Job& job : session.jobs)
        layers.push_back(layerSizes(job));
    const ChosenWays chosen =
        chooseWays(session, shareRoom(session, layers, ground.points, ground.layouts), layers,
                   ground.points, options, std::move(stop), true);
    Outcome out{.finish = chosen.crew.finish, .works = !chosen.crew.tasks.empty()};
    for (const QuiltPlan& q : chosen.quilts)
        out.passes += static_cast<int>(q.passes.size());
    return out;
}

} // namespace

std::vector<Help> whatWouldHelp(const Session& session, const Plan& plan, Groundwork& ground,
                                const WholeOptions& options, std::stop_token stop) {
    std::vector<Help> out;
    int tried = 0;
    const auto offer = [&](Help::Kind kind, const Sentence& change, const Session& other,
                           Groundwork& its) {
        if (stop.stop_requested() || tried + passesOf(plan) > kPassesTried)
            return;
        tried += passesOf(plan);
        const Outcome then = outcomeOf(other, its, options, stop);
        if (const Seconds saved = plan.finish - then.finish;
            !stop.stop_requested() && then.works && saved >= Seconds{60})
            out.push_back({kind, change, saved, passesOf(plan) - then.passes});
    };
    for (const Variant& v : variants(session))
        offer(v.kind, v.change, v.session, ground);
    if (const bool many = tried + passesOf(plan) > kPassesTried; !many)
        if (auto free = fewestPoints(session, ground.points, options, stop)) {
            const Sentence change = fewestOf(session.jobs, count(*free), count(ground.points));
            Groundwork other{std::move(*free)};
            offer(Help::Kind::fewestPoints, change, session, other);
        }
    std::ranges::stable_sort(out, std::greater<>{}, &Help::saved);
    return out;
}

std::optional<Session> withHelp(const Session& session, Help::Kind kind) {
    if (kind == Help::Kind::fewestPoints) {
        Session out = session;
        for (Job& j : out.jobs)
            j.basting.layout = Basting::Layout::fewest;
        return out;
    }
    for (Variant& v : variants(session))
        if (v.kind == kind)
            return std::move(v.session);
    return {};
}

} // namespace bastewright
