#pragma once

#include "job/top.h"
#include "measures/clock.h"
#include "measures/length_text.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

/// What a person tells the tool: one quilt (`Job`), and the room, people and boxes of supplies it
/// is made with (`Setting`). Every default is the trade's usual value
/// (docs/computation/defaults.md).
namespace bastewright {

/// Fields a file held that this version does not know: JSON pointer -> JSON text. Kept on round
/// trip.
using UnknownFields = std::map<std::string, std::string>;

struct Quilting {
    enum class Method { inTheDitch, acrossSeams, singleTacks, freeMotion, undecided };
    Method method = Method::undecided;
    std::optional<Length>
        gapLimit; ///< greatest distance between quilting lines the batting's label allows
    auto operator<=>(const Quilting&) const = default;
};

/// What a person measures with by hand: 'my fist', four fingers, a palm; measured once.
struct OwnMeasure {
    std::string name;
    Length length;
    auto operator<=>(const OwnMeasure&) const = default;
};

struct Basting {
    enum class With { pins, dots, thread, spray };
    /// Where the first pass lies: with the middle of the quilt on the middle of the table; with the
    /// middle of the quilt at least one row inside the field ("fewest-shifts" in files); at one end
    /// of the quilt, whose layers are rolled and unrolled as the work goes; or whichever is
    /// soonest.
    enum class Start { centred, besideMiddle, best, oneEnd };
    /// Which side of the table the quilt's length lies along.
    enum class Along { either, tableLength, tableWidth };
    /// Parallel rows placed by two marked ribbons; one figure in every block; or as few as can be
    /// found, wherever they are needed.
    enum class Layout { rows, blocks, fewest };
    With with = With::pins, whereShort = With::pins; ///< the latter: where the box does not last
    Length spacing = Length::inches(4); ///< of spray the depth of a band (`spacingsOf`)
    Length pinLength = Length::inches(1);
    Length clear = Length::inch64ths(32); ///< least distance of a pin from a seam that will be sewn
    Length edge = Length::inches(1);      ///< least distance of a pin from the edge of the top
    Start start = Start::best;
    Along along = Along::either;
    /// Nothing: by the blocks where that takes at most a tenth more than rows, else in rows.
    std::optional<Layout> layout;
    std::optional<OwnMeasure> measure; ///< steps and gaps are said in quarters of it
    auto operator<=>(const Basting&) const = default;
};

/// A leftover piece of batting; `count` equal ones. Width and length are the shortest readings.
struct BattingPiece {
    std::string name;
    Length width, length;
    int count = 1;
    std::vector<Length> diagonals{}; ///< none, or both, where it may be out of square
    auto operator<=>(const BattingPiece&) const = default;
};

/// What is left of a piece once it is cut square. Where its diagonals d and e differ it is taken as
/// a parallelogram with sides w and l: its far side lies (d² − e²) / 4w aside, and that much is
/// lost of the width; or (d² − e²) / 4l of the length, where that leaves more.
Rect squared(const BattingPiece& piece);

struct Batting {
    Length overage = Length::inches(2); ///< per side
    Length thickness = Length::millimetres(3);
    double gsm = 130; ///< grams per square metre
    bool meltable = false;
    /// A pack by the name of its size, or by its size ("90 x 108"); without one, without `roll` and
    /// with `pieces` empty whatever takes the fewest joins.
    std::optional<std::string> pack;
    std::optional<Length> roll; ///< off a roll of this usable width
    /// Usable widths of the rolls it can be bought off.
    std::vector<Length> rolls{Length::inches(90), Length::inches(96), Length::inches(108),
                              Length::inches(120)};
    bool pieceStrip = false;  ///< off the roll, a narrow strip may be pieced where that buys less
    double shrinkPercent = 0; ///< of new batting, if it is washed before it is laid
    std::optional<Length> width, length; ///< as measured, once it lies there
    std::vector<BattingPiece> pieces;
    bool mayTurn = false;                   ///< pieces may be turned a quarter
    Length trim = Length::inch64ths(32);    ///< cut off every raw edge before joining
    Length overlap = Length::inch64ths(96); ///< eaten by each join
    auto operator<=>(const Batting&) const = default;
};

struct Fabric {
    std::string name;
    Length usableWidth = Length::inches(40); ///< without selvages
    Length onHand{};                         ///< length on hand
    bool buyable = true;
    double price = 0; ///< per yard (inch jobs) or metre, in the person's money
    auto operator<=>(const Fabric&) const = default;
};

/// One of the ways to piece a backing, by what tells it from the others that were offered.
struct BackingWay {
    Length bought;
    int seams = 0;
    auto operator<=>(const BackingWay&) const = default;
};

struct Backing {
    Length overage = Length::inches(4);  ///< per side
    Length seam = Length::inch64ths(32); ///< allowance
    double shrinkPercent = 0;
    Length squaring = Length::inches(4);   ///< lost of every length that is cut off, to square it
    Length seamWorth = Length::inches(9);  ///< cloth one would buy more to be spared a seam
    Length leastPiece = Length::inches(6); ///< narrowest piece that is sewn in, once sewn
    Length repeat{};                       ///< pattern repeat along the cloth
    bool oneWay = false;                   ///< a print with one way up
    bool column = true;                    ///< a pieced column may be set in
    bool centreSeam = false;               ///< a seam on the quilt's centre line is allowed
    std::optional<BackingWay> way;         ///< chosen by the person; else what people would sew
    std::optional<Length> width, length;   ///< as measured, once it is made
    bool washed = true;                    ///< when it was measured; if not, it shrinks yet
    std::vector<Fabric> fabrics;
    auto operator<=>(const Backing&) const = default;
};

struct Machine {
    std::optional<Length> throat;
    auto operator<=>(const Machine&) const = default;
};

/// A zone that was put into somebody's hands: they work it from beginning to end, where they can.
struct HandedZone {
    std::string zone, person;
    auto operator<=>(const HandedZone&) const = default;
};

/// One quilt.
struct Job {
    std::string name;
    Unit unit = Unit::inch;
    Top top;
    Quilting quilting;
    Basting basting;
    Batting batting;
    Backing backing;
    Machine machine;
    std::vector<HandedZone> handed; ///< each zone at most once
    UnknownFields unknown;          ///< pointers from the job's own root
    auto operator<=>(const Job&) const = default;
};

struct Table {
    Length length = Length::inches(72), width = Length::inches(30);
    int count = 1;
    /// Tables of different groups are not pushed together (an aisle, another room).
    std::string group{};
    auto operator<=>(const Table&) const = default;
};

/// The rectangle that tables are to be pushed together to; length >= width.
struct PushedTogether {
    Length length, width;
    auto operator<=>(const PushedTogether&) const = default;
};

/// `walls` names the sides nobody can stand at, as the pushed-together tables are drawn: their
/// longer side left to right, `head` the far long side, `foot` the near one.
inline constexpr Length kHangingRoom = Length::inches(12);

struct Room {
    std::vector<Table> tables; ///< empty: the floor
    std::vector<Side> walls;
    Length inset = Length::inches(2); ///< rim of the table no point is placed over
    int irons = 0;
    int surfaces = 0; ///< how many separate surfaces to make of the tables; 0: as many as serve
    std::optional<PushedTogether> together; ///< nothing: whatever is quickest
    /// From the tables to the walls: from `kHangingRoom` on cloth hangs down, though nobody stands.
    Length wallGap{};
    std::string name{};      ///< under which it is kept for other quilts; empty: it is not
    bool ventilated = false; ///< outdoors, or with windows and doors open: basting may be sprayed
    auto operator<=>(const Room&) const = default;
};

/// A rest somebody has told of: nothing is planned for them between the two times.
struct Break {
    ClockTime from{}, until{};
    auto operator<=>(const Break&) const = default;
};

struct Helper {
    std::string name;
    Length reach = Length::inches(27);
    /// So much farther by leaning, where work takes half as long again; who sits does not lean.
    Length lean = Length::inches(4);
    double pace = 1.0; ///< 2 is twice as fast as the trade's figures
    std::optional<ClockTime> from, until;
    std::vector<Break> breaks; ///< in any order; times of the day the session begins on
    bool irons = true, lifts = true, closes = true;
    bool pins = true;  ///< false: leads, walks round and checks, but has no zones
    bool bends = true; ///< looks underneath
    bool seated = false;
    bool troubleBreathing = false; ///< is not where basting is sprayed
    /// Keeps to this side while working zones, as the tables are drawn; nothing: to none.
    std::optional<Side> side;
    auto operator<=>(const Helper&) const = default;
};

struct ClipStock {
    Length holds; ///< roll diameter it holds
    int count = 0;
    auto operator<=>(const ClipStock&) const = default;
};

struct Stash {
    int pins = 0, clamps = 0;
    std::vector<ClipStock> clips;
    Length tape{};
    std::string name{}; ///< of the box, under which it is kept for other quilts; empty: it is not
    auto operator<=>(const Stash&) const = default;
};

/// The room, the people, the hour and the boxes.
struct Setting {
    Room room;
    std::vector<Helper> helpers;
    std::vector<Break> breaks; ///< for everybody, in any order; times as those of a helper
    bool proposeBreaks = true; ///< a break is planned where the work would go on for too long
    ClockTime start{std::chrono::hours{13}};
    Stash stash;
    auto operator<=>(const Setting&) const = default;
};

/// What a job or session file holds: one or several quilts made in one setting.
struct Session {
    std::vector<Job> jobs; ///< at least one
    Setting setting;
    bool severalQuilts = false; ///< written as a session file
    UnknownFields unknown;      ///< of the session file's own level
    auto operator<=>(const Session&) const = default;
};

/// True where the needle will follow the seams, so that pins must keep clear of them.
bool seamsAreSewn(const Job& job);

} // namespace bastewright
