#pragma once

#include "plan/plan.h"
#include "session/table_scene.h"
#include "ways/way.h"

#include <QColor>
#include <QImage>
#include <QRectF>
#include <QString>
#include <QTransform>

#include <vector>

class QPainter;

/// Draws a quilt on its table to scale, for screens of any size. Stateless: the same plan and look
/// give the same picture.
namespace drawing {

struct Look {
    QColor ground, paper, ink, wood, woodDark, backing, batting, accent, now, nowInk;
    qreal text = 16;     ///< pixels
    bool figures = true; ///< sizes, names of ends, who stands where
    bool points = true;
    QString family;
};

struct Scene {
    const bastewright::QuiltPlan* plan = nullptr;
    const QImage* top = nullptr; ///< the top as cloth, of its whole area
    const std::vector<bastewright::Helper>* helpers = nullptr;
    bastewright::Unit unit = bastewright::Unit::inch;
    bastewright::WayPoint::Shape shape = bastewright::WayPoint::Shape::pin;
    qreal pointLength = 0; ///< inches
    int pass = 1;
    int passBefore = 1; ///< the table moves from where it lay in this pass …
    qreal moved = 1;    ///< … this share of the way
    QString zone;       ///< looked at; empty for none
    const bastewright::TableScene* moment = nullptr; ///< null: the pass as planned
};

QRectF inches(const bastewright::Rect& r);

/// What has to fit into the picture whatever the pass: all layers and every place of the table.
QRectF extent(const bastewright::QuiltPlan& plan);

/// From inches of the quilt's frame to pixels, head up, in the middle of the size.
QTransform fitted(const QRectF& extent, QSizeF size, qreal margin);

/// The table as it lies, part of the way from one pass to the next; empty without passes.
QRectF tableOf(const Scene& scene);

/// A side of a rectangle, as one without width or height.
QRectF edgeOf(const QRectF& r, bastewright::Side side);

/// Away from the table at a side.
QPointF outward(bastewright::Side side);

/// Words on a twill tag, wherever they lie.
void paintTag(QPainter& painter, QPointF middle, const QString& text, qreal size,
              const QString& family);

void paint(QPainter& painter, const Scene& scene, const Look& look, const QTransform& toPixels);

} // namespace drawing
