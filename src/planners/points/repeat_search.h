#pragma once

#include "planners/points/layout.h"
#include "planners/points/repeat_frame.h"
#include "planners/points/repeat_images.h"
#include "planners/points/tile.h"

#include <algorithm>
#include <optional>
#include <stop_token>

namespace bastewright::points {

/// A layout that repeats: for each kind of place (see `RepeatFrame`) its points, in the stretch
/// that stands for the kind.
struct RepeatLayout {
    TilePattern tile;          ///< the points inside
    std::vector<Spots> points; ///< of each kind of place
    int count = 0;             ///< points on the whole top
    std::vector<bool> open;    ///< kinds of place where something is left to mend point by point

    bool complete() const { return std::find(open.begin(), open.end(), true) == open.end(); }
};

/// Completes patterns of the tile to the edges of the top.
///
/// The top is looked at by kinds of place: a point along a side is one decision however long the
/// side is. First the four sides, then the corners; the sides do not touch each other, so each is
/// searched by itself. Where the pattern inside and the top allow it, what is another's image takes
/// over its points: half the search, and half the patterns for people.
class RepeatSearch {
public:
    RepeatSearch(const Rules& rules, const RepeatFrame& frame);

    /// The pattern in every tile, and beside the border what it leaves open. None where a side or
    /// corner cannot be completed.
    std::optional<RepeatLayout> complete(const TilePattern& tile, int steps,
                                         std::stop_token stop) const;

    /// The same, but a side or a corner whose tiles do with fewer points when they are chosen anew
    /// has a pattern of its own.
    std::optional<RepeatLayout> adapted(const TilePattern& tile, int steps, std::stop_token stop);

    /// Points that `complete` needs but for the corners, to choose between patterns quickly. None
    /// where that is more than `most`, or seems to become so from what other patterns needed.
    std::optional<int> estimate(const TilePattern& tile, int steps, int most);

    /// The layout on the real top; points that obey no rule where they fall are
    /// left out.
    Layout laidOut(const RepeatLayout& layout) const;

private:
    RepeatLayout begun(const TilePattern& tile) const;
    int times(int place) const;
    bool isSide(int place) const { return frame_.periodicX(place) != frame_.periodicY(place); }
    bool isCorner(int place) const { return !frame_.periodicX(place) && !frame_.periodicY(place); }
    bool permitted(Spot at, double room) const;
    Spots fromTile(int place, const TilePattern& tile) const;
    Spots along(int place, Spot at, const Field& near) const;
    void others(const RepeatLayout& layout, int place, const Field& near, Spots& out) const;
    Spots continued(const RepeatLayout& layout, int place) const;
    /// Places allowed in the stretch of each kind, and those of them near the border.
    struct Places {
        std::vector<Spots> all, border;
    };
    /// A raster with its places and the flips that leave it as it is.
    struct Raster {
        Places from;
        RepeatImages images;
    };
    Places places(const Places* coarse) const;
    bool betweenStretches(Spot at, const Field& stretch) const;
    Raster raster(const Places* coarse) const;
    bool sidesHold(const RepeatLayout& layout, Flip flip) const;
    /// Takes over the points of the place that this one is an image of, if any.
    bool copied(RepeatLayout& layout, int place, const Raster& raster,
                const std::vector<Flip>& flips) const;
    bool extend(RepeatLayout& layout, int place, const Places& from, int steps,
                std::stop_token stop) const;
    void renew(RepeatLayout& layout, int place, const Places& from, int steps,
               std::stop_token stop) const;
    void sum(RepeatLayout& layout) const;

    const Rules& rules_;
    RepeatFrame frame_;
    Raster coarse_;
    std::optional<Raster> fine_; ///< once it is asked for
    std::vector<int> fewest_;   ///< points that estimates found to be enough, for each kind
};

} // namespace bastewright::points
