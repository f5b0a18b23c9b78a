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
    std::string name{}; ///< "A", "B"; blocks of a pieced column "C1", "C2"
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

/// A way to piece the backing that no other beats in length bought, waste and seams at once.
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
    Sentence runnerUp, nearestMiss;                 ///< a sentence each; may be empty
    std::vector<BackingAlternative> alternatives{}; ///< least bought first
    auto operator<=>(const BackingPlan&) const = default;
};

struct BattingPiecePlaced {
    std::string name;
    Rect area; ///< on the joined batting
    bool turned = false;
    Rect onPiece{}; ///< what it is cut from: on the leftover as listed, not turned, overlaps
                    ///< included
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

struct BattingPlan {
    std::string pack; ///< empty where joined from leftovers
    std::vector<BattingPiecePlaced> pieces;
    std::vector<Segment> joins;         ///< in the order they are made
    Length strip;                       ///< joining strip to bring
    Sentences leftOver;                 ///< names and sizes of what is not needed
    std::vector<BattingSplit> splits{}; ///< made first
    auto operator<=>(const BattingPlan&) const = default;
};

} // namespace bastewright
