#pragma once

#include "sheets/pages/helper_part.h"

namespace bastewright::sheets {

/// How closely a checklist is set. The first is the easiest to read; the later ones are taken where
/// the list would not fit on two pages otherwise.
struct ChecklistStyle {
    bool gathered = false; ///< zones done in a row with one kind of work share a row
    bool strip = false;    ///< all pictures of the table in a row above the passes
    std::size_t tiles = 5; ///< kinds of tile shown of a quilt; 1: those of all quilts in one row
    double padding = 2.5;  ///< above and below a row's text
    QSizeF picture{190, 220}; ///< the largest a pass's picture may be

    int heading() const { return strip ? type::kCheck : type::kLead; }
};

/// The rows of a checklist in a column so wide: one for each task, with box, time, what, with whom,
/// and the number of the place to stand at. Long waits between two tasks have a row of their own.
/// `where` is said at the end of every row's words.
std::vector<Block> checklistRows(const SheetContext& c, const std::string& person,
                                 const std::vector<const Task*>& tasks, const PassPart& part,
                                 double width, const ChecklistStyle& style,
                                 const QString& where = {});

} // namespace bastewright::sheets
