#include "job/job_fields.h"

#include <set>

namespace bastewright {
namespace {

constexpr Length kNone{};
constexpr Length kEighthInch = Length::inch64ths(8), kHalfInch = Length::inch64ths(32);

constexpr std::array kMethodWords{Word{"in-the-ditch", Quilting::Method::inTheDitch},
                                  Word{"across-seams", Quilting::Method::acrossSeams},
                                  Word{"single-tacks", Quilting::Method::singleTacks},
                                  Word{"free-motion", Quilting::Method::freeMotion},
                                  Word{"undecided", Quilting::Method::undecided}};
constexpr std::array kWithWords{Word{"pins", Basting::With::pins},
                                Word{"dots", Basting::With::dots}};

// A layer may be larger than the largest top by its overage on both sides.
constexpr Within<Length> kTopSide{limits::kSmallestTop, limits::kLargestTop};
constexpr Within<Length> kLayerSide{limits::kSmallestTop, 300_in};
constexpr Within<Length> kOverage{kNone, 24_in};
constexpr Within<Length> kRollWidth{20_in, 240_in};

template <class Fields, class Grid>
void gridFields(Fields& f, Grid& grid) {
    f.count("columns", grid.columns, {1, limits::kBlocks});
    f.count("rows", grid.rows, {1, limits::kBlocks});
    f.length("block", grid.block, {kHalfInch, limits::kLargestTop});
    f.length("block_length", grid.blockLength, {kNone, limits::kLargestTop});
    f.length("sashing", grid.sashing, {kNone, 24_in});
    f.length("border", grid.border, {kNone, 60_in});
    f.length("border_ends", grid.borderEnds, {kNone, 60_in});
    f.object("inner", [&](Fields& inner) {
        constexpr std::size_t kLines = 50;
        inner.lengths("x", grid.innerX, {kEighthInch, limits::kLargestTop}, kLines);
        inner.lengths("y", grid.innerY, {kEighthInch, limits::kLargestTop}, kLines);
    });
}

template <class Fields, class T>
void topFields(Fields& f, T& top) {
    constexpr std::size_t kReadings = 9;
    constexpr Within<Length> kPlace{-limits::kLargestTop, 2 * limits::kLargestTop};
    f.readings("width", top.width, kTopSide, kReadings);
    f.readings("length", top.length, kTopSide, kReadings);
    f.lengths("diagonals", top.diagonals, {limits::kSmallestTop, 340_in}, 2);
    f.object("grid", top.grid, [](Fields& g, auto& grid) { gridFields(g, grid); });
    f.flag("size_from_grid", top.sizeFromGrid);
    f.list("seams", top.seams, limits::kSeams, [&](Fields& s, auto& seam) {
        s.require({"from", "to"});
        s.point("from", seam.from, kPlace);
        s.point("to", seam.to, kPlace);
    });
    if constexpr (Fields::kReads)
        checkTop(f, top);
}

template <class Fields, class B>
void bastingFields(Fields& f, B& basting) {
    f.word("with", basting.with, kWithWords);
    f.length("spacing", basting.spacing, {1_in, 12_in});
    f.length("pin_length", basting.pinLength, {kHalfInch, 3_in});
    f.length("clear", basting.clear, {kNone, 2_in});
    f.length("edge", basting.edge, {kNone, 6_in});
    f.word("start", basting.start, kStartWords);
    f.word("quilt_length_along", basting.along, kAlongWords);
    f.word("layout", basting.layout, kLayoutWords);
    f.object("measure", basting.measure, [](Fields& m, auto& own) {
        m.require({"length"});
        m.text("name", own.name);
        m.length("length", own.length, {kHalfInch, 12_in});
    });
}

template <class Fields, class B>
void battingFields(Fields& f, B& batting) {
    f.length("overage", batting.overage, kOverage);
    f.length("thickness", batting.thickness, {Length::nanometres(100'000), 50_mm});
    f.number("gsm", batting.gsm, {10, 2000});
    f.flag("meltable", batting.meltable);
    f.text("pack", batting.pack);
    f.length("roll", batting.roll, kRollWidth);
    f.lengths("rolls", batting.rolls, kRollWidth, 12);
    f.flag("piece_strip", batting.pieceStrip);
    f.number("shrink_percent", batting.shrinkPercent, {0, 20});
    f.length("width", batting.width, kLayerSide);
    f.length("length", batting.length, kLayerSide);
    [[maybe_unused]] std::set<std::string> names;
    [[maybe_unused]] int pieces = 0;
    f.list("pieces", batting.pieces, limits::kPieces, [&](Fields& p, auto& piece) {
        p.require({"width", "length"});
        p.text("name", piece.name);
        p.length("width", piece.width, {1_in, kLayerSide.hi});
        p.length("length", piece.length, {1_in, kLayerSide.hi});
        p.count("count", piece.count, {1, limits::kPieces});
        p.lengths("diagonals", piece.diagonals, {1_in, 425_in}, 2);
        if constexpr (Fields::kReads) {
            checkPiece(p, piece);
            pieces += piece.count;
            if (!piece.name.empty() && !names.insert(piece.name).second)
                p.warn("name", core::says("is \"%1\" again; pieces are easier to find with a name "
                                          "each.",
                                          piece.name));
        }
    });
    // A piece without a name is called by its number in the list.
    if constexpr (Fields::kReads)
        for (std::size_t i = 0; i < batting.pieces.size(); ++i)
            if (batting.pieces[i].name.empty())
                for (std::size_t n = i + 1;
                     !names.insert(batting.pieces[i].name).second || batting.pieces[i].name.empty();
                     ++n)
                    batting.pieces[i].name = std::to_string(n);
    if constexpr (Fields::kReads)
        if (pieces > limits::kPieces)
            f.stop("pieces",
                   core::says("are %1 in all; up to %2 are accepted.", pieces, limits::kPieces));
    f.flag("may_turn", batting.mayTurn);
    f.length("trim", batting.trim, {kNone, 6_in});
    f.length("overlap", batting.overlap, {kNone, 6_in});
}

template <class Fields, class B>
void backingFields(Fields& f, B& backing) {
    f.length("overage", backing.overage, kOverage);
    f.length("seam", backing.seam, {kNone, 2_in});
    f.number("shrink_percent", backing.shrinkPercent, {0, 20});
    f.length("squaring", backing.squaring, {kNone, 36_in});
    f.length("seam_worth", backing.seamWorth, {kNone, 36_in});
    f.length("least_piece", backing.leastPiece, {1_in, 24_in});
    f.length("repeat", backing.repeat, {kNone, 72_in});
    f.flag("one_way", backing.oneWay);
    f.flag("column", backing.column);
    f.flag("centre_seam", backing.centreSeam);
    f.object("way", backing.way, [](Fields& w, auto& way) {
        w.require({"bought", "seams"});
        w.length("bought", way.bought, {kNone, 100_yd});
        w.count("seams", way.seams, {0, 100});
    });
    f.length("width", backing.width, kLayerSide);
    f.length("length", backing.length, kLayerSide);
    f.flag("washed", backing.washed);
    f.list("fabrics", backing.fabrics, limits::kFabrics, [](Fields& c, auto& fabric) {
        c.text("name", fabric.name);
        c.length("usable_width", fabric.usableWidth, {6_in, 150_in});
        c.length("on_hand", fabric.onHand, {kNone, 100_yd});
        c.flag("buyable", fabric.buyable);
        c.number("price", fabric.price, {0, 100'000});
    });
}

template <class Fields, class H>
void handedFields(Fields& f, H& handed) {
    [[maybe_unused]] std::set<std::string> zones;
    f.list("handed", handed, limits::kHanded, [&](Fields& h, auto& one) {
        h.require({"zone", "person"});
        h.text("zone", one.zone);
        h.text("person", one.person);
        if constexpr (Fields::kReads)
            if (h.has("zone") && !zones.insert(one.zone).second)
                h.stop("zone", core::says("is \"%1\" again; each zone in one person's hands is "
                                          "accepted.",
                                          one.zone));
    });
}

template <class Fields, class J>
void jobFields(Fields& f, J& job) {
    f.require({"top"});
    f.text("name", job.name);
    f.unit("unit", job.unit);
    f.object("top", [&](Fields& t) { topFields(t, job.top); });
    f.object("quilting", [&](Fields& q) {
        q.word("method", job.quilting.method, kMethodWords);
        q.length("gap_limit", job.quilting.gapLimit, {kHalfInch, 24_in});
    });
    f.object("basting", [&](Fields& b) { bastingFields(b, job.basting); });
    f.object("batting", [&](Fields& b) { battingFields(b, job.batting); });
    f.object("backing", [&](Fields& b) { backingFields(b, job.backing); });
    f.object("machine", [&](Fields& m) { m.length("throat", job.machine.throat, {2_in, 60_in}); });
    handedFields(f, job.handed);
}

} // namespace

void readJob(FieldReader& reader, Job& job) {
    jobFields(reader, job);
}

void writeJob(FieldWriter& writer, const Job& job) {
    jobFields(writer, job);
}

} // namespace bastewright
