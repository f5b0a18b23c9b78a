#pragma once

#include "plan/plan.h"

#include <QRectF>

#include <string>

class QPainter;

/// Pictures of what is cut and joined: patterns of points, cloth, backing, batting, rolls.
namespace bastewright::sheets {

/// One tile with its seams and numbered points. `pin` is the length pins are drawn with; zero:
/// dots.
void drawPattern(QPainter& p, QRectF box, const PointPattern& pattern, Length pin,
                 bool numbered = true);

/// The cuts of one fabric, numbered in the order of cutting, cloth running left to right.
void drawCloth(QPainter& p, QRectF box, const BackingPlan& plan, const std::string& fabric,
               Length usableWidth, Unit unit);

/// How much of the fabric the cuts reach along its length.
Length clothUsed(const BackingPlan& plan, const std::string& fabric);

/// The finished backing with its panels.
void drawBacking(QPainter& p, QRectF box, const BackingPlan& plan, Size size, Unit unit);

/// The joined batting: pieces named, joins numbered in the order they are made.
void drawBatting(QPainter& p, QRectF box, const BattingPlan& plan, Size size, Unit unit);

/// The top with one of its sides rolled up for the machine, clips marked.
void drawMachineRoll(QPainter& p, QRectF box, const Rect& top, const Roll& roll);

} // namespace bastewright::sheets
