#include "planners/crew/crew.h"
#include "planners/passes/passes.h"
#include "planners/whole/quilt.h"
#include "property/checked_plans/random_session.h"
#include "property/passes/any_way.h"
#include "property/passes/outcome.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <ctime>
#include <iostream>
#include <map>
#include <pthread.h>
#include <thread>

// Passes, ways and stops of random sessions, and how long they take. The number of sessions and the
// first seed are set by BASTEWRIGHT_JOBS and BASTEWRIGHT_SEED; with BASTEWRIGHT_ALL their times are
// judged, and what a limit of time does to those that take longer.
namespace bastewright::testing {
namespace {

constexpr double kMostSeconds = 5;
constexpr double kLimitSeconds = 1;
/// More passes than this the planner does not look for.
constexpr int kMostPassesAsked = 64;

double cpu(clockid_t clock) {
    timespec t{};
    clock_gettime(clock, &t);
    return double(t.tv_sec) + 1e-9 * double(t.tv_nsec);
}

/// Asks for a stop once the calling thread has worked for so long.
class Limit {
public:
    explicit Limit(double seconds) {
        clockid_t clock{};
        pthread_getcpuclockid(pthread_self(), &clock);
        const double until = cpu(clock) + seconds;
        watch_ = std::jthread{[this, clock, until](std::stop_token over) {
            while (!over.stop_requested() && cpu(clock) < until)
                std::this_thread::sleep_for(std::chrono::milliseconds{2});
            source_.request_stop();
        }};
    }
    std::stop_token token() const { return source_.get_token(); }

private:
    std::stop_source source_;
    std::jthread watch_;
};

double area(const Region& region, const Rect& inside) {
    double sum = 0;
    for (const Rect& part : region.parts)
        sum += areaSquareInches(intersection(part, inside));
    return sum;
}

/// What is wrong with the passes of a quilt.
std::string faults(const QuiltPlan& quilt) {
    std::string out;
    for (std::size_t k = 0; k < quilt.passes.size(); ++k) {
        const Pass& pass = quilt.passes[k];
        const auto complain = [&](const std::string& what) {
            out += "pass " + std::to_string(pass.number) + " of " + quilt.name + ": " + what + "\n";
        };
        std::size_t points = 0, held = 0;
        double basted = 0;
        for (const Zone& z : quilt.zones) {
            points += z.pass == pass.number ? z.points.size() : 0;
            if (z.pass < pass.number)
                held += static_cast<std::size_t>(std::ranges::count_if(
                    z.points, [&](const PlacedPoint& p) { return pass.table.contains(p.at); }));
        }
        for (std::size_t i = 0; i < k; ++i)
            basted += area(quilt.passes[i].fresh, pass.table);
        if (points == 0)
            complain("no points");
        if (k > 0 && held == 0)
            complain("nothing that was basted before is held on the table");
        if (k > 0 && basted < 6 * 6)
            complain("less than a hand of what was basted before lies on the table");
    }
    return out;
}

/// True where one of the ways of the only quilt works for these people, each laid out in full.
bool someWayWorks(const Session& session) {
    const Job& job = session.jobs.front();
    const LayerSizes layers = layerSizes(job);
    const PointsPlan points = planPoints(job);
    const PassRequest request{job, session.setting, layers, points.points};
    const std::vector<std::vector<PlacedPoint>> places{points.points};
    const std::vector<Arrangement> surfaces = session.setting.room.tables.empty()
                                                  ? std::vector{floorArrangement(layers.backing)}
                                                  : arrangements(session.setting.room.tables);
    for (const PassChoice& way : passChoices(request, surfaces)) {
        if (!way.summary.workable)
            continue;
        std::vector<QuiltPlan> quilts{layQuilt(session, 0, way, 1, layers, points)};
        const CrewPlan crew = planCrew(session, quilts, places);
        if (!anyStop(crew.findings))
            return true;
    }
    return false;
}

bool concerns(const Finding& f, const std::string& field) {
    return f.level == Finding::Level::stop && f.field.ends_with(field);
}

class Sessions : public ::testing::Test {
protected:
    void check(std::uint64_t seed) {
        SCOPED_TRACE("BASTEWRIGHT_SEED=" + std::to_string(seed) + " BASTEWRIGHT_JOBS=1");
        const Session session = randomSession(seed);
        const double from = cpu(CLOCK_THREAD_CPUTIME_ID);
        const Plan plan = planWhole(session);
        const double took = cpu(CLOCK_THREAD_CPUTIME_ID) - from;
        if (std::getenv("BASTEWRIGHT_ALL") != nullptr) {
            EXPECT_LE(took, kMostSeconds);
        }
        longest_ = std::max(longest_, took);
        sum_ += took;
        for (const QuiltPlan& quilt : plan.quilts)
            EXPECT_EQ(faults(quilt), "");
        stops(session, plan);
        if (session.jobs.size() == 1)
            ways(session, plan);
        if (took > kLimitSeconds && std::getenv("BASTEWRIGHT_ALL") != nullptr)
            limit(session);
    }

