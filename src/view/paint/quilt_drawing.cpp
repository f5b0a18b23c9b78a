#include "view/paint/quilt_drawing.h"

#include "plan/find.h"
#include "view/base/words.h"
#include "view/paint/scene_drawing.h"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace bastewright;

namespace drawing {
namespace {

/// Pixels below which a number inside a mark cannot be read.
constexpr qreal kReadable = 9;

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
        , line_{std::max(1.0, look.text / 12)} {
        table_ = tableOf(scene);
    }

    void paint() {
        drawTable();
        drawLayers();
        if (scene_.moment)
            paintZones(p_, scene_, look_, map_);
        else
            drawWork();
        if (!scene_.moment || scene_.moment->top >= 1)
            drawSeams();
        if (look_.points)
            drawPoints();
        drawZones();
        drawTableEdge();
        drawRolls();
        drawHolds();
        if (look_.figures)
            drawFigures();
    }

private:
    QRectF px(const QRectF& r) const { return map_.mapRect(r); }
    QRectF px(const Rect& r) const { return px(drawing::inches(r)); }

    void outline(const QRectF& r, const QColor& colour, qreal width,
                 Qt::PenStyle style = Qt::SolidLine) {
        QPen pen{colour, width, style};
        pen.setJoinStyle(Qt::MiterJoin);
        p_.setPen(pen);
        p_.setBrush(Qt::NoBrush);
        p_.drawRect(r);
    }

    void label(QPointF at, const QString& text, qreal size, const QColor& back, const QColor& ink) {
        if (text.isEmpty())
            return;
        QFont font{look_.family};
        font.setPixelSize(std::max(8, int(size)));
        font.setBold(true);
        p_.setFont(font);
        const QFontMetricsF metrics{font};
        QRectF box{0, 0, metrics.horizontalAdvance(text) + size * 0.7,
                   metrics.height() + size * 0.1};
        box.moveCenter(at);
        p_.setPen(Qt::NoPen);
        p_.setBrush(back);
        p_.drawRoundedRect(box, size * 0.3, size * 0.3);
        p_.setPen(ink);
        p_.drawText(box, Qt::AlignCenter, text);
    }

    /// The tables of the surface, mapped from its own frame into the quilt's.
    QRectF tablePart(const Rect& part) const {
        const QRectF r = drawing::inches(part);
        if (plan_.surface.quiltLengthAlongLength)
            return QRectF{QPointF{table_.right() - r.bottom(), table_.top() + r.left()},
                          QPointF{table_.right() - r.top(), table_.top() + r.right()}};
        return r.translated(table_.topLeft());
    }

    void drawTable() {
        if (!pass_ || plan_.surface.floor)
            return;
        p_.setPen(Qt::NoPen);
        p_.setBrush(look_.table);
        p_.drawRect(px(table_));
        for (const auto& part : plan_.surface.tables)
            outline(px(tablePart(part)), look_.tableLine, line_);
        for (const Side side : plan_.surface.closed)
            drawWall(side);
    }

    void drawWall(Side side) {
        QRectF r = px(edge(side));
        const qreal thick = look_.text * 0.7;
        r = r.adjusted(-thick / 2, -thick / 2, thick / 2, thick / 2);
        p_.setPen(QPen{look_.wall, line_});
        p_.setBrush(QBrush{look_.wall, Qt::BDiagPattern});
        p_.drawRect(r);
    }

    /// A side of the table as a rectangle without width.
    QRectF edge(Side side) const {
        switch (side) {
        case Side::head:
            return {table_.left(), table_.top(), table_.width(), 0};
        case Side::foot:
            return {table_.left(), table_.bottom(), table_.width(), 0};
        case Side::left:
            return {table_.left(), table_.top(), 0, table_.height()};
        case Side::right:
            return {table_.right(), table_.top(), 0, table_.height()};
        }
        return {};
    }

    QRectF grownBy(const PerSide<Length>& spare) const {
        const QRectF top = topArea();
        return top.adjusted(-spare.left.in(), -spare.head.in(), spare.right.in(), spare.foot.in());
    }
    QRectF topArea() const {
        return {0, 0, plan_.layers.top.width.in(), plan_.layers.top.length.in()};
    }

