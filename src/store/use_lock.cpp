#include "store/private/use_lock.h"

#include <chrono>
#include <fcntl.h>
#include <sys/file.h>
#include <thread>
#include <unistd.h>
#include <utility>

namespace bastewright {

UseLock::UseLock(const std::string& path)
    : file_{::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600)} {}

UseLock::UseLock(UseLock&& other) noexcept
    : file_{std::exchange(other.file_, -1)} {}

UseLock& UseLock::operator=(UseLock&& other) noexcept {
    std::swap(file_, other.file_);
    return *this;
}

UseLock::~UseLock() {
    if (file_ >= 0)
        ::close(file_);
}

bool UseLock::share(int waitMs) {
    if (file_ < 0)
        return true; // the folder cannot be written to; opening the library will say so
    using namespace std::chrono;
    const auto until = steady_clock::now() + milliseconds{waitMs};
    while (::flock(file_, LOCK_SH | LOCK_NB) != 0) {
        if (steady_clock::now() >= until)
            return false;
        std::this_thread::sleep_for(milliseconds{20});
    }
    return true;
}

bool UseLock::alone() {
    return file_ >= 0 && ::flock(file_, LOCK_EX | LOCK_NB) == 0;
}

} // namespace bastewright
