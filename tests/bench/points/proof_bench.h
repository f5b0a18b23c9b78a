#pragma once

namespace bastewright {

/// Proofs of how few points a block needs on its raster with half-turns, by our branch and bound and
/// by COIN-OR CBC on the same tile; exit status 1 where they differ or a proof does not end.
int proofBench();

} // namespace bastewright
