#include "unit/crew/psplib.h"

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <sstream>

namespace bastewright::made {
namespace {

using crew::Activity;
using crew::Problem;

std::vector<int> numbers(const std::string& line) {
    std::istringstream in{line};
    std::vector<int> out;
    for (int v = 0; in >> v;)
        out.push_back(v);
    return out;
}

bool starts(const std::string& line, const std::string& word) {
    return line.rfind(word, 0) == 0;
}

/// Single quotes make a path one word for the shell; ours hold none.
std::string unpacked(const std::string& path) {
    std::string all;
    if (FILE* pipe = popen(("gzip -dc '" + path + "' 2>/dev/null").c_str(), "r")) {
        char buffer[65536];
        for (std::size_t n = 0; (n = fread(buffer, 1, sizeof buffer, pipe)) > 0;)
            all.append(buffer, n);
        pclose(pipe);
    }
    return all;
}

} // namespace

Instance readSm(const std::string& name, const std::string& text) {
    Instance out{name, {}};
    Problem& p = out.problem;
    enum class Part { none, precedence, requests, tools } part = Part::none;
    std::istringstream in{text};
    for (std::string line; std::getline(in, line);) {
        if (starts(line, "PRECEDENCE"))
            part = Part::precedence;
        else if (starts(line, "REQUESTS"))
            part = Part::requests;
        else if (starts(line, "RESOURCEAVAIL"))
            part = Part::tools;
        const auto row = numbers(line);
        if (row.empty())
            continue;
        const auto at = static_cast<std::size_t>(row[0] - 1);
        if (part == Part::precedence) {
            // jobnr., modes, successors, their numbers
            const auto last = row.size() > 3 ? *std::max_element(row.begin() + 3, row.end()) : 0;
            p.activities.resize(std::max<std::size_t>(
                {p.activities.size(), at + 1, static_cast<std::size_t>(last)}));
            for (std::size_t k = 3; k < row.size(); ++k)
                p.activities[static_cast<std::size_t>(row[k] - 1)].after.push_back(row[0] - 1);
        } else if (part == Part::requests) {
            // jobnr., mode, duration, of each tool
            p.activities[at].seconds = row[2];
            p.activities[at].demand.assign(row.begin() + 3, row.end());
        } else if (part == Part::tools) {
            p.tools = row;
        }
    }
    return out;
}

Instance readRcp(const std::string& name, const std::string& text) {
    Instance out{name, {}};
    std::istringstream in{text};
    int jobs = 0, tools = 0;
    in >> jobs >> tools;
    out.problem.tools.resize(static_cast<std::size_t>(tools));
    for (int& t : out.problem.tools)
        in >> t;
    out.problem.activities.resize(static_cast<std::size_t>(jobs));
    for (int j = 0; j < jobs; ++j) {
        Activity& a = out.problem.activities[static_cast<std::size_t>(j)];
        in >> a.seconds;
        a.demand.resize(static_cast<std::size_t>(tools));
        for (int& d : a.demand)
            in >> d;
        int successors = 0;
        in >> successors;
        for (int k = 0; k < successors; ++k) {
            int s = 0;
            in >> s;
            out.problem.activities[static_cast<std::size_t>(s - 1)].after.push_back(j);
        }
    }
    return out;
}

std::map<std::string, std::string> readTarGz(const std::string& path, const std::string& ending) {
    std::map<std::string, std::string> files;
    if (!std::ifstream{path})
        return files;
    const std::string tar = unpacked(path);
    // ustar (POSIX.1-1988): blocks of 512 bytes; a name of 100, the size in octal from byte 124.
    for (std::size_t at = 0; at + 512 <= tar.size() && tar[at] != '\0';) {
        std::string name = tar.substr(at, 100);
        name.erase(std::min(name.size(), name.find('\0')));
        const auto size =
            static_cast<std::size_t>(std::stoul(tar.substr(at + 124, 11), nullptr, 8));
        const bool wanted = name.size() >= ending.size() &&
                            name.compare(name.size() - ending.size(), ending.size(), ending) == 0;
        if (wanted) {
            const std::size_t slash = name.rfind('/');
            if (slash != std::string::npos)
                name.erase(0, slash + 1);
            files[name.substr(0, name.size() - ending.size())] = tar.substr(at + 512, size);
        }
        at += 512 + (size + 511) / 512 * 512;
    }
    return files;
}

std::map<std::string, int> bestKnown(const std::string& path) {
    std::map<std::string, int> best;
    std::ifstream in{path};
    std::string line;
    std::getline(in, line);
    while (std::getline(in, line)) {
        const std::size_t comma = line.find(',');
        if (comma != std::string::npos)
            best[line.substr(0, comma)] = std::stoi(line.substr(comma + 1));
    }
    return best;
}

int criticalPath(const crew::Problem& problem) {
    // Longest way by repeated relaxation: plain, and independent of the planner's own.
    std::vector<int> end(problem.activities.size(), 0);
    for (bool changed = true; changed;) {
        changed = false;
        for (std::size_t i = 0; i < end.size(); ++i) {
            int e = problem.activities[i].seconds;
            for (const int b : problem.activities[i].after)
                e = std::max(e, end[static_cast<std::size_t>(b)] + problem.activities[i].seconds);
            changed = changed || e != end[i];
            end[i] = e;
        }
    }
    return end.empty() ? 0 : *std::ranges::max_element(end);
}

std::string brokenToolRule(const crew::Problem& problem, const crew::Schedule& schedule) {
    int last = 0;
    for (std::size_t i = 0; i < problem.activities.size(); ++i) {
        const Activity& a = problem.activities[i];
        if (schedule.start[i] < 0 || schedule.end[i] != schedule.start[i] + a.seconds)
            return "activity " + std::to_string(i + 1) + " does not take its time";
        for (const int b : a.after)
            if (schedule.end[static_cast<std::size_t>(b)] > schedule.start[i])
                return "activity " + std::to_string(i + 1) + " does not wait for " +
                       std::to_string(b + 1);
        last = std::max(last, schedule.end[i]);
    }
    if (last != schedule.finish)
        return "the finish is not the last end";
    for (int t = 0; t < last; ++t)
        for (std::size_t k = 0; k < problem.tools.size(); ++k) {
            int used = 0;
            for (std::size_t i = 0; i < problem.activities.size(); ++i)
                if (schedule.start[i] <= t && t < schedule.end[i])
                    used += problem.activities[i].demand[k];
            if (used > problem.tools[k])
                return "tool " + std::to_string(k + 1) + " is overbooked at " + std::to_string(t);
        }
    return "";
}

} // namespace bastewright::made
