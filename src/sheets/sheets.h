#pragma once

#include "plan/plan.h"
#include "sheets/paper.h"

#include <QLocale>
#include <tl/expected.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace bastewright {

/// What is printed. The first three are the set for an afternoon.
struct SheetOptions {
    Paper paper = Paper::a4;
    // The sheets everybody needs.
    bool lead = true;    ///< one page a quilt: calls, passes, places and holds
    bool bring = true;   ///< what to bring and buy, how backing and batting are cut
    bool helpers = true; ///< one page for every helper
    // On request.
    bool passes = false;    ///< a page a pass, with a large picture
    bool ribbons = false;   ///< where the pins go, and both ribbons at true size
    bool cards = false;     ///< cards to cut out and lay on the quilt, in a file of their own
    bool why = false;       ///< why this plan: figures, people, the ways that were weighed
    bool record = false;    ///< pins out and back, roll for the machine
    bool labels = false;    ///< to tape on: the quilt's head and foot, the letters of the places
    bool colour = true;     ///< false: shades of grey
    bool bothSides = false; ///< everybody's part begins on a front: blank backs are put in
    std::vector<std::string> people{}; ///< sheets of these helpers only; empty: of everybody
};

/// Writes the sheets of a session as PDF into `folder`, which is made where it is missing, and
/// returns the paths written: all sheets in one file, the cards, which are cut up, in another. The
/// names come from the job's: "harbour-lights-a4.pdf", "harbour-lights-cards-a4.pdf"; an older file
/// of that name is replaced as a whole, never half.
///
/// Text is selectable, fonts are embedded, pages are exactly A4 (ISO 216) or Letter (ANSI Y14.1),
/// nothing stands within 12 mm of the paper's edge, and title, language and an outline are set
/// (docs/sheets.md). Needs a QGuiApplication; the offscreen platform will do. The error is one
/// sentence.
tl::expected<std::vector<std::string>, std::string> writeSheets(const Session& session,
                                                                const Plan& plan,
                                                                const std::string& folder,
                                                                const SheetOptions& options = {});

/// The options of the parts on request, by their names on the command line: "passes", "ribbons" …
struct SheetPart {
    std::string_view name;
    bool SheetOptions::*option;
};
const std::vector<SheetPart>& sheetParts();

/// The paper that is usual where the locale is from: Letter in the countries that Unicode's CLDR
/// lists for it (supplemental data, paperSize), A4 elsewhere.
Paper usualPaper(const QLocale& locale);

/// The file's name without folder: letters and digits of the job's name in lower case, joined by
/// hyphens, at most 50 characters, then the paper's name.
std::string sheetsFileName(const Session& session, const SheetOptions& options);

} // namespace bastewright
