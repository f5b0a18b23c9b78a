#pragma once

#include "planners/points/repeat_frame.h"
#include "planners/points/tile.h"

#include <optional>

namespace bastewright::points {

/// The top turned over about a middle line, or both: a half turn.
struct Flip {
    bool x = false, y = false;
    friend bool operator==(const Flip&, const Flip&) = default;
};

/// Which kinds of place of a top are images of others, so that a side that is the mirror image of
/// another, or the same turned half round, has the same points and is searched but once.
///
/// A flip counts where it takes the places a search may use at each kind of place to just those at
/// the other kind.
class RepeatImages {
public:
    /// `places`: allowed for each kind of place of the frame. `radius`: what a point covers.
    RepeatImages(const Field& top, const RepeatFrame& frame, const std::vector<Spots>& places,
                 double radius);

    /// The flips of the top under which every block's pattern falls upon another block's.
    std::vector<Flip> flipsOf(const TilePattern& tile) const;

    struct Source {
        int place = 0; ///< an earlier kind
        Flip flip;
    };
    /// What a kind of place is an image of; not of one so near that the points of both cover the same
    /// places, for these have to be chosen together.
    std::optional<Source> sourceOf(int place, const std::vector<Flip>& flips) const;

    /// The points of a kind of place are those of its image, which may be itself.
    bool holds(Flip flip, int place, const std::vector<Spots>& points) const;

    /// Points of the stretch that stands for `of`, in the stretch that stands for its image.
    Spots image(int of, const Spots& points, Flip flip) const;

private:
    int imageOf(int place, Flip flip) const;
    bool apart(int a, int b) const;
    Spot flipped(Spot p, Flip flip) const;

    Field top_;
    RepeatFrame frame_;
    double radius_;
    std::vector<Flip> flips_; ///< of the top, whatever the pattern
};

} // namespace bastewright::points
