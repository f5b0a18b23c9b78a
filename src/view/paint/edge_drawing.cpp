#include "view/paint/edge_drawing.h"

#include "plan/find.h"
#include "view/base/people_palette.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

using namespace bastewright;

namespace drawing {
namespace {

/// Pixels below which a number inside a mark cannot be read.
constexpr qreal kReadable = 9;
const QColor kSteel{0xaa, 0xb1, 0xbd}, kDark{0x10, 0x14, 0x1f};

void paintClamp(QPainter& painter, QPointF at, QPointF out, qreal size) {
    painter.save();
    painter.translate(at);
    painter.rotate(std::atan2(out.y(), out.x()) * 180 / M_PI);
    // The pad on the cloth, the handles beyond the edge.
    QPainterPath shape;
    shape.moveTo(-size * 0.5, -size * 0.42);
    shape.lineTo(-size * 0.1, -size * 0.42);
    shape.lineTo(size * 0.15, -size * 0.22);
    shape.lineTo(size * 0.75, -size * 0.42);
    shape.lineTo(size * 0.8, -size * 0.12);
    shape.lineTo(size * 0.45, 0);
    shape.lineTo(size * 0.8, size * 0.12);
    shape.lineTo(size * 0.75, size * 0.42);
    shape.lineTo(size * 0.15, size * 0.22);
    shape.lineTo(-size * 0.1, size * 0.42);
    shape.lineTo(-size * 0.5, size * 0.42);
    shape.closeSubpath();
    painter.setPen(QPen{kDark, std::max(1.0, size * 0.1)});
    painter.setBrush(kSteel);
    painter.drawPath(shape);
    painter.fillRect(QRectF{-size * 0.5, -size * 0.42, size * 0.22, size * 0.84}, kDark);
    painter.restore();
}

} // namespace

QPointF onEdge(const QRectF& table, Side side, double along) {
    const QRectF edge = edgeOf(table, side);
    return isAcross(side) ? QPointF{along, edge.top()} : QPointF{edge.left(), along};
}

void paintWalls(QPainter& painter, const Scene& scene, const Look& look, const QTransform& map) {
    const qreal thick = look.text * 0.7;
    for (const Side side : scene.plan->surface.closed) {
        const QRectF r = map.mapRect(edgeOf(tableOf(scene), side))
                             .adjusted(-thick / 2, -thick / 2, thick / 2, thick / 2);
        painter.setPen(QPen{look.ink, 1.5});
        painter.setBrush(look.paper);
        painter.drawRect(r);
        painter.setBrush(QBrush{look.ink, Qt::BDiagPattern});
        painter.drawRect(r);
    }
}

void paintRolls(QPainter& painter, const Scene& scene, const Look& look, const QTransform& map) {
    const Pass* const pass = findPass(*scene.plan, scene.pass);
    for (const Roll& roll : pass->rolls) {
        const QRectF side = map.mapRect(edgeOf(tableOf(scene), roll.side));
        const qreal thick = std::max(roll.diameter.in() * map.m11(), look.text * 0.6);
        QRectF r = side.translated(outward(roll.side) * (thick * 0.5 + 3));
        const bool flat = r.width() > r.height();
        r = flat ? r.adjusted(0, -thick / 2, 0, thick / 2)
                 : r.adjusted(-thick / 2, 0, thick / 2, 0);
        painter.setPen(QPen{kDark, 1.5});
        painter.setBrush(look.backing);
        painter.drawRoundedRect(r, thick / 2, thick / 2);
        // Its turns, as seen at the end of a roll.
        painter.setPen(QPen{kDark, 0.8});
        for (const qreal at : {0.3, 0.55, 0.8})
            painter.drawLine(flat ? QLineF{r.left() + thick / 2, r.top() + thick * at,
                                           r.right() - thick / 2, r.top() + thick * at}
                                  : QLineF{r.left() + thick * at, r.top() + thick / 2,
                                           r.left() + thick * at, r.bottom() - thick / 2});
    }
}

void paintHolds(QPainter& painter, const Scene& scene, const Look& look, const QTransform& map) {
    const Pass* const pass = findPass(*scene.plan, scene.pass);
    const qreal size = std::clamp(look.text * 0.8, 7.0, 3 * map.m11());
    QFont font{look.family};
    font.setPixelSize(std::max(1, int(size * 0.75)));
    font.setBold(true);
    painter.setFont(font);
    for (const Hold& hold : pass->holds)
        for (std::size_t k = 0; k < hold.positions.size(); ++k) {
            const QPointF at = map.map(onEdge(tableOf(scene), hold.side, hold.positions[k].in()));
            if (hold.kind == Hold::Kind::clamp) {
                paintClamp(painter, at, outward(hold.side), size);
            } else {
                QRectF tape{0, 0, size * 1.1, size * 0.6};
                tape.moveCenter(at);
                painter.setPen(QPen{kDark, 1});
                painter.setBrush(QColor{0xf4, 0xec, 0xd2});
                painter.drawRect(tape);
            }
            if (k >= hold.numbers.size() || size * 0.75 < kReadable)
                continue;
            QRectF text{0, 0, size * 2, size * 2};
            text.moveCenter(at - outward(hold.side) * size * 1.1);
            QPainterPath number;
            const QString digits = QString::number(hold.numbers[k]);
            const QFontMetricsF metrics{font};
            number.addText(text.center() + QPointF{-metrics.horizontalAdvance(digits) / 2,
                                                   metrics.capHeight() / 2},
                           font, digits);
            painter.strokePath(number, QPen{Qt::white, 3});
            painter.fillPath(number, kDark);
        }
}

void paintPlaces(QPainter& painter, const Scene& scene, const Look& look, const QTransform& map) {
    const Pass* const pass = findPass(*scene.plan, scene.pass);
    const auto letters = people::letters(*scene.helpers);
    const qreal band = std::max(7.0, 1.6 * map.m11()), mark = look.text * 2.3;
    const QRectF table = tableOf(scene);
    const QPointF by = table.topLeft() - inches(pass->table).topLeft();
    for (const Stretch& stretch : pass->stretches) {
        const auto who = std::ranges::find(*scene.helpers, stretch.person, &Helper::name);
        if (who == scene.helpers->end())
            continue;
        const auto index = int(who - scene.helpers->begin());
        QRectF longest;
        QPointF out;
        for (const StandingPlace& place : stretch.edges) {
            const double shift = isAcross(place.side) ? by.x() : by.y();
            const QPointF from = map.map(onEdge(table, place.side, place.along.lo.in() + shift)),
                          to = map.map(onEdge(table, place.side, place.along.hi.in() + shift));
            const QPointF away = outward(place.side);
            const QRectF area = QRectF{from + away * 2, to + away * (band + 2)}.normalized();
            const QRectF r =
                isAcross(place.side) ? area.adjusted(2, 0, -2, 0) : area.adjusted(0, 2, 0, -2);
            people::paintFabric(painter, r, index, QPen{kDark, 1.5});
            if (std::max(r.width(), r.height()) >= std::max(longest.width(), longest.height())) {
                longest = r;
                out = away;
            }
        }
        QRectF square{0, 0, mark, mark};
        square.moveCenter(longest.center() + out * (mark * 0.42));
        people::paintMark(painter, square, index, letters[qsizetype(index)], look.family);
    }
}

} // namespace drawing
