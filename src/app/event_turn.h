#pragma once

namespace bastewright::app {

/// One turn of the screen's thread for who drives the window from outside an event loop: what is
/// waiting, for at most so many milliseconds, then the objects that are to be deleted, which
/// `processEvents` alone leaves until the end.
void takeTurn(int atMostMs = 0);

/// Lets the window live for so long.
void live(int milliseconds);

} // namespace bastewright::app
