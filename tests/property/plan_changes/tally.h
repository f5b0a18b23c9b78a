#pragma once

#include "property/plan_changes/changes.h"
#include "property/plan_changes/nearness.h"

#include <array>
#include <map>
#include <set>
#include <string>

namespace bastewright::testing {

/// What became of the changes to one field.
struct FieldTally {
    std::array<int, kChanges> tried{}, unnoticed{};
    std::set<std::string> rules;   ///< that noticed one of them; "file" where reading did
    std::string example;           ///< of an unnoticed one: plan, place and change
    std::array<int, kNear> near{}; ///< how near the nearest place was that somebody named
    Near farthest = Near::onPath;
    std::string afar; ///< of the one that was named farthest away
};

using Tally = std::map<std::string, FieldTally>; ///< by the field's path

/// One line for each field: how often each change was tried, and how often it went unnoticed.
std::string table(const Tally& tally, bool all);

/// The page of the documents that says of every field of the schema which rules noticed a change,
/// and which changes may go unnoticed.
std::string fieldsPage(const std::vector<SchemaField>& fields, const Tally& tally, int sessions);

} // namespace bastewright::testing
