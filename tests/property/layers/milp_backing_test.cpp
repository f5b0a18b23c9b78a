#include "planners/backing/backing.h"
#include "unit/backing/sewing.h"

#include <gmock/gmock.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <optional>
#include <random>

/// Lengths of several cloths, on hand and bought, against a mixed integer program solved by GLPK or
/// CBC (both general-purpose and open source).
namespace bastewright {
namespace {

enum class Solver { none, glpk, cbc };

bool runs(const char* command) {
    return std::system(command) == 0;
}

Solver solver() {
    static const Solver found = runs("glpsol --version > /dev/null 2>&1") ? Solver::glpk
                                : runs("cbc -quit > /dev/null 2>&1")      ? Solver::cbc
                                                                          : Solver::none;
    return found;
}

/// The objective of a program in CPLEX LP format; nothing where it has no solution.
std::optional<double> solve(const std::string& program) {
    const auto folder = std::filesystem::temp_directory_path() /
                        ("bastewright-milp-" + std::to_string(std::random_device{}()));
    std::filesystem::create_directories(folder);
    const std::string lp = folder / "p.lp", out = folder / "p.out";
    std::ofstream{lp} << program;
    const std::string command =
        solver() == Solver::glpk
            ? "glpsol --lp " + lp + " -o " + out + " > /dev/null 2>&1"
            : "cbc " + lp + " ratio 0 solve solution " + out + " > /dev/null 2>&1";
    std::optional<double> objective;
    if (std::system(command.c_str()) == 0) {
        std::ifstream in{out};
        std::string line;
        bool optimal = false;
        while (std::getline(in, line)) {
            optimal =
                optimal || line.find("OPTIMAL") != std::string::npos || line.starts_with("Optimal");
            const auto at = line.find(solver() == Solver::glpk ? "= " : "objective value ");
            if (optimal && !objective && at != std::string::npos &&
                (solver() == Solver::cbc || line.starts_with("Objective")))
                objective = std::atof(line.c_str() + at + (solver() == Solver::glpk ? 2 : 16));
        }
        if (!optimal)
            objective.reset();
    }
    std::filesystem::remove_all(folder);
    return objective;
}

/// Eighths of a yard bought in all: n whole lengths from each cloth, at most what is on hand, their
/// widths less the seams at least as wide as the backing.
std::string program(const Job& job, double across, double height) {
    std::string goal, cover, rest, whole = "General\n";
    double seam = 2 * job.backing.seam.in();
    for (std::size_t f = 0; f < job.backing.fabrics.size(); ++f) {
        const Fabric& cloth = job.backing.fabrics[f];
        const std::string i = std::to_string(f);
        const std::string width = std::to_string(cloth.usableWidth.in() - seam);
        goal += (f ? " + z" : " z") + i;
        cover += (f ? " + " : " ") + width + " h" + i + " + " + width + " b" + i;
        rest += " on" + i + ": " + std::to_string(height) + " h" + i +
                " <= " + std::to_string(cloth.onHand.in()) + "\n";
        rest += " buy" + i + ": " + std::to_string(height) + " b" + i + " - 4.5 z" + i + " <= 0\n";
        whole += " h" + i + " b" + i + " z" + i + "\n";
    }
    return "Minimize\n bought:" + goal + "\nSubject To\n cover:" + cover +
           " >= " + std::to_string(across - seam) + "\n" + rest + whole + "End\n";
}

TEST(BackingByIntegerProgram, BuysAsLittle) {
    if (solver() == Solver::none)
        GTEST_SKIP() << "NEITHER glpsol NOR cbc IS INSTALLED: the check against an integer program "
                        "is not made (apt-get install glpk-utils)";
    for (std::uint64_t seed = 1; seed <= 25; ++seed) {
        std::mt19937_64 random{seed};
        Job job;
        job.backing.column = false;
        job.backing.squaring = {};
        job.backing.leastPiece = 2_in;
        job.backing.seamWorth = {}; // the program knows nothing of seams
        job.backing.centreSeam = true;
        for (int f = 0; f < 3; ++f)
            job.backing.fabrics.push_back(
                {.name = std::string(1, char('a' + f)),
                 .usableWidth = Length::inches(36 + std::int64_t(random() % 10)),
                 .onHand = Length::inches(std::int64_t(random() % 3 * 70 + random() % 40))});
        const double w = double(60 + random() % 60), l = double(60 + random() % 60);
        const auto along = solve(program(job, w, l)), across = solve(program(job, l, w));
        ASSERT_TRUE(along && across) << "seed " << seed;
        const Size needed{Length::nearestInches(w), Length::nearestInches(l)};
        const BackingOutcome out = planBacking(job, needed);
        ASSERT_TRUE(out.plan) << "seed " << seed;
        EXPECT_THAT(sewing::faults(job, needed, *out.plan), testing::IsEmpty()) << "seed " << seed;
        EXPECT_NEAR(sewing::boughtInAll(*out.plan).in() / 4.5, std::min(*along, *across), 1e-6)
            << "seed " << seed;
    }
}

} // namespace
} // namespace bastewright
