#include "store/private/rescue.h"

#include "session/event_json.h"
#include "store/private/backups.h"
#include "store/private/schema.h"

#include <array>
#include <filesystem>
#include <optional>
#include <system_error>

namespace bastewright {
namespace {

namespace fs = std::filesystem;
using sqlite::Database;
using sqlite::Statement;

struct Read {
    std::int64_t jobs = 0, sessions = 0, events = 0;
};

/// The disk refused the new file, or to open the old one: no reason to go on with less.
struct DiskRefused {
    sqlite::Error error;
};

/// The disk and not what is in the file: tried again later it may well be read. Taken for damage,
/// an empty library would take the place of a full one.
bool refusedByDisk(const sqlite::Error& e) {
    switch (e.code) {
    case SQLITE_FULL:
    case SQLITE_CANTOPEN:
    case SQLITE_READONLY:
    case SQLITE_PERM:
    case SQLITE_NOMEM:
        return true;
    case SQLITE_IOERR: // a part of the file that cannot be read is damage
        return e.extended != SQLITE_IOERR_READ && e.extended != SQLITE_IOERR_SHORT_READ;
    default:
        return false;
    }
}

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
constexpr std::array<Table, 5> kTables{{
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
    {"SELECT kind, name, text, used_ms FROM kept ORDER BY kind, name",
     "SELECT kind, name, text, used_ms FROM kept ORDER BY kind DESC, name DESC",
     "INSERT OR REPLACE INTO kept (kind, name, text, used_ms) VALUES (?1, ?2, ?3, ?4)", carryAll<4>,
     nullptr},
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
            } catch (const sqlite::Error& e) {
                // A row that no longer fits its own table is beyond saving.
                if (e.code != SQLITE_CONSTRAINT && e.code != SQLITE_MISMATCH &&
                    e.code != SQLITE_TOOBIG)
                    throw DiskRefused{e};
            }
        }
        return true;
    } catch (const sqlite::Error& e) {
        if (refusedByDisk(e))
            throw DiskRefused{e};
        return false;
    }
}

Read readWhatCanBeRead(const std::string& damaged, Database& into) {
    Read read;
    sqlite::Transaction transaction{into};
    try {
        const Database from{damaged, Database::Mode::readWrite, 0};
        // The damaged file is evidence: closing it must not write the log into it.
        sqlite3_db_config(from.handle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
        for (const auto& table : kTables)
            if (!readUntilDamage(from, into, table, table.forwards, read))
                readUntilDamage(from, into, table, table.backwards, read);
    } catch (const sqlite::Error& e) {
        if (refusedByDisk(e))
            throw DiskRefused{e};
        // not even opened: there is nothing to be read
    }
    transaction.commit();
    return read;
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
    if (fs::exists(path)) {
        fs::create_hard_link(path, aside, failed);
        if (failed) {
            fs::copy_file(path, aside);
            syncFile(aside);
        }
    }
    if (fs::exists(path + "-wal"))
        fs::rename(path + "-wal", aside + "-wal");
    fs::remove(path + "-shm", failed);
    fs::rename(fresh, path);
    syncFolderOf(path);
}

Sentence counted(const Read& read) {
    return core::says(
        "%1, %2 and %3",
        read.jobs == 1 ? core::says("1 quilt") : core::says("%1 quilts", read.jobs),
        read.sessions == 1 ? core::says("1 session") : core::says("%1 sessions", read.sessions),
        read.events == 1 ? core::says("1 event") : core::says("%1 events", read.events));
}

Sentence whatHappened(const Sentence& reason, const std::string& aside,
                      const std::optional<Read>& backup, const Read& further) {
    const bool more = further.jobs + further.sessions + further.events > 0;
    const Sentence moved =
        aside.empty()
            ? core::says("There was no library where it should be; a new one has taken its place")
            : core::says(
                  "The library was damaged (%1) and was put aside as %2; a new one has taken its "
                  "place",
                  reason, aside);
    if (backup && more)
        return core::says(
            "%1, made from the last backup (%2) and what could still be read after it "
            "(%3).",
            moved, counted(*backup), counted(further));
    if (backup)
        return core::says("%1, made from the last backup (%2).", moved, counted(*backup));
    if (more)
        return core::says("%1, made from what could still be read (%2).", moved, counted(further));
    return core::says("%1, empty, because nothing could be read and there is no backup.", moved);
}

} // namespace

Finding rescue(const std::string& path, const LibraryOptions& options, const Sentence& reason) {
    const auto fresh = besideLibrary(path, "mended");
    removeWithLogs(fresh);
    const bool isThere = fs::exists(path);
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
        if (hasHead(path)) {
            try {
                read = readWhatCanBeRead(path, db);
            } catch (const DiskRefused& failed) {
                throw failed.error;
            }
        }
    }
    syncFile(fresh);
    const auto aside = freeNameBeside(path, "damaged");
    changePlaces(path, fresh, aside);

    return Finding{
        Finding::Kind::library, Finding::Level::warn, "",
        whatHappened(reason, isThere ? fs::path{aside}.filename().string() : "",
                     backup ? std::optional{inBackup} : std::nullopt, read),
        core::says(
            "Compare the quilts and running sessions with what you remember before going on.")};
}

} // namespace bastewright
