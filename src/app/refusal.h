#pragma once

#include "app/window.h"

namespace bastewright::app {

/// Shows why the library cannot be opened, in a window of its own, until the person closes it. True
/// where they want to try again.
bool askToTryAgain(Comfort& comfort, const QString& problem);

} // namespace bastewright::app
