#include "view/edit/guide_marks.h"

#include "view/paint/cloth.h"
#include "ways/way.h"

#include <QPainter>
#include <QPainterPath>

#include <cmath>

using namespace bastewright;

namespace {

constexpr qreal kPatchInches = 10; ///< of a top whose blocks are not known
constexpr qreal kMostPins = 4000;  ///< more would be a grey sheet
constexpr qreal kLoopInches = 5;

/// Lines of the quilting that was chosen, in inches of the top.
QPainterPath linesOf(Quilting::Method method, const Top& top, QSizeF size) {
    QPainterPath path;
    const auto across = [&](qreal y) {
        path.moveTo(0, y);
        path.lineTo(size.width(), y);
    };
    const auto down = [&](qreal x) {
        path.moveTo(x, 0);
        path.lineTo(x, size.height());
    };
    switch (method) {
    case Quilting::Method::inTheDitch:
        for (const Rect& block : cloth::blocksOf(top))
            path.addRect(block.x0.in(), block.y0.in(), block.width().in(), block.length().in());
        if (path.isEmpty()) {
            for (qreal y = kPatchInches; y < size.height(); y += kPatchInches)
                across(y);
            for (qreal x = kPatchInches; x < size.width(); x += kPatchInches)
                down(x);
        }
        break;
    case Quilting::Method::acrossSeams:
        for (qreal y = cloth::kSewnInches; y < size.height(); y += cloth::kSewnInches)
            across(y);
        break;
    case Quilting::Method::freeMotion:
        for (qreal y = kLoopInches / 2; y < size.height(); y += kLoopInches) {
            path.moveTo(0, y);
            for (qreal x = 0; x < size.width(); x += kLoopInches)
                path.cubicTo(x + kLoopInches * 1.3, y - kLoopInches * 0.6, x - kLoopInches * 0.3,
                             y + kLoopInches * 0.6, x + kLoopInches, y);
        }
        break;
    case Quilting::Method::singleTacks:
        for (qreal y = kLoopInches / 2; y < size.height(); y += kLoopInches)
            for (qreal x = kLoopInches / 2; x < size.width(); x += kLoopInches) {
                path.moveTo(x - 0.7, y - 0.5);
                path.lineTo(x + 0.7, y + 0.5);
                path.moveTo(x + 0.7, y - 0.5);
                path.lineTo(x - 0.7, y + 0.5);
            }
        break;
    case Quilting::Method::undecided:
        break;
    }
    return path;
}

} // namespace

GuideMarks::GuideMarks(QQuickItem* parent)
    : QQuickPaintedItem{parent} {
    connect(this, &GuideMarks::changed, this, [this] { update(); });
}

void GuideMarks::setEditor(JobEditor* editor) {
    if (editor == editor_)
        return;
    if (editor_)
        editor_->disconnect(this);
    editor_ = editor;
    if (editor_)
        for (const auto signal : {&JobEditor::changed, &JobEditor::previewChanged})
            connect(editor_, signal, this, [this] { update(); });
    emit changed();
}

void GuideMarks::paint(QPainter* painter) {
    if (!editor_)
        return;
    const Job& job = editor_->jobShown();
    const Rect top = topRect(job.top);
    if (top.empty())
        return;
    const qreal inch = width() / top.width().in();
    const QTransform map = QTransform::fromScale(inch, inch);
    painter->setRenderHint(QPainter::Antialiasing);
    if (quilting_) {
        const QPainterPath lines =
            map.map(linesOf(job.quilting.method, job.top, {top.width().in(), top.length().in()}));
        painter->setBrush(Qt::NoBrush);
        painter->setPen(QPen{cloth::kOutline, std::max(1.0, inch * 0.45)});
        painter->drawPath(lines);
        painter->setPen(QPen{cloth::kThread, std::max(0.6, inch * 0.25)});
        painter->drawPath(lines);
    }
    // Rows with every second one half a step over, or of stitches; see docs/computation/points.md.
    const WayPoint& point = wayOf(job).point;
    const bool straight = point.alongRow || point.isPatch();
    const qreal spacing = job.basting.spacing.in(), radius = spacing / std::sqrt(2.0);
    const qreal edge = point.isPatch() ? 0 : job.basting.edge.in();
    const qreal gap = straight ? spacing : 1.5 * radius;
    const qreal step = point.alongRow    ? point.alongRow(job.basting).in()
                       : point.isPatch() ? spacing
                                         : std::sqrt(3.0) * radius;
    if (!pins_ || radius <= 0 || top.width().in() * top.length().in() / (gap * step) > kMostPins)
        return;
    const qreal length = std::max(job.basting.pinLength.in() * inch, 5.0);
    bool over = false;
    for (qreal y = edge + gap / 2; y < top.length().in() - edge; y += gap, over = !over)
        for (qreal x = edge + (over && !straight ? step : step / 2); x < top.width().in() - edge;
             x += step) {
            const QPointF at = map.map(QPointF{x, y});
            switch (point.shape) {
            case WayPoint::Shape::pin:
                cloth::paintPin(*painter, at, length, 0, false);
                break;
            case WayPoint::Shape::dot:
                painter->setPen(QPen{cloth::kOutline, 1});
                painter->setBrush(cloth::kThread);
                painter->drawEllipse(at, length / 2, length / 2);
                break;
            case WayPoint::Shape::stitch:
                cloth::paintStitch(*painter, at, point.length(job.basting).in() * inch, 0, 0.8);
                break;
            case WayPoint::Shape::patch:
                cloth::paintPatch(*painter,
                                  QRectF{0, 0, spacing * inch, spacing * inch}.translated(
                                      at - QPointF{spacing, spacing} * inch / 2),
                                  1);
                break;
            }
        }
}
