#pragma once

#include "unit/crew/made_session.h"

namespace bastewright::made {

/// How long a quilt took as practice reports it (common practice; docs/computation/crew.md), with
/// the passes as they are told; sizes in brackets are from memory, and so is
/// spray.
struct Reported {
    const char* what;
    int people, across, down, width, length; ///< passes; of each, inches
    const char* figure;                      ///< as it is told
    int from, to;                            ///< minutes
    bool pinning = false;                    ///< without laying, holding and shifting
    Basting::With with = Basting::With::pins;
};

inline constexpr Reported kReported[]{
    {"78 x 94 1/2 alone, without an hour of pressing", 1, 1, 2, 78, 47, "3-3 1/2 h", 180, 210},
    {"71 x 71 alone", 1, 1, 3, 71, 24, "2 1/2 h", 150, 150},
    {"oversize queen (90 x 110), five people", 5, 2, 2, 45, 55, "30 min of pinning", 30, 30, true},
    {"60 x 76, two people at library tables", 2, 1, 1, 60, 76, "1 h", 60, 60},
    {"spray: a queen (90 x 108) alone", 1, 2, 2, 45, 54, "30-45 min of spraying", 30, 45, true,
     Basting::With::spray},
    {"thread: about 50 x 65, five people", 5, 1, 1, 50, 65, "2 h", 120, 120, false,
     Basting::With::thread},
    {"thread: a double (78 x 90), two people", 2, 1, 2, 78, 45, "1 h 40", 100, 100, false,
     Basting::With::thread},
    {"thread: a bed quilt (90 x 108), four people", 4, 2, 2, 45, 54, "4 h", 240, 240, false,
     Basting::With::thread}};

/// It made: a hold every 15 in (common practice), no breaks, which are in nobody's figure.
inline Afternoon asReported(const Reported& r) {
    Afternoon out;
    out.session.setting.helpers = helpers(r.people);
    out.session.setting.proposeBreaks = false;
    addQuilt(out, {.across = r.across,
                   .down = r.down,
                   .freshWidth = r.width,
                   .freshLength = r.length,
                   .spacing = r.with == Basting::With::spray ? 18 : 4,
                   .with = r.with});
    const auto hold = [](Side side, int inches) {
        return Hold{side, Hold::Kind::clamp, (inches + 14) / 15, {}, {}};
    };
    for (Pass& p : out.quilts.front().passes)
        p.holds = {hold(Side::head, r.width), hold(Side::foot, r.width), hold(Side::left, r.length),
                   hold(Side::right, r.length)};
    return out;
}

} // namespace bastewright::made
