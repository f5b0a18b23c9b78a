#pragma once

#include "store/library.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <stdlib.h>
#include <string>

namespace bastewright::made {

/// A folder of its own for a test, removed afterwards.
class Folder {
public:
    Folder() {
        std::string name = (std::filesystem::temp_directory_path() / "library-XXXXXX").string();
        if (!::mkdtemp(name.data()))
            throw std::runtime_error{"no temporary folder"};
        path_ = name;
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() {
        std::error_code ignored;
        std::filesystem::permissions(path_, std::filesystem::perms::owner_all, ignored);
        std::filesystem::remove_all(path_, ignored);
    }
    std::string file(const std::string& name = "library.sqlite") const {
        return (path_ / name).string();
    }
    const std::filesystem::path& path() const { return path_; }
    bool has(const std::string& name) const { return std::filesystem::exists(file(name)); }

private:
    std::filesystem::path path_;
};

/// A clock that moves a millisecond at every look, so that orders are certain.
inline LibraryOptions ticking() {
    LibraryOptions options;
    options.nowMs = [now = std::int64_t{1'000'000}]() mutable { return ++now; };
    options.busyMs = 100;
    return options;
}

inline Library::Opened opened(const std::string& path, LibraryOptions options = ticking()) {
    auto library = Library::open(path, std::move(options));
    if (!library)
        throw std::runtime_error{library.error().english()};
    return std::move(*library);
}

/// For calls that must succeed.
inline void must(const Stored<void>& done) {
    if (!done)
        throw std::runtime_error{done.error().english()};
}

inline Event tick(const std::string& id, const std::string& zone = "A1") {
    return {id, 0, happened::ZoneTick{Tick::opened, 0, zone, "Ada"}};
}

/// A library with one job and one running session that has so many ticks "t1", "t2", ….
inline SessionId filled(Library& library, int ticks) {
    const auto job = library.addJob("Harbour Lights", R"({"format":"bastewright-job"})").value();
    const auto session = library.startSession(job, {"{}", R"({"tasks":[]})"}).value();
    for (int n = 1; n <= ticks; ++n)
        library.append(session, tick("t" + std::to_string(n))).value();
    return session;
}

/// The same in a file that is closed again.
inline void filledFile(const std::string& path, int ticks) {
    auto [library, _] = opened(path);
    filled(library, ticks);
}

} // namespace bastewright::made
