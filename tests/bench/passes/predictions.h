#pragma once

namespace bastewright {

/// What every way of some sessions was said to take, beside what it takes once it is laid out in
/// full. False where a way that is within a quarter of the quickest is off by more than 3 %.
bool predictionsHold();

} // namespace bastewright
