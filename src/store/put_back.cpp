#include "store/private/put_back.h"

#include "store/private/backups.h"
#include "store/private/opening.h"

#include <filesystem>
#include <system_error>

namespace bastewright {
namespace {

namespace fs = std::filesystem;

bool isGone(const sqlite::Database& db) {
    int moved = 0;
    return sqlite3_file_control(db.handle(), "main", SQLITE_FCNTL_HAS_MOVED, &moved) == SQLITE_OK &&
           moved != 0;
}

/// Something else is where the library was: it may be what somebody wants there.
Sentence keepBeside(Library::Inside& inside, const Sentence& failed) {
    if (inside.keptAs.empty()) {
        const auto beside = freeNameBeside(inside.path, "replaced");
        copyWhole(inside.db, beside);
        inside.keptAs = fs::path{beside}.filename().string();
    }
    return core::says(
        "%1: another file has taken the place of the library %2 while the program used "
        "it. What the program still held is kept as %3. Close every window and start "
        "again.",
        failed, inside.path, inside.keptAs);
}

Sentence putBack(Library::Inside& inside, const Sentence& failed) {
    if (!inside.lock.alone()) {
        inside.lock.share(0);
        return core::says(
            "%1: the library %2 was removed while several windows of the program had it "
            "open. Close the other windows, then try again.",
            failed, inside.path);
    }
    const auto fresh = besideLibrary(inside.path, "put-back");
    const auto folder = fs::path{inside.path}.parent_path();
    if (fs::create_directories(folder))
        fs::permissions(folder, fs::perms::owner_all);
    copyWhole(inside.db, fresh);
    // The old log may have stayed behind: it must never be taken for the new file's.
    fs::remove(inside.path + "-wal");
    fs::remove(inside.path + "-shm");
    fs::rename(fresh, inside.path);
    syncFolderOf(inside.path);
    inside.lock.share(0); // the new connection has a lock of its own
    auto again = openFile(inside.path, inside.options);
    if (!again)
        return again.error();
    // Closing the old connection must not remove the new one's log, which has its name.
    sqlite3_db_config(inside.db.handle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    inside.db = std::move(again->db);
    inside.lock = std::move(again->lock);
    return core::says(
        "%1: the library %2 had been removed while the program used it. It has been put "
        "back with everything in it; try again.",
        failed, inside.path);
}

} // namespace

std::optional<Sentence> putBackIfGone(Library::Inside& inside, const Sentence& failed) {
    if (!isGone(inside.db))
        return {};
    try {
        std::error_code unknown;
        return fs::exists(inside.path, unknown) ? keepBeside(inside, failed)
                                                : putBack(inside, failed);
    } catch (const sqlite::Error& e) {
        inside.lock.share(0);
        return sqlite::sentence(failed, e);
    } catch (const fs::filesystem_error& e) {
        inside.lock.share(0);
        return core::says(
            "%1: the library %2 was removed while the program used it, and it could not "
            "be put back: %3.",
            failed, inside.path, e.code().message());
    }
}

} // namespace bastewright
