#include "store/library.h"

#include "store/private/inside.h"
#include "store/private/opening.h"
#include "store/private/put_back.h"

namespace bastewright {
namespace {

constexpr const char* kLastScreen = "last-screen";

Stored<std::vector<JobEntry>> listed(const sqlite::Database& db, const char* where) {
    return guarded<std::vector<JobEntry>>(core::says("The quilts could not be listed"), [&] {
        std::vector<JobEntry> out;
        auto rows =
            db.prepare(std::string{"SELECT id, name, created_ms, changed_ms FROM jobs "} + where);
        while (rows.step())
            out.push_back({rows.number(0), rows.text(1), rows.number(2), rows.number(3)});
        return out;
    });
}

tl::unexpected<Sentence> noJob(JobId id) {
    return tl::unexpected(
        core::says("There is no quilt number %1 in the library; list the quilts again.", id));
}

} // namespace

Library::Library(std::unique_ptr<Inside> inside)
    : inside_{std::move(inside)} {}
Library::Library(Library&&) noexcept = default;
Library& Library::operator=(Library&&) noexcept = default;
Library::~Library() {
    if (inside_)
        tidy(); // where another process keeps the library open, closing alone does not
}

bool Library::tidy() {
    int inLog = 0, taken = 0;
    // Readers of other processes are not waited for: they would hold up the screen.
    const int told = sqlite3_wal_checkpoint_v2(inside_->db.handle(), nullptr,
                                               SQLITE_CHECKPOINT_PASSIVE, &inLog, &taken);
    return told == SQLITE_OK && inLog == taken;
}

Stored<Library::Opened> Library::open(const std::string& path, LibraryOptions options) {
    auto file = openFile(path, options);
    if (!file)
        return tl::unexpected(std::move(file.error()));
    auto inside = std::make_unique<Inside>(
        Inside{std::move(file->db), std::move(file->lock), path, std::move(options)});
    return Opened{Library{std::move(inside)}, std::move(file->findings)};
}

Stored<std::vector<JobEntry>> Library::jobs() const {
    return listed(inside_->db, "WHERE removed_ms IS NULL ORDER BY changed_ms DESC, id DESC");
}

Stored<std::vector<JobEntry>> Library::removedJobs() const {
    return listed(inside_->db, "WHERE removed_ms IS NOT NULL ORDER BY removed_ms DESC, id DESC");
}

Stored<JobId> Library::addJob(const std::string& name, const std::string& text) {
    return changed<JobId>(*inside_, core::says("The quilt could not be saved"), [&] {
        sqlite::Transaction transaction{inside_->db};
        const auto now = inside_->now();
        inside_->db
            .prepare("INSERT INTO jobs (name, text, created_ms, changed_ms) VALUES (?, ?, ?, ?)")
            .with(std::string_view{name}, std::string_view{text}, now, now)
            .step();
        const auto id = sqlite3_last_insert_rowid(inside_->db.handle());
        transaction.commit();
        return id;
    });
}

Stored<void> Library::saveJob(JobId id, const std::string& name, const std::string& text) {
    return changed<void>(
        *inside_, core::says("The quilt could not be saved"), [&]() -> Stored<void> {
            sqlite::Transaction transaction{inside_->db};
            inside_->db.prepare("UPDATE jobs SET name = ?, text = ?, changed_ms = ? WHERE id = ?")
                .with(std::string_view{name}, std::string_view{text}, inside_->now(), id)
                .step();
            if (sqlite3_changes(inside_->db.handle()) == 0)
                return noJob(id);
            transaction.commit();
            return {};
        });
}

Stored<std::string> Library::loadJob(JobId id) const {
    return guarded<std::string>(
        core::says("The quilt could not be read"), [&]() -> Stored<std::string> {
            auto row = inside_->db.prepare("SELECT text FROM jobs WHERE id = ?");
            if (!row.with(id).step())
                return noJob(id);
            return row.text(0);
        });
}

Stored<std::optional<JobId>> Library::jobWith(const std::string& text) const {
    return guarded<std::optional<JobId>>(
        core::says("The quilt could not be read"), [&]() -> Stored<std::optional<JobId>> {
            auto row =
                inside_->db.prepare("SELECT id FROM jobs WHERE text = ? AND removed_ms IS NULL "
                                    "ORDER BY changed_ms DESC, id DESC LIMIT 1");
            if (!row.with(std::string_view{text}).step())
                return std::nullopt;
            return row.number(0);
        });
}

Stored<void> Library::removeJob(JobId id) {
    return changed<void>(
        *inside_, core::says("The quilt could not be removed"), [&]() -> Stored<void> {
            sqlite::Transaction transaction{inside_->db};
            inside_->db
                .prepare("UPDATE jobs SET removed_ms = ? WHERE id = ? AND removed_ms IS NULL")
                .with(inside_->now(), id)
                .step();
            if (sqlite3_changes(inside_->db.handle()) == 0)
                return noJob(id);
            transaction.commit();
            return {};
        });
}

Stored<void> Library::restoreJob(JobId id) {
    return changed<void>(
        *inside_, core::says("The quilt could not be brought back"), [&]() -> Stored<void> {
            sqlite::Transaction transaction{inside_->db};
            inside_->db.prepare("UPDATE jobs SET removed_ms = NULL WHERE id = ?").with(id).step();
            if (sqlite3_changes(inside_->db.handle()) == 0)
                return noJob(id);
            transaction.commit();
            return {};
        });
}

Stored<std::optional<std::string>> Library::setting(const std::string& key) const {
    return guarded<std::optional<std::string>>(
        core::says("The setting %1 could not be read", key), [&]() -> std::optional<std::string> {
            auto row = inside_->db.prepare("SELECT value FROM settings WHERE key = ?");
            if (!row.with(std::string_view{key}).step())
                return {};
            return row.text(0);
        });
}

Stored<void> Library::setSetting(const std::string& key, const std::string& value) {
    return changed<void>(*inside_, core::says("The setting %1 could not be kept", key),
                         [&]() -> Stored<void> {
                             sqlite::Transaction transaction{inside_->db};
                             inside_->db
                                 .prepare("INSERT INTO settings (key, value) VALUES (?, ?)"
                                          " ON CONFLICT (key) DO UPDATE SET value = excluded.value")
                                 .with(std::string_view{key}, std::string_view{value})
                                 .step();
                             transaction.commit();
                             return {};
                         });
}

Stored<std::optional<std::string>> Library::lastScreen() const {
    return setting(kLastScreen);
}
Stored<void> Library::setLastScreen(const std::string& text) {
    return setSetting(kLastScreen, text);
}

std::int64_t Library::revision() const {
    try {
        return inside_->db.number("PRAGMA data_version");
    } catch (const sqlite::Error&) {
        return 0; // the next real call says what is wrong
    }
}

const std::string& Library::path() const {
    return inside_->path;
}

} // namespace bastewright
