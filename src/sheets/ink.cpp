#include "sheets/ink.h"

#include "sheets/text_block.h"

#include <QLineF>
#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>

#include <algorithm>

namespace bastewright::sheets {
namespace {
/// The largest size up to `size` at which the text fits.
int fittingSize(const QString& text, int size, double maxWidth, bool bold) {
    size = std::max(size, kSmallestLabel);
    while (size > kSmallestLabel && textWidth(text, {size, bold}) > maxWidth)
        --size;
    return size;
}
} // namespace

void rule(QPainter& p, QPointF from, double width, double weight) {
    p.setPen(QPen{weight > ink::kThin ? ink::kDark : ink::kRule, weight});
    p.drawLine(from, from + QPointF{width, 0});
}

void tickBox(QPainter& p, QRectF box) {
    p.setPen(QPen{ink::kDark, ink::kLine});
    p.setBrush(ink::kPaper);
    p.drawRoundedRect(box, 1.5, 1.5);
}

void badge(QPainter& p, QPointF centre, double diameter, const QString& letter, bool solid) {
    p.setPen(QPen{ink::kDark, ink::kLine});
    p.setBrush(solid ? ink::kDark : ink::kPaper);
    p.drawEllipse(centre, diameter / 2, diameter / 2);
    label(p, centre, letter, int(diameter * 0.62), diameter * 0.8, true,
          solid ? ink::kPaper : ink::kDark);
}

void hatch(QPainter& p, QRectF area, double pitch) {
    p.save();
    p.setPen(QPen{ink::kHatch, ink::kThin});
    // Clipped by arithmetic rather than by the painter, so that it stays a drawing of plain lines.
    const double span = area.width() + area.height();
    for (double d = pitch; d < span; d += pitch) {
        const double x0 = std::max(0.0, d - area.height()), x1 = std::min(d, area.width());
        p.drawLine(area.topLeft() + QPointF{x0, d - x0}, area.topLeft() + QPointF{x1, d - x1});
    }
    p.restore();
}

void arrow(QPainter& p, QPointF from, QPointF to, double weight) {
    const QLineF line{from, to};
    if (line.length() < 1e-6)
        return;
    const QPointF along = (to - from) / line.length();
    const QPointF across{-along.y(), along.x()};
    const double head = std::min(line.length(), 4.5 * weight);
    p.setPen(QPen{ink::kDark, weight, Qt::SolidLine, Qt::FlatCap});
    p.drawLine(from, to - along * head * 0.8);
    p.setPen(Qt::NoPen);
    p.setBrush(ink::kDark);
    p.drawPolygon(QPolygonF{
        {to, to - along * head + across * head * 0.48, to - along * head - across * head * 0.48}});
}

int label(QPainter& p, QPointF centre, const QString& text, int size, double maxWidth, bool bold,
          const QColor& colour) {
    const int fit = fittingSize(text, size, maxWidth, bold);
    TextStyle style{fit, bold};
    style.maxLines = 1;
    style.ink = colour;
    const TextBlock block{text, std::max(maxWidth, textWidth(text.left(1), style) * 1.6) + 0.5,
                          style};
    block.draw(p, centre - QPointF{block.naturalWidth() / 2, block.height() / 2});
    return fit;
}

int labelOnWhite(QPainter& p, QPointF centre, const QString& text, int size, double maxWidth,
                 bool bold) {
    const int fit = fittingSize(text, size, maxWidth, bold);
    const double w = std::min(maxWidth, textWidth(text, {fit, bold})) + 4, h = fit * 1.15;
    p.setPen(Qt::NoPen);
    p.setBrush(ink::kPaper);
    p.drawRoundedRect(QRectF{centre.x() - w / 2, centre.y() - h / 2, w, h}, 2, 2);
    return label(p, centre, text, fit, maxWidth, bold);
}

} // namespace bastewright::sheets