    void drawLayers() {
        const auto* m = scene_.moment;
        // Laid from the head on.
        const auto layer = [this](QRectF area, QColor colour, int alpha, qreal share) {
            if (share <= 0)
                return;
            colour.setAlpha(alpha);
            area.setHeight(area.height() * share);
            const QRectF r = px(area);
            p_.setPen(QPen{look_.ink, line_ * 0.7});
            p_.setBrush(colour);
            p_.drawRect(r);
        };
        if (pass_) {
            layer(grownBy(pass_->backingSpare), look_.backing, 150, m ? m->backing : 1);
            layer(grownBy(pass_->battingSpare), look_.batting, 150, m ? m->batting : 1);
        }
        layer(topArea(), look_.cloth, 200, m ? m->top : 1);
        if (m && pass_ && m->folded > 0) {
            // Batting and top are back: the backing shows.
            for (const Rect& part : pass_->fresh.parts) {
                QRectF bare = drawing::inches(part);
                bare.setHeight(bare.height() * m->folded);
                layer(bare, look_.backing, 255, 1);
            }
        }
    }

    void drawWork() {
        for (const auto& pass : plan_.passes) {
            p_.setPen(Qt::NoPen);
            if (pass.number < scene_.pass) {
                p_.setBrush(QBrush{look_.hatch, Qt::BDiagPattern});
            } else if (pass.number == scene_.pass) {
                QColor fill = look_.fresh;
                fill.setAlpha(210);
                p_.setBrush(fill);
            } else {
                continue;
            }
            for (const Rect& part : pass.fresh.parts)
                p_.drawRect(px(part));
        }
    }

    void drawSeams() {
        if (!scene_.seams)
            return;
        p_.setPen(QPen{look_.seam, std::max(0.8, line_ * 0.5)});
        for (const auto& s : *scene_.seams)
            p_.drawLine(map_.map(inches(s.from)), map_.map(inches(s.to)));
    }

    void drawPoints() {
        const qreal scale = std::abs(map_.m11()) + std::abs(map_.m12());
        const qreal half = scene_.pins ? std::max(0.5 * scale, line_ * 1.2) : 0;
        const qreal dot = std::max(0.4 * scale, line_);
        const bool turned = std::abs(map_.m11()) < 1e-9;
        for (std::size_t z = 0; z < plan_.zones.size(); ++z) {
            const auto& zone = plan_.zones[z];
            const bool now = zone.pass == scene_.pass;
            const auto shown = scene_.moment ? pointsIn(scene_.moment->zones[z], zone.points.size())
                                             : zone.points.size();
            QColor ink = look_.ink;
            ink.setAlpha(now ? 255 : 90);
            p_.setPen(QPen{ink, now ? line_ * 1.4 : line_, Qt::SolidLine, Qt::RoundCap});
            p_.setBrush(ink);
            for (std::size_t k = 0; k < shown; ++k) {
                const auto& point = zone.points[k];
                const QPointF at = map_.map(inches(point.at));
                if (!scene_.pins) {
                    p_.drawEllipse(at, dot, dot);
                    continue;
                }
                qreal a = point.angle * std::numbers::pi / 180;
                if (turned)
                    a -= std::numbers::pi / 2;
                const QPointF d{std::cos(a) * half, std::sin(a) * half};
                p_.drawLine(at - d, at + d);
            }
        }
    }

    void drawZones() {
        for (const auto& zone : plan_.zones) {
            const QRectF r = px(zone.area);
            const bool now = zone.pass == scene_.pass;
            outline(r, now ? look_.ink : look_.seam, now ? line_ * 1.2 : line_ * 0.7,
                    now ? Qt::SolidLine : Qt::DashLine);
            const QString id = words::zone(zone.id);
            if (words::fromCore(zone.id) == scene_.zone)
                outline(r.adjusted(line_, line_, -line_, -line_), look_.accent, line_ * 3.5);
            const qreal size = std::min(look_.text, std::min(r.width(), r.height()) * 0.5);
            if (now && size >= 8)
                label(r.center(), id, size, look_.paper, look_.ink);
        }
    }

    void drawTableEdge() {
        if (pass_ && !plan_.surface.floor)
            outline(px(table_), look_.tableLine, line_ * 2.5);
    }

    void drawRolls() {
        if (!pass_)
            return;
        for (const auto& roll : pass_->rolls) {
            const QRectF side = px(edge(roll.side));
            const qreal scale = std::abs(map_.m11()) + std::abs(map_.m12());
            const qreal thick = std::max(roll.diameter.in() * scale, look_.text * 0.6);
            const QPointF out = outward(roll.side) * (thick * 0.5 + line_ * 3);
            QRectF r = side.translated(out);
            r = r.width() > r.height() ? r.adjusted(0, -thick / 2, 0, thick / 2)
                                       : r.adjusted(-thick / 2, 0, thick / 2, 0);
            p_.setPen(QPen{look_.ink, line_});
            p_.setBrush(look_.backing);
            p_.drawRoundedRect(r, thick / 2, thick / 2);
            p_.setPen(QPen{look_.ink, line_ * 0.6, Qt::DashLine});
            p_.drawLine(QLineF{r.topLeft(), r.width() > r.height() ? r.topRight() : r.bottomLeft()}
                            .translated(r.width() > r.height() ? QPointF{0, thick / 2}
                                                               : QPointF{thick / 2, 0}));
        }
    }

