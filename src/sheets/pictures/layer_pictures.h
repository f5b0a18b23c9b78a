#pragma once

#include "plan/plan.h"
#include "sheets/ink.h"

#include <QBrush>
#include <QRectF>

#include <string>

class QPainter;

/// Pictures of how backing and batting are made, for paper and screen alike: one unit of the
/// painter is a point of type.
namespace bastewright::sheets {

struct LayerLook {
    QColor ink = ink::kDark, paper = ink::kPaper, rest = ink::kTable, hatch = ink::kHatch,
           table = ink::kQuiet;
    /// What pieces are filled with, on screens; cloth then has selvages and a tape measure below.
    /// Without one they are of paper.
    QBrush fabric{};
    QBrush piece() const { return fabric.style() == Qt::NoBrush ? QBrush{paper} : fabric; }
    bool asFabric() const { return fabric.style() != Qt::NoBrush; }
};

/// Height that a cloth takes beyond its own, for selvages, tape and figures.
double aroundCloth(const LayerLook& look);

/// One length of cloth: what is on hand of a fabric, and on from its end what is bought.
struct ClothLength {
    std::string fabric;
    Length width;  ///< usable
    Length onHand; ///< where the bought length begins; zero where all is bought
    Length whole;  ///< on hand and bought, or as far as the cuts reach where that is more
};

/// What the pieces of a batting are called where they are drawn and listed, in their order: those
/// of one name "2a", "2b".
std::vector<QString> pieceNames(const BattingPlan& plan);

/// The lengths of cloth that a plan cuts, in the order in which it names them.
std::vector<ClothLength> clothsOf(const Job& job, const BackingPlan& plan);

/// The cuts of one cloth, numbered in the order of cutting, the cloth running left to right; below
/// it where each row of cuts begins. What is left over is hatched.
void drawCloth(QPainter& p, QRectF box, const BackingPlan& plan, const ClothLength& cloth,
               Unit unit, const LayerLook& look = {});

/// The finished backing with its panels and seams; on it, dashed, the outline of the quilt, and
/// dotted the tables of the first pass, with a mark at the middle of every side.
void drawBacking(QPainter& p, QRectF box, const BackingPlan& plan, const QuiltPlan& quilt,
                 Unit unit, const LayerLook& look = {});

/// The joined batting: pieces named, joins numbered in the order they are made, quilt dashed.
void drawBatting(QPainter& p, QRectF box, const BattingPlan& plan, const QuiltPlan& quilt,
                 Unit unit, const LayerLook& look = {});

/// What has to fit into a picture of cloth: as drawn, with its scale of lengths.
Rect extentOf(const ClothLength& cloth);

} // namespace bastewright::sheets
