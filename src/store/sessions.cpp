#include "session/effective.h"
#include "session/event_json.h"
#include "store/library.h"
#include "store/private/inside.h"
#include "store/private/put_back.h"

namespace bastewright {
namespace {

tl::unexpected<Sentence> noSession(SessionId id) {
    return tl::unexpected(core::says("There is no session number %1 in the library.", id));
}

Stored<std::vector<StoredEvent>> readAfter(const sqlite::Database& db, SessionId id,
                                           std::int64_t sequence) {
    std::vector<StoredEvent> out;
    auto rows = db.prepare("SELECT event, id, sequence FROM events WHERE session = ?"
                           " AND sequence > ? ORDER BY sequence");
    rows.with(id, sequence);
    while (rows.step()) {
        auto event = readEvent(rows.text(0));
        if (!event)
            return tl::unexpected(core::says("Event %1 of session %2 cannot be read: %3",
                                             rows.text(1), id, event.error()));
        out.push_back({rows.number(2), std::move(*event)});
    }
    return out;
}

Stored<std::vector<Event>> readEvents(const sqlite::Database& db, SessionId id) {
    auto stored = readAfter(db, id, 0);
    if (!stored)
        return tl::unexpected(std::move(stored.error()));
    std::vector<Event> out;
    out.reserve(stored->size());
    for (auto& s : *stored)
        out.push_back(std::move(s.event));
    return out;
}

bool hasEnded(const std::vector<Event>& events) {
    const auto counts = effective(events);
    for (std::size_t i = 0; i < events.size(); ++i)
        if (events[i].is<happened::Ended>() && counts.inEffect[i])
            return true;
    return false;
}

Stored<std::vector<SessionEntry>> sessionsListed(const sqlite::Database& db, const char* where) {
    return guarded<std::vector<SessionEntry>>(core::says("The sessions could not be listed"), [&] {
        std::vector<SessionEntry> out;
        auto rows = db.prepare(
            std::string{"SELECT id, job, name, started_ms, ended,"
                        " (SELECT count(*) FROM events WHERE events.session = sessions.id)"
                        " FROM sessions "} +
            where + " ORDER BY started_ms DESC, id DESC");
        while (rows.step())
            out.push_back({.id = rows.number(0),
                           .job = rows.number(1),
                           .name = rows.text(2),
                           .startedMs = rows.number(3),
                           .events = rows.number(5),
                           .ended = rows.number(4) != 0});
        return out;
    });
}

} // namespace

Stored<SessionId> Library::startSession(JobId job, const SessionStart& from) {
    return changed<SessionId>(
        *inside_, core::says("The session could not be started"), [&]() -> Stored<SessionId> {
            sqlite::Transaction transaction{inside_->db};
            auto name = inside_->db.prepare("SELECT name FROM jobs WHERE id = ?");
            if (!name.with(job).step())
                return tl::unexpected(core::says(
                    "The session could not be started: there is no quilt number %1 in the library.",
                    job));
            inside_->db
                .prepare("INSERT INTO sessions (job, name, session, plan, started_ms)"
                         " VALUES (?, ?, ?, ?, ?)")
                .with(job, std::string_view{name.text(0)}, std::string_view{from.session},
                      std::string_view{from.plan}, inside_->now())
                .step();
            const auto id = sqlite3_last_insert_rowid(inside_->db.handle());
            name.reset();
            transaction.commit();
            return id;
        });
}

Stored<SessionStart> Library::sessionStart(SessionId id) const {
    return guarded<SessionStart>(
        core::says("The session could not be read"), [&]() -> Stored<SessionStart> {
            auto row = inside_->db.prepare("SELECT session, plan FROM sessions WHERE id = ?");
            if (!row.with(id).step())
                return noSession(id);
            return SessionStart{row.text(0), row.text(1)};
        });
}

Stored<std::vector<SessionEntry>> Library::sessions() const {
    return sessionsListed(inside_->db, "");
}

Stored<std::vector<SessionEntry>> Library::openSessions() const {
    return sessionsListed(inside_->db, "WHERE ended = 0");
}

Stored<std::int64_t> Library::append(SessionId id, const Event& event) {
    if (event.id.empty())
        return tl::unexpected(core::says("An event without an id cannot be stored."));
    const auto text = writeEvent(event);
    return changed<std::int64_t>(
        *inside_, core::says("The tick could not be stored"), [&]() -> Stored<std::int64_t> {
            auto& db = inside_->db;
            sqlite::Transaction transaction{db};
            auto earlier = db.prepare("SELECT sequence, session, event FROM events WHERE id = ?");
            if (earlier.with(std::string_view{event.id}).step()) {
                if (earlier.number(1) != id || earlier.text(2) != text)
                    return tl::unexpected(core::says(
                        "Another event is stored under the id %1; every event needs its own.",
                        event.id));
                return earlier.number(0);
            }
            auto session = db.prepare("SELECT 1 FROM sessions WHERE id = ?");
            if (!session.with(id).step())
                return noSession(id);
            session.reset();
            earlier.reset();
            db.prepare("INSERT INTO events (id, session, stored_ms, event) VALUES (?, ?, ?, ?)")
                .with(std::string_view{event.id}, id, inside_->now(), std::string_view{text})
                .step();
            const auto sequence = sqlite3_last_insert_rowid(db.handle());
            if (event.is<happened::Ended>() || event.is<happened::Undone>()) {
                const auto events = readEvents(db, id);
                if (!events)
                    return tl::unexpected(events.error());
                db.prepare("UPDATE sessions SET ended = ? WHERE id = ?")
                    .with(std::int64_t{hasEnded(*events)}, id)
                    .step();
            }
            transaction.commit();
            return sequence;
        });
}

Stored<std::vector<StoredEvent>> Library::eventsAfter(SessionId id, std::int64_t sequence) const {
    return guarded<std::vector<StoredEvent>>(core::says("The session's events could not be read"),
                                             [&] { return readAfter(inside_->db, id, sequence); });
}

Stored<std::vector<Event>> Library::events(SessionId id) const {
    return guarded<std::vector<Event>>(core::says("The session's events could not be read"),
                                       [&] { return readEvents(inside_->db, id); });
}

} // namespace bastewright
