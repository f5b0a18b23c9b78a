#pragma once

#include <QString>

namespace bastewright::app {

/// Sends the log to a file that is begun anew at 200 kB, the last two kept, in `folder`; nowhere
/// where it cannot be written.
void keepLog(const QString& folder);

/// $XDG_STATE_HOME/bastewright, else ~/.local/state/bastewright (XDG Base Directory 0.8).
QString logFolder();

} // namespace bastewright::app
