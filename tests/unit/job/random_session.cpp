#include "unit/job/random_session.h"

#include "job/spacings.h"
#include "support/random.h"
#include "support/small_jpeg.h"

#include <algorithm>

namespace bastewright {
namespace {

Length halfInch() {
    return Length::inch64ths(32);
}

std::vector<Length> readings(Random& r, Length about) {
    std::vector<Length> out;
    for (int n = r.count(1, 9); n > 0; --n)
        out.push_back(r.length(about - halfInch(), about));
    return out;
}

Top top(Random& r) {
    Top t;
    t.width = readings(r, r.length(10_in, 200_in));
    t.length = readings(r, r.length(10_in, 200_in));
    if (r.chance(30))
        t.diagonals = {r.length(10_in, 300_in), r.length(10_in, 300_in)};
    const Rect area = topRect(t);
    if (r.chance(60)) {
        BlockGrid g;
        g.columns = r.count(1, 12);
        g.rows = r.count(1, 12);
        g.sashing = r.chance(50) ? Length{} : Length::inch64ths(r.whole(8, 32));
        // What is left over becomes border, so that the grid always fits.
        g.block = (area.width() - g.sashing * (g.columns - 1)) / g.columns;
        g.blockLength = (area.length() - g.sashing * (g.rows - 1)) / g.rows;
        const Length most = std::min(g.block, g.blockLength);
        for (int n = r.count(0, 3); n > 0; --n) {
            g.innerX.push_back(r.length(Length::inch64ths(8), most - Length::nanometres(1)));
            g.innerY.push_back(r.length(Length::inch64ths(8), most - Length::nanometres(1)));
        }
        if (r.chance(30))
            g.borderEnds = r.length(0_in, 1_in) / 4;
        if (most >= halfInch())
            t.grid = g;
    }
    for (int n = r.count(0, 5); n > 0; --n) {
        Segment s{{r.length(area.x0, area.x1), r.length(area.y0, area.y1)},
                  {r.length(area.x0, area.x1), r.length(area.y0, area.y1)}};
        if (s.from != s.to)
            t.seams.push_back(s);
    }
    for (int n = r.chance(40) ? r.count(2, 4) : 0; n > 0; --n)
        t.fabrics.push_back({std::uint8_t(r.count(0, 255)), std::uint8_t(r.count(0, 255)),
                             std::uint8_t(r.count(0, 255))});
    if (r.chance(30))
        t.photo = *Photo::ofJpeg(
            smallJpeg(r.count(1, 1600), r.count(1, 1600), std::string(r.count(0, 200), 'q')));
    return t;
}

Batting batting(Random& r) {
    Batting b;
    b.overage = r.length(0_in, 24_in);
    b.thickness = r.length(1_mm, 50_mm);
    b.gsm = r.real(10, 2000);
    b.meltable = r.chance(50);
    if (r.chance(50))
        b.pack = r.name(0);
    if (r.chance(30))
        b.roll = r.length(20_in, 200_in);
    if (r.chance(30))
        b.rolls = {r.length(20_in, 200_in)};
    b.pieceStrip = r.chance(50);
    b.shrinkPercent = r.real(0, 20);
    if (r.chance(30)) {
        b.width = r.length(6_in, 300_in);
        b.length = r.length(6_in, 300_in);
    }
    for (int n = r.count(0, 8); n > 0; --n)
        b.pieces.push_back(
            {r.name(n), r.length(1_in, 300_in), r.length(1_in, 300_in), r.count(1, 5),
             r.chance(30) ? std::vector{r.length(1_in, 300_in), r.length(1_in, 300_in)}
                          : std::vector<Length>{}});
    b.mayTurn = r.chance(50);
    b.trim = r.length(0_in, 6_in);
    b.overlap = r.length(0_in, 6_in);
    return b;
}

Backing backing(Random& r) {
    Backing b;
    b.overage = r.length(0_in, 24_in);
    b.seam = r.length(0_in, 2_in);
    b.shrinkPercent = r.real(0, 20);
    b.squaring = r.length(0_in, 36_in);
    b.seamWorth = r.length(0_in, 36_in);
    b.leastPiece = r.length(1_in, 24_in);
    b.repeat = r.length(0_in, 72_in);
    b.oneWay = r.chance(50);
    b.column = r.chance(50);
    b.centreSeam = r.chance(50);
    if (r.chance(30))
        b.way = BackingWay{r.length(0_in, 100_yd), r.count(0, 100)};
    b.washed = r.chance(50);
    if (r.chance(30)) {
        b.width = r.length(6_in, 300_in);
        b.length = r.length(6_in, 300_in);
    }
    for (int n = r.count(0, 12); n > 0; --n)
        b.fabrics.push_back({r.name(n), r.length(6_in, 150_in), r.length(0_in, 100_yd),
                             r.chance(50), r.chance(50) ? r.count(0, 30) : r.real(0, 1000)});
    return b;
}

Job job(Random& r) {
    Job j;
    j.name = r.name(1);
    j.unit = r.oneOf(std::vector{Unit::inch, Unit::centimetre, Unit::millimetre});
    j.top = top(r);
    using enum Quilting::Method;
    j.quilting.method =
        r.oneOf(std::vector{inTheDitch, acrossSeams, singleTacks, freeMotion, undecided});
    if (r.chance(50))
        j.quilting.gapLimit = r.length(halfInch(), 24_in);
    j.basting.with = static_cast<Basting::With>(r.count(0, 3));
    const Spacings spacings = spacingsOf(j.basting.with);
    j.basting.spacing = r.length(spacings.least, spacings.most);
    j.basting.pinLength = r.length(halfInch(), 3_in);
    j.basting.clear = r.length(0_in, 2_in);
    j.basting.edge = r.length(0_in, 6_in);
    j.basting.whereShort = r.oneOf(std::vector{Basting::With::pins, Basting::With::dots});
    j.basting.start = r.oneOf(std::vector{Basting::Start::centred, Basting::Start::besideMiddle,
                                          Basting::Start::best, Basting::Start::oneEnd});
    j.basting.along = r.oneOf(std::vector{Basting::Along::either, Basting::Along::tableLength,
                                          Basting::Along::tableWidth});
    if (r.chance(30))
        j.basting.measure = OwnMeasure{r.name(1), Length::inch64ths(8 * r.count(8, 60))};
    if (r.chance(70))
        j.basting.layout = r.oneOf(
            std::vector{Basting::Layout::rows, Basting::Layout::blocks, Basting::Layout::fewest});
    j.batting = batting(r);
    j.backing = backing(r);
    if (r.chance(70))
        j.machine.throat = r.length(2_in, 60_in);
    for (int n = r.chance(30) ? r.count(1, 5) : 0; n > 0; --n)
        j.handed.push_back({r.name(n), r.name(1)});
    if (r.chance(30))
        j.unknown = {{"/colour", R"("blue")"}, {"/top/drawn by", R"({"a":[1,2.5,null]})"}};
    return j;
}

Setting setting(Random& r) {
    Setting s;
    for (int n = r.count(0, 4); n > 0; --n)
        s.room.tables.push_back({r.length(12_in, 240_in), r.length(12_in, 120_in), r.count(0, 3),
                                 r.chance(30) ? "by the door" : ""});
    for (const Side side : kSides)
        if (r.chance(30))
            s.room.walls.push_back(side);
    s.room.inset = r.length(0_in, 12_in);
    s.room.wallGap = r.length(0_in, 30_in);
    s.room.irons = r.count(0, 40);
    s.room.ventilated = r.chance(50);
    s.room.surfaces = r.count(0, 12);
    if (r.chance(30))
        s.room.together = {r.length(100_in, 400_in), r.length(12_in, 100_in)};
    s.start = ClockTime{std::chrono::minutes{r.whole(0, 1439)}};
    s.proposeBreaks = r.chance(50);
    for (int b = r.chance(30) ? r.count(1, 3) : 0; b > 0; --b)
        s.breaks.push_back({ClockTime{std::chrono::minutes{r.whole(0, 700)}},
                            ClockTime{std::chrono::minutes{r.whole(701, 1439)}}});
    for (int n = r.count(0, 9); n > 0; --n) {
        Helper h;
        h.name = r.name(n);
        h.reach = r.length(6_in, 60_in);
        h.lean = r.length(0_in, 24_in);
        h.pace = r.real(0.1, 5);
        if (r.chance(40))
            h.from = ClockTime{std::chrono::minutes{r.whole(0, 700)}};
        if (r.chance(40))
            h.until = ClockTime{std::chrono::minutes{r.whole(701, 1439)}};
        for (int b = r.chance(30) ? r.count(1, 3) : 0; b > 0; --b)
            h.breaks.push_back({ClockTime{std::chrono::minutes{r.whole(0, 700)}},
                                ClockTime{std::chrono::minutes{r.whole(701, 1439)}}});
        h.irons = r.chance(50);
        h.lifts = r.chance(50);
        h.closes = r.chance(50);
        h.pins = r.chance(50);
        h.bends = r.chance(50);
        h.seated = r.chance(50);
        h.troubleBreathing = r.chance(50);
        if (r.chance(30))
            h.side = r.oneOf(std::vector<Side>(kSides.begin(), kSides.end()));
        s.helpers.push_back(h);
    }
    s.stash.pins = r.count(0, 100'000);
    s.stash.clamps = r.count(0, 100'000);
    for (int n = r.count(0, 4); n > 0; --n)
        s.stash.clips.push_back({r.length(1_in, 24_in), r.count(0, 50)});
    s.stash.tape = r.length(0_in, 1000_yd);
    s.stash.name = r.chance(30) ? r.name(1) : "";
    s.room.name = r.chance(30) ? r.name(2) : "";
    return s;
}

} // namespace

Session randomSession(std::uint64_t seed) {
    Random r{seed};
    Session s;
    s.severalQuilts = r.chance(40);
    for (int n = s.severalQuilts ? r.count(1, 4) : 1; n > 0; --n)
        s.jobs.push_back(job(r));
    s.setting = setting(r);
    if (r.chance(30))
        s.unknown = {{"/room/lamps", "3"}};
    return s;
}

} // namespace bastewright
