#include "support/disk/disk.h"
#include "support/disk/failing.h"

#include <cerrno>
#include <cstdarg>
#include <cstdio>
#include <dlfcn.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <sys/uio.h>
#include <unistd.h>

// The calls by which SQLite, the standard library and ours change files, in place of those of the C
// library: each does what it should and tells the recording disk. The program's own definitions
// come first for every library it loads.

using bastewright::made::Disk;
using bastewright::made::failingDisk;
using bastewright::made::neverFlushes;
using bastewright::made::recordingDisk;

namespace {

/// True where the call has to fail; errno says with what.
template <class Place>
bool fails(const Place& place, bool wantsSpace) {
    if (auto* const disk = failingDisk())
        if (const int error = disk->errorAt(place, wantsSpace)) {
            errno = error;
            return true;
        }
    return false;
}

template <class Function>
Function* original(const char* name) {
    return reinterpret_cast<Function*>(::dlsym(RTLD_NEXT, name));
}

template <class Function>
int openWith(Function* open, const char* path, int flags, mode_t mode) {
    Disk* const disk = recordingDisk();
    struct stat s {};
    const bool wasThere = ::lstat(path, &s) == 0;
    if (!wasThere && (flags & O_CREAT) != 0 && fails(std::string{path}, true))
        return -1;
    const int fd = open(path, flags, mode);
    if (disk && fd >= 0) {
        disk->opened(fd, path, !wasThere);
        if (wasThere && (flags & O_TRUNC) != 0)
            disk->truncated(fd, 0);
    }
    return fd;
}

mode_t modeOf(int flags, va_list& more) {
    return (flags & O_CREAT) != 0 ? static_cast<mode_t>(va_arg(more, int)) : 0;
}

} // namespace

extern "C" {

int open(const char* path, int flags, ...) {
    static auto* const real = original<int(const char*, int, ...)>("open");
    va_list more;
    va_start(more, flags);
    const auto mode = modeOf(flags, more);
    va_end(more);
    return openWith(real, path, flags, mode);
}

int open64(const char* path, int flags, ...) {
    static auto* const real = original<int(const char*, int, ...)>("open64");
    va_list more;
    va_start(more, flags);
    const auto mode = modeOf(flags, more);
    va_end(more);
    return openWith(real, path, flags, mode);
}

FILE* fopen64(const char* path, const char* mode) {
    static auto* const real = original<FILE*(const char*, const char*)>("fopen64");
    Disk* const disk = recordingDisk();
    struct stat s {};
    const bool wasThere = ::lstat(path, &s) == 0;
    if (!wasThere && mode[0] != 'r' && fails(std::string{path}, true))
        return nullptr;
    FILE* const file = real(path, mode);
    if (disk && file) {
        disk->opened(::fileno(file), path, !wasThere);
        if (wasThere && mode[0] == 'w')
            disk->truncated(::fileno(file), 0);
    }
    return file;
}

ssize_t pwrite64(int fd, const void* bytes, size_t count, off64_t offset) {
    static auto* const real = original<ssize_t(int, const void*, size_t, off64_t)>("pwrite64");
    if (fails(fd, true))
        return -1;
    const auto done = real(fd, bytes, count, offset);
    if (Disk* const disk = recordingDisk(); disk && done > 0)
        disk->written(fd, offset, bytes, static_cast<std::size_t>(done));
    return done;
}

ssize_t write(int fd, const void* bytes, size_t count) {
    static auto* const real = original<ssize_t(int, const void*, size_t)>("write");
    Disk* const disk = recordingDisk();
    const auto at = disk ? ::lseek64(fd, 0, SEEK_CUR) : -1;
    if (failingDisk() && fails(fd, true))
        return -1;
    const auto done = real(fd, bytes, count);
    if (disk && at >= 0 && done > 0)
        disk->written(fd, at, bytes, static_cast<std::size_t>(done));
    return done;
}

ssize_t writev(int fd, const iovec* parts, int count) {
    ssize_t all = 0;
    for (int i = 0; i < count; ++i) {
        const auto done = ::write(fd, parts[i].iov_base, parts[i].iov_len);
        if (done < 0)
            return all > 0 ? all : done;
        all += done;
        if (static_cast<size_t>(done) < parts[i].iov_len)
            break;
    }
    return all;
}

// Copies of whole files go through read and write instead.
ssize_t sendfile(int, int, off_t*, size_t) {
    errno = EINVAL;
    return -1;
}

int ftruncate64(int fd, off64_t length) noexcept {
    static auto* const real = original<int(int, off64_t)>("ftruncate64");
    if (fails(fd, length > 0))
        return -1;
    const int done = real(fd, length);
    if (Disk* const disk = recordingDisk(); disk && done == 0)
        disk->truncated(fd, length);
    return done;
}

int fsync(int fd) {
    static auto* const real = original<int(int)>("fsync");
    Disk* const disk = recordingDisk();
    if (fails(fd, false))
        return -1;
    if (disk)
        disk->flushed(fd);
    return disk || neverFlushes() ? 0 : real(fd); // the disk below need not hurry
}

int fdatasync(int fd) {
    static auto* const real = original<int(int)>("fdatasync");
    Disk* const disk = recordingDisk();
    if (fails(fd, false))
        return -1;
    if (disk)
        disk->flushed(fd);
    return disk || neverFlushes() ? 0 : real(fd);
}

int link(const char* from, const char* to) noexcept {
    static auto* const real = original<int(const char*, const char*)>("link");
    const int done = real(from, to);
    if (Disk* const disk = recordingDisk(); disk && done == 0)
        disk->linked(from, to);
    return done;
}

int rename(const char* from, const char* to) noexcept {
    static auto* const real = original<int(const char*, const char*)>("rename");
    const int done = real(from, to);
    if (Disk* const disk = recordingDisk(); disk && done == 0)
        disk->renamed(from, to);
    return done;
}

int unlink(const char* path) noexcept {
    static auto* const real = original<int(const char*)>("unlink");
    const int done = real(path);
    if (Disk* const disk = recordingDisk(); disk && done == 0)
        disk->unlinked(path);
    return done;
}

int remove(const char* path) noexcept {
    struct stat s {};
    if (::lstat(path, &s) == 0 && S_ISDIR(s.st_mode))
        return ::rmdir(path);
    return ::unlink(path);
}

} // extern "C"
