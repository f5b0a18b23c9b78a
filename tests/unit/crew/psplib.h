#pragma once

#include "planners/crew/problem.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

/// Published scheduling instances in their own file formats, as abstract problems without people.
namespace bastewright::made {

struct Instance {
    std::string name;
    crew::Problem problem;
};

/// PSPLIB single-mode ".sm" text (R. Kolisch, A. Sprecher, "PSPLIB - A project scheduling problem
/// library", European Journal of Operational Research 96 (1997) 205-216).
Instance readSm(const std::string& name, const std::string& text);

/// Patterson ".rcp" text (J. H. Patterson, Management Science 30 (1984) 854-867).
Instance readRcp(const std::string& name, const std::string& text);

/// All regular files of a gzipped ustar archive whose names end so; empty where it cannot be read.
std::map<std::string, std::string> readTarGz(const std::string& path, const std::string& ending);

/// Best known makespan of each instance, from BASTEWRIGHT_CHECK_DATA/psplib/best.csv.
std::map<std::string, int> bestKnown(const std::string& path);

/// Longest way through an instance, tools aside.
int criticalPath(const crew::Problem& problem);

/// What is wrong with a schedule of tools and precedence, moment by moment; empty for a good one.
std::string brokenToolRule(const crew::Problem& problem, const crew::Schedule& schedule);

} // namespace bastewright::made
