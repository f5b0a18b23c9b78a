#include "view/paint/quilt_drawing.h"

#include "plan/find.h"
#include "view/base/words.h"
#include "view/paint/cloth.h"
#include "view/paint/edge_drawing.h"
#include "view/paint/scene_drawing.h"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace bastewright;

namespace drawing {
namespace {

/// As `cloth::kWashed`, of what lies on the table beside this pass.
constexpr qreal kBeside = 0.3;

QPointF inches(Point p) {
    return {p.x.in(), p.y.in()};
}

QRectF between(const QRectF& a, const QRectF& b, qreal t) {
    return QRectF{a.topLeft() + (b.topLeft() - a.topLeft()) * t,
                  a.bottomRight() + (b.bottomRight() - a.bottomRight()) * t};
}

/// One picture being painted: everything is mapped to pixels first, so that lines and letters keep
/// their size at every scale.
class Artist {
public:
    Artist(QPainter& painter, const Scene& scene, const Look& look, const QTransform& map)
        : p_{painter}
        , scene_{scene}
        , look_{look}
        , map_{map}
        , plan_{*scene.plan}
        , pass_{findPass(plan_, scene.pass)}
        , onTable_{pass_ && !plan_.surface.floor}
        , line_{std::max(1.0, look.text / 12)}
        , table_{tableOf(scene)} {}

    void paint() {
        drawCloth();
        wash(map_.mapRect(allLayers().adjusted(-1, -1, 1, 1)), cloth::kWashed);
        if (onTable_)
            drawTable();
        if (pass_)
            drawPass();
        if (onTable_) {
            paintWalls(p_, scene_, look_, map_);
            paintRolls(p_, scene_, look_, map_);
            if (look_.points && scene_.moved >= 1)
                paintHolds(p_, scene_, look_, map_);
            if (look_.figures && scene_.helpers && !scene_.moment)
                paintPlaces(p_, scene_, look_, map_);
        }
        if (look_.figures)
            drawFigures();
    }

private:
    QRectF px(const QRectF& r) const { return map_.mapRect(r); }
    QRectF px(const Rect& r) const { return px(drawing::inches(r)); }
    QPainterPath px(const Region& region) const {
        QPainterPath out;
        for (const Rect& part : region.parts)
            out.addRect(px(part));
        return out.simplified();
    }

    QRectF topArea() const {
        return {0, 0, plan_.layers.top.width.in(), plan_.layers.top.length.in()};
    }
    QRectF grownBy(const PerSide<Length>& spare) const {
        return topArea().adjusted(-spare.left.in(), -spare.head.in(), spare.right.in(),
                                  spare.foot.in());
    }
    QRectF allLayers() const { return pass_ ? grownBy(pass_->backingSpare) : topArea(); }

    void wash(const QRectF& pixels, qreal share) {
        QColor veil = look_.ground;
        veil.setAlphaF(float(share));
        p_.fillRect(pixels, veil);
    }

    void drawTop(const QRectF& area) {
        if (!scene_.top || scene_.top->isNull() || area.isEmpty())
            return;
        const QRectF all = topArea();
        const qreal sx = scene_.top->width() / all.width(),
                    sy = scene_.top->height() / all.height();
        const QRectF of{(area.left() - all.left()) * sx, (area.top() - all.top()) * sy,
                        area.width() * sx, area.height() * sy};
        p_.drawImage(px(area), *scene_.top, of);
    }

    /// All layers as far as they lie, laid from the head on, and what is sewn down.
    void drawCloth() {
        const auto* m = scene_.moment;
        const auto laid = [](QRectF area, qreal share) {
            area.setHeight(area.height() * share);
            return area;
        };
        if (pass_) {
            if (const auto r = px(laid(grownBy(pass_->backingSpare), m ? m->backing : 1));
                !r.isEmpty())
                cloth::paintBacking(p_, r, look_.backing);
            if (const auto r = px(laid(grownBy(pass_->battingSpare), m ? m->batting : 1));
                !r.isEmpty())
                cloth::paintBatting(p_, r, look_.batting);
        }
        drawTop(laid(topArea(), m ? m->top : 1));
        if (m && pass_ && m->folded > 0)
            // Batting and top are back: the backing shows.
            for (const Rect& part : pass_->fresh.parts)
                cloth::paintBacking(p_, px(laid(drawing::inches(part), m->folded)), look_.backing);
        for (const Pass& pass : plan_.passes)
            if (pass.number < scene_.pass)
                cloth::paintSewn(p_, px(pass.fresh), map_.m11());
    }

    /// The tables of the surface, mapped from its own frame into the quilt's.
    QRectF tablePart(const Rect& part) const {
        const QRectF r = drawing::inches(part);
        if (plan_.surface.quiltLengthAlongLength)
            return QRectF{QPointF{table_.right() - r.bottom(), table_.top() + r.left()},
                          QPointF{table_.right() - r.top(), table_.top() + r.right()}};
        return r.translated(table_.topLeft());
    }

