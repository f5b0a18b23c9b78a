#pragma once

#include "job/job.h"

#include <QString>

#include <string>

namespace bastewright::sheets {

/// A name any file system takes: letters and digits of any script in lower case, all else one
/// hyphen, at most 50 characters, "quilt" where nothing is left.
QString fileStem(const std::string& name);

/// How the names of files of a whole session begin: that of its first quilt, with "-and-2-more"
/// where it has three, so that they never replace the files of that quilt alone.
QString fileStem(const Session& session);

} // namespace bastewright::sheets
