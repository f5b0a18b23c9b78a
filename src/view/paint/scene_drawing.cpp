#include "view/paint/scene_drawing.h"

#include "view/base/people_palette.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

using namespace bastewright;

namespace drawing {
namespace {

/// Where somebody stands, inches of the quilt's frame, and which way is out.
struct Stand {
    QPointF at, out;
};

Stand standOf(const StandingPlace& place, const QRectF& planned, const QRectF& table) {
    // Along the edge as far from the table's corner as planned, wherever the table is by now.
    const qreal along = place.along.middle().in();
    const QPointF by = table.topLeft() - planned.topLeft();
    switch (place.side) {
    case Side::head:
        return {{along + by.x(), table.top()}, {0, -1}};
    case Side::foot:
        return {{along + by.x(), table.bottom()}, {0, 1}};
    case Side::left:
        return {{table.left(), along + by.y()}, {-1, 0}};
    case Side::right:
        return {{table.right(), along + by.y()}, {1, 0}};
    }
    return {};
}

} // namespace

std::size_t pointsIn(const ZoneScene& zone, std::size_t points) {
    if (zone.state >= ZoneState::open)
        return points;
    const bool places = zone.work && (zone.work->kind == TaskKind::placeOpen ||
                                      zone.work->kind == TaskKind::dotUpper);
    return places ? std::size_t(std::floor(zone.share * qreal(points))) : 0;
}

void paintZones(QPainter& painter, const Scene& scene, const Look& look, const QTransform& map) {
    const qreal line = std::max(1.0, look.text / 12);
    for (std::size_t z = 0; z < scene.plan->zones.size(); ++z) {
        const auto& zone = scene.moment->zones[z];
        const QRectF area = inches(scene.plan->zones[z].area), r = map.mapRect(area);
        painter.setPen(Qt::NoPen);
        if (zone.state == ZoneState::dotted || zone.state == ZoneState::open) {
            QColor fill = look.fresh;
            fill.setAlpha(zone.state == ZoneState::open ? 210 : 110);
            painter.setBrush(fill);
            painter.drawRect(r);
            painter.setPen(QPen{look.ink, line * 1.3, Qt::DashLine});
            painter.setBrush(Qt::NoBrush);
            const qreal in = line * 2.5;
            painter.drawRect(r.adjusted(in, in, -in, -in));
        } else if (zone.state >= ZoneState::closed) {
            painter.setBrush(QBrush{look.hatch, Qt::BDiagPattern});
            painter.drawRect(r);
        }
        if (zone.work) {
            QRectF part = area;
            part.setHeight(area.height() * zone.share);
            painter.setPen(Qt::NoPen);
            const bool ends = zone.state >= ZoneState::open;
            painter.setBrush(ends ? QBrush{look.hatch, Qt::BDiagPattern} : QBrush{look.fresh});
            painter.drawRect(map.mapRect(part));
            painter.setPen(QPen{look.accent, line * 3});
            painter.setBrush(Qt::NoBrush);
            painter.drawRect(r.adjusted(line, line, -line, -line));
        }
    }
}

void paintPeople(QPainter& painter, const TableScene& moment, const PlannedQuilt& quilt,
                 const Scene& scene, const Look& look, const QTransform& map, QSizeF size) {
    const auto& helpers = quilt.planned()->session.setting.helpers;
    const auto letters = people::letters(helpers);
    const qreal side = look.text * 2.1;
    const auto pass = std::find_if(scene.plan->passes.begin(), scene.plan->passes.end(),
                                   [&](const Pass& p) { return p.number == moment.pass; });
    qreal waiting = side * 0.2;
    for (std::size_t i = 0; i < moment.people.size(); ++i) {
        const auto& person = moment.people[i];
        QRectF square{0, 0, side, side};
        if (person.place && pass != scene.plan->passes.end()) {
            const auto stand = standOf(*person.place, inches(pass->table), tableOf(scene));
            const QPointF out = map.map(stand.out) - map.map(QPointF{});
            const QPointF unit = out / std::hypot(out.x(), out.y());
            square.moveCenter(map.map(stand.at) + unit * side * 0.62);
            // Never off the picture.
            square.moveLeft(std::clamp(square.left(), 0.0, size.width() - side));
            square.moveTop(std::clamp(square.top(), 0.0, size.height() - side));
        } else if (person.where == PersonScene::Where::waiting) {
            square.moveTopLeft({waiting, size.height() - side * 1.15});
            waiting += side * 1.15;
        } else {
            continue;
        }
        const bool idle = person.where != PersonScene::Where::atWork;
        painter.setOpacity(idle ? 0.75 : 1);
        people::paintMark(painter, square, int(i), letters[qsizetype(i)], look.family);
        painter.setOpacity(1);
    }
}

} // namespace drawing
