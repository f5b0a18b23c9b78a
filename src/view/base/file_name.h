#pragma once

#include <QString>

/// A title as the name of a file or folder, still readable: what some file system does not take
/// becomes a hyphen, no file is hidden, at most 80 characters, "Quilt" where nothing is left. Never
/// leads out of a folder.
QString fileName(const QString& title);
