#pragma once

#include "measures/sentence.h"

#include <string>

namespace bastewright {

/// What a quilt is called inside a sentence, where it may have no name.
inline Sentence quiltName(const std::string& name) {
    return name.empty() ? core::says("the quilt") : Sentence{name};
}

} // namespace bastewright
