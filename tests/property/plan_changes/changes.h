#pragma once

#include "property/plan_changes/schema_fields.h"
#include "unit/checker/random.h"

#include <optional>
#include <string_view>

namespace bastewright::testing {

/// What is done to one field of a plan's file.
enum class Change {
    more,    ///< a number by a little: 1/8 in, 3 mm, a minute, one, a fiftieth
    less,    ///< the same, the other way
    much,    ///< a number doubled and seven more
    other,   ///< a word or text becomes another of the same field, a flag its opposite
    added,   ///< a letter at the end of a text
    moved,   ///< two neighbours of a list changed about
    without, ///< an element left out of a list
    twice,   ///< an element of a list there two times
    gone     ///< the whole field left out
};
inline constexpr std::size_t kChanges = static_cast<std::size_t>(Change::gone) + 1;

std::string_view name(Change change);

/// The plan with one change to the field at that place; nothing where such a change is none there
/// (an empty list, a list of equal things, a word of a field that has one word only).
std::optional<Json> changed(const Json& plan, const SchemaField& field,
                            const Json::json_pointer& at, Change change, Random& random);

} // namespace bastewright::testing
