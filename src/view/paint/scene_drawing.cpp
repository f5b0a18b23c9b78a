#include "view/paint/scene_drawing.h"

#include "session/ticks.h"
#include "view/base/people_palette.h"
#include "view/paint/cloth.h"
#include "view/paint/edge_drawing.h"

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
    const QPointF by = table.topLeft() - planned.topLeft();
    const double along = place.along.middle().in() + (isAcross(place.side) ? by.x() : by.y());
    return {onEdge(table, place.side, along), outward(place.side)};
}

/// The step of a zone after which its points are in.
bool putsPointsIn(TaskKind kind) {
    const Tick tick = tickAt(kind);
    return stateAfter(tick) >= ZoneState::open &&
           stateBefore(tick, wayWith(kind)) < ZoneState::open;
}

} // namespace

std::size_t pointsIn(const ZoneScene& zone, std::size_t points) {
    if (zone.state >= ZoneState::open)
        return points;
    const bool places = zone.work && putsPointsIn(zone.work->kind);
    return places ? std::size_t(std::floor(zone.share * qreal(points))) : 0;
}

void paintZones(QPainter& painter, const Scene& scene, const Look& look, const QTransform& map,
                const std::function<void(const QRectF&)>& drawTop) {
    const qreal line = std::max(1.0, look.text / 12);
    const auto sewn = [&](const QRectF& part) {
        QPainterPath path;
        path.addRect(map.mapRect(part));
        cloth::paintSewn(painter, path, map.m11());
    };
    for (std::size_t z = 0; z < scene.plan->zones.size(); ++z) {
        const auto& zone = scene.moment->zones[z];
        if (zone.state < ZoneState::dotted && !zone.work)
            continue;
        const QRectF area = inches(scene.plan->zones[z].area), r = map.mapRect(area);
        drawTop(area);
        if (zone.state >= ZoneState::closed) {
            sewn(area);
        } else if (zone.state >= ZoneState::dotted) {
            const qreal in = line * 2.5;
            cloth::paintOpen(painter, r.adjusted(in, in, -in, -in), line);
        }
        if (!zone.work)
            continue;
        if (zone.state >= ZoneState::open) {
            QRectF part = area;
            part.setHeight(area.height() * zone.share);
            sewn(part);
        }
        painter.setBrush(Qt::NoBrush);
        for (const auto& [colour, width] :
             {std::pair{look.nowInk, line * 5}, std::pair{look.now, line * 3}}) {
            painter.setPen(QPen{colour, width});
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
