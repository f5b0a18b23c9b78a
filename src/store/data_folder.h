#pragma once

#include "measures/sentence.h"

#include <tl/expected.hpp>

#include <functional>
#include <optional>
#include <string>

namespace bastewright {

/// Looks up a variable of the environment; nothing where it is not set.
using Environment = std::function<std::optional<std::string>(const std::string&)>;

/// The process's own environment.
Environment processEnvironment();

/// The folder the person's library lives in: $XDG_DATA_HOME/bastewright, else
/// ~/.local/share/bastewright (XDG Base Directory Specification 0.8: an empty or relative
/// XDG_DATA_HOME counts as not set). The error says what to set where HOME is missing too.
tl::expected<std::string, Sentence> dataFolder(const Environment& environment);

/// The library file in it.
tl::expected<std::string, Sentence> libraryPath(const Environment& environment);

} // namespace bastewright
