#pragma once

namespace bastewright {

/// Rows and free placing on tops so small that a solver proves the least set of places on a raster,
/// side by side. The exit status of the program.
int smallTops();

} // namespace bastewright