    /// The rim is bare wood, so that the eye finds the table under the cloth.
    void drawTable() {
        const QRectF r = px(table_);
        const qreal rim = std::clamp(1.2 * map_.m11(), 3.0, 10.0);
        for (int shade = 4; shade >= 1; --shade)
            p_.fillRect(r.adjusted(-shade, -shade + 2, shade, shade + 3), QColor{20, 24, 40, 18});
        cloth::paintWood(p_, r, look_.wood, look_.woodDark);
        p_.save();
        p_.setClipRect(r.adjusted(rim, rim, -rim, -rim), Qt::IntersectClip);
        drawCloth();
        wash(px(allLayers()), kBeside);
        p_.restore();
        p_.setPen(QPen{look_.woodDark, line_ * 0.8});
        p_.setBrush(Qt::NoBrush);
        for (const auto& part : plan_.surface.tables)
            p_.drawRect(px(tablePart(part)));
        p_.setPen(QPen{look_.woodDark, line_ * 1.6});
        p_.drawRect(r);
    }

    void drawPass() {
        const QPainterPath area = px(pass_->fresh);
        if (scene_.moment) {
            paintZones(p_, scene_, look_, map_, [this](const QRectF& part) { drawTop(part); });
        } else {
            p_.save();
            p_.setClipPath(area, Qt::IntersectClip);
            drawTop(topArea());
            p_.restore();
            p_.setBrush(Qt::NoBrush);
            // Ink on both sides: yellow is seen on a yellow quilt, too.
            for (const auto& [colour, width] :
                 {std::pair{look_.nowInk, line_ * 4.4}, std::pair{look_.now, line_ * 2.6}}) {
                QPen pen{colour, width};
                pen.setJoinStyle(Qt::MiterJoin);
                p_.strokePath(area, pen);
            }
        }
        if (look_.points)
            drawPoints();
        if (look_.figures || look_.points)
            drawZones();
    }

    void drawPoints() {
        const qreal length = std::clamp(1.3 * map_.m11(), 4.0, 16.0);
        const qreal dot = std::max(0.5 * map_.m11(), line_ * 1.2);
        for (std::size_t z = 0; z < plan_.zones.size(); ++z) {
            const Zone& zone = plan_.zones[z];
            if (zone.pass != scene_.pass)
                continue;
            const auto* state = scene_.moment ? &scene_.moment->zones[z] : nullptr;
            if (state && state->state >= ZoneState::closed)
                continue; // sewn down
            const auto shown = state ? pointsIn(*state, zone.points.size()) : zone.points.size();
            for (std::size_t k = 0; k < shown; ++k) {
                const auto& point = zone.points[k];
                const QPointF at = map_.map(inches(point.at));
                const qreal angle = point.angle * std::numbers::pi / 180;
                switch (zone.with ? wayOf(*zone.with).point.shape : scene_.shape) {
                case WayPoint::Shape::pin:
                    cloth::paintPin(p_, at, length, angle, state != nullptr);
                    break;
                case WayPoint::Shape::dot:
                    p_.setPen(QPen{cloth::kOutline, line_});
                    p_.setBrush(cloth::kThread);
                    p_.drawRect(QRectF{at - QPointF{dot, dot}, QSizeF{2 * dot, 2 * dot}});
                    break;
                case WayPoint::Shape::stitch:
                    cloth::paintStitch(p_, at, scene_.pointLength * map_.m11(), angle, line_);
                    break;
                case WayPoint::Shape::patch: {
                    const qreal half = scene_.pointLength * map_.m11() / 2;
                    cloth::paintPatch(p_,
                                      px(zone.area).intersected(QRectF{at - QPointF{half, half},
                                                                       at + QPointF{half, half}}),
                                      line_);
                    break;
                }
                }
            }
        }
    }

    void drawZones() {
        for (const Zone& zone : plan_.zones) {
            if (zone.pass != scene_.pass)
                continue;
            const QRectF r = px(zone.area);
            if (!scene_.moment) {
                p_.setBrush(Qt::NoBrush);
                p_.setPen(QPen{cloth::kOutline, line_ * 1.8});
                p_.drawRect(r);
                p_.setPen(QPen{cloth::kThread, line_ * 0.9});
                p_.drawRect(r);
            }
            if (words::fromCore(zone.id) == scene_.zone)
                for (const auto& [colour, width] :
                     {std::pair{cloth::kThread, line_ * 6.5}, std::pair{look_.accent, line_ * 4}}) {
                    p_.setBrush(Qt::NoBrush);
                    p_.setPen(QPen{colour, width});
                    p_.drawRect(r.adjusted(line_ * 3, line_ * 3, -line_ * 3, -line_ * 3));
                }
            const qreal size = std::min(look_.text, std::min(r.width(), r.height()) * 0.5);
            if (size >= 8)
                paintTag(p_, r.center(), words::zone(zone.id), size, look_.family);
        }
    }

