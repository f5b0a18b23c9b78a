#pragma once

#include <cstdint>
#include <map>
#include <random>
#include <string>
#include <sys/types.h>
#include <vector>

namespace bastewright::made {

/// A disk that can lose its power: what the process does to the files of one folder is done, and
/// recorded as well, so that the folder can be made again as a power cut at any moment could have
/// left it.
///
/// What a cut leaves (stricter than any file system in use): of what was written to a file since it
/// was last flushed, any sectors of 512 bytes, whatever their order; where a file has grown,
/// rubbish in between. Of names made, moved or removed since the folder was last flushed, the first
/// so many.
class Disk {
public:
    using File = std::size_t; ///< number of a file; a name made again is another file

    struct Step {
        enum class Kind { write, truncate, flush, link, rename, unlink, flushFolder };
        Kind kind;
        File file = 0;
        std::int64_t offset = 0; ///< or the new length
        std::string bytes;
        std::string name, to; ///< within the folder
    };

    /// Records what happens in `folder` from here on. One at a time.
    explicit Disk(std::string folder);
    Disk(const Disk&) = delete;
    Disk& operator=(const Disk&) = delete;
    ~Disk();

    /// How many steps have been recorded: a moment.
    std::size_t now() const { return steps_.size(); }
    const std::vector<Step>& steps() const { return steps_; }
    void stop();

    /// Makes `into` as a power cut after so many steps could have left the folder.
    void cut(std::size_t after, std::mt19937_64& dice, const std::string& into) const;

    // Called by the system calls in system_calls.cpp, after they succeeded.
    void opened(int fd, const std::string& path, bool isNew);
    void written(int fd, std::int64_t offset, const void* bytes, std::size_t count);
    void truncated(int fd, std::int64_t length);
    void flushed(int fd);
    void linked(const std::string& from, const std::string& to);
    void renamed(const std::string& from, const std::string& to);
    void unlinked(const std::string& path);

private:
    struct Image {
        std::string bytes;
        std::vector<const Step*> unsafe; ///< writes and lengths since the last flush
    };
    std::string nameIn(const std::string& path) const; ///< "" where it is elsewhere
    File fileOf(int fd) const;                         ///< 0 where it is not one of ours

    std::string folder_;
    std::vector<Step> steps_;
    std::map<std::string, File> names_; ///< now
    std::map<std::pair<dev_t, ino_t>, File> nodes_;
    std::map<std::string, File> namesAtStart_;
    std::map<File, std::string> atStart_;
    File last_ = 0;
    dev_t device_ = 0;
    ino_t folderNode_ = 0;
};

/// The disk that is recording, or null.
Disk* recordingDisk();

} // namespace bastewright::made
