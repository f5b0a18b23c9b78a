#pragma once

#include "plan/plan.h"

#include <QImage>
#include <QRectF>
#include <QString>

class QPainter;

namespace bastewright::sheets {

/// The whole top with its zones and the passes they belong to, each pass numbered in its corner;
/// `photo`, as it lies quietly on paper, under them.
void drawQuilt(QPainter& p, QRectF box, const QuiltPlan& quilt, const QImage& photo);

/// How the quilt moves on the table into a pass: where it lay as a solid outline, where it will lie
/// dashed, an arrow between with its distance. The table stays where it is.
void drawShift(QPainter& p, QRectF box, const QuiltPlan& quilt, const Pass& before,
               const Pass& after, const QString& distance);

} // namespace bastewright::sheets
