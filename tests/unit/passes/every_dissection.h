#pragma once

namespace bastewright::testing {

/// A top and a field of the table in whole cells, each as wide as the anchor strip (6 in).
struct Cells {
    int width = 0, length = 0;           ///< of the top, at most 8 each
    int fieldWidth = 0, fieldLength = 0; ///< of the field, at least 2 each
    bool centred = true;  ///< the first area's middle is the top's; else the middle of the top lies
                          ///< two cells inside the first field
    bool turning = false; ///< the quilt may be turned a quarter on the table before any pass
};

/// Least passes by trying every way to cut the top into rectangles of whole cells and every order
/// of them: each fits the field together with one cell of basted top beside every side at which it
/// touches some, and the first is two cells wide at least. `most + 1` where none with `most` is
/// found. Shares nothing with the planner.
int leastByEveryDissection(const Cells& cells, int most);

} // namespace bastewright::testing
