#include "job/job_json.h"
#include "plan/plan_json.h"
#include "planners/whole/whole.h"
#include "unit/job/random_session.h"
#include "unit/plan/random_plan.h"

#include <filesystem>
#include <fstream>
#include <iostream>

/// Writes files for validate_schema.py: the demos as the program writes them with their plans, and
/// sessions and plans with every field in use.
///
///     write_samples DEMO_FOLDER OUT_FOLDER
int main(int argc, char** argv) {
    using namespace bastewright;
    namespace fs = std::filesystem;
    if (argc != 3) {
        std::cerr << "write_samples DEMO_FOLDER OUT_FOLDER\n";
        return 2;
    }
    const fs::path demos = argv[1], out = argv[2];
    fs::remove_all(out);
    fs::create_directories(out);
    const auto write = [&](const std::string& name, const std::string& text) {
        std::ofstream{out / (name + ".json")} << text;
    };
    for (const auto& file : fs::directory_iterator{demos}) {
        const auto read = readSessionFile(file.path().string());
        if (!read.session) {
            std::cerr << file.path() << " is not accepted\n";
            return 1;
        }
        const auto name = file.path().stem().string();
        write("demo-" + name, writeSession(*read.session));
        write("plan-" + name, writePlan(planWhole(*read.session, {.effort = 0})));
    }
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        write("session-" + std::to_string(seed), writeSession(randomSession(seed)));
        write("random-plan-" + std::to_string(seed), writePlan(randomPlan(seed)));
    }
    return 0;
}
