#pragma once

#include "sheets/pages/helper_part.h"
#include "sheets/pages/helper_rests.h"

namespace bastewright::sheets {

/// How closely a checklist is set. The first is the easiest to read; the later ones are taken where
/// the list would not fit on two pages otherwise.
struct ChecklistStyle {
    bool gathered = false;    ///< zones done in a row with one kind of work share a row
    bool strip = false;       ///< all pictures of the table in a row above the passes
    bool columns = false;     ///< the lists in two columns, in the fewest words
    double padding = 2.5;     ///< above and below a row's text
    QSizeF picture{190, 220}; ///< the largest a pass's picture may be

    int heading() const { return strip ? type::kCheck : type::kLead; }
    TextStyle text(bool bold = false) const {
        return {.size = type::kCheck, .bold = bold, .close = columns};
    }
};

/// The rows of a checklist in a column so wide: one for each task, with box, time, what, with whom,
/// and the number of the place to stand at. `where` is said at the end of every row's words. Rests
/// that begin before a task have a row of their own in front of it and are taken out of `rests`.
std::vector<Block> checklistRows(const SheetContext& c, const std::string& person,
                                 const std::vector<const Task*>& tasks, const PassPart& part,
                                 double width, const ChecklistStyle& style,
                                 std::vector<Rest>& rests, const QString& where = {});

/// "13:37 free until 13:50: rest", "14:30 break until 14:45".
Block restRow(const SheetContext& c, const Rest& rest, double width, const ChecklistStyle& style);

} // namespace bastewright::sheets
