#pragma once

#include <cstddef>
#include <string>

namespace bastewright::made {

/// While it lives, every call that wants something of the disk fails for the files of one folder:
/// ENOSPC, a full disk, or EIO, one that has gone wrong. One at a time.
class FailingDisk {
public:
    /// The first `after` calls still work.
    FailingDisk(std::string folder, int error, std::size_t after = 0);
    FailingDisk(const FailingDisk&) = delete;
    FailingDisk& operator=(const FailingDisk&) = delete;
    ~FailingDisk();

    std::size_t calls() const { return calls_; } ///< so far, those that worked included

    // For system_calls.cpp: the error of this call, or 0. A file being made, written or made longer
    // wants space; a flush only fails where the disk is broken.
    int errorAt(const std::string& path, bool wantsSpace);
    int errorAt(int fd, bool wantsSpace);

private:
    std::string folder_;
    int error_;
    std::size_t after_, calls_ = 0;
};

/// The disk that fails, or null.
FailingDisk* failingDisk();

/// While it lives, a flush is not passed on: for tests that open many libraries and lose no power.
class WithoutFlushing {
public:
    WithoutFlushing();
    WithoutFlushing(const WithoutFlushing&) = delete;
    WithoutFlushing& operator=(const WithoutFlushing&) = delete;
    ~WithoutFlushing();
};
bool neverFlushes();

} // namespace bastewright::made
