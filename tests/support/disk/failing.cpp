#include "support/disk/failing.h"

#include <array>
#include <cerrno>
#include <stdexcept>
#include <unistd.h>

namespace bastewright::made {
namespace {
FailingDisk* failing = nullptr;
int withoutFlushing = 0;
} // namespace

WithoutFlushing::WithoutFlushing() {
    ++withoutFlushing;
}

WithoutFlushing::~WithoutFlushing() {
    --withoutFlushing;
}

bool neverFlushes() {
    return withoutFlushing > 0;
}

FailingDisk* failingDisk() {
    return failing;
}

FailingDisk::FailingDisk(std::string folder, int error, std::size_t after)
    : folder_{std::move(folder) + '/'}
    , error_{error}
    , after_{after} {
    if (failing)
        throw std::logic_error{"one failing disk at a time"};
    failing = this;
}

FailingDisk::~FailingDisk() {
    failing = nullptr;
}

int FailingDisk::errorAt(const std::string& path, bool wantsSpace) {
    if (!path.starts_with(folder_) || (!wantsSpace && error_ == ENOSPC))
        return 0;
    return calls_++ < after_ ? 0 : error_;
}

int FailingDisk::errorAt(int fd, bool wantsSpace) {
    std::array<char, 4096> path{};
    const auto link = "/proc/self/fd/" + std::to_string(fd);
    const auto size = ::readlink(link.c_str(), path.data(), path.size());
    return size > 0 ? errorAt(std::string{path.data(), static_cast<std::size_t>(size)}, wantsSpace)
                    : 0;
}

} // namespace bastewright::made
