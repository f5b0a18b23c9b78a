#pragma once

#include "measures/length.h"

/// How long the trade takes over each kind of work, at pace 1 (docs/computation/crew.md, "Times").
/// Fitted so that the totals practice reports come out; the totals are common practice, the parts
/// are guesses. Best known are 10-11 s a pin placed and closed, and 34 s a hold.
namespace bastewright::trade_times {

inline constexpr double kPlacePin = 5.5, kClosePin = 5.5; ///< seconds a pin
inline constexpr double kLayDot = 6, kPressDot = 8; ///< seconds a dot; pressing: 3-10 reported
/// Seconds a stitch of thread, and one drawn out again once the quilt is quilted (from memory). The
/// totals reported for thread differ sevenfold by area; this is a factor of two from each.
inline constexpr double kStitch = 22, kDrawStitch = 3;
/// Seconds a patch of spray, folded back, sprayed on both faces and smoothed down (from memory: a
/// queen alone in 30 to 45 min); and how long it is left alone, at nobody's pace (from memory; as
/// the can says).
inline constexpr double kSprayPatch = 60;
inline constexpr int kSettle = 180;
inline constexpr int kStepUpToZone = 15;                ///< to step up to a zone, at any pace
inline constexpr double kSetUp = 900, kSetUpNext = 300; ///< the tables; for the next quilt on them
inline constexpr double kOpenPin = 2;                   ///< a pin opened into a bowl
inline constexpr double kLayFirst = 420, kLayLater = 180, kLaySqFt = 4; ///< all three layers
inline constexpr double kHold = 17; ///< a clamp or a piece of tape, in each of the two rounds
inline constexpr Length kRollEvery = Length::inches(12); ///< rolled: so much is one hold, twice
inline constexpr double kHandsOff = 90;
inline constexpr double kUnderside = 120;
inline constexpr double kShift = 180, kShiftInch = 2;
inline constexpr double kLayAlone = 1.8, kHoldAlone = 1.3; ///< one person instead of two
inline constexpr double kFold = 60, kFoldSqFt = 1; ///< dots: top and batting back to the fold
inline constexpr int kCool = 120; ///< at least 60 after the last press; nobody's pace
inline constexpr double kTurnOver = 300;
inline constexpr double kHandOver = 300;
// From memory: laying two pieces of batting over one another, cutting and butting them, and a yard
// of strip ironed or sewn on.
inline constexpr double kJoinBatting = 300, kJoinBattingYard = 180;

/// How times scatter, as standard deviations of their logarithms (from memory; docs as above):
/// people among one another, one piece of work from the next, work of a team, everything together.
inline constexpr double kOfPeople = 0.25, kOfWork = 0.15, kOfTeam = 0.20, kInCommon = 0.15;
inline constexpr double kSmoothAgain = 0.15; ///< share of passes that are smoothed once more

} // namespace bastewright::trade_times