    /// Unit vector, in pixels, away from the table.
    QPointF outward(Side side) const {
        const QPointF d = side == Side::head   ? QPointF{0, -1}
                          : side == Side::foot ? QPointF{0, 1}
                          : side == Side::left ? QPointF{-1, 0}
                                               : QPointF{1, 0};
        const QPointF mapped = map_.map(d) - map_.map(QPointF{});
        return mapped / std::hypot(mapped.x(), mapped.y());
    }

    void drawHolds() {
        if (!pass_ || scene_.moved < 1)
            return;
        const qreal size = std::max(line_ * 4, look_.text * 0.42);
        QFont font = p_.font();
        font.setPixelSize(std::max(1, int(size * 0.8)));
        p_.setFont(font);
        for (const auto& hold : pass_->holds)
            for (std::size_t k = 0; k < hold.positions.size(); ++k) {
                const Length along = hold.positions[k];
                const QRectF side = edge(hold.side);
                const QPointF at = map_.map(isAcross(hold.side) ? QPointF{along.in(), side.top()}
                                                                : QPointF{side.left(), along.in()});
                p_.setPen(QPen{look_.paper, line_ * 0.7});
                p_.setBrush(look_.ink);
                QRectF box{0, 0, size, size};
                box.moveCenter(at);
                if (hold.kind == Hold::Kind::clamp)
                    p_.drawRect(box);
                else
                    p_.drawEllipse(box);
                // The round in which it is set, where there is room to read it.
                if (k < hold.numbers.size() && size >= kReadable) {
                    p_.setPen(look_.paper);
                    p_.drawText(box.adjusted(-size, -size, size, size), Qt::AlignCenter,
                                QString::number(hold.numbers[k]));
                }
            }
    }

    void drawFigures() {
        const QRectF top = px(topArea());
        const qreal size = look_.text * 0.85;
        for (const Side side : kSides) {
            const QPointF out = outward(side);
            const QPointF middle =
                top.center() + QPointF{out.x() * top.width() / 2, out.y() * top.height() / 2};
            label(middle + out * size * 1.1, words::side(side), size, look_.ink, look_.paper);
        }
        if (!pass_ || plan_.surface.floor || scene_.moved < 1)
            return;
        for (const Side side : kSides) {
            const Length over = pass_->backingOverhang[side];
            if (over <= Length{})
                continue;
            const QRectF e = px(edge(side));
            // Off the middle, so that it stays clear of the middle clamp and the name of the side.
            const QPointF at = e.topLeft() + (e.bottomRight() - e.topLeft()) * 0.27;
            label(at - outward(side) * size * 1.2, words::length(over, scene_.unit), size,
                  look_.paper, look_.ink);
        }
    }

    QPainter& p_;
    const Scene& scene_;
    const Look& look_;
    const QTransform& map_;
    const QuiltPlan& plan_;
    const Pass* pass_;
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

bool betterTurned(const QRectF& extent, QSizeF size) {
    const auto scale = [](QSizeF e, QSizeF s) {
        return std::min(s.width() / e.width(), s.height() / e.height());
    };
    return scale(extent.size().transposed(), size) > 1.12 * scale(extent.size(), size);
}

QTransform fitted(const QRectF& extent, QSizeF size, qreal margin, bool turned) {
    const QSizeF room{std::max(1.0, size.width() - 2 * margin),
                      std::max(1.0, size.height() - 2 * margin)};
    const QSizeF e = turned ? extent.size().transposed() : extent.size();
    const qreal scale = std::min(room.width() / e.width(), room.height() / e.height());
    QTransform t;
    t.translate(size.width() / 2, size.height() / 2);
    t.scale(scale, scale);
    if (turned)
        t.rotate(-90); // the head, up before, comes to lie on the left
    t.translate(-extent.center().x(), -extent.center().y());
    return t;
}

void paint(QPainter& painter, const Scene& scene, const Look& look, const QTransform& toPixels) {
    if (!scene.plan)
        return;
    painter.setRenderHint(QPainter::Antialiasing);
    Artist{painter, scene, look, toPixels}.paint();
}

} // namespace drawing
