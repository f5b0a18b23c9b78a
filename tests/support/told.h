#pragma once

#include "job/finding.h"

#include <string>

namespace bastewright {

/// Findings one below the other, for the message of a failed test.
inline std::string told(const Findings& findings) {
    std::string out{"\n"};
    for (const Finding& f : findings)
        out += std::string{name(f.level)} + " " + f.field + ": " + f.text.english() + "\n";
    return out;
}

} // namespace bastewright
