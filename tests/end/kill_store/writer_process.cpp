#include "end/kill_store/writer_process.h"

#include <cerrno>
#include <csignal>
#include <fcntl.h>
#include <poll.h>
#include <sstream>
#include <stdexcept>
#include <sys/wait.h>
#include <unistd.h>

namespace bastewright::made {

using std::chrono::milliseconds;
using std::chrono::steady_clock;

WriterProcess::WriterProcess(const std::string& library, const std::string& prefix, long count) {
    int ends[2];
    if (::pipe2(ends, O_CLOEXEC) != 0)
        throw std::runtime_error{"no pipe"};
    const auto number = std::to_string(count);
    child_ = ::fork();
    if (child_ < 0)
        throw std::runtime_error{"no process"};
    if (child_ == 0) {
        ::dup2(ends[1], STDOUT_FILENO);
        ::execl(TICK_WRITER, TICK_WRITER, library.c_str(), prefix.c_str(), number.c_str(), nullptr);
        ::_exit(127);
    }
    ::close(ends[1]);
    pipe_ = ends[0];
}

WriterProcess::~WriterProcess() {
    if (child_ > 0) {
        ::kill(child_, SIGKILL);
        reap();
    }
    if (pipe_ >= 0)
        ::close(pipe_);
}

void WriterProcess::reap() {
    while (child_ > 0 && ::waitpid(child_, &status_, 0) < 0 && errno == EINTR) {
    }
    child_ = -1;
}

bool WriterProcess::readSome(milliseconds atMost) {
    pollfd ready{pipe_, POLLIN, 0};
    if (::poll(&ready, 1, static_cast<int>(atMost.count())) <= 0)
        return true;
    char buffer[4096];
    const auto size = ::read(pipe_, buffer, sizeof buffer);
    if (size <= 0)
        return false;
    text_.append(buffer, static_cast<std::size_t>(size));
    return true;
}

void WriterProcess::readFor(milliseconds time, const std::string& until) {
    const auto end = steady_clock::now() + time;
    while (steady_clock::now() < end) {
        const auto left = std::chrono::duration_cast<milliseconds>(end - steady_clock::now());
        if (!readSome(std::max(left, milliseconds{0})))
            return;
        if (!until.empty() && ("\n" + text_).find("\n" + until) != std::string::npos)
            return;
    }
}

void WriterProcess::kill() {
    ::kill(child_, SIGKILL);
    reap();
    while (readSome(milliseconds{1000})) {
    }
}

bool WriterProcess::finish(std::chrono::seconds atMost) {
    const auto end = steady_clock::now() + atMost;
    while (steady_clock::now() < end)
        if (!readSome(milliseconds{100})) {
            reap();
            return WIFEXITED(status_) && WEXITSTATUS(status_) == 0;
        }
    return false;
}

std::vector<std::string> WriterProcess::ticks() const {
    std::vector<std::string> out;
    std::istringstream lines{text_};
    // A last line without its end was not acknowledged in full.
    for (std::string line; std::getline(lines, line) && !lines.eof();)
        if (line != "open" && !line.starts_with('!') && !line.starts_with('?'))
            out.push_back(line);
    return out;
}

std::vector<std::string> WriterProcess::remarks() const {
    std::vector<std::string> out;
    std::istringstream lines{text_};
    for (std::string line; std::getline(lines, line);)
        if (line.starts_with('!') || line.starts_with('?'))
            out.push_back(line);
    return out;
}

} // namespace bastewright::made
