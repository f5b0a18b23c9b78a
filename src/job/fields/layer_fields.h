#pragma once

#include "job/fields/field_name.h"
#include "job/fields/top_checks.h"

#include <set>

/// The fields of batting and backing; see `quilt_fields.h`. Private to this folder.
namespace bastewright::quilt_fields {

inline constexpr Length kNone{};
// A layer may be larger than the largest top by its overage on both sides.
inline constexpr Within<Length> kLayerSide{limits::kSmallestTop, 300_in};
inline constexpr Within<Length> kOverage{kNone, 24_in};
inline constexpr Within<Length> kRollWidth{20_in, 240_in};

template <class Fields, class P>
void pieceFields(Fields& p, P& piece) {
    p.require({"width", "length"});
    p.text(FieldName{"name", core::label("Name")}, piece.name);
    p.length(FieldName{"width", core::label("Width"), "The shortest reading."}, piece.width,
             {1_in, kLayerSide.hi});
    p.length(FieldName{"length", core::label("Length"), "The shortest reading."}, piece.length,
             {1_in, kLayerSide.hi});
    p.count(FieldName{"count", core::label("How many")}, piece.count, {1, limits::kPieces});
    p.diagonals(FieldName{"diagonals", core::label("Diagonals"), "Where it may be out of square.",
                          "none: square"},
                piece.diagonals, {1_in, 425_in});
    if constexpr (Fields::kChecks)
        checkPiece(p, piece);
}

template <class Fields, class B>
void leftoverFields(Fields& f, B& batting) {
    [[maybe_unused]] std::set<std::string> names;
    [[maybe_unused]] int pieces = 0;
    f.list(FieldName{"pieces", core::label("Leftover pieces"), "Leftovers to join; 40 in all."},
           batting.pieces, limits::kPieces, [&](Fields& p, auto& piece) {
               pieceFields(p, piece);
               if constexpr (Fields::kChecks) {
                   pieces += piece.count;
                   if (!piece.name.empty() && !names.insert(piece.name).second)
                       p.warn("name", core::says("is \"%1\" again; pieces are easier to find with "
                                                 "a name each.",
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
    if constexpr (Fields::kChecks)
        if (pieces > limits::kPieces)
            f.stop("pieces",
                   core::says("are %1 in all; up to %2 are accepted.", pieces, limits::kPieces));
}

template <class Fields, class B>
void battingFields(Fields& f, B& batting) {
    f.length(FieldName{"overage", core::label("Overage on each side"), "", "CP: 2–4"},
             batting.overage, kOverage);
    f.length(FieldName{"thickness", core::label("Thickness"), "Uncompressed.",
                       "mem: needled cotton 2.5–3.2 mm"},
             batting.thickness, {Length::nanometres(100'000), 50_mm});
    f.number(FieldName{"gsm", "", "Grams per square metre.",
                       "mem: light cotton 68–102, middle 136–170 g/m²"},
             batting.gsm, {10, 2000});
    f.flag(FieldName{"meltable", core::label("Melts under an iron")}, batting.meltable);
    f.text(FieldName{"pack", core::label("Bought as"),
                     "A pack by the name of its size or by its size, as 90 x 108; without it, "
                     "without roll and without pieces whatever takes the fewest joins.",
                     "CP: generic sizes"},
           batting.pack);
    f.length(
        FieldName{"roll", core::label("Roll of another width"), "Off a roll of this usable width."},
        batting.roll, kRollWidth);
    f.lengths(FieldName{"rolls", "", "Usable widths of the rolls it can be bought off.",
                        "CP: usable widths"},
              batting.rolls, kRollWidth, 12);
    f.flag(FieldName{"piece_strip", core::label("A strip may be pieced to buy less"),
                     "Off the roll, a narrow strip may be pieced where that buys less.",
                     "fewest joins first"},
           batting.pieceStrip);
    f.number(FieldName{"shrink_percent", core::label("New batting shrinks by, percent"),
                       "Of new batting, if it is washed before it is laid.",
                       "on the maker's label"},
             batting.shrinkPercent, {0, 20});
    f.length(FieldName{"width", core::label("Width as measured"), "Once it lies there."},
             batting.width, kLayerSide);
    f.length(FieldName{"length", core::label("Length as measured"), "Once it lies there."},
             batting.length, kLayerSide);
    leftoverFields(f, batting);
    f.flag(FieldName{"may_turn", core::label("Pieces may be turned"), "A quarter.",
                     "CP: grain and stretch differ by direction"},
           batting.mayTurn);
    f.length(FieldName{"trim", core::label("Trim from every edge"),
                       "Cut off every raw edge before joining.", "CP"},
             batting.trim, {kNone, 6_in});
    f.length(FieldName{"overlap", core::label("Overlap lost at each join"), "", "CP: 1–3"},
             batting.overlap, {kNone, 6_in});
}

template <class Fields, class B>
void fabricFields(Fields& c, B& fabric) {
    c.text(FieldName{"name", core::label("Name")}, fabric.name);
    c.length(FieldName{"usable_width", core::label("Usable width"), "Without selvages.",
                       "CP: 40–42 without selvages"},
             fabric.usableWidth, {6_in, 150_in});
    c.length(FieldName{"on_hand", core::label("We have"), "Length on hand."}, fabric.onHand,
             {kNone, 100_yd});
    c.flag(FieldName{"buyable", core::label("More can be bought")}, fabric.buyable);
    c.number(FieldName{"price", core::label("Price"),
                       "Per yard where the unit is in, else per metre; 0: not known."},
             fabric.price, {0, 100'000});
}

template <class Fields, class B>
void backingFields(Fields& f, B& backing) {
    f.length(FieldName{"overage", core::label("Overage on each side"), "",
                       "CP: 2–4, frame quilting 4–6"},
             backing.overage, kOverage);
    f.length(FieldName{"seam", core::label("Seam allowance"), "", "CP"}, backing.seam,
             {kNone, 2_in});
    f.number(FieldName{"shrink_percent", core::label("Shrinks by, percent"), "",
                       "prewashed; CP: cotton 3–5 if not"},
             backing.shrinkPercent, {0, 20});
    f.length(FieldName{"squaring", core::label("Lost of every length to square it"),
                       "Lost of every length that is cut off, to square it.",
                       "CP: about 4, up to 6"},
             backing.squaring, {kNone, 36_in});
    f.length(FieldName{"seam_worth", core::label("Fabric I would buy more to save a seam"),
                       "Fabric one would buy more to be spared a seam.", "mem: 1/4 yd"},
             backing.seamWorth, {kNone, 36_in});
    f.length(FieldName{"least_piece", core::label("Narrowest piece to sew in"),
                       "Narrowest piece that is sewn in, once sewn.", "mem"},
             backing.leastPiece, {1_in, 24_in});
    f.length(FieldName{"repeat", core::label("Repeat of the print"), "Along the fabric."},
             backing.repeat, {kNone, 72_in});
    f.flag(FieldName{"one_way", core::label("Print runs one way")}, backing.oneWay);
    f.flag(FieldName{"column", core::label("A strip may be pieced"),
                     "A pieced column may be set in.", "CP"},
           backing.column);
    f.flag(FieldName{"centre_seam", core::label("Seam down the middle allowed"),
                     "A seam on the quilt's centre line is allowed.", "CP: it wears and shows"},
           backing.centreSeam);
    f.object(FieldName{"way", "",
                       "The way to piece it that was chosen of those offered; else what people "
                       "would sew.",
                       "the person's choice, by length bought and seams"},
             backing.way, [](Fields& w, auto& way) {
                 w.require({"bought", "seams"});
                 w.length(FieldName{"bought", "", "Length of fabric to buy, in all."}, way.bought,
                          {kNone, 100_yd});
                 w.count("seams", way.seams, {0, 100});
             });
    f.length(FieldName{"width", core::label("Width as measured"), "Once it is made."},
             backing.width, kLayerSide);
    f.length(FieldName{"length", core::label("Length as measured"), "Once it is made."},
             backing.length, kLayerSide);
    f.flag(FieldName{"washed", core::label("Measured after washing"),
                     "Measured once it was washed; if not, it shrinks yet by shrink_percent."},
           backing.washed);
    f.list("fabrics", backing.fabrics, limits::kFabrics,
           [](Fields& c, auto& fabric) { fabricFields(c, fabric); });
}

} // namespace bastewright::quilt_fields
