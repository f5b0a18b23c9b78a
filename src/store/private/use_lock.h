#pragma once

#include <string>

namespace bastewright {

/// Marks a library as in use by this process, beside SQLite's own locks: shared while it is open,
/// alone while a damaged file is being replaced. Without it, a library that another process has
/// open could be moved away under it. Advisory (flock), released by the kernel when the process
/// ends.
class UseLock {
public:
    /// Opens or makes the lock file. Where that fails it is never held alone: nothing is replaced.
    explicit UseLock(const std::string& path);
    UseLock(UseLock&& other) noexcept;
    UseLock& operator=(UseLock&& other) noexcept;
    ~UseLock();

    bool share(int waitMs); ///< false where somebody is replacing the file all that time
    bool alone();           ///< false at once where another process uses the library

private:
    int file_ = -1;
};

} // namespace bastewright
