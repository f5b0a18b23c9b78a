#pragma once

#include "job/finding.h"
#include "store/library.h"

#include <string>

namespace bastewright {

/// Replaces a damaged, empty or missing library: builds a new one beside it from the newest sound
/// backup and whatever rows of the damaged file can still be read, keeps the damaged file aside,
/// and puts the new one in its place. Nothing is moved before the new one is complete. The caller
/// holds the use lock alone. The finding tells the person what happened; throws sqlite::Error or
/// std::filesystem errors where the new one cannot be built.
Finding rescue(const std::string& path, const LibraryOptions& options, const Sentence& reason);

} // namespace bastewright
