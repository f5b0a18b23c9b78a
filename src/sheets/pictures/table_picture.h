#pragma once

#include "plan/plan.h"

#include <QRectF>
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
    bool layers = false; ///< batting and backing as outlines
    bool holds = false;  ///< clamps and tape, numbered
    bool rolls = false;
    bool smoothing = false; ///< arrows
    bool counts = false;    ///< points below each zone's id
    bool sideNames = true;
    std::vector<std::string> mine{}; ///< zones drawn as this person's; empty: no distinction
    std::vector<PlaceMark> places{};
};

/// The table and the quilt as they lie in a pass, to scale, the quilt's head up.
void drawTable(QPainter& p, QRectF box, const QuiltPlan& quilt, const Pass& pass,
               const TablePicture& show);

/// What the picture has to hold: table and quilt with all its layers shown.
Rect worldOf(const QuiltPlan& quilt, const Pass& pass, bool layers);

/// The tables of the surface, in the quilt's frame, as they lie in a pass.
std::vector<Rect> tablesUnder(const SurfacePlan& surface, const Rect& table);

/// White that every table picture keeps inside its box for the marks outside the table's edge.
inline constexpr double kPictureRim = 26;

} // namespace bastewright::sheets
