#include "store/private/rescue.h"

#include "session/event_json.h"
#include "store/private/backups.h"
#include "store/private/schema.h"

#include <array>
#include <filesystem>
#include <system_error>

namespace bastewright {
namespace {

namespace fs = std::filesystem;
using sqlite::Database;
using sqlite::Statement;

struct Read {
    std::int64_t jobs = 0, sessions = 0, events = 0;
};

// Carries one row over, or refuses it.
using Carry = bool (*)(const Statement& from, Statement& into);

void bindAs(const Statement& from, Statement& into, int column) {
    const auto* value = sqlite3_column_value(from.handle(), column);
    sqlite3_bind_value(into.handle(), column + 1, value);
}

template <int columns>
bool carryAll(const Statement& from, Statement& into) {
    for (int c = 0; c < columns; ++c)
        bindAs(from, into, c);
    return true;
}

// SQLite has no checksums: a damaged event may read as a row, so its text has to make sense as
// well.
bool carryEvent(const Statement& from, Statement& into) {
    const auto event = readEvent(from.text(4));
    return event && event->id == from.text(1) && carryAll<5>(from, into);
}

struct Table {
    const char* forwards;
    const char* backwards;
    const char* insert;
    Carry carry;
    std::int64_t Read::*count;
};

// The damaged file is newer than any backup, so its jobs and sessions win; an event never changes,
// so the first copy of it will do.
constexpr std::array<Table, 4> kTables{{
    {"SELECT id, name, text, created_ms, changed_ms, removed_ms FROM jobs ORDER BY id",
     "SELECT id, name, text, created_ms, changed_ms, removed_ms FROM jobs ORDER BY id DESC",
     "INSERT OR REPLACE INTO jobs (id, name, text, created_ms, changed_ms, removed_ms)"
     " VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
     carryAll<6>, &Read::jobs},
    {"SELECT id, job, name, session, plan, started_ms, ended FROM sessions ORDER BY id",
     "SELECT id, job, name, session, plan, started_ms, ended FROM sessions ORDER BY id DESC",
     "INSERT INTO sessions (id, job, name, session, plan, started_ms, ended)"
     " VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)"
     " ON CONFLICT (id) DO UPDATE SET ended = excluded.ended",
     carryAll<7>, &Read::sessions},
    {"SELECT sequence, id, session, stored_ms, event FROM events ORDER BY sequence",
     "SELECT sequence, id, session, stored_ms, event FROM events ORDER BY sequence DESC",
     "INSERT OR IGNORE INTO events (sequence, id, session, stored_ms, event)"
     " SELECT ?1, ?2, ?3, ?4, ?5 WHERE EXISTS (SELECT 1 FROM sessions WHERE id = ?3)",
     carryEvent, &Read::events},
    {"SELECT key, value FROM settings ORDER BY key",
     "SELECT key, value FROM settings ORDER BY key DESC",
     "INSERT OR REPLACE INTO settings (key, value) VALUES (?1, ?2)", carryAll<2>, nullptr},
}};

// Reads from one end until the damage; returns false where it got stuck there.
bool readUntilDamage(const Database& from, Database& into, const Table& table, const char* query,
                     Read& read) {
    try {
        auto rows = from.prepare(query);
        auto insert = into.prepare(table.insert);
        while (rows.step()) {
            insert.reset();
            if (!table.carry(rows, insert))
                continue;
            try {
                insert.step();
                if (table.count)
                    read.*table.count += sqlite3_changes64(into.handle());
            } catch (const sqlite::Error&) {
                // a row that no longer fits its own table is beyond saving
            }
        }
        return true;
    } catch (const sqlite::Error&) {
        return false;
    }
}

Read readWhatCanBeRead(const std::string& damaged, Database& into) {
    Read read;
    try {
        const Database from{damaged, Database::Mode::readWrite, 0};
        // The damaged file is evidence: closing it must not write the log into it.
        sqlite3_db_config(from.handle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
        sqlite::Transaction transaction{into};
        for (const auto& table : kTables)
            if (!readUntilDamage(from, into, table, table.forwards, read))
                readUntilDamage(from, into, table, table.backwards, read);
        transaction.commit();
    } catch (const sqlite::Error& e) {
        if (e.code == SQLITE_FULL || e.code == SQLITE_IOERR)
            throw; // the new file is what failed
        read = {};
    }
    return read;
}

std::string freeName(const std::string& path) {
    for (int n = 1;; ++n)
        if (auto name = besideLibrary(path, "damaged-" + std::to_string(n)); !fs::exists(name))
            return name;
}

void removeWithLogs(const std::string& file) {
    std::error_code ignored;
    for (const char* suffix : {"", "-wal", "-shm", "-journal"})
        fs::remove(file + suffix, ignored);
}

// Keeps the damaged file under another name and puts the new one in its place in a single step. The
// old write-ahead log goes first: it must never be taken for the new file's.
void changePlaces(const std::string& path, const std::string& fresh, const std::string& aside) {
    std::error_code failed;
    fs::create_hard_link(path, aside, failed);
    if (failed)
        fs::copy_file(path, aside);
    if (fs::exists(path + "-wal"))
        fs::rename(path + "-wal", aside + "-wal");
    fs::remove(path + "-shm", failed);
    fs::rename(fresh, path);
    syncFolderOf(path);
}

std::string counted(std::int64_t n, const char* one, const char* many) {
    return std::to_string(n) + " " + (n == 1 ? one : many);
}

} // namespace

Finding rescue(const std::string& path, const LibraryOptions& options, const std::string& reason) {
    const auto fresh = besideLibrary(path, "mended");
    removeWithLogs(fresh);
    const auto backup = newestSoundBackup(path, options.backups);
    if (backup)
        fs::copy_file(*backup, fresh);
    Read read;
    Read inBackup;
    {
        Database db{fresh, Database::Mode::readWrite, options.busyMs};
        schema::migrate(db);
        inBackup.jobs = db.number("SELECT count(*) FROM jobs");
        inBackup.sessions = db.number("SELECT count(*) FROM sessions");
        inBackup.events = db.number("SELECT count(*) FROM events");
        read = readWhatCanBeRead(path, db);
    }
    const auto aside = freeName(path);
    changePlaces(path, fresh, aside);

    auto text = "The library was damaged (" + reason + ") and was put aside as " +
                fs::path{aside}.filename().string() + "; a new one has taken its place";
    if (backup)
        text += ", made from the last backup (" + counted(inBackup.jobs, "job", "jobs") + ", " +
                counted(inBackup.sessions, "session", "sessions") + ", " +
                counted(inBackup.events, "event", "events") + ")";
    text += read.jobs + read.sessions + read.events > 0
                ? " with what could still be read: " + counted(read.jobs, "job", "jobs") + ", " +
                      counted(read.sessions, "session", "sessions") + " and " +
                      counted(read.events, "further event", "further events") + "."
            : backup ? "."
                     : ", empty, because nothing could be read and there is no backup.";
    return Finding{Finding::Level::warn, "", text,
                   "Compare the jobs and running sessions with what you remember before going on."};
}

} // namespace bastewright
