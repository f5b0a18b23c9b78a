#pragma once

#include "job/fields/field_name.h"
#include "job/fields/layer_fields.h"
#include "job/spacings.h"

/// The table of all fields of a quilt: name in files, type, accepted values, label on screens,
/// meaning, and why the default is what it is; the default itself stands in `job/job.h`. `Fields`
/// is one of the visitors of this folder: FieldReader (files), FieldWriter, FieldChecker (values in
/// memory) or FieldLister (schema, page of defaults, labels). Private to this folder.
namespace bastewright::quilt_fields {

inline constexpr Length kEighthInch = Length::inch64ths(8), kHalfInch = Length::inch64ths(32);

inline constexpr std::array kMethodWords{Word{"in-the-ditch", Quilting::Method::inTheDitch},
                                         Word{"across-seams", Quilting::Method::acrossSeams},
                                         Word{"single-tacks", Quilting::Method::singleTacks},
                                         Word{"free-motion", Quilting::Method::freeMotion},
                                         Word{"undecided", Quilting::Method::undecided}};
inline constexpr std::array kWhereShortWords{Word{"pins", Basting::With::pins},
                                             Word{"dots", Basting::With::dots}};

inline constexpr Within<Length> kTopSide{limits::kSmallestTop, limits::kLargestTop};

template <class Fields, class G>
void gridFields(Fields& f, G& grid) {
    f.count(FieldName{"columns", core::label("Blocks across")}, grid.columns, {1, limits::kBlocks});
    f.count(FieldName{"rows", core::label("Blocks down")}, grid.rows, {1, limits::kBlocks});
    f.length(FieldName{"block", core::label("Block"),
                       "Side of a block, or its width where block_length is given."},
             grid.block, {kHalfInch, limits::kLargestTop});
    f.length(FieldName{"block_length", core::label("Block, head to foot"),
                       "Length of oblong blocks; 0 for square ones."},
             grid.blockLength, {kNone, limits::kLargestTop});
    f.length(FieldName{"sashing", core::label("Sashing"), "Between blocks only."}, grid.sashing,
             {kNone, 24_in});
    f.length(FieldName{"border", core::label("Border"), "On all four sides."}, grid.border,
             {kNone, 60_in});
    f.length(FieldName{"border_ends", core::label("Border at head and foot (0: the same)"),
                       "Where it differs from the sides; 0 for as wide as those."},
             grid.borderEnds, {kNone, 60_in});
    f.object(FieldName{"inner", "", "Seams inside every block, from its own head-left corner."},
             [&](Fields& inner) {
                 constexpr std::size_t kLines = 50;
                 inner.lengths("x", grid.innerX, {kEighthInch, limits::kLargestTop}, kLines);
                 inner.lengths("y", grid.innerY, {kEighthInch, limits::kLargestTop}, kLines);
             });
}

template <class Fields, class T>
void topFields(Fields& f, T& top) {
    constexpr std::size_t kReadings = 9;
    constexpr Within<Length> kPlace{-limits::kLargestTop, 2 * limits::kLargestTop};
    f.requireEither({"width", "length"}, {"grid"});
    f.readings(FieldName{"width", core::label("Width")}, top.width, kTopSide, kReadings);
    f.readings(FieldName{"length", core::label("Length")}, top.length, kTopSide, kReadings);
    f.diagonals(FieldName{"diagonals", core::label("Diagonals")}, top.diagonals,
                {limits::kSmallestTop, 340_in});
    f.object(FieldName{"grid", core::label("The grid of blocks"),
                       "A border on all four sides; inside it rows and columns of blocks with "
                       "sashing between blocks only."},
             top.grid, [](Fields& g, auto& grid) { gridFields(g, grid); });
    f.flag(FieldName{"size_from_grid", core::label("Size as the blocks make it"),
                     "The size is what the grid adds up to, by choice; a grid alone never changes "
                     "what was measured.",
                     "a grid never changes what was measured"},
           top.sizeFromGrid);
    f.list(FieldName{"seams", core::label("Seams"), "Further seams."}, top.seams, limits::kSeams,
           [&](Fields& s, auto& seam) {
               s.require({"from", "to"});
               s.point("from", seam.from, kPlace);
               s.point("to", seam.to, kPlace);
           });
    f.colours(FieldName{"fabrics", core::label("Fabrics of the top"),
                        "What the top is drawn in where there is no photo: border, blocks, and "
                        "the lightest last."},
              top.fabrics, {limits::kFewestColours, limits::kColours});
    f.photo(FieldName{"photo", core::label("Photo of the top"),
                      "A photo of the top, straightened: its corners are the top's, head up."},
            top.photo);
    if constexpr (Fields::kReads) {
        if (fillTop(f, top))
            checkTop(f, top);
    } else if constexpr (Fields::kChecks) {
        if (f.sound())
            checkTop(f, top);
    }
}

/// What is told of the field is of pins.
template <class Fields>
Within<Length> acceptedSpacing(Basting::With with) {
    const Spacings of = spacingsOf(Fields::kChecks ? with : Basting::With::pins);
    return {of.least, of.most};
}

template <class Fields, class B>
void bastingFields(Fields& f, B& basting) {
    f.word(FieldName{"with", core::label("Pins, dots, thread or spray"), "", "CP"}, basting.with,
           kWithWords);
    f.length(FieldName{"spacing", core::label("Spacing"),
                       "Every place of the top is as near to a pin as a square grid of this "
                       "spacing puts it. With spray the depth of a band: 10 to 18 in, 18 where "
                       "nothing is said.",
                       "CP: a fist or a palm; 3–4 dense, 4–6 loose; bands of spray 12–18"},
             basting.spacing, acceptedSpacing<Fields>(basting.with));
    if constexpr (Fields::kReads)
        if (!f.has("spacing"))
            basting.spacing = spacingsOf(basting.with).usual;
    f.length(FieldName{"pin_length", core::label("Length of a pin"), "", "CP: 1 to 1 1/2 in"},
             basting.pinLength, {kHalfInch, 3_in});
    f.length(FieldName{"clear", core::label("Keep pins this far from seams to be quilted"),
                       "Least distance of a pin from a seam that will be sewn.",
                       "CP: pins keep off the needle's line"},
             basting.clear, {kNone, 2_in});
    f.length(FieldName{"edge", core::label("First row this far from the edge"),
                       "Least distance of a pin from the edge of the top.", "CP"},
             basting.edge, {kNone, 6_in});
    f.word(FieldName{"where_short", core::label("Where the pins run short"),
                     "What is planned where the pins in the box do not last. pins: more of them, "
                     "which have to be brought; dots: fuse dots in place of pins, in whole passes "
                     "from the last one back, and in the first pass in the zones nearest to the "
                     "edge of the top. A box of 0 pins is one of which nobody has said how many "
                     "it holds.",
                     "more pins are less work than an iron"},
           basting.whereShort, kWhereShortWords);
    f.word(FieldName{"start", core::label("Start"),
                     "centred: the middle of the quilt on the middle of the table; fewest-shifts: "
                     "the middle at least one row inside the first field (older files have "
                     "beside-middle); one-end: from one end, the layers rolled and unrolled as the "
                     "work goes.",
                     "every start is computed and shown"},
           basting.start, kStartWords);
    f.word(FieldName{"quilt_length_along", core::label("The quilt’s length lies"),
                     "Which side of the pushed-together tables the quilt's length lies along.",
                     "the quicker"},
           basting.along, kAlongWords);
    f.word(FieldName{"layout", core::label("Where the pins go"),
                     "Parallel rows placed by two marked ribbons; one figure in every block; or as "
                     "few as can be found. Without it: by the blocks where that takes at most a "
                     "tenth more than rows, else rows. `pattern`, of earlier versions, is read as "
                     "`rows`.",
                     "hands work in rows; a figure that is the same in every block needs no "
                     "measuring; `fewest` is there to compare"},
           basting.layout, kLayoutWords);
    f.object(FieldName{"measure", "",
                       "What the person measures with by hand (a fist, four fingers, a palm): "
                       "steps of pins and gaps of rows are chosen and said in quarters of it.",
                       "a fist, a palm, four fingers: what hands measure with"},
             basting.measure, [](Fields& m, auto& own) {
                 m.require({"length"});
                 m.text("name", own.name);
                 m.length(FieldName{"length", core::label("Length of your measure")}, own.length,
                          {kHalfInch, 12_in});
             });
}

template <class Fields, class H>
void handedFields(Fields& f, H& handed) {
    [[maybe_unused]] std::set<std::string> zones;
    f.list(FieldName{"handed", core::label("Zones given to somebody"),
                     "Zones put into somebody's hands: they work them from beginning to end, where "
                     "they can."},
           handed, limits::kHanded, [&](Fields& h, auto& one) {
               h.require({"zone", "person"});
               h.text("zone", one.zone);
               h.text("person", one.person);
               if constexpr (Fields::kChecks)
                   if (h.has("zone") && !zones.insert(one.zone).second)
                       h.stop("zone", core::says("is \"%1\" again; each zone in one person's hands "
                                                 "is accepted.",
                                                 one.zone));
           });
}

template <class Fields, class J>
void ofQuilt(Fields& f, J& job) {
    f.require({"top"});
    f.text(FieldName{"name", core::label("Name")}, job.name);
    f.unit(FieldName{"unit", core::label("Shown in"), "Unit of lengths that are plain numbers."},
           job.unit);
    f.object(FieldName{"top", "", "Width and length, or a grid that gives them."},
             [&](Fields& t) { topFields(t, job.top); });
    f.object("quilting", [&](Fields& q) {
        q.word(FieldName{"method", core::label("How it will be quilted"), "",
                         "undecided: seams count as sewn, the careful choice"},
               job.quilting.method, kMethodWords);
        q.length(
            FieldName{"gap_limit",
                      core::label("Most the batting allows between quilting lines (see its label)"),
                      "Greatest distance between lines that the batting's label allows.",
                      "no safe default: it is on the batting's label"},
            job.quilting.gapLimit, {kHalfInch, 24_in});
    });
    f.object("basting", [&](Fields& b) { bastingFields(b, job.basting); });
    f.object("batting", [&](Fields& b) { battingFields(b, job.batting); });
    f.object("backing", [&](Fields& b) { backingFields(b, job.backing); });
    f.object("machine", [&](Fields& m) {
        m.length(FieldName{"throat", core::label("Throat")}, job.machine.throat, {2_in, 60_in});
    });
    handedFields(f, job.handed);
}

} // namespace bastewright::quilt_fields
