#pragma once

#include "plan/plan.h"
#include "sheets/paper.h"

#include <tl/expected.hpp>

#include <string>
#include <vector>

namespace bastewright {

struct SheetOptions {
    Paper paper = Paper::a4;
    bool lead = true;       ///< the session, its passes, cloth, batting, pin rows, counts, cautions
    bool helpers = true;    ///< one checklist for every helper
    bool cards = true;      ///< cards to cut out and lay on the quilt
    bool colour = true;     ///< false: shades of grey
    bool bothSides = false; ///< everybody's part begins on a front: blank backs are put in
    bool ribbons = false;   ///< the two ribbons of pins in rows, at true size
    std::vector<std::string> people{}; ///< checklists of these helpers only; empty: of everybody
};

/// Writes the sheets of a session as PDF into `folder`, which is made where it is missing, and
/// returns the paths written: the lead's pages and the checklists in one file, the cards, which are
/// cut up, in another. The names come from the job's: "harbour-lights-a4.pdf",
/// "harbour-lights-cards-a4.pdf"; an older file of that name is replaced as a whole, never half.
///
/// Text is selectable, fonts are embedded, pages are exactly A4 (ISO 216) or Letter (ANSI Y14.1),
/// nothing stands within 12 mm of the paper's edge, and title, language and an outline are set
/// (docs/sheets.md). Needs a QGuiApplication; the offscreen platform will do. The error is one
/// sentence.
tl::expected<std::vector<std::string>, std::string> writeSheets(const Session& session,
                                                                const Plan& plan,
                                                                const std::string& folder,
                                                                const SheetOptions& options = {});

/// The file's name without folder: letters and digits of the job's name in lower case, joined by
/// hyphens, at most 50 characters, then the paper's name.
std::string sheetsFileName(const Session& session, const SheetOptions& options);

} // namespace bastewright
