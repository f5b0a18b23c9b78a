#include "planners/crew/bound.h"
#include "planners/crew/stage.h"
#include "planners/crew/sweep.h"
#include "unit/crew/made_session.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <numeric>
#include <sstream>

/// Small instances against general integer programming solvers (GLPK, CBC), to the proven optimum.
using namespace bastewright;
using namespace bastewright::crew;

namespace {

/// One stage: one-person tasks, people of different speed and hours, some tasks not for everybody.
Problem stageOf(std::uint64_t seed) {
    made::Dice dice{seed};
    Problem p;
    const int people = dice.between(2, 4), tasks = dice.between(4, 9);
    for (int k = 0; k < people; ++k)
        p.people.push_back({.from = dice.once(3) ? dice.between(5, 60) : 0});
    for (int i = 0; i < tasks; ++i) {
        Activity a{.team = 1};
        const int base = dice.between(20, 90);
        for (int k = 0; k < people; ++k)
            if (!dice.once(4) || (k + 1 == people && a.modes.empty()))
                a.modes.push_back({.person = k, .seconds = base * (10 + 3 * k) / 10 + 15});
        p.activities.push_back(std::move(a));
    }
    return p;
}

/// CPLEX LP text: x(i,p) = 1 where person p does task i; T is no less than anybody's end.
std::string assignmentProgram(const Problem& p) {
    std::ostringstream sum, rows, names;
    for (int i = 0; i < p.size(); ++i) {
        rows << " task" << i << ":";
        for (const Mode& m : p.at(i).modes) {
            rows << " + x" << i << "_" << m.person;
            names << " x" << i << "_" << m.person << "\n";
        }
        rows << " = 1\n";
    }
    for (std::size_t k = 0; k < p.people.size(); ++k) {
        std::ostringstream row;
        for (int i = 0; i < p.size(); ++i)
            for (const Mode& m : p.at(i).modes)
                if (m.person == static_cast<int>(k))
                    row << " + " << m.seconds << " x" << i << "_" << k;
        if (row.str().empty())
            continue;
        rows << " person" << k << ":" << row.str() << " - T <= " << -p.people[k].from << "\n";
        // Who does nothing does not hold the rest up: T need not reach an unused person's coming.
    }
    return "Minimize\n obj: T\nSubject To\n" + rows.str() + "Binaries\n" + names.str() + "End\n";
}

std::string output(const std::string& command) {
    std::string all;
    if (FILE* pipe = popen((command + " 2>/dev/null").c_str(), "r")) {
        std::array<char, 4096> buffer{};
        for (std::size_t n = 0; (n = fread(buffer.data(), 1, buffer.size(), pipe)) > 0;)
            all.append(buffer.data(), n);
        pclose(pipe);
    }
    return all;
}

bool have(const std::string& program) {
    return !output("command -v " + program).empty();
}

/// Objective after "name = value" (GLPK) or "Objective value: value" (CBC); -1 where there is none.
int objective(const std::string& text, const std::string& before) {
    const std::size_t at = text.find(before);
    return at == std::string::npos
               ? -1
               : static_cast<int>(std::lround(std::stod(text.substr(at + before.size()))));
}

int byGlpk(const std::string& file) {
    output("glpsol --lp " + file + " -o " + file + ".sol");
    std::ifstream in{file + ".sol"};
    const std::string text{std::istreambuf_iterator<char>{in}, {}};
    return objective(text, "obj = ");
}

int byCbc(const std::string& file) {
    return objective(output("cbc " + file + " solve"), "Objective value:");
}

void compare(int (*solve)(const std::string&), const std::string& name) {
    const std::string file = testing::TempDir() + "bastewright_stage_" + name + ".lp";
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const Problem p = stageOf(seed);
        std::ofstream{file} << assignmentProgram(p);
        // The program lets nobody be idle who comes late; so does the exact stage only count those
        // who work. Both agree where everybody has come before the optimum.
        int lastComes = 0;
        for (const Person& h : p.people)
            lastComes = std::max(lastComes, h.from);
        const int optimum = solve(file);
        ASSERT_GT(optimum, 0) << name << " gave no answer, seed " << seed;
        const Schedule s =
            searchBySweeps(p, construct(p), {.schedules = 3'000, .bound = lowerBound(p)});
        if (lastComes <= s.finish) {
            EXPECT_EQ(s.finish, optimum) << "seed " << seed;
            std::vector<int> all(static_cast<std::size_t>(p.size())), release(all.size(), 0);
            std::iota(all.begin(), all.end(), 0);
            int branches = 1'000'000;
            EXPECT_EQ(Stage(p, all, release).exact(0, branches), optimum) << "seed " << seed;
        }
        EXPECT_LE(lowerBound(p), s.finish) << "seed " << seed;
    }
    std::filesystem::remove(file);
    std::filesystem::remove(file + ".sol");
}

TEST(Optimum, StagesAgreeWithGlpk) {
    if (!have("glpsol"))
        GTEST_SKIP() << "GLPK IS NOT HERE: install glpk-utils to run this check";
    compare(byGlpk, "glpk");
}

TEST(Optimum, StagesAgreeWithCbc) {
    if (!have("cbc"))
        GTEST_SKIP() << "CBC IS NOT HERE: install coinor-cbc to run this check";
    compare(byCbc, "cbc");
}

/// Every order and every choice of people, built one after another: the best of all schedules.
int bruteForce(const Problem& p) {
    std::vector<int> order(static_cast<std::size_t>(p.size()));
    std::iota(order.begin(), order.end(), 0);
    Decoder decoder{p};
    Schedule s;
    int best = kNever;
    do {
        bool possible = true;
        std::vector<char> done(order.size(), 0);
        for (const int i : order) {
            for (const int b : p.at(i).after)
                possible = possible && done[static_cast<std::size_t>(b)];
            done[static_cast<std::size_t>(i)] = 1;
        }
        if (!possible)
            continue;
        std::vector<int> who(order.size(), -1);
        const auto each = [&](auto&& self, std::size_t k) -> void {
            if (k == who.size()) {
                decoder.build(order, who, s);
                best = std::min(best, s.finish);
                return;
            }
            if (p.activities[k].team != 1)
                return self(self, k + 1);
            for (const Mode& m : p.activities[k].modes) {
                who[k] = m.person;
                self(self, k + 1);
            }
        };
        each(each, 0);
    } while (std::next_permutation(order.begin(), order.end()));
    return best;
}

TEST(Optimum, SmallWorkWithTeamsPlacesAndToolsIsSolvedAsByTryingEverything) {
    for (std::uint64_t seed = 1; seed <= 25; ++seed) {
        made::Dice dice{seed * 7919};
        Problem p;
        p.people = {{}, {.from = dice.upTo(40)}};
        p.tools = {1};
        p.strips = {{.room = 24, .lo = 0, .hi = 30}};
        p.spots = {{.strip = 0, .lo = 0, .hi = 6, .want = 3}};
        const int n = dice.between(4, 6);
        for (int i = 0; i < n; ++i) {
            const int base = dice.between(10, 60);
            Activity a{.team = dice.once(4) ? 2 : 1};
            const int end = a.team == 1 && dice.once(2) ? 1 : 0; // needs the one place there is
            for (int k = 0; k < 2; ++k)
                a.modes.push_back(
                    {.person = k, .seconds = base + 10 * k, .firstSpot = 0, .endSpot = end});
            if (dice.once(3))
                a.demand = {1};
            if (i > 0 && dice.once(2))
                a.after = {dice.upTo(i)};
            p.activities.push_back(std::move(a));
        }
        const int optimum = bruteForce(p);
        const int bound = lowerBound(p);
        EXPECT_LE(bound, optimum) << "seed " << seed;
        EXPECT_EQ(search(p, construct(p), {.schedules = 2'000, .bound = bound}).schedule.finish,
                  optimum)
            << "seed " << seed;
    }
}

} // namespace
