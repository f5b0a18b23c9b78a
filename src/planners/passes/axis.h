#pragma once

#include "job/job.h"
#include "measures/geometry.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace bastewright {

/// What one axis of a quilt needs to know about the table it lies on.
struct AxisRoom {
    Length quilt;  ///< Q, side of the top
    Length field;  ///< U, usable side of the table
    Length anchor; ///< v, basted strip that stays on the table; less than `field`
    Length row{};  ///< width of the row beside an open boundary, which the next pass bastes
    Length centreMargin = Length::inches(12); ///< m, for the fewest-shifts start
};

/// A side of the top cut into runs, each basted in its own pass.
struct AxisCuts {
    std::vector<Length> at; ///< boundaries, from 0 to the quilt's side; runs = at.size() - 1
    std::size_t first = 0;  ///< the run that is basted first
    Interval firstField;    ///< the usable field in the first pass; may reach beyond the top
    std::size_t runs() const { return at.size() - 1; }
    Interval run(std::size_t i) const { return {at[i], at[i + 1]}; }
};

/// Down to a place that a person can measure, an eighth of an inch.
Length eighths(Length l);

/// What the first field has to hold for a start with fewest shifts: m on both sides of the quilt's
/// middle, or as much of it as the quilt and the field have room for.
Interval heldMiddle(const AxisRoom& room);

/// The field round a first run: centred on it for a centred start, else on it and what has to be held.
Interval firstFieldAround(Basting::Start start, const AxisRoom& room, Interval run);

/// Centred start: n = 1 + 2·⌈max(0, (Q−U)/2) / (U−v)⌉.
std::int64_t centredCount(const AxisRoom& room);
/// Without a centre to keep: n = max(1, ⌈(Q−v)/(U−v)⌉).
std::int64_t freeCount(const AxisRoom& room);

/// Cuts with the first run's middle on the quilt's middle. Each pass gets a near
/// equal share of basting: the first run is wider by the rows it leaves to its neighbours, the last
/// narrower. Boundaries lie on one of `seams` (sorted) where that costs no run.
AxisCuts centredCuts(const AxisRoom& room, const std::vector<Length>& seams = {});

/// One run fewer than the centred start takes, by a first field whose middle lies beside the
/// quilt's, no farther than `most`: with h = (Q−U)/2 and c = ⌈h/(U−v)⌉ it is h − (c−1)·(U−v)
/// towards the quilt's beginning. Nothing where that saves no run or is farther.
std::optional<AxisCuts> besideCentreCuts(const AxisRoom& room, Length most,
                                         const std::vector<Length>& seams = {});

/// Fewest runs such that the quilt's middle lies at least m inside the first field (or inside all
/// of it where the quilt or the field is smaller than that).
AxisCuts fewestCuts(const AxisRoom& room, const std::vector<Length>& seams = {});

/// Fewest runs with no centre to keep, for rows beside a row that is already basted.
AxisCuts freeCuts(const AxisRoom& room, const std::vector<Length>& seams = {});

} // namespace bastewright
