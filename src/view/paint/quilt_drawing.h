#pragma once

#include "plan/plan.h"
#include "session/table_scene.h"

#include <QColor>
#include <QFont>
#include <QRectF>
#include <QString>
#include <QTransform>

#include <vector>

class QPainter;

/// Draws a quilt on its table to scale, for screens of any size. Stateless: the same plan and look
/// give the same picture.
namespace drawing {

struct Look {
    QColor paper, table, tableLine, backing, batting, cloth, seam, ink, fresh, hatch, accent, wall;
    qreal text = 16;     ///< pixels
    bool figures = true; ///< overhang and names of sides
    bool points = true;
    QString family;
};

struct Scene {
    const bastewright::QuiltPlan* plan = nullptr;
    const std::vector<bastewright::Segment>* seams = nullptr;
    bastewright::Unit unit = bastewright::Unit::inch;
    bool pins = true;
    int pass = 1;
    int passBefore = 1; ///< the table moves from where it lay in this pass …
    qreal moved = 1;    ///< … this share of the way
    QString zone;       ///< looked at; empty for none
    const bastewright::TableScene* moment = nullptr; ///< null: the pass as planned
};

QRectF inches(const bastewright::Rect& r);

/// What has to fit into the picture whatever the pass: all layers and every place of the table.
QRectF extent(const bastewright::QuiltPlan& plan);

/// From inches of the quilt's frame to pixels. `turned`: head to the left.
QTransform fitted(const QRectF& extent, QSizeF size, qreal margin, bool turned);

/// The table as it lies, part of the way from one pass to the next; empty without passes.
QRectF tableOf(const Scene& scene);

/// True where the picture fills the space better with the quilt's head to the left.
bool betterTurned(const QRectF& extent, QSizeF size);

void paint(QPainter& painter, const Scene& scene, const Look& look, const QTransform& toPixels);

} // namespace drawing
