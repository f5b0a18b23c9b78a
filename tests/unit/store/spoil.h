#pragma once

#include <sqlite3.h>

#include <fstream>
#include <string>

namespace bastewright::made {

/// Overwrites bytes with rubbish that is neither zero nor text.
inline void spoil(const std::string& file, std::streamoff from, std::streamoff count) {
    std::fstream f{file, std::ios::in | std::ios::out | std::ios::binary};
    f.seekp(from);
    for (std::streamoff n = 0; n < count; ++n)
        f.put(static_cast<char>(0xA5 + n % 7));
}

/// The page of the root of a table or an index, from SQLite's own catalogue.
inline std::streamoff rootOf(const std::string& file, const std::string& table,
                             std::streamoff& pageSize) {
    sqlite3* db = nullptr;
    sqlite3_open(file.c_str(), &db);
    const auto number = [db](const std::string& sql) {
        sqlite3_stmt* s = nullptr;
        sqlite3_prepare_v2(db, sql.c_str(), -1, &s, nullptr);
        sqlite3_step(s);
        const auto n = sqlite3_column_int64(s, 0);
        sqlite3_finalize(s);
        return n;
    };
    pageSize = number("PRAGMA page_size");
    const auto root = number("SELECT rootpage FROM sqlite_schema WHERE name = '" + table + "'");
    sqlite3_close(db);
    return root;
}

} // namespace bastewright::made
