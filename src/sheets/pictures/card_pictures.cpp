#include "sheets/pictures/card_pictures.h"

#include "sheets/ink.h"
#include "sheets/text_block.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

constexpr double kArm = fromMillimetres(9), kHeavy = 5; // of the heavy corner

void cutLines(QPainter& p, QRectF box) {
    p.setPen(QPen{ink::kQuiet, ink::kThin, Qt::DashLine, Qt::FlatCap});
    p.setBrush(Qt::NoBrush);
    p.drawRect(box);
}

/// Two heavy strokes that meet in a corner of the box, inside the cut line.
void heavyCorner(QPainter& p, QRectF box, Side down, Side across, double arm) {
    const QRectF inner = box.adjusted(3, 3, -3, -3);
    const double x = across == Side::left ? inner.left() : inner.right() - kHeavy;
    const double y = down == Side::head ? inner.top() : inner.bottom() - kHeavy;
    p.setPen(Qt::NoPen);
    p.setBrush(ink::kDark);
    p.drawRect(QRectF{across == Side::left ? x : x + kHeavy - arm, y, arm, kHeavy});
    p.drawRect(QRectF{x, down == Side::head ? y : y + kHeavy - arm, kHeavy, arm});
}

} // namespace

void drawCard(QPainter& p, QRectF box, const ZoneCard& card) {
    cutLines(p, box);
    heavyCorner(p, box, Side::head, Side::left, kArm);
    label(p, {box.center().x(), box.top() + 12}, Text::tr("head"), type::kHead, 60, false,
          ink::kQuiet);
    // Read from two metres: capitals of 15 mm are 26 arc minutes high (ISO 9241-303 prefers 20 to
    // 22).
    label(p, {box.center().x(), box.top() + box.height() * 0.43}, card.zone, 60, box.width() - 24,
          true);
    constexpr double kRing = 24;
    const double low = box.bottom() - 24;
    double x = box.left() + 8 + kRing / 2;
    const int shown = int(std::min<qsizetype>(card.letters.size(), 2));
    for (int i = 0; i < shown; ++i, x += kRing + 3)
        badge(p, {x, low}, kRing, card.letters[i], true);
    const double from = x - kRing / 2 + 4, width = box.right() - 6 - from;
    const TextBlock count{card.count, width, {.size = type::kLead, .bold = true, .maxLines = 1}};
    count.draw(p, {from, low - 17});
    const TextBlock pass{card.pass, width, {.size = type::kSmall, .maxLines = 1}};
    pass.draw(p, {from, low + 3});
}

void drawCard(QPainter& p, QRectF box, const CornerMark& mark) {
    cutLines(p, box);
    heavyCorner(p, box, mark.down, mark.across, fromMillimetres(24));
    const double towards = mark.down == Side::head ? 5 : -5,
                 aside = mark.across == Side::left ? 4 : -4;
    const QPointF middle = box.center() + QPointF{aside, towards};
    label(p, middle + QPointF{0, -24}, Text::tr("Pass"), type::kBody, 60);
    label(p, middle + QPointF{0, -2}, mark.pass, 34, 60, true);
    label(p, middle + QPointF{0, 22}, mark.fromLeft, type::kHead, box.width() - 26);
    label(p, middle + QPointF{0, 34}, mark.fromHead, type::kHead, box.width() - 26);
}

void drawCheckLine(QPainter& p, QPointF from) {
    constexpr double kWeight = 1.2;
    p.setPen(Qt::NoPen);
    p.setBrush(ink::kDark);
    p.drawRect(QRectF{from.x(), from.y() - kWeight / 2, kCheckLine, kWeight});
    for (int i = 0; i <= 10; ++i) {
        const double tall = i % 5 == 0 ? 12 : 7;
        // The outer edges of the first and the last tick are the line's ends.
        const double x = from.x() + (kCheckLine - ink::kThin) * i / 10;
        p.drawRect(QRectF{x, from.y() - tall, ink::kThin, tall});
    }
}

void drawGauge(QPainter& p, QPointF topLeft, Length spacing, Unit unit) {
    const QRectF strip{topLeft, QSizeF{spacing.in() * 72, kGaugeHeight}};
    cutLines(p, strip);
    p.setPen(QPen{ink::kDark, ink::kBold, Qt::SolidLine, Qt::FlatCap});
    for (const double x : {strip.left() + 1, strip.right() - 1})
        p.drawLine(QPointF{x, strip.top()}, QPointF{x, strip.bottom()});
    const double middle = strip.center().y();
    arrow(p, {strip.center().x(), middle + 12}, {strip.left() + 3, middle + 12}, 1.2);
    arrow(p, {strip.center().x(), middle + 12}, {strip.right() - 3, middle + 12}, 1.2);
    label(p, {strip.center().x(), middle - 5},
          Text::tr("from one to the next: %1").arg(length(spacing, unit)), type::kSmall,
          strip.width() - 12, true);
}

} // namespace bastewright::sheets
