#pragma once

#include "measures/sentence.h"

#include <string>
#include <vector>

namespace bastewright {

/// Something the person has to know about a job or a plan.
struct Finding {
    enum class Level {
        note, ///< worth knowing
        warn, ///< the plan works, but something may go wrong
        stop  ///< no good plan until this is cured
    };
    Level level = Level::note;
    std::string
        field;     ///< JSON pointer into the job or session file, e.g. "/top/width/0"; may be empty
    Sentence text; ///< one sentence: what is wrong, the value, what is accepted
    Sentence cure; ///< the smallest change that cures it, one sentence; may be empty
    auto operator<=>(const Finding&) const = default;
};

using Findings = std::vector<Finding>;

constexpr const char* name(Finding::Level l) {
    return l == Finding::Level::stop ? "stop" : l == Finding::Level::warn ? "warn" : "note";
}

/// True where any of them forbids starting.
inline bool anyStop(const Findings& all) {
    for (const auto& f : all)
        if (f.level == Finding::Level::stop)
            return true;
    return false;
}

} // namespace bastewright
