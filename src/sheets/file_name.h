#pragma once

#include <QString>

#include <string>

namespace bastewright::sheets {

/// A name any file system takes: letters and digits of any script in lower case, all else one
/// hyphen, at most 50 characters, "quilt" where nothing is left.
QString fileStem(const std::string& name);

} // namespace bastewright::sheets
