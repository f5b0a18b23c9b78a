#pragma once

#include "measures/geometry.h"
#include "measures/sentence.h"

#include <string>
#include <vector>

/// The three layers: their sizes, and how backing and batting are made. Panels, pieces and joins
/// are in the frame of their own layer, origin at its head-left corner.
namespace bastewright {

struct Size {
    Length width, length;
    auto operator<=>(const Size&) const = default;
};

struct LayerSizes {
    Size top, batting, backing;
    auto operator<=>(const LayerSizes&) const = default;
};

struct BackingPurchase {
    std::string fabric;
    Length
        length; ///< to buy, beyond what is on hand; rounded up to 1/8 yd for inch jobs, 5 cm else
    auto operator<=>(const BackingPurchase&) const = default;
};

struct BackingPanel {
    std::string fabric;
    Rect area;          ///< finished, on the backing
    std::string name{}; ///< "1", "2"; halves of a length and lengths of a pieced strip "2a", "2b"
    auto operator<=>(const BackingPanel&) const = default;
};

/// One cut of cloth in the order of cutting.
struct ClothCut {
    std::string fabric;
    Rect onCloth; ///< x across the usable width, y along the length, with seam allowances
    std::string piece;
    bool turned = false; ///< lies with the quilt's other direction along the cloth
    bool onHand = false; ///< from the length on hand; y goes on from its end into the bought length
    auto operator<=>(const ClothCut&) const = default;
};

/// A way to piece the backing that no other beats in what is bought, waste and seams at once.
struct BackingAlternative {
    bool along = true;
    Length bought;
    double cost = 0;  ///< in the person's money; zero where a buyable cloth has no price
    double waste = 0; ///< square inches of cloth cut into and not in the backing
    int seams = 0;
    Sentence text;   ///< one sentence
    Sentence wanted; ///< what it needs that the job does not list; may be empty
    bool chosen = false;
    auto operator<=>(const BackingAlternative&) const = default;
};

struct BackingPlan {
    bool along = true; ///< lengths of cloth run along the quilt's length
    std::vector<BackingPurchase> buy;
    std::vector<BackingPanel> panels;
    std::vector<ClothCut> cuts;
    /// A sentence each, with what it saves; may be empty.
    Sentence leastBought, runnerUp, nearestMiss;
    std::vector<BackingAlternative> alternatives{}; ///< what people would sew first
    Sentences toBring{};                            ///< one for each fabric, for the list
    auto operator<=>(const BackingPlan&) const = default;
};

/// New batting: a pack, or a length off a roll.
struct BattingPurchase {
    std::string pack; ///< name of its size, or the size itself; empty for a length off a roll
    Length width;     ///< of the pack, or usable width of the roll
    Length length;    ///< of the pack, or to buy; rounded up to 1/8 yd for inch jobs, 5 cm else
    auto operator<=>(const BattingPurchase&) const = default;
};

struct BattingPiecePlaced {
    std::string name; ///< of the leftover; "1", "2", "3a" for what is cut from new batting
    Rect area;        ///< on the joined batting
    bool turned = false;
    Rect onPiece{};  ///< what it is cut from, not turned, overlaps included: on the leftover once
                     ///< cut square, on the pack, or on the roll (x across it), each as washed
    int bought = -1; ///< from this one of `BattingPlan::buy`; -1: from a leftover
    auto operator<=>(const BattingPiecePlaced&) const = default;
};

/// A leftover cut in two before anything is joined.
struct BattingSplit {
    std::string name;
    bool acrossWidth =
        true; ///< the cut runs along its length, at `at` of its width; else the other way
    Length at;
    auto operator<=>(const BattingSplit&) const = default;
};

/// A way to buy the batting that was compared.
struct BattingAlternative {
    std::string pack; ///< of its first pack; empty off a roll
    Length roll;      ///< usable width; zero for packs
    Length bought;    ///< off the roll
    int joins = 0;
    Length strip;            ///< length of all joins
    bool pieceStrip = false; ///< with a strip turned a quarter
    Sentence text;           ///< one sentence
    bool chosen = false;
    auto operator<=>(const BattingAlternative&) const = default;
};

struct BattingPlan {
    std::string pack; ///< of its first pack; empty off a roll and where leftovers are joined
    std::vector<BattingPurchase> buy{}; ///< each pack by itself; nothing where leftovers do
    std::vector<BattingPiecePlaced> pieces;
    std::vector<Segment> joins;         ///< in the order they are made
    Length strip;                       ///< joining strip to bring
    Sentences leftOver;                 ///< names and sizes of what is not needed
    std::vector<BattingSplit> splits{}; ///< made first
    Sentence joinCost{};                ///< what the joins cost in strip and time; may be empty
    std::vector<BattingAlternative> alternatives{}; ///< the best first; none for leftovers
    Sentences toBring{};                            ///< one for each thing to buy, for the list
    auto operator<=>(const BattingPlan&) const = default;
};

} // namespace bastewright
