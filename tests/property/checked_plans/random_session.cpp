#include "property/checked_plans/random_session.h"

#include "job/spacings.h"
#include "unit/checker/random.h"

#include <array>

namespace bastewright::testing {
namespace {

constexpr std::array kNames{"Ada", "Bo", "Cai", "Dot", "Eli", "Fay", "Gus", "Hal"};

Length quarters(Random& random, int lo, int hi) {
    return 0.25_in * random.whole(4 * lo, 4 * hi);
}

/// A grid of blocks about so large over all.
BlockGrid grid(Random& random, int width, int length) {
    BlockGrid g;
    g.block = Length::inches(random.whole(5, 16));
    if (random.chance(20))
        g.blockLength = Length::inches(random.whole(6, 16));
    if (random.chance(50))
        g.sashing = quarters(random, 1, 3);
    if (random.chance(70))
        g.border = quarters(random, 1, 8);
    const auto fit = [&](int size, Length block) {
        const Length inside = Length::inches(size) - 2 * g.border + g.sashing;
        return static_cast<int>(std::max(1.0, ratio(inside, block + g.sashing)));
    };
    g.columns = fit(width, g.block);
    g.rows = fit(length, g.blockHeight());
    if (random.chance(50)) { // seams every few inches inside each block
        const Length every = quarters(random, 2, 5);
        for (Length at = every; at < g.block - 1_in; at += every)
            g.innerX.push_back(at);
        for (Length at = every; at < g.blockHeight() - 1_in; at += every)
            g.innerY.push_back(at);
    }
    return g;
}

Top top(Random& random) {
    const int width =
        static_cast<int>(random.chance(15) ? random.whole(100, 120) : random.whole(30, 100));
    const int length =
        static_cast<int>(random.chance(15) ? random.whole(100, 120) : random.whole(36, 100));
    Top t;
    if (random.chance(60)) {
        t.grid = grid(random, width, length);
        t.width = {t.grid->width()};
        t.length = {t.grid->length()};
    } else {
        t.width = {Length::inches(width) + 0.125_in * random.whole(0, 7)};
        t.length = {Length::inches(length)};
        for (auto i = random.chance(50) ? 0 : random.whole(1, 8); i > 0; --i)
            t.seams.push_back({{Length::inches(random.whole(0, width)), 0_in},
                               {Length::inches(random.whole(0, width)), t.length.front()}});
    }
    if (random.chance(20))
        t.width.push_back(t.width.front() - 0.25_in);
    return t;
}

/// Pieces that might make the batting, and sometimes do not.
void leftovers(Random& random, Job& j) {
    const double width = topRect(j.top).width().in() + 4, length = topRect(j.top).length().in() + 4;
    const auto number = random.whole(1, 4);
    for (auto i = number; i > 0; --i)
        j.batting.pieces.push_back(
            {"piece " + std::to_string(i),
             Length::inches(static_cast<std::int64_t>(width * random.real(0.4, 1.2))),
             Length::inches(static_cast<std::int64_t>(length * random.real(0.4, 1.2))),
             static_cast<int>(random.whole(1, 2))});
}

Job job(Random& random, int number) {
    Job j;
    j.name = "Quilt " + std::to_string(number);
    if (random.chance(20))
        j.unit = Unit::centimetre;
    j.top = top(random);
    j.quilting.method = static_cast<Quilting::Method>(random.whole(0, 4));
    j.basting.with = random.chance(25)   ? Basting::With::dots
                     : random.chance(25) ? Basting::With::thread
                     : random.chance(25) ? Basting::With::spray
                                         : Basting::With::pins;
    j.basting.spacing = 0.5_in * random.whole(6, 12);
    if (j.basting.with == Basting::With::spray)
        j.basting.spacing = 3 * j.basting.spacing; // bands of 9 to 18 in: 10 at least
    j.basting.spacing = std::max(j.basting.spacing, spacingsOf(j.basting.with).least);
    j.basting.start = static_cast<Basting::Start>(random.whole(0, 3));
    if (random.chance(20))
        j.basting.clear = 0.25_in * random.whole(1, 4);
    j.batting.thickness = Length::millimetres(random.chance(15) ? 13 : random.whole(2, 6));
    if (random.chance(25))
        leftovers(random, j);
    if (random.chance(10)) { // measured: it has rested
        j.batting.pieces.clear();
        j.batting.width = topRect(j.top).width() + Length::inches(random.whole(1, 8));
        j.batting.length = topRect(j.top).length() + Length::inches(random.whole(1, 8));
    }
    j.batting.mayTurn = random.chance(50);
    if (random.chance(15))
        j.batting.roll = Length::inches(random.whole(60, 120));
    else if (random.chance(15))
        j.batting.pack = random.chance(50) ? "twin" : "85 x 100";
    j.batting.pieceStrip = random.chance(30);
    if (random.chance(20))
        j.batting.shrinkPercent = static_cast<double>(random.whole(1, 5));
    if (random.chance(15)) { // a made backing, now and then a short one
        j.backing.width =
            topRect(j.top).width() + Length::inches(random.whole(random.chance(10) ? -2 : 2, 10));
        j.backing.length = topRect(j.top).length() + Length::inches(random.whole(4, 10));
    }
    if (random.chance(50)) {
        Fabric& f = j.backing.fabrics.emplace_back();
        f.name = "blue";
        f.usableWidth = Length::inches(random.chance(20) ? 104 : random.whole(38, 44));
        if (random.chance(30))
            f.onHand = Length::inches(random.whole(20, 120));
        f.buyable = random.chance(90);
    }
    if (random.chance(30))
        j.backing.shrinkPercent = static_cast<double>(random.whole(1, 5));
    if (random.chance(20))
        j.backing.squaring = Length::inches(random.whole(1, 4));
    if (random.chance(15))
        j.backing.repeat = Length::inches(random.whole(6, 24));
    j.backing.oneWay = random.chance(20);
    j.backing.column = random.chance(60);
    if (random.chance(30))
        j.machine.throat = Length::inches(random.whole(6, 12));
    return j;
}

Room room(Random& random) {
    Room r;
    if (random.chance(90))
        for (auto i = random.chance(25) ? 2 : 1; i > 0; --i)
            r.tables.push_back({6_in * random.whole(6, 28), 0.5_in * random.whole(48, 72),
                                static_cast<int>(random.whole(1, 3))});
    for (Table& t : r.tables)
        if (t.length < t.width)
            std::swap(t.length, t.width);
    for (const Side side : kSides)
        if (random.chance(12))
            r.walls.push_back(side);
    if (random.chance(30))
        r.wallGap = Length::inches(random.whole(0, 24));
    if (random.chance(15) && r.tables.size() > 1)
        r.tables.back().group = "apart";
    if (random.chance(20))
        r.inset = Length::inches(random.whole(0, 3));
    r.irons = static_cast<int>(random.chance(90) ? random.whole(1, 3) : 0);
    r.ventilated = random.chance(80);
    if (random.chance(20))
        r.surfaces = static_cast<int>(random.whole(1, 2));
    if (random.chance(20) && !r.tables.empty()) {
        const Table& t = r.tables.front(); // that and another of it beside or behind
        const auto [width, length] = std::minmax({random.chance(50) ? t.length : t.length * 2,
                                                  random.chance(50) ? t.width : t.width * 2});
        r.together = {length, width};
    }
    return r;
}

Helper helper(Random& random, const char* name, ClockTime start) {
    const auto after = [&](std::int64_t minutes) {
        return ClockTime{std::chrono::minutes{
            std::min<std::int64_t>(start.sinceMidnight.count() + minutes, 24 * 60 - 1)}};
    };
    Helper h;
    h.name = name;
    h.reach = 0.5_in * random.whole(46, 62);
    if (random.chance(30))
        h.lean = Length::inches(random.whole(0, 6));
    h.pace = double(random.whole(6, 16)) / 10;
    if (random.chance(20))
        h.from = after(5 * random.whole(0, 12));
    if (random.chance(20))
        h.until = after(15 * random.whole(8, 28));
    h.irons = random.chance(80);
    h.lifts = random.chance(85);
    h.closes = random.chance(90);
    h.seated = random.chance(10);
    if (random.chance(15))
        h.side = kSides.at(std::size_t(random.whole(0, 3)));
    return h;
}

Stash stash(Random& random) {
    Stash s;
    if (random.chance(20))
        return s;
    s.pins = static_cast<int>(random.whole(50, 800));
    s.clamps = static_cast<int>(random.whole(0, 24));
    for (const Length holds : {2_in, 3_in, 4_in})
        if (random.chance(50))
            s.clips.push_back({holds, static_cast<int>(random.whole(1, 12))});
    s.tape = Length::inches(random.whole(0, 400));
    return s;
}

} // namespace

Session randomSession(std::uint64_t seed) {
    Random random{seed};
    Session s;
    const auto quilts = random.chance(75) ? 1 : random.whole(2, 3);
    for (int i = 1; i <= quilts; ++i)
        s.jobs.push_back(job(random, i));
    s.severalQuilts = quilts > 1;
    s.setting.room = room(random);
    constexpr std::array kStarts{9 * 60, 13 * 60, 18 * 60, 20 * 60 + 30};
    s.setting.start = ClockTime{std::chrono::minutes{kStarts.at(std::size_t(random.whole(0, 3)))}};
    const auto people = random.whole(1, std::ssize(kNames));
    for (std::size_t i = 0; std::cmp_less(i, people); ++i)
        s.setting.helpers.push_back(helper(random, kNames.at(i), s.setting.start));
    s.setting.stash = stash(random);
    if (random.chance(25))
        for (Job& j : s.jobs)
            for (const char* zone : {"A1", "B2", "C1"})
                j.handed.push_back(
                    {zone, s.setting.helpers[std::size_t(random.whole(0, people - 1))].name});
    for (Job& j : s.jobs)
        if (random.chance(40))
            j.basting.whereShort = Basting::With::dots;
    return s;
}

} // namespace bastewright::testing
