#pragma once

#include "job/job.h"
#include "plan/layers.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Where every pin, dot or stitch goes. In the quilt's own frame.
namespace bastewright {

/// A pin or a stitch (its centre and the direction it lies in) or a fuse dot (direction zero).
struct PlacedPoint {
    Point at;
    int angle = 0; ///< degrees from the x axis towards the foot, 0 <= angle < 180
    auto operator<=>(const PlacedPoint&) const = default;
};

/// The unit that is handed out and ticked off: a run of neighbouring rows, or of parts of rows, in
/// front of one person's stretch, within one pass. The same hands put its points in and close
/// them. Its points lie in its area.
struct Zone {
    std::string id; ///< pass, place and turn: "p1.A2" (see `zoneId`); unique in the quilt
    int pass = 1;
    Rect area; ///< the areas partition the top
    std::vector<PlacedPoint> points;
    std::optional<Basting::With> with{}; ///< where it is not basted as its quilt is
    auto operator<=>(const Zone&) const = default;
};

/// "p1.A2": of pass 1, at place A, the second from the middle of the quilt outward.
std::string zoneId(int pass, std::string_view place, int turn);

/// What people call a zone within its pass: "A2". An id of another form is its own name.
std::string_view zoneName(std::string_view id);

/// The letter of a zone's place: "A" of "p1.A2"; empty where the id is of another form.
std::string_view zonePlace(std::string_view id);

/// The turn of a zone at its place, from 1; 0 where the id is of another form.
int zoneTurn(std::string_view id);

/// Letters of places: A…Z, AA, AB…
std::string placeLetter(std::size_t index);

} // namespace bastewright
