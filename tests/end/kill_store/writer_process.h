#pragma once

#include <chrono>
#include <string>
#include <sys/types.h>
#include <vector>

namespace bastewright::made {

/// A tick_writer in a process of its own, read through a pipe.
class WriterProcess {
public:
    WriterProcess(const std::string& library, const std::string& prefix, long count = -1);
    WriterProcess(const WriterProcess&) = delete;
    WriterProcess& operator=(const WriterProcess&) = delete;
    ~WriterProcess();

    /// Reads for so long, or until the writer ends, or until a line starts with `until`.
    void readFor(std::chrono::milliseconds time, const std::string& until = {});
    /// SIGKILL, then reads what was still in the pipe.
    void kill();
    /// Waits for a writer with a count; true where it ended well.
    bool finish(std::chrono::seconds atMost);

    std::vector<std::string> ticks() const;   ///< acknowledged ids
    std::vector<std::string> remarks() const; ///< findings and refusals

private:
    bool readSome(std::chrono::milliseconds atMost); ///< false at the end of the pipe
    void reap();

    pid_t child_ = -1;
    int pipe_ = -1;
    int status_ = -1;
    std::string text_;
};

} // namespace bastewright::made
