#pragma once

#include "property/plan_changes/changes.h"

#include <span>
#include <string_view>

namespace bastewright::testing {

/// Changes to a field that may go unnoticed, and why.
struct Loose {
    enum class How {
        estimate, ///< a forecast or a figure of a way that was not taken: held to a relation
        order,    ///< a list without an order of its own, or one of equals
        free      ///< not held
    };
    std::string_view path;
    How how;
    std::string_view changes; ///< names, with a blank between
    std::string_view why;
    bool onlyStopped = false; ///< only in a plan that says it cannot be carried out
};

std::span<const Loose> looseFields();

/// True where such a change of that field may go unnoticed in a plan that is `stopped` or not.
bool mayPass(std::string_view path, Change change, bool stopped);

} // namespace bastewright::testing
