#pragma once

#include "planners/passes/passes.h"

namespace bastewright {

/// Why nothing can be laid out on a surface.
Sentence unworkable(const PassRequest& request, const PassChoice& choice);

/// What a person should know of a way beside its figures; empty where there is nothing.
Sentence remarks(const PassRequest& request, const PassChoice& choice);

} // namespace bastewright
