#pragma once

#include "job/top.h"

#include <QImage>

namespace bastewright::app {

/// A top as somebody would photograph it from where they stand: for the tour of the screens.
QImage takenPhoto(const Top& top);

} // namespace bastewright::app
