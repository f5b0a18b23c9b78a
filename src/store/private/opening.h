#pragma once

#include "job/finding.h"
#include "store/library.h"
#include "store/private/sqlite.h"
#include "store/private/use_lock.h"

#include <string>

namespace bastewright {

struct OpenedFile {
    sqlite::Database db;
    UseLock lock;
    Findings findings;
};

/// Opens the file with everything the library promises switched on and verified, mending it first
/// where it is damaged. The error is a sentence.
Stored<OpenedFile> openFile(const std::string& path, const LibraryOptions& options);

} // namespace bastewright
