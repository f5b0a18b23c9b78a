#include "store/private/schema.h"

#include <array>

namespace bastewright::schema {
namespace {

// Migration n brings a file from user_version n to n + 1. Never edit one that has been released.
constexpr std::array kMigrations{
    R"sql(
CREATE TABLE jobs (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    name       TEXT NOT NULL,
    text       TEXT NOT NULL,
    created_ms INTEGER NOT NULL,
    changed_ms INTEGER NOT NULL,
    removed_ms INTEGER
) STRICT;

CREATE TABLE sessions (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    job        INTEGER NOT NULL,           -- for finding it again; the snapshot stands alone
    name       TEXT NOT NULL,
    session    TEXT NOT NULL,
    plan       TEXT NOT NULL,
    started_ms INTEGER NOT NULL,
    ended      INTEGER NOT NULL DEFAULT 0
) STRICT;

CREATE TABLE events (
    sequence  INTEGER PRIMARY KEY AUTOINCREMENT,
    id        TEXT NOT NULL UNIQUE,
    session   INTEGER NOT NULL REFERENCES sessions (id),
    stored_ms INTEGER NOT NULL,
    event     TEXT NOT NULL
) STRICT;
CREATE INDEX events_of_session ON events (session, sequence);
CREATE TRIGGER events_stay BEFORE UPDATE ON events
    BEGIN SELECT RAISE(ABORT, 'events are never changed'); END;
CREATE TRIGGER events_are_kept BEFORE DELETE ON events
    BEGIN SELECT RAISE(ABORT, 'events are never removed'); END;

CREATE TABLE settings (
    key   TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
)sql",
    R"sql(
CREATE TABLE kept (
    kind    TEXT NOT NULL,                 -- room, person, supplies
    name    TEXT NOT NULL,
    text    TEXT NOT NULL,                 -- a job file that holds this alone
    used_ms INTEGER NOT NULL,
    PRIMARY KEY (kind, name)
) STRICT, WITHOUT ROWID;
)sql"};

} // namespace

std::int64_t newest() {
    return static_cast<std::int64_t>(kMigrations.size());
}

Kind kindOf(const sqlite::Database& db) {
    const auto application = db.number("PRAGMA application_id");
    const auto version = db.number("PRAGMA user_version");
    if (application == kApplicationId)
        return version > newest() ? Kind::newer : Kind::ours;
    const bool anything = db.number("SELECT count(*) FROM sqlite_schema") > 0;
    return application == 0 && version == 0 && !anything ? Kind::empty : Kind::foreign;
}

void migrate(sqlite::Database& db) {
    if (db.number("PRAGMA user_version") == newest())
        return;
    sqlite::Transaction transaction{db};
    // Asked again inside: another process may have done it while this one waited.
    for (auto version = db.number("PRAGMA user_version"); version < newest(); ++version) {
        db.run(kMigrations[static_cast<std::size_t>(version)]);
        db.run("PRAGMA user_version = " + std::to_string(version + 1));
    }
    db.run("PRAGMA application_id = " + std::to_string(kApplicationId));
    transaction.commit();
}

} // namespace bastewright::schema
