#pragma once

/// How long the trade takes over each kind of work, at pace 1 (docs/computation/crew.md, "Times").
/// All figures are common practice, rounded from reported sessions: placing an open pin takes 3.5 s
/// at best (597 in 35 min), placing and closing one 10-11 s all in with a group.
namespace bastewright::trade_times {

inline constexpr double kPlacePin = 5, kClosePin = 5; ///< seconds a pin
inline constexpr double kLayDot = 6, kPressDot = 8;   ///< seconds a dot; pressing reported as 3-10
inline constexpr int kSettle = 15;                    ///< seconds to step up to a zone, at any pace
inline constexpr double kSmooth = 60, kSmoothSqFt = 2;
inline constexpr double kLayLayer = 120, kLayLayerSqFt = 2;
inline constexpr double kFold = 60, kFoldSqFt = 1; ///< dots: top and batting back to the fold
inline constexpr double kClamp = 20;               ///< seconds a clamp moved
inline constexpr double kUnderside = 90;
inline constexpr double kShift = 180, kShiftInch = 2;
inline constexpr int kCool = 120; ///< at least 60 after the last press; nobody's pace
inline constexpr double kTurnOver = 300;
inline constexpr double kHandOver = 300;
// From memory: laying two pieces of batting over one another, cutting and butting them, and a yard
// of strip ironed or sewn on.
inline constexpr double kJoinBatting = 300, kJoinBattingYard = 180;

} // namespace bastewright::trade_times
