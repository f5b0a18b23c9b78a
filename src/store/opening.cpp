#include "store/private/opening.h"

#include "store/private/backups.h"
#include "store/private/rescue.h"
#include "store/private/schema.h"

#include <filesystem>
#include <system_error>
#include <variant>

namespace bastewright {
namespace {

namespace fs = std::filesystem;
using sqlite::Database;

struct Damage {
    Sentence reason;
};
struct Refusal {
    Sentence sentence;
};
using Attempt = std::variant<Database, Damage, Refusal>;

void setPagesAtMost(Database& db, std::int64_t pages) {
    if (pages > 0)
        db.run("PRAGMA max_page_count = " + std::to_string(pages));
}

// What a setting is worth is what SQLite says when asked again.
std::optional<Refusal> switchOn(Database& db, const std::string& path) {
    if (const auto mode = db.text("PRAGMA journal_mode = WAL"); mode != "wal")
        return Refusal{
            core::says("The library %1 cannot be kept safely where it is: write-ahead logging "
                       "stays \"%2\" there. Choose a folder on this machine's own disk.",
                       path, mode)};
    db.run("PRAGMA synchronous = FULL");
    db.run("PRAGMA foreign_keys = ON");
    db.run("PRAGMA secure_delete = ON"); // who was forgotten is not left in free pages
    if (db.number("PRAGMA synchronous") != 2 || db.number("PRAGMA foreign_keys") != 1)
        return Refusal{
            core::says("The library %1 cannot be kept safely: this build of SQLite does not "
                       "offer full synchronization and foreign keys.",
                       path)};
    return {};
}

Attempt attempt(const std::string& path, const LibraryOptions& options) {
    try {
        Database db{path, Database::Mode::readWrite, options.busyMs};
        // Until the file is known to be sound, closing it must leave it as it is.
        sqlite3_db_config(db.handle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
        if (sqlite3_db_readonly(db.handle(), "main") == 1)
            throw sqlite::Error{SQLITE_READONLY, "read-only"};
        switch (schema::kindOf(db)) {
        case schema::Kind::newer:
            return Refusal{
                core::says("The library %1 was written by a newer version of the program. "
                           "Open it with that version.",
                           path)};
        case schema::Kind::foreign:
            return Refusal{
                core::says("The file %1 is another program's database, not a library. Move "
                           "it away or choose another folder.",
                           path)};
        case schema::Kind::empty:
        case schema::Kind::ours:
            break;
        }
        if (const auto refused = switchOn(db, path))
            return *refused;
        setPagesAtMost(db, options.pageLimit);
        if (auto complaint = db.quickCheck())
            return Damage{"quick check: " + *complaint};
        schema::migrate(db);
        sqlite3_db_config(db.handle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 0, nullptr);
        return db;
    } catch (const sqlite::Error& e) {
        if (e.damaged())
            return Damage{std::string{e.what()}};
        return Refusal{sqlite::sentence(core::says("The library %1 could not be opened", path), e)};
    }
}

/// Why a library that can be had from a backup is not there; nothing where it is, or never was.
std::optional<Damage> missing(const std::string& path, const LibraryOptions& options) {
    if (hasHead(path) || !newestSoundBackup(path, options.backups))
        return {};
    return Damage{fs::exists(path) ? core::says("it is empty") : core::says("it is gone")};
}

Attempt look(const std::string& path, const LibraryOptions& options) {
    try {
        if (auto damage = missing(path, options))
            return *std::move(damage);
    } catch (const fs::filesystem_error&) {
        // opening it says what is wrong
    }
    return attempt(path, options);
}

Sentence inUseButDamaged(const std::string& path) {
    return core::says(
        "The library %1 is damaged, and another window of the program still has it open. "
        "Close every window and start again; what can be saved is then saved.",
        path);
}

} // namespace

Stored<OpenedFile> openFile(const std::string& path, const LibraryOptions& options) {
    std::error_code failed;
    const auto folder = fs::path{path}.parent_path();
    if (!folder.empty() && !fs::exists(folder, failed)) {
        fs::create_directories(folder, failed);
        if (failed)
            return tl::unexpected(core::says("The folder %1 for the library could not be made: %2. "
                                             "Choose another folder or ask for the right to write "
                                             "there.",
                                             folder.string(), failed.message()));
        fs::permissions(folder, fs::perms::owner_all, failed);
    }
    if (fs::is_directory(path, failed))
        return tl::unexpected(
            core::says("There is a folder where the library %1 should be. Move it away.", path));

    UseLock lock{path + ".lock"};
    if (!lock.share(options.busyMs))
        return tl::unexpected(core::says(
            "Another window of the program is mending the library %1. Try again in a moment.",
            path));
    const bool isNew = !fs::exists(path, failed);
    Findings findings;
    auto result = look(path, options);
    if (std::holds_alternative<Damage>(result)) {
        if (!lock.alone())
            return tl::unexpected(inUseButDamaged(path));
        try {
            // Looked at again, now alone: another process may have mended it meanwhile.
            result = look(path, options);
            if (const auto* damage = std::get_if<Damage>(&result)) {
                findings.push_back(rescue(path, options, damage->reason));
                result = attempt(path, options);
            }
        } catch (const sqlite::Error& e) {
            return tl::unexpected(sqlite::sentence(
                core::says("The library is damaged and no new one could be made"), e));
        } catch (const fs::filesystem_error& e) {
            return tl::unexpected(core::says(
                "The library is damaged and no new one could be made: %1.", e.code().message()));
        }
        lock.share(options.busyMs);
    }
    if (const auto* refusal = std::get_if<Refusal>(&result))
        return tl::unexpected(refusal->sentence);
    if (const auto* damage = std::get_if<Damage>(&result))
        return tl::unexpected(core::says("The library %1 is damaged and could not be mended: %2.",
                                         path, damage->reason));
    auto& db = std::get<Database>(result);
    if (isNew)
        syncFolderOf(path);
    if (auto finding = backUp(db, path, options.backups))
        findings.push_back(std::move(*finding));
    return OpenedFile{std::move(db), std::move(lock), std::move(findings)};
}

} // namespace bastewright
