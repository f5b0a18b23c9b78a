#pragma once

#include "planners/crew/share_out.h"

#include <map>

/// From everybody's share of a pass to zones, places and stretches.
namespace bastewright::crew {

struct OwnedZone {
    Zone zone;
    int post = 0;        ///< whose it is
    StandingPlace place; ///< in front of it, for them
    int leaning = 0;     ///< points they reach only by leaning
    bool reached = true; ///< false: some of its points nobody was found for
};

struct PassZones {
    std::vector<OwnedZone> zones; ///< by post, in the order of their turns
    int conflicts = 0;            ///< points out of reach, and people in one another's place
    int overlaps = 0;             ///< of these: places without room, or shared by two
};

/// Cuts everybody's share into zones: each worked from one side, with at most `Way::mostInZone`
/// points, named by place and turn from the quilt's middle outward. `letters` are the places' by
/// post, `turns` the turns each place has had already in this pass.
PassZones zonesOf(const Ground& ground, const std::vector<Post>& posts, const Sharing& sharing,
                  int pass, const std::vector<std::string>& letters,
                  const std::map<std::string, int>& turns, Point quiltMiddle);

/// Where somebody stands, on the way round the table from its head-left corner on.
Length wayOf(const Rect& table, const StandingPlace& at);

/// True where somebody at `other` stands between the parts of a stretch, on the shortest way along
/// all of them.
bool liesBetween(const Rect& table, std::span<const StandingPlace> stretch,
                 const StandingPlace& other);

/// The first of some places on a way of that length, so that all are passed in one go without the
/// longest stretch between two of them.
Length firstOnTheWay(std::vector<Length> places, Length round);

/// What of the table's edge somebody needs for these places, one interval a side.
std::vector<StandingPlace> together(std::vector<StandingPlace> places);

} // namespace bastewright::crew
