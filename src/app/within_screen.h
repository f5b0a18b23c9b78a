#pragma once

#include <QMargins>
#include <QSize>
#include <QWindow>

namespace bastewright::app {

/// The largest size up to `wanted` at which a window with this frame fits the free part of a
/// screen.
QSize fitting(QSize wanted, QSize available, QMargins frame);

/// The size to open a window at, before it has a frame: within the free part of the first screen.
QSize openingSize(QSize wanted);

/// Makes the window smaller where it and its frame would be larger than the free part of the screen
/// it is on: now that it is shown, and whenever it comes to another screen.
void keepWithinScreen(QWindow& window);

} // namespace bastewright::app
