#pragma once

#include "job/job.h"

#include <string>

namespace bastewright {

/// Tops of 12 in blocks, sewn in the ditch, with a border of at least `border` (what the blocks
/// leave).
enum class Seams { none, sashing, every4, every3, triangles6, triangles4 };
const char* name(Seams seams);
Job madeTop(Seams seams, Length width, Length length, Length border);

} // namespace bastewright
