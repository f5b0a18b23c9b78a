#pragma once

#include "plan/plan.h"
#include "sheets/hold_order.h"

#include <QString>

#include <string>
#include <vector>

/// What one person does at the table, pass by pass: what a helper's sheet is made of.
namespace bastewright::sheets {

/// Somebody's share of one pass.
struct Part {
    std::size_t quilt = 0;
    const Pass* pass = nullptr;
    Seconds start{};                  ///< of the pass
    std::string place;                ///< its letter; empty where the plan has no places
    std::vector<StandingPlace> edges; ///< where the person stands
    std::vector<const Zone*> zones;   ///< in the order in which they are worked
    std::vector<HoldPoint> holds;     ///< those the person sets, in working order: along their own
                                      ///< edges, and round the corner where nobody stands
    std::vector<const Task*> tasks;   ///< all of them, team tasks too
    int points = 0;                   ///< of the zones
    QString rows; ///< of the zones: rows and marks in words; empty where there are none

    bool does(TaskKind kind) const;
    /// The task of this kind, or null.
    const Task* task(TaskKind kind) const;
    bool standsAt(Side side) const;
};

/// The passes somebody has work in, in order of time.
std::vector<Part> partsOf(const Plan& plan, const Session& session, const std::string& person);

/// The letter of the place somebody has in most passes of a quilt; empty where they have none.
std::string placeOf(const QuiltPlan& quilt, const std::string& person);

/// Where everybody stands in a pass, one entry a stretch.
std::vector<Stretch> standing(const Plan& plan, std::size_t quilt, const Pass& pass);

/// What hangs over some side rests on chairs in some pass.
bool restsOnChairs(const QuiltPlan& quilt);

/// First and last second of a pass without setting up and rolling up; nothing where it has no
/// tasks.
struct PassTimes {
    Seconds start{}, end{};
};
std::optional<PassTimes> passTimes(const Plan& plan, std::size_t quilt, int pass);

/// "1, 3, 4 and 5": the rounds of these holds, each once.
std::vector<int> rounds(const std::vector<HoldPoint>& holds);

} // namespace bastewright::sheets
