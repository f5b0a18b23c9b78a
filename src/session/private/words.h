#pragma once

#include "measures/sentence.h"
#include "plan/task.h"

namespace bastewright {

/// A step in the middle of a sentence: "the smoothing".
Sentence spoken(TaskKind kind);
/// A step at the beginning of a sentence: "The smoothing".
Sentence spokenFirst(TaskKind kind);

} // namespace bastewright
