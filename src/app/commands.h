#pragma once

#include <QStringList>

namespace bastewright::app {

/// Exit codes of the commands.
inline constexpr int kGood = 0;
inline constexpr int kNoGoodPlan = 1; ///< the reason and the smallest cure were printed
inline constexpr int kBadInput = 2;   ///< one sentence each, naming the field

/// True where the arguments (without the program's name) ask for a command and not for the window.
bool isCommand(const QStringList& arguments);

/// Runs `plan`, `sheets`, `export` or `check`. Needs a QCoreApplication; `sheets` and `export` a
/// QGuiApplication.
int runCommand(const QStringList& arguments);

} // namespace bastewright::app
