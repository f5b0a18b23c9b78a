#pragma once

#include "session/event.h"

#include <tl/expected.hpp>

#include <string>
#include <string_view>

namespace bastewright {

/// One event as one line of JSON; members at their default are left out, `id` and `kind` never.
/// Text that is not valid UTF-8 is written with replacement characters.
std::string writeEvent(const Event& event);

/// Reads what writeEvent writes. The error is one sentence that names the field, its value and what
/// is accepted. Unknown members are ignored. Never throws.
tl::expected<Event, std::string> readEvent(std::string_view text);

} // namespace bastewright
