#pragma once

#include <QString>
#include <tl/expected.hpp>

#include <string>

namespace bastewright::sheets {

/// What went wrong, one sentence for people, as the error of an `expected`.
inline tl::unexpected<std::string> failure(const QString& sentence) {
    return tl::make_unexpected(sentence.toStdString());
}

} // namespace bastewright::sheets
