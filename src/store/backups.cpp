#include "store/private/backups.h"

#include "store/private/schema.h"
#include "store/private/use_lock.h"

#include <fcntl.h>
#include <filesystem>
#include <system_error>
#include <unistd.h>

namespace bastewright {
namespace {

namespace fs = std::filesystem;
using sqlite::Database;

constexpr int kPagesAtOnce = 256;
constexpr std::chrono::seconds kLongest{2};

// Everything worth a new backup: what was added, saved or removed. The last screen is not.
constexpr std::string_view kFingerprint = R"sql(
SELECT (SELECT count(*) || '/' || ifnull(max(sequence), 0) FROM events)
    || ' ' || (SELECT count(*) || '/' || ifnull(max(id), 0) || '/' || ifnull(sum(ended), 0) FROM sessions)
    || ' ' || (SELECT count(*) || '/' || ifnull(max(changed_ms), 0) || '/' || count(removed_ms)
               FROM jobs)
    || ' ' || (SELECT ifnull(group_concat(key || '=' || value, char(10)), '')
               FROM settings WHERE key <> 'last-screen')
    || ' ' || (SELECT count(*) || '/' || ifnull(max(used_ms), 0) FROM kept)
)sql";

std::string numbered(const std::string& path, int number) {
    return besideLibrary(path, "backup-" + std::to_string(number));
}

std::optional<std::string> fingerprintOf(const std::string& backup) {
    if (!fs::exists(backup))
        return {};
    try {
        const Database db{backup, Database::Mode::readOnly, 0};
        return db.text(kFingerprint);
    } catch (const sqlite::Error&) {
        return {}; // a backup that cannot be read is no backup
    }
}

void copyTo(Database& from, const std::string& path) {
    Database to{path, Database::Mode::readWrite, 0};
    struct Finish {
        void operator()(sqlite3_backup* b) const { sqlite3_backup_finish(b); }
    };
    const std::unique_ptr<sqlite3_backup, Finish> backup{
        sqlite3_backup_init(to.handle(), "main", from.handle(), "main")};
    if (!backup)
        to.fail(sqlite3_extended_errcode(to.handle()));
    const auto until = std::chrono::steady_clock::now() + kLongest;
    int code = SQLITE_OK;
    while ((code = sqlite3_backup_step(backup.get(), kPagesAtOnce)) == SQLITE_OK)
        if (std::chrono::steady_clock::now() > until)
            throw sqlite::Error{SQLITE_BUSY, "it took too long"};
    if (code != SQLITE_DONE)
        throw sqlite::Error{code, sqlite3_errstr(code)};
}

} // namespace

void copyWhole(Database& db, const std::string& fresh) {
    std::error_code ignored;
    fs::remove(fresh, ignored);
    {
        // One snapshot for the whole copy: without it, every commit of another process would start
        // the copy over.
        db.run("BEGIN");
        db.number("SELECT count(*) FROM sqlite_schema");
        struct End {
            Database& db;
            ~End() { sqlite3_exec(db.handle(), "ROLLBACK", nullptr, nullptr, nullptr); }
        } const end{db};
        copyTo(db, fresh);
    }
    Database check{fresh, Database::Mode::readWrite, 0};
    check.run("PRAGMA journal_mode = DELETE"); // one file, readable wherever it is copied to
    if (const auto complaint = check.quickCheck())
        throw sqlite::Error{SQLITE_CORRUPT, *complaint};
}

std::string besideLibrary(const std::string& path, const std::string& what) {
    const fs::path whole{path};
    const auto name = whole.stem().string() + "." + what + whole.extension().string();
    return (whole.parent_path() / name).string();
}

std::string freeNameBeside(const std::string& path, const std::string& what) {
    for (int n = 1;; ++n)
        if (auto name = besideLibrary(path, what + "-" + std::to_string(n)); !fs::exists(name))
            return name;
}

bool hasHead(const std::string& path) {
    constexpr std::uintmax_t kHead = 100; // bytes; sqlite.org/fileformat2.html, 1.3
    return fs::exists(path) && fs::file_size(path) >= kHead;
}

void syncFile(const std::string& path) {
    const int file = ::open(path.c_str(), O_RDONLY);
    if (file < 0)
        return;
    ::fsync(file);
    ::close(file);
}

void syncFolderOf(const std::string& path) {
    const auto folder = fs::path{path}.parent_path();
    syncFile(folder.empty() ? "." : folder.string());
}

std::optional<Finding> backUp(Database& db, const std::string& path, int keep) {
    if (keep <= 0)
        return {};
    UseLock lock{path + ".backup-lock"};
    if (!lock.alone())
        return {}; // another process is making the very same backup
    const auto fresh = besideLibrary(path, "backup-new");
    try {
        if (db.number("SELECT (SELECT count(*) FROM jobs) + (SELECT count(*) FROM sessions)") == 0)
            return {};
        if (fingerprintOf(numbered(path, 1)) == db.text(kFingerprint))
            return {};
        copyWhole(db, fresh);
        // From the oldest down, each rename replacing the one before: at no moment is there a gap.
        for (int n = keep; n > 1; --n)
            if (fs::exists(numbered(path, n - 1)))
                fs::rename(numbered(path, n - 1), numbered(path, n));
        fs::rename(fresh, numbered(path, 1));
        syncFolderOf(path);
        return {};
    } catch (const sqlite::Error& e) {
        std::error_code ignored;
        fs::remove(fresh, ignored);
        return Finding{Finding::Kind::library, Finding::Level::note, "",
                       sqlite::sentence(core::says("No backup could be made"), e), ""};
    } catch (const fs::filesystem_error& e) {
        return Finding{Finding::Kind::library, Finding::Level::note, "",
                       core::says("No backup could be made: %1.", e.code().message()), ""};
    }
}

std::optional<std::string> newestSoundBackup(const std::string& path, int keep) {
    for (int n = 1; n <= std::max(keep, 1); ++n) {
        try {
            const auto backup = numbered(path, n);
            if (!fs::exists(backup))
                continue;
            const Database db{backup, Database::Mode::readOnly, 0};
            if (schema::kindOf(db) == schema::Kind::ours && !db.quickCheck())
                return backup;
        } catch (const sqlite::Error&) {
            continue; // damaged too; look at the one before
        }
    }
    return {};
}

} // namespace bastewright
