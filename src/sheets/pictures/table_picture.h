#pragma once

#include "plan/plan.h"

#include <QImage>
#include <QRectF>
#include <QSizeF>
#include <QString>

#include <string>
#include <vector>

class QPainter;

namespace bastewright::sheets {

/// Where somebody stands, marked with a short text (a letter or the number of a place).
struct PlaceMark {
    StandingPlace place;
    QString text;
    bool solid = false;
};

/// What a picture of the table shows besides table, quilt, basted and fresh areas.
struct TablePicture {
    QImage photo{};      ///< of the top, as it lies quietly on paper; null: none
    bool layers = false; ///< batting and backing as outlines
    bool holds = false;  ///< clamps and tape, numbered
    bool rolls = false;
    bool smoothing = false; ///< arrows
    bool counts = false;    ///< points below each zone's id
    bool near = false; ///< only what lies on the table and a little beyond it; the rest is left off
    std::vector<std::string> mine{}; ///< zones drawn as this person's; empty: no distinction
    std::vector<PlaceMark> places{};
};

/// The table and the quilt as they lie in a pass, to scale, the quilt's head up.
void drawTable(QPainter& p, QRectF box, const QuiltPlan& quilt, const Pass& pass,
               const TablePicture& show);

/// Height the picture takes in a box so wide, at most `limit`.
double pictureHeight(const QuiltPlan& quilt, const Pass& pass, const TablePicture& show,
                     double width, double limit);

/// Size of the picture at a scale, or at the smaller one at which it is no larger than `most`.
QSizeF pictureSize(const QuiltPlan& quilt, const Pass& pass, const TablePicture& show,
                   double pointsToTheInch, QSizeF most);

/// The tables of the surface, in the quilt's frame, as they lie in a pass.
std::vector<Rect> tablesUnder(const SurfacePlan& surface, const Rect& table);

} // namespace bastewright::sheets
