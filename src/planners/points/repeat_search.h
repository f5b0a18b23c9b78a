#pragma once

#include "planners/points/layout.h"
#include "planners/points/repeat_frame.h"
#include "planners/points/tile.h"

#include <optional>
#include <stop_token>

namespace bastewright::points {

/// A layout that repeats: the pattern of the tile, and what is added along each
/// side and in each corner, once for each kind of place.
struct RepeatLayout {
    TilePattern tile;
    /// For each kind of place (see `RepeatFrame`) the points added there, in the
    /// stretch that stands for the kind; those inside are the tile itself, so
    /// nothing is added there.
    std::vector<Spots> added;
    int count = 0; ///< points on the whole top
};

/// Completes patterns of the tile to the edges of the top.
///
/// The top is looked at by kinds of place, each on a sheet of its own: a point
/// along a side is one decision however long the side is, and what covers the
/// sheets covers the whole top. First the four sides, then the corners; the
/// sides do not touch each other, so each is searched by itself.
class RepeatSearch {
public:
    RepeatSearch(const Rules& rules, const RepeatFrame& frame);

    /// What a pattern needs along the sides, as points on the whole top with the
    /// pattern's own: a quick estimate to choose between patterns. None where a
    /// side cannot be completed.
    struct Estimate {
        int count = 0;
        /// What the pattern by itself leaves open along the sides, in places of a
        /// raster: of two patterns with equal counts the one that leaves less is
        /// nearer to saving a point.
        int open = 0;
        auto operator<=>(const Estimate&) const = default;
    };
    std::optional<Estimate> estimate(const TilePattern& tile, int steps) const;

    /// The whole layout. `steps` for each side and corner.
    std::optional<RepeatLayout> complete(const TilePattern& tile, int steps,
                                         std::stop_token stop) const;

    /// The layout on the real top; points that obey no rule where they fall are
    /// left out.
    Layout laidOut(const RepeatLayout& layout) const;

private:
    static constexpr int kTile = -1; ///< the tile, beside the kinds of place

    /// A point, and everything it is once it repeats as its kind of place does.
    struct Offer {
        int place = kTile;
        Spot at;
        Spots images;  ///< on all sheets
        int times = 0; ///< on the real top
    };
    /// Along which directions a point repeats.
    struct Way {
        bool alongX = true, alongY = true;
        int kindX = 0, kindY = 0;
    };

    Way way(int place) const;
    Spot fromFirstTile(const Way& way, Spot at) const;
    Spot onTile(const Way& way, Spot base, int kindX, int kindY) const;
    bool permitted(const Way& way, Spot at, double room) const;
    std::vector<AxisKinds::Copy> copies(const AxisKinds& axis, int sheetKind, bool along,
                                        int own) const;
    Offer offer(int place, Spot at, double room) const;
    Spots everywhere(int place, Spot at, double room) const;
    std::vector<Offer> additions(int place) const;
    std::vector<Offer> offersOf(const TilePattern& tile) const;
    bool isSide(int place) const { return frame_.periodicX(place) != frame_.periodicY(place); }
    int openPlaces(int place, const std::vector<Offer>& chosen) const;
    bool stage(int place, std::vector<Offer>& chosen, int steps, std::stop_token stop) const;

    const Rules& rules_;
    RepeatFrame frame_;
    Spots shifts_;              ///< from the top to the sheet of a place
    std::vector<Field> sheets_; ///< of the places
    std::vector<std::vector<Offer>> additions_;
};

} // namespace bastewright::points
