#pragma once

#include "job/finding.h"
#include "job/job.h"

#include <optional>
#include <string>
#include <string_view>

namespace bastewright {

/// Limits against absurd input; generous against real quilts.
namespace limits {
inline constexpr double kSlowestPace = 0.1, kFastestPace = 5;
inline constexpr std::size_t kFileBytes = 8'000'000;
inline constexpr Length kSmallestTop = Length::inches(6);
inline constexpr Length kLargestTop = Length::inches(240);
inline constexpr int kTables = 12;
inline constexpr int kIrons = 40;
inline constexpr int kOnHand = 100'000; ///< pins, clamps, clips of a size
inline constexpr int kHelpers = 40;
inline constexpr int kBreaks = 8; ///< of one helper, and for everybody
inline constexpr int kQuilts = 20;
inline constexpr int kPieces = 40;
inline constexpr int kFabrics = 12;
inline constexpr std::size_t kFewestColours = 2, kColours = 4; ///< of a top, where there are any
inline constexpr int kSeams = 4000;
inline constexpr int kHanded = 1000;
inline constexpr int kBlocks = 100;       ///< columns or rows
inline constexpr std::size_t kName = 120; ///< bytes
} // namespace limits

struct SessionRead {
    std::optional<Session> session; ///< nothing where `problems` holds a stop
    Findings problems;              ///< all of them, in the order of the file; warnings too
};

/// Reads a `bastewright-job` or `bastewright-session`, version 1 (docs/formats.md). Collects every
/// problem with its JSON pointer, value and what is accepted. Never throws.
SessionRead readSession(std::string_view text);

/// Reads a file: a folder, a missing or unreadable file, or one above `limits::kFileBytes` is one
/// finding with the path in its text.
SessionRead readSessionFile(const std::string& path);

/// Writes the session back as a job file (one quilt) or session file, defaults included, unknown
/// fields at their places. What readSession gave reads back equal.
std::string writeSession(const Session& session);

} // namespace bastewright
