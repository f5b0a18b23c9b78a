#pragma once

#include "plan/call.h"
#include "sheets/pages/pages.h"
#include "sheets/parts.h"
#include "sheets/text_block.h"

#include <map>
#include <optional>

namespace bastewright::sheets {

/// What one person does at a call, over all their passes.
struct OwnCall {
    Call call = Call::lay;
    std::vector<Span> words;
};

/// The calls of somebody's passes in order, each once.
std::vector<OwnCall> ownCalls(const SheetContext& c, const Helper& who,
                              const std::vector<Part>& parts);

/// The rounds somebody sets through all their passes, said once: a round that a pass does not have
/// is not called in it. Nothing where they set other holds in more than one pass: then holds are
/// said pass by pass.
struct UsualHolds {
    std::vector<int> own;                    ///< along their own edges
    std::map<Side, std::vector<int>> beside; ///< on sides where nobody stands
    const Part* other = nullptr;             ///< the pass in which it is others
};
std::optional<UsualHolds> usualHolds(const std::vector<Part>& parts);

/// What can hurt whoever does this work.
QString careOf(const Helper& who, const std::vector<Part>& parts);

/// "1, 3 and 5".
QString numbers(const std::vector<int>& all);

} // namespace bastewright::sheets
