#include "plan/plan_fields.h"

#include <cmath>

namespace bastewright {
namespace {

using namespace plan_limits;

constexpr std::array kHoldWords{Word{"clamp", Hold::Kind::clamp}, Word{"tape", Hold::Kind::tape}};
// "along" the quilt's length, or across it.
constexpr std::array kDirectionWords{Word{"along", true}, Word{"across", false}};
constexpr std::array kBeyondWords{
    Word{"nothing", Beyond::nothing}, Word{"hangs", Beyond::hangs},
    Word{"chairs", Beyond::chairs},   Word{"spare-table", Beyond::spareTable},
    Word{"rolled", Beyond::rolled},   Word{"on-the-table", Beyond::onTable}};
constexpr std::array kLayWords{Word{"length", true}, Word{"width", false}};
constexpr std::array kRowWords{Word{"width", PinRows::Along::width},
                               Word{"length", PinRows::Along::length}};
/// Where a split is measured: along the piece's width or its length.
constexpr std::array kCutWords{Word{"width", true}, Word{"length", false}};

template <class Fields, class S>
void sizeFields(Fields& f, S& size) {
    f.require({"width", "length"});
    f.length("width", size.width, {Length{}, kLength.hi});
    f.length("length", size.length, {Length{}, kLength.hi});
}

template <class Fields, class R>
void rectFields(Fields& f, R& rect) {
    f.require({"x0", "y0", "x1", "y1"});
    f.length("x0", rect.x0, kLength);
    f.length("y0", rect.y0, kLength);
    f.length("x1", rect.x1, kLength);
    f.length("y1", rect.y1, kLength);
    if constexpr (Fields::kReads) {
        if (rect.x1 < rect.x0)
            f.stop("x1", core::says("is less than x0; a rectangle's x1 is at least x0."));
        if (rect.y1 < rect.y0)
            f.stop("y1", core::says("is less than y0; a rectangle's y1 is at least y0."));
    }
}

template <class Fields, class R>
void rect(Fields& f, std::string_view key, R& area) {
    f.object(key, [&](Fields& r) { rectFields(r, area); });
}

/// A straight line as the two ends it runs between, in the order it was made.
template <class Fields, class S>
void segmentFields(Fields& f, S& line) {
    f.require({"x0", "y0", "x1", "y1"});
    f.length("x0", line.from.x, kLength);
    f.length("y0", line.from.y, kLength);
    f.length("x1", line.to.x, kLength);
    f.length("y1", line.to.y, kLength);
}

template <class Fields, class P>
void perSide(Fields& f, std::string_view key, P& sides) {
    f.object(key, [&](Fields& s) {
        s.length("head", sides.head, kLength);
        s.length("foot", sides.foot, kLength);
        s.length("left", sides.left, kLength);
        s.length("right", sides.right, kLength);
    });
}

template <class Fields, class P>
void pointFields(Fields& f, P& point) {
    f.require({"x", "y"});
    f.length("x", point.at.x, kLength);
    f.length("y", point.at.y, kLength);
    f.count("angle", point.angle, {0, 179});
}

template <class Fields, class S>
void surfaceFields(Fields& f, S& surface) {
    f.require({"length", "width", "quilt_length_along"});
    f.text("name", surface.name, kText);
    f.count("number", surface.number, kCount);
    f.length("length", surface.length, {Length{}, kLength.hi});
    f.length("width", surface.width, {Length{}, kLength.hi});
    f.flag("floor", surface.floor);
    f.word("quilt_length_along", surface.quiltLengthAlongLength, kLayWords);
    f.list("tables", surface.tables, kList, [](Fields& t, auto& table) { rectFields(t, table); });
    f.words("closed", surface.closed, kSideWords);
}

template <class Fields, class H>
void holdFields(Fields& f, H& hold) {
    f.require({"side", "kind"});
    f.word("side", hold.side, kSideWords);
    f.word("kind", hold.kind, kHoldWords);
    f.count("count", hold.count, kCount);
    f.length("length", hold.length, kLength);
    f.lengths("positions", hold.positions, kLength, kList);
    f.counts("numbers", hold.numbers, kCount, kList);
    f.length("apart", hold.apart, kLength);
}

template <class Fields, class R>
void rollFields(Fields& f, R& roll) {
    f.require({"side", "rolled"});
    f.word("side", roll.side, kSideWords);
    f.length("rolled", roll.rolled, kLength);
    f.length("along", roll.along, kLength);
    f.length("diameter", roll.diameter, kLength);
    f.length("clip_holds", roll.clipHolds, kLength);
    f.count("clips", roll.clips, kCount);
    f.flag("folded", roll.folded);
}

template <class Fields, class P>
void passFields(Fields& f, P& pass) {
    f.require({"number", "field", "fresh", "table", "shift", "zones"});
    f.count("number", pass.number, kCount);
    f.flag("pulled", pass.pulled);
    rect(f, "field", pass.field);
    f.list("fresh", pass.fresh.parts, kList, [](Fields& r, auto& part) { rectFields(r, part); });
    rect(f, "table", pass.table);
    f.object("shift", [&](Fields& s) {
        s.require({"dx", "dy"});
        s.length("dx", pass.shift.dx, kLength);
        s.length("dy", pass.shift.dy, kLength);
    });
    f.texts("zones", pass.zones, kZones);
    f.list("stretches", pass.stretches, kList, [](Fields& t, auto& stretch) {
        t.require({"place", "person", "edges"});
        t.text("place", stretch.place);
        t.text("person", stretch.person);
        t.list("edges", stretch.edges, kList,
               [](Fields& e, auto& edge) { standingPlaceFields(e, edge); });
    });
    f.list("holds", pass.holds, kList, [](Fields& h, auto& hold) { holdFields(h, hold); });
    f.object("overhang", [&](Fields& o) {
        perSide(o, "backing", pass.backingOverhang);
        perSide(o, "batting", pass.battingOverhang);
        perSide(o, "top", pass.topOverhang);
    });
    f.object("spare", [&](Fields& s) {
        perSide(s, "backing", pass.backingSpare);
        perSide(s, "batting", pass.battingSpare);
    });
    f.object("beyond", [&](Fields& b) {
        b.word("head", pass.beyond.head, kBeyondWords);
        b.word("foot", pass.beyond.foot, kBeyondWords);
        b.word("left", pass.beyond.left, kBeyondWords);
        b.word("right", pass.beyond.right, kBeyondWords);
    });
    f.list("rolls", pass.rolls, kList, [](Fields& r, auto& roll) { rollFields(r, roll); });
    f.words("smooth_towards", pass.smoothTowards, kSideWords);
    f.count("lift_people", pass.liftPeople, kCount);
    f.number("lift_kilograms", pass.liftKilograms, kNumber);
}

template <class Fields, class Z>
void zoneFields(Fields& f, Z& zone) {
    f.require({"id", "pass", "points"});
    f.text("id", zone.id);
    f.count("pass", zone.pass, kCount);
    f.word("with", zone.with, kWithWords);
    rectFields(f, zone.area);
    f.list("points", zone.points, kPoints, [](Fields& p, auto& point) { pointFields(p, point); });
}

template <class Fields, class R>
void rowsFields(Fields& f, R& rows) {
    constexpr Within<Length> kPlace{Length{}, kLength.hi};
    f.require({"along", "gap", "step", "lines", "ribbons", "slack"});
    f.word("along", rows.along, kRowWords);
    f.length("gap", rows.gap, kPlace);
    f.length("step", rows.step, kPlace);
    f.list("lines", rows.lines, kList, [&](Fields& l, auto& line) {
        l.require({"at", "places"});
        l.length("at", line.at, kPlace);
        l.lengths("places", line.places, kPlace, kPoints);
        l.list("aside", line.aside, kPoints, [&](Fields& a, auto& pin) {
            a.require({"mark", "x", "y"});
            a.length("mark", pin.mark, kPlace);
            a.length("x", pin.to.x, kLength);
            a.length("y", pin.to.y, kLength);
        });
    });
    f.object("ribbons", [&](Fields& r) {
        r.require({"odd", "even", "side"});
        r.lengths("odd", rows.ribbons.odd, kPlace, kPoints);
        r.lengths("even", rows.ribbons.even, kPlace, kPoints);
        r.lengths("side", rows.ribbons.side, kPlace, kPoints);
    });
    f.length("slack", rows.slack, kPlace);
    f.list("singles", rows.singles, kPoints, [](Fields& p, auto& point) {
        p.require({"x", "y"});
        p.length("x", point.x, kLength);
        p.length("y", point.y, kLength);
    });
}

template <class Fields, class B>
void blocksFields(Fields& f, B& blocks) {
    const auto points = [&](std::string_view key, auto& of) {
        f.list(key, of, kPoints, [](Fields& p, auto& point) {
            p.require({"x", "y"});
            p.length("x", point.x, kLength);
            p.length("y", point.y, kLength);
        });
    };
    f.require({"block", "in_block"});
    f.length("block", blocks.block, {Length{}, kLength.hi});
    points("in_block", blocks.inBlock);
    f.count("per_strip", blocks.perStrip, kCount);
    f.flag("posts", blocks.posts);
    f.list("edges", blocks.edges, kList, [](Fields& e, auto& line) {
        e.require({"side", "in", "places"});
        e.word("side", line.side, kSideWords);
        e.length("in", line.in, kLength);
        e.lengths("places", line.places, kLength, kPoints);
    });
    points("left_out", blocks.leftOut);
    points("singles", blocks.singles);
}

template <class Fields, class B>
void backingFields(Fields& f, B& backing) {
    f.word("direction", backing.along, kDirectionWords);
    f.list("buy", backing.buy, kList, [](Fields& b, auto& buy) {
        b.text("fabric", buy.fabric);
        b.length("length", buy.length, kLength);
        b.derived("yards", std::round(buy.length.in() / 36 * 1e4) / 1e4);
    });
    f.list("panels", backing.panels, kList, [](Fields& p, auto& panel) {
        p.text("name", panel.name, kText);
        p.text("fabric", panel.fabric);
        rectFields(p, panel.area);
    });
    f.list("cuts", backing.cuts, kList, [](Fields& c, auto& cut) {
        c.text("fabric", cut.fabric);
        c.text("piece", cut.piece, kText);
        rectFields(c, cut.onCloth);
        c.flag("turned", cut.turned);
        c.flag("on_hand", cut.onHand);
    });
    f.text("least_bought", backing.leastBought, kText);
    f.text("runner_up", backing.runnerUp, kText);
    f.text("nearest_miss", backing.nearestMiss, kText);
    f.list("alternatives", backing.alternatives, kList, [](Fields& a, auto& way) {
        a.word("direction", way.along, kDirectionWords);
        a.length("bought", way.bought, kLength);
        a.number("cost", way.cost, kNumber);
        a.number("waste", way.waste, kNumber);
        a.count("seams", way.seams, kCount);
        a.text("text", way.text, kText);
        a.text("wanted", way.wanted, kText);
        a.flag("chosen", way.chosen);
    });
    f.texts("to_bring", backing.toBring, kList);
}

template <class Fields, class B>
void battingFields(Fields& f, B& batting) {
    f.text("pack", batting.pack);
    f.list("buy", batting.buy, kList, [](Fields& b, auto& buy) {
        b.text("pack", buy.pack);
        b.length("width", buy.width, kLength);
        b.length("length", buy.length, kLength);
    });
    f.list("pieces", batting.pieces, kList, [](Fields& p, auto& piece) {
        p.text("name", piece.name, kText);
        rectFields(p, piece.area);
        p.flag("turned", piece.turned);
        rect(p, "on_piece", piece.onPiece);
        p.count("bought", piece.bought, {-1, kCount.hi});
    });
    f.list("joins", batting.joins, kList, [](Fields& j, auto& join) { segmentFields(j, join); });
    f.length("strip", batting.strip, kLength);
    f.texts("left_over", batting.leftOver, kList);
    f.list("splits", batting.splits, kList, [](Fields& s, auto& split) {
        s.text("name", split.name, kText);
        s.word("cut", split.acrossWidth, kCutWords);
        s.length("at", split.at, kLength);
    });
    f.text("join_cost", batting.joinCost, kText);
    f.list("alternatives", batting.alternatives, kList, [](Fields& a, auto& way) {
        a.text("pack", way.pack);
        a.length("roll", way.roll, kLength);
        a.length("bought", way.bought, kLength);
        a.count("joins", way.joins, kCount);
        a.length("strip", way.strip, kLength);
        a.flag("piece_strip", way.pieceStrip);
        a.text("text", way.text, kText);
        a.flag("chosen", way.chosen);
    });
    f.texts("to_bring", batting.toBring, kList);
}

template <class Fields, class A>
void alternativeFields(Fields& f, A& way) {
    f.text("surface", way.surface, kText);
    f.word("start", way.start, kStartWords);
    f.word("quilt_length_along", way.quiltLengthAlongLength, kLayWords);
    f.count("passes", way.passes, kCount);
    f.count("pulls", way.pulls, kCount);
    f.seconds("predicted", way.predicted, kSeconds);
    f.count("lifts", way.lifts, kCount);
    f.length("largest_shift", way.largestShift, kLength);
    f.flag("workable", way.workable);
    f.flag("chosen", way.chosen);
    f.text("why", way.why, kText);
    f.length("reach", way.reach, kLength);
    f.count("lift_people", way.liftPeople, kCount);
    f.number("lift_kilograms", way.liftKilograms, kNumber);
    f.object("off_centre", [&](Fields& o) {
        o.length("dx", way.offCentre.dx, kLength);
        o.length("dy", way.offCentre.dy, kLength);
    });
    f.length("shifted", way.shifted, kLength);
    f.length("surface_length", way.surfaceLength, kLength);
    f.length("surface_width", way.surfaceWidth, kLength);
}

template <class Fields, class Q, class S>
void quiltFields(Fields& f, Q& quilt, S* finishBound) {
    f.require({"layers", "surface", "passes", "zones"});
    f.text("name", quilt.name);
    f.object("layers", [&](Fields& l) {
        l.require({"top", "batting", "backing"});
        l.object("top", [&](Fields& s) { sizeFields(s, quilt.layers.top); });
        l.object("batting", [&](Fields& s) { sizeFields(s, quilt.layers.batting); });
        l.object("backing", [&](Fields& s) { sizeFields(s, quilt.layers.backing); });
    });
    f.object("surface", [&](Fields& s) { surfaceFields(s, quilt.surface); });
    f.list("passes", quilt.passes, kPasses, [](Fields& p, auto& pass) { passFields(p, pass); });
    f.list("zones", quilt.zones, kZones, [](Fields& z, auto& zone) { zoneFields(z, zone); });
    f.object("rows", quilt.rows, [](Fields& r, auto& rows) { rowsFields(r, rows); });
    f.object("blocks", quilt.blocks, [](Fields& b, auto& blocks) { blocksFields(b, blocks); });
    f.object("backing", quilt.backing, [](Fields& b, auto& backing) { backingFields(b, backing); });
    f.object("batting", quilt.batting, [](Fields& b, auto& batting) { battingFields(b, batting); });
    f.list("machine_rolls", quilt.machineRolls, kList,
           [](Fields& r, auto& roll) { rollFields(r, roll); });
    f.list("alternatives", quilt.alternatives, kList,
           [](Fields& a, auto& way) { alternativeFields(a, way); });
    f.object("bounds", [&](Fields& b) {
        b.count("points", quilt.bounds.points, kCount);
        b.count("passes", quilt.bounds.passes, kCount);
        if (finishBound != nullptr)
            b.seconds("finish", *finishBound, kSeconds);
    });
}

} // namespace

void readQuiltPlan(FieldReader& reader, QuiltPlan& quilt, Seconds* finishBound) {
    quiltFields(reader, quilt, finishBound);
}

void writeQuiltPlan(FieldWriter& writer, const QuiltPlan& quilt, const Seconds* finishBound) {
    quiltFields(writer, quilt, finishBound);
}

} // namespace bastewright
