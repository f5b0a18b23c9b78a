#pragma once

#include "store/private/sqlite.h"

namespace bastewright::schema {

/// Written into the file's header so that no other program's database is ever taken for ours:
/// "BAST" in ASCII.
inline constexpr std::int64_t kApplicationId = 0x42415354;
/// Number of the newest migration.
std::int64_t newest();

/// What an existing file is.
enum class Kind { empty, ours, newer, foreign };
Kind kindOf(const sqlite::Database& db);

/// Brings an empty or older file to the newest form, in one transaction.
void migrate(sqlite::Database& db);

} // namespace bastewright::schema
