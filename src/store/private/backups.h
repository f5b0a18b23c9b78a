#pragma once

#include "job/finding.h"
#include "store/private/sqlite.h"

#include <optional>
#include <string>

namespace bastewright {

/// "…/library.sqlite" and "backup-1" make "…/library.backup-1.sqlite".
std::string besideLibrary(const std::string& path, const std::string& what);

/// Makes sure that what was written to a file is still there after a power cut. Best effort.
void syncFile(const std::string& path);

/// Makes sure a new or renamed file is found again after a power cut. Best effort.
void syncFolderOf(const std::string& path);

/// "library.damaged-1.sqlite", or with the first number that is free.
std::string freeNameBeside(const std::string& path, const std::string& what);

/// A file with at least the head of a database. SQLite takes a shorter one for a new library and
/// throws the log beside it away.
bool hasHead(const std::string& path);

/// Copies everything the connection sees into a new file of its own, flushed and checked.
void copyWhole(sqlite::Database& db, const std::string& fresh);

/// Keeps the last `keep` states of the library as files of their own, the newest as number 1. Does
/// nothing where nothing has changed since the newest. Copies through SQLite's backup interface in
/// small steps from one snapshot, so that others go on writing; gives up after two seconds and
/// leaves the old ones as they are. A finding (note) where there is no new backup although one was
/// due.
std::optional<Finding> backUp(sqlite::Database& db, const std::string& path, int keep);

/// The newest backup that is sound, if any.
std::optional<std::string> newestSoundBackup(const std::string& path, int keep);

} // namespace bastewright
