#pragma once

#include "plan/plan.h"

#include <QCoreApplication>
#include <QString>

#include <optional>
#include <vector>

/// Words and figures as they stand on the sheets: pure functions of the plan, so that tests can
/// hold them against it. Numbers and their units are joined by no-break spaces.
namespace bastewright::sheets {

/// Every text of the sheets is translated in this context.
struct Text {
    Q_DECLARE_TR_FUNCTIONS(Sheets)
};

/// Overhang short by this much means a pleat under the table (common practice).
inline constexpr Length kPleat = Length::inch64ths(32);

QString length(Length l, Unit unit);         ///< "12½ in"
QString weight(double kilograms, Unit unit); ///< "7 lb" or "3.2 kg"
QString size(Size s, Unit unit);             ///< "88 × 112 in": across, then head to foot
/// To the nearest half inch or whole centimetre, as a hang or a move is measured by hand.
QString halves(Length l, Unit unit, bool withUnit = true);
QString clock(ClockTime start, Seconds s);
QString span(Seconds s); ///< "1 h 05 min", "35 min"
QString sideName(Side s);

/// "24 pins", "1 dot".
QString pointCount(int n, Basting::With with);

/// The same of zones, by how each is basted: "412 pins and 96 dots".
QString pointCounts(const Job& job, const std::vector<const Zone*>& zones);
/// Of a quilt, or of one pass of it.
QString pointCounts(const Job& job, const QuiltPlan& quilt, std::optional<int> pass = {});

/// "54 in towards the head and 3 in towards the left"; the larger way first. "no shift" for none.
QString shiftWords(Vec shift, Unit unit);

/// A side of the table by who stands there: "A and B"; of nobody's, the quilt's own: "the head".
QString tableSide(const std::vector<Stretch>& standing, Side side);
/// The same in the fewest letters: "A, B".
QString tableSideBrief(const std::vector<Stretch>& standing, Side side);

QString startName(Basting::Start start);
QString levelName(Finding::Level level);

/// "head, left and right"; "all four sides".
QString sidesList(const std::vector<Side>& sides);

/// Words joined as a sentence lists them: "a, b and c".
QString listed(const QStringList& words);

/// "C4, C5": ids in the order given.
QString zoneList(const std::vector<std::string>& ids);

} // namespace bastewright::sheets
