#pragma once

#include "store/library.h"
#include "store/private/sqlite.h"
#include "store/private/use_lock.h"

#include <chrono>

namespace bastewright {

struct Library::Inside {
    mutable sqlite::Database db;
    UseLock lock;
    std::string path;
    LibraryOptions options;
    std::string keptAs{}; ///< the copy that was kept where another file took the place of ours

    std::int64_t now() const {
        if (options.nowMs)
            return options.nowMs();
        using namespace std::chrono;
        return duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
    }
};

/// Runs `work` and turns what SQLite refuses into a sentence that begins with `failed`.
template <class T, class Work>
Stored<T> guarded(const Sentence& failed, Work&& work) {
    try {
        return work();
    } catch (const sqlite::Error& e) {
        return tl::unexpected(sqlite::sentence(failed, e));
    }
}

} // namespace bastewright
