#pragma once

#include "sheets/pages/pages.h"
#include "sheets/text_block.h"

/// The sentences of the lead's sheet.
namespace bastewright::sheets {

/// "494 pins in 26 rows, 5 passes."
QString howMany(const SheetContext& c, std::size_t quilt);

/// How the quilt comes to lie: "Middle on middle.", "Move it 19 in towards C and D."
QString moveWords(const SheetContext& c, std::size_t quilt, const Pass& pass);

/// Who lifts, where to smooth, what hangs and what lies on something.
std::vector<Span> passWords(const SheetContext& c, std::size_t quilt, const Pass& pass);

/// "head: roll up 12 in, 3 in thick; 8 clips of 3 in".
QString rollWords(const Roll& roll, Unit unit);

/// What is done before the first pass, and after the last.
std::vector<Span> setUpWords(const SheetContext& c, std::size_t quilt);
std::vector<Span> rollUpWords(const SheetContext& c, std::size_t quilt);

/// What can hurt in this session, one paragraph; labels and local rules come first.
std::vector<Span> careWords(const SheetContext& c);

/// Somebody's name as it stands in a sentence.
QString called(const std::string& name);
/// "Ada, Bo and Cai".
QString names(const std::vector<std::string>& people);

} // namespace bastewright::sheets
