#pragma once

#include "job/finding.h"
#include "session/event.h"

#include <tl/expected.hpp>

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace bastewright {

using JobId = std::int64_t;
using SessionId = std::int64_t;

/// A result, or one clear sentence for people: what could not be done, why, and what to do.
template <class T>
using Stored = tl::expected<T, Sentence>;

struct JobEntry {
    JobId id = 0;
    std::string name;
    std::int64_t createdMs = 0, changedMs = 0;
    auto operator<=>(const JobEntry&) const = default;
};

struct SessionEntry {
    SessionId id = 0;
    JobId job = 0;
    std::string name; ///< the job's at the start
    std::int64_t startedMs = 0;
    std::int64_t events = 0; ///< how many are stored
    bool ended = false;
    auto operator<=>(const SessionEntry&) const = default;
};

/// What a session started from: both as JSON text.
struct SessionStart {
    std::string session; ///< a job or session file
    std::string plan;
    auto operator<=>(const SessionStart&) const = default;
};

/// What is kept by name and offered to the next quilt.
enum class KeptKind { room, person, supplies };

struct Kept {
    std::string name;
    std::string text; ///< a job file that holds this alone
    std::int64_t usedMs = 0;
    auto operator<=>(const Kept&) const = default;
};

/// An event with its place in the library's order, which grows from one stored event to the next.
struct StoredEvent {
    std::int64_t sequence = 0;
    Event event;
    auto operator<=>(const StoredEvent&) const = default;
};

struct LibraryOptions {
    std::function<std::int64_t()> nowMs; ///< wall clock, for time stamps; the system's where empty
    int backups = 3;                     ///< kept beside the library; 0 makes none
    int busyMs = 3000;                   ///< how long to wait for another process
    std::int64_t pageLimit = 0;          ///< most pages the file may have; 0: no limit
};

/// Everything the person keeps: jobs, sessions with their events, and settings, in one SQLite file
/// (docs/storage.md). What a call has returned as done survives a crash and a power cut (WAL,
/// synchronous FULL). Several processes may use one library; a call waits up to `busyMs` for
/// another and then fails in a sentence, changing nothing. An object is used from one thread at a
/// time; open another for another thread.
class Library {
public:
    struct Opened;
    struct Inside; ///< the store's own

    /// Opens the library at `path`, making it and its folder where there is none. A damaged file is
    /// moved aside, the newest sound backup or else an empty library takes its place, and a finding
    /// says so. Fails where the folder cannot be used or the file comes from a newer version.
    static Stored<Opened> open(const std::string& path, LibraryOptions options = {});

    Library(Library&&) noexcept;
    Library& operator=(Library&&) noexcept;
    ~Library();

    Stored<std::vector<JobEntry>> jobs() const;        ///< latest changed first
    Stored<std::vector<JobEntry>> removedJobs() const; ///< latest removed first
    Stored<JobId> addJob(const std::string& name, const std::string& text);
    Stored<void> saveJob(JobId id, const std::string& name, const std::string& text);
    Stored<std::string> loadJob(JobId id) const; ///< its text; removed jobs too
    /// The job that holds just this text, the latest changed of several; removed ones do not count.
    Stored<std::optional<JobId>> jobWith(const std::string& text) const;
    Stored<void> removeJob(JobId id);
    Stored<void> restoreJob(JobId id);

    Stored<SessionId> startSession(JobId job, const SessionStart& from);
    Stored<SessionStart> sessionStart(SessionId id) const;
    Stored<std::vector<SessionEntry>> sessions() const;     ///< latest started first
    Stored<std::vector<SessionEntry>> openSessions() const; ///< those that have not ended

    /// Stores an event and returns its sequence number, only once it is durable. The same id again
    /// changes nothing and returns the first number. An id that is taken by a different event, or
    /// an empty one, is refused.
    Stored<std::int64_t> append(SessionId id, const Event& event);
    Stored<std::vector<Event>> events(SessionId id) const; ///< in the order they were stored
    /// Those stored after the one with this number, by whichever process; all after 0.
    Stored<std::vector<StoredEvent>> eventsAfter(SessionId id, std::int64_t sequence) const;

    Stored<std::optional<std::string>> setting(const std::string& key) const;
    Stored<void> setSetting(const std::string& key, const std::string& value);
    /// Where the person was: whatever text the screen wants back at the next start.
    Stored<std::optional<std::string>> lastScreen() const;
    Stored<void> setLastScreen(const std::string& text);

    Stored<std::vector<Kept>> kept(KeptKind kind) const; ///< latest used first
    /// Keeps this under its name, in place of what was kept under it; it is the latest used.
    Stored<void> keep(KeptKind kind, const std::string& name, const std::string& text);
    /// Refused where something else is kept under the new name. What is not kept stays so.
    Stored<void> renameKept(KeptKind kind, const std::string& from, const std::string& to);
    /// What was kept is overwritten in the file; older backups hold it until they are replaced.
    Stored<void> forgetKept(KeptKind kind, const std::string& name);

    /// Takes what is in the write-ahead log into the file itself, so that a copy of the file alone
    /// holds everything. False where another process is in the way; nothing is lost then, the next
    /// try does it.
    bool tidy();

    /// A number that changes when another connection has changed the library.
    std::int64_t revision() const;
    const std::string& path() const;

private:
    explicit Library(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

struct Library::Opened {
    Library library;
    Findings findings; ///< what the person has to know: a damaged file, a failed backup
};

} // namespace bastewright
