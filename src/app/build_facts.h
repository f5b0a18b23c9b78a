#pragma once

#include <string>

namespace bastewright::app {

/// What `--version` prints: the version, the commit where it was known, and what the program was
/// built with and runs on, a line each.
std::string buildFacts();

} // namespace bastewright::app
