#include "unit/points/solver.h"

#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <unistd.h>

namespace bastewright {
namespace {

bool callable(const char* program) {
    return std::system(("command -v " + std::string{program} + " >/dev/null 2>&1").c_str()) == 0;
}

/// CPLEX LP format, which both solvers read.
std::string text(const CoverModel& m) {
    std::ostringstream out;
    out << "Minimize\n cost:";
    for (std::size_t c = 0; c < m.costs.size(); ++c)
        out << " + " << m.costs[c] << " x" << c << (c % 10 == 9 ? "\n" : "");
    out << "\nSubject To\n";
    for (std::size_t r = 0; r < m.rows.size(); ++r) {
        out << " r" << r << ":";
        for (std::size_t i = 0; i < m.rows[r].size(); ++i)
            out << " + x" << m.rows[r][i] << (i % 10 == 9 ? "\n" : "");
        out << " >= 1\n";
    }
    for (std::size_t p = 0; p < m.apart.size(); ++p)
        out << " p" << p << ": x" << m.apart[p].first << " + x" << m.apart[p].second << " <= 1\n";
    out << "Binary\n";
    for (std::size_t c = 0; c < m.costs.size(); ++c)
        out << " x" << c << "\n";
    out << "End\n";
    return out.str();
}

} // namespace

bool cbcAvailable() {
    return callable("cbc");
}
bool solverAvailable() {
    return callable("cbc") || callable("glpsol");
}

std::optional<Solved> solved(const CoverModel& model, int limitSeconds) {
    const auto base =
        std::filesystem::temp_directory_path() / ("points_cover_" + std::to_string(::getpid()));
    const std::string lp = base.string() + ".lp", answer = base.string() + ".out";
    std::ofstream{lp} << text(model);
    const bool cbc = callable("cbc");
    const std::string limit = std::to_string(limitSeconds);
    const std::string command =
        cbc ? "cbc " + lp + " sec " + limit + " solve solution " + answer + " >/dev/null 2>&1"
            : "glpsol --lp " + lp + " --tmlim " + limit + " -o " + answer + " >/dev/null 2>&1";
    const auto start = std::chrono::steady_clock::now();
    const int status = std::system(command.c_str());
    Solved out;
    out.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    std::ifstream in{answer};
    std::string all{std::istreambuf_iterator<char>{in}, {}};
    std::filesystem::remove(lp);
    std::filesystem::remove(answer);
    if (status != 0 || all.empty())
        return {};
    // 'Optimal - objective value 8.0' (CBC); 'Status: INTEGER OPTIMAL' and 'cost = 8' (GLPK).
    out.proven =
        cbc ? all.starts_with("Optimal") : all.find("INTEGER OPTIMAL") != std::string::npos;
    const std::string mark = cbc ? "objective value" : "cost =";
    const auto at = all.find(mark);
    if (at == std::string::npos)
        return {};
    out.cost = std::strtod(all.c_str() + at + mark.size(), nullptr);
    if (cbc) { // after the first line: number, name, value, reduced cost; zeros are left out
        std::istringstream lines{all.substr(all.find('\n') + 1)};
        std::string number, name, value, reduced;
        while (lines >> number >> name >> value >> reduced)
            if (name.starts_with("x") && std::strtod(value.c_str(), nullptr) > 0.5)
                out.chosen.push_back(std::atoi(name.c_str() + 1));
    }
    return out;
}

} // namespace bastewright