    void stops(const Session& session, const Plan& plan) {
        bool people = false;
        for (const Finding& f : plan.findings) {
            if (f.level == Finding::Level::stop)
                ++stops_[f.field + ": " + f.text.text()];
            people = people || concerns(f, "/helpers");
        }
        for (std::size_t i = 0; i < session.jobs.size(); ++i) {
            const std::string prefix =
                session.severalQuilts ? "/jobs/" + std::to_string(i) : std::string{};
            const bool lies = std::ranges::none_of(plan.findings, [&](const Finding& f) {
                return concerns(f, prefix + "/room/tables");
            });
            // Cloth on a table against a wall takes room that this search does not know of.
            if (lies || !session.setting.room.walls.empty() || session.jobs.size() > 1)
                continue;
            EXPECT_FALSE(
                anyWay(session.jobs[i], session.setting, planPoints(session.jobs[i]).points) &&
                leastByArea(session.jobs[i], session.setting) < kMostPassesAsked / 4)
                << "stopped, and there is a way";
        }
        if (people && session.jobs.size() == 1) {
            EXPECT_FALSE(someWayWorks(session)) << "stopped, and there is a way";
        }
    }

    /// What was taken is the quickest of those that were asked for, and the plan is as predicted.
    static void ways(const Session& session, const Plan& plan) {
        const auto& all = plan.quilts.front().alternatives;
        const auto taken = std::ranges::find(all, true, &Alternative::chosen);
        if (taken == all.end() || plan.tasks.empty() || anyStop(plan.findings))
            return;
        EXPECT_EQ(taken->predicted, plan.finish);
        const Job& job = session.jobs.front();
        const bool asked = isAskedFor(job, session.setting.room, *taken);
        for (const Alternative& way : all)
            if (way.workable && (!asked || isAskedFor(job, session.setting.room, way))) {
                EXPECT_LE(taken->predicted, way.predicted) << way.surface;
            }
    }

    void limit(const Session& session) {
        const Limit limit{kLimitSeconds};
        const double from = cpu(CLOCK_THREAD_CPUTIME_ID);
        planWhole(session, {}, limit.token());
        const double took = cpu(CLOCK_THREAD_CPUTIME_ID) - from;
        EXPECT_LE(took, 1.1 * kLimitSeconds);
        limited_ = std::max(limited_, took);
        ++limits_;
    }

    double longest_ = 0, sum_ = 0, limited_ = 0;
    int limits_ = 0;
    std::map<std::string, int> stops_;
};

TEST_F(Sessions, HavePassesThatAreWorthItAndStopOnlyWhereNothingWorks) {
    const std::uint64_t jobs = number("BASTEWRIGHT_JOBS", 24);
    const std::uint64_t first = number("BASTEWRIGHT_SEED", 1);
    for (std::uint64_t seed = first; seed < first + jobs; ++seed)
        check(seed);
    std::cout << jobs << " sessions, " << sum_ / double(jobs) << " s each, at most " << longest_
              << " s; " << limits_ << " with a limit of " << kLimitSeconds << " s, at most "
              << limited_ << " s\n";
    for (const auto& [text, times] : stops_)
        std::cout << "  " << times << " × " << text << "\n";
}

} // namespace
} // namespace bastewright::testing
