#pragma once

#include "plan/call.h"
#include "session/live_state.h"
#include "session/pins.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// What was done at the table, to be read, printed and kept after it: who, what, when, for how
/// long, how many. Made from the events alone (docs/computation/live.md, "The record").
namespace bastewright {

/// Something that happened, in the order of the library. Takings back and what they took back are
/// not in it: the record says what was done.
struct RecordLine {
    std::int64_t atMs = 0; ///< wall clock of whoever reported it
    Seconds since{};       ///< from the session's start, by the table's one clock
    What what{};
    int job = -1, pass = 0; ///< -1: of no quilt
    std::optional<Call> call{};
    std::optional<TaskKind> step{};
    std::int64_t points = 0;       ///< of a zone
    std::optional<Seconds> took{}; ///< working time, where it can be told
    bool operator==(const RecordLine&) const = default;
};

/// One call of one pass.
struct CallRecord {
    int job = 0, pass = 1;
    Call call = Call::lay;
    Seconds took{};    ///< working time while it was in force
    Seconds planned{}; ///< of the plan in force at the end; zero where it has none
    auto operator<=>(const CallRecord&) const = default;
};

struct PersonRecord {
    std::string name;
    Seconds here{}; ///< at the table, breaks left out
    int zonesOpened = 0, zonesClosed = 0;
    std::int64_t points = 0;       ///< placed or closed, each counted once for either
    std::optional<double> pace{};  ///< learnt, against the pace they were planned with
    std::optional<double> speed{}; ///< the same against the trade's: what a next plan starts from
    auto operator<=>(const PersonRecord&) const = default;
};

struct Record {
    std::int64_t startedMs = 0, endedMs = 0; ///< 0: it has not ended
    Seconds worked{}, rested{};
    Seconds plannedFinish{};
    std::vector<CallRecord> calls; ///< in the order they came
    std::vector<PersonRecord> people;
    std::vector<RecordLine> lines;
    PinCount pins;
    int zonesDone = 0, zones = 0;
    std::vector<Note> notes;
    Sentences cautions;
    bool operator==(const Record&) const = default;
};

/// `session` and `plan` are what it started from.
Record recordOf(const Session& session, const Plan& plan, std::span<const Event> events);

/// The lines as a table for other programs: comma-separated values (RFC 4180), a head line, times
/// as ISO 8601 in UTC.
std::string recordCsv(const Record& record, const Session& session);

} // namespace bastewright
