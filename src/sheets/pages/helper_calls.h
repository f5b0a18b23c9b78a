#pragma once

#include "plan/call.h"
#include "sheets/pages/pages.h"
#include "sheets/parts.h"
#include "sheets/text_block.h"

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

/// The rounds of somebody's holds that they have in most passes, and the passes with others, where
/// that is at most one; else they are said pass by pass.
struct UsualHolds {
    std::vector<int> rounds;
    const Part* other = nullptr;
};
std::optional<UsualHolds> usualHolds(const std::vector<Part>& parts);

/// "1, 3 and 5".
QString numbers(const std::vector<int>& all);

} // namespace bastewright::sheets