    /// The sizes of the top on lines beside it, and which end is the head.
    void drawFigures() {
        const QRectF all = px(allLayers() | (onTable_ ? table_ : QRectF{})), top = px(topArea());
        const qreal size = look_.text, away = size * 2.6;
        QFont font{look_.family};
        font.setPixelSize(int(size));
        p_.setFont(font);
        const qreal x = all.left() - away, y = all.bottom() + away;
        dimension({x, top.top()}, {x, top.bottom()},
                  words::length(plan_.layers.top.length, scene_.unit));
        dimension({top.left(), y}, {top.right(), y},
                  words::length(plan_.layers.top.width, scene_.unit));
        p_.setPen(look_.ink);
        const QRectF line{0, 0, size * 8, size * 1.4};
        QRectF head = line, foot = line;
        head.moveBottomRight({x + size * 2.4, top.top() - size * 0.3});
        foot.moveTopRight({x + size * 2.4, top.bottom() + size * 0.3});
        p_.drawText(head, Qt::AlignRight | Qt::AlignVCenter, words::side(Side::head));
        p_.drawText(foot, Qt::AlignRight | Qt::AlignVCenter, words::side(Side::foot));
    }

    void dimension(QPointF from, QPointF to, const QString& text) {
        const QLineF whole{from, to};
        const QFontMetricsF metrics{p_.font()};
        const qreal room = metrics.horizontalAdvance(text) + metrics.height() * 0.6;
        if (whole.length() < room + 8)
            return;
        p_.save();
        p_.setPen(QPen{look_.ink, 1});
        const QPointF along = (to - from) / whole.length(), across{-along.y(), along.x()};
        const QPointF middle = whole.center();
        for (const auto& [end, way] : {std::pair{from, 1.0}, std::pair{to, -1.0}}) {
            p_.drawLine(end, middle - along * way * room / 2);
            p_.drawLine(end - across * 5, end + across * 5);
        }
        p_.translate(middle);
        p_.rotate(along.x() == 0 ? -90 : 0);
        p_.drawText(QRectF{-room / 2, -metrics.height() / 2, room, metrics.height()},
                    Qt::AlignCenter, text);
        p_.restore();
    }

    QPainter& p_;
    const Scene& scene_;
    const Look& look_;
    const QTransform& map_;
    const QuiltPlan& plan_;
    const Pass* pass_;
    bool onTable_;
    qreal line_;
    QRectF table_;
};

} // namespace

QRectF tableOf(const Scene& scene) {
    const auto* pass = findPass(*scene.plan, scene.pass);
    if (!pass)
        return {};
    const auto* before = findPass(*scene.plan, scene.passBefore);
    return between(inches((before ? before : pass)->table), inches(pass->table), scene.moved);
}

QRectF inches(const Rect& r) {
    return QRectF{QPointF{r.x0.in(), r.y0.in()}, QPointF{r.x1.in(), r.y1.in()}};
}

QRectF extent(const QuiltPlan& plan) {
    QRectF all{0, 0, plan.layers.top.width.in(), plan.layers.top.length.in()};
    for (const auto& pass : plan.passes) {
        all |= inches(pass.table);
        const auto& s = pass.backingSpare;
        all |= QRectF{0, 0, plan.layers.top.width.in(), plan.layers.top.length.in()}.adjusted(
            -s.left.in(), -s.head.in(), s.right.in(), s.foot.in());
    }
    return all;
}

QRectF edgeOf(const QRectF& r, Side side) {
    switch (side) {
    case Side::head:
        return {r.left(), r.top(), r.width(), 0};
    case Side::foot:
        return {r.left(), r.bottom(), r.width(), 0};
    case Side::left:
        return {r.left(), r.top(), 0, r.height()};
    case Side::right:
        return {r.right(), r.top(), 0, r.height()};
    }
    return {};
}

QPointF outward(Side side) {
    return side == Side::head   ? QPointF{0, -1}
           : side == Side::foot ? QPointF{0, 1}
           : side == Side::left ? QPointF{-1, 0}
                                : QPointF{1, 0};
}

void paintTag(QPainter& painter, QPointF middle, const QString& text, qreal size,
              const QString& family) {
    if (text.isEmpty())
        return;
    QFont font{family};
    font.setPixelSize(std::max(8, int(size)));
    font.setBold(true);
    painter.setFont(font);
    const QFontMetricsF metrics{font};
    QRectF box{0, 0, metrics.horizontalAdvance(text) + size * 0.7, metrics.height() + size * 0.1};
    box.moveCenter(middle);
    painter.setPen(QPen{cloth::kOutline, 1});
    painter.setBrush(cloth::kThread);
    painter.drawRoundedRect(box, size * 0.2, size * 0.2);
    painter.setPen(cloth::kOutline);
    painter.drawText(box, Qt::AlignCenter, text);
}

QTransform fitted(const QRectF& extent, QSizeF size, qreal margin) {
    const qreal scale = std::min(std::max(1.0, size.width() - 2 * margin) / extent.width(),
                                 std::max(1.0, size.height() - 2 * margin) / extent.height());
    QTransform t;
    t.translate(size.width() / 2, size.height() / 2);
    t.scale(scale, scale);
    t.translate(-extent.center().x(), -extent.center().y());
    return t;
}

void paint(QPainter& painter, const Scene& scene, const Look& look, const QTransform& toPixels) {
    if (!scene.plan)
        return;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    Artist{painter, scene, look, toPixels}.paint();
}

} // namespace drawing
