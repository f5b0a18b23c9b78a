#pragma once

#include <QImage>
#include <QString>
#include <QStringList>
#include <tl/expected.hpp>

/// Photos that come from elsewhere. Whatever a file holds, reading it takes at most about 200 MB
/// and a few seconds.
namespace photo {

/// The longer side of what is read, in pixels, at most: twice what is kept.
inline constexpr int kReadSide = 1600;

/// Endings of names that are offered; what a file is is told by what it holds.
QStringList fileEndings();

/// Upright, as its camera says; smaller where it is larger than is needed. One sentence where the
/// file is none, no photo, damaged or too large.
tl::expected<QImage, QString> read(const QString& path);

} // namespace photo
