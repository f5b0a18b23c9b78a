#pragma once

#include "sheets/pages/pages.h"
#include "sheets/text_block.h"

namespace bastewright::sheets {

/// Somebody's tasks of one pass that follow one another without another pass between.
struct Stretch {
    std::size_t quilt = 0;
    int pass = 1;
    bool first = true; ///< of this pass; later ones need no picture
    std::vector<const Task*> tasks;
};

/// All of a person's tasks, in the plan's order.
std::vector<Stretch> stretches(const Plan& plan, const std::string& person);

/// One helper's part of one pass: the zones, and the places to stand at, numbered along the table.
struct PassPart {
    const QuiltPlan* quilt = nullptr;
    const Pass* pass = nullptr;
    bool seated = false;
    /// By side and along it. Intervals that differ by less than a step sideways are one place: the
    /// person moves within it.
    std::vector<StandingPlace> places;
    std::vector<std::string> zones; ///< in the order they are done

    /// From 1; 0 for a place that is in none of them.
    int placeNumber(const StandingPlace& place) const;

    /// "left side: 1 head end, 2 middle; right side: 3 foot end", the numbers bold.
    std::vector<Span> placesInWords() const;
};

PassPart partOf(const SheetContext& c, const std::string& person, std::size_t quilt, int pass);

/// Where the person does a task; nothing for tasks that move about.
const StandingPlace* placeOf(const Task& task, const std::string& person);

} // namespace bastewright::sheets
