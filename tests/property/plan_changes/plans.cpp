#include "property/plan_changes/plans.h"

#include "job/job_json.h"
#include "plan/plan_json.h"
#include "planners/whole/whole.h"
#include "property/checked_plans/random_session.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace bastewright::testing {
namespace {

std::string textOf(const std::string& path) {
    std::ifstream file{path};
    std::ostringstream out;
    out << file.rdbuf();
    return out.str();
}

Session demo(const std::string& name) {
    auto read = readSessionFile(BASTEWRIGHT_SOURCE "/assets/demo/" + name + ".json");
    if (!read.session)
        throw std::runtime_error{name + " is not accepted"};
    return *read.session;
}

/// Harbour Lights with a figure of pins in every block, and a seam across one.
Session byTheBlocks() {
    Session s = demo("harbour-lights");
    s.jobs.front().basting.layout = Basting::Layout::blocks;
    s.jobs.front().top.seams.push_back({{3_in, 3_in}, {13_in, 13_in}});
    return s;
}

/// Harbour Lights with fuse dots where its pins run short.
Session fewPins() {
    Session s = demo("harbour-lights");
    s.jobs.front().basting.whereShort = Basting::With::dots;
    return s;
}

/// Leftovers of which one has to be cut in two first.
Session cutLeftover() {
    Session s = demo("leftover-batting");
    s.jobs.front().batting.pieces = {{"1", Length::millimetres(1220), Length::millimetres(2000)},
                                     {"2", Length::millimetres(1060), Length::millimetres(1080)}};
    return s;
}

/// The plan of a session: from the folder BASTEWRIGHT_PLANS where it is there, and into it where
/// it is not, for whoever works at the checker.
Plan planned(const std::string& name, const Session& session) {
    const WholeOptions options{.effort = 0, .help = session.jobs.size() == 1};
    const char* folder = std::getenv("BASTEWRIGHT_PLANS");
    if (folder == nullptr)
        return planWhole(session, options);
    const std::string path = std::string{folder} + "/" + name + ".json";
    if (std::filesystem::exists(path))
        if (const PlanRead read = readPlan(textOf(path)); read.plan)
            return *read.plan;
    Plan plan = planWhole(session, options);
    std::ofstream{path} << writePlan(plan);
    return plan;
}

SessionToPlan toPlan(std::string name, std::function<Session()> session) {
    return {name, [name, session] {
                PlannedSession out{name, session(), {}};
                out.plan = planned(name, out.session);
                return out;
            }};
}

} // namespace

std::vector<SessionToPlan> sessionsToPlan() {
    std::vector<SessionToPlan> out;
    for (const char* name :
         {"harbour-lights", "leftover-batting", "winter-afternoon", "winter-thread"})
        out.push_back(toPlan(name, [name] { return demo(name); }));
    out.push_back(toPlan("by-the-blocks", byTheBlocks));
    out.push_back(toPlan("cut-leftover", cutLeftover));
    out.push_back(toPlan("few-pins", fewPins));
    for (std::uint64_t seed = 1; seed <= 30; ++seed)
        out.push_back(
            toPlan("seed-" + std::to_string(seed), [seed] { return randomSession(seed); }));
    for (SessionToPlan& s : out)
        s.quick = s.name == "winter-afternoon" || s.name == "cut-leftover" ||
                  s.name == "few-pins" || s.name == "seed-15";
    return out;
}

} // namespace bastewright::testing
