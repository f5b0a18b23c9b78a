#include "view/paint/quilt_item.h"

#include "view/base/words.h"
#include "view/paint/cloth.h"
#include "view/paint/scene_drawing.h"
#include "ways/way.h"

#include <QPainter>
#include <QQuickWindow>

using namespace bastewright;

QuiltItem::QuiltItem(QQuickItem* parent)
    : QQuickPaintedItem{parent} {
    connect(this, &QuiltItem::lookChanged, this, [this] { update(); });
}

void QuiltItem::setQuilt(const PlannedQuilt& quilt) {
    if (quilt == quilt_)
        return;
    if (!quilt.job() || !quilt_.job() || quilt.job()->top != quilt_.job()->top)
        top_ = {};
    quilt_ = quilt;
    scenes_.reset();
    update();
    emit quiltChanged();
}

void QuiltItem::setPass(int pass) {
    if (pass == pass_)
        return;
    passBefore_ = pass_;
    pass_ = pass;
    update();
    emit passChanged();
}

void QuiltItem::setZone(const QString& zone) {
    if (zone == zone_)
        return;
    zone_ = zone;
    update();
    emit zoneChanged();
}

void QuiltItem::setMoved(qreal moved) {
    if (moved == moved_)
        return;
    moved_ = moved;
    update();
    emit movedChanged();
}

void QuiltItem::setMoment(qreal moment) {
    if (moment == moment_)
        return;
    moment_ = moment;
    update();
    emit momentChanged();
}

void QuiltItem::setTextSize(qreal size) {
    textSize_ = size;
    emit lookChanged();
}

void QuiltItem::setFigures(bool on) {
    figures_ = on;
    emit lookChanged();
}

void QuiltItem::setPoints(bool on) {
    points_ = on;
    emit lookChanged();
}

QTransform QuiltItem::toPixels() const {
    // Room for sizes and people beside the quilt.
    return drawing::fitted(drawing::extent(*quilt_.plan()), size(), figures_ ? textSize_ * 3.4 : 3);
}

const QImage& QuiltItem::topAt(double pixelsPerInch) {
    if (top_.isNull() || topScale_ != pixelsPerInch) {
        topScale_ = pixelsPerInch;
        const auto& layer = quilt_.plan()->layers.top;
        const QRectF area{0, 0, layer.width.in(), layer.length.in()};
        const QSizeF pixels = area.size() * pixelsPerInch;
        top_ = cloth::pictureOf(quilt_.job()->top, area, pixels.toSize());
    }
    return top_;
}

QString QuiltItem::zoneAt(qreal x, qreal y) const {
    if (!quilt_.plan())
        return {};
    const QPointF at = toPixels().inverted().map(QPointF{x, y});
    for (const auto& zone : quilt_.plan()->zones)
        if (drawing::inches(zone.area).contains(at))
            return words::fromCore(zone.id);
    return {};
}

QPointF QuiltItem::placeOf(const QString& id) const {
    if (quilt_.plan())
        for (const auto& zone : quilt_.plan()->zones)
            if (words::fromCore(zone.id) == id)
                return toPixels().map(drawing::inches(zone.area).center());
    return {-1, -1};
}

QPointF QuiltItem::inchesAt(qreal x, qreal y) const {
    return quilt_.plan() ? toPixels().inverted().map(QPointF{x, y}) : QPointF{};
}

QPointF QuiltItem::pixelsAt(qreal x, qreal y) const {
    return quilt_.plan() ? toPixels().map(QPointF{x, y}) : QPointF{};
}

void QuiltItem::paint(QPainter* painter) {
    if (!quilt_.plan())
        return;
    std::optional<TableScene> moment;
    if (moment_ >= 0) {
        const auto& setting = quilt_.planned()->session.setting;
        if (!scenes_)
            scenes_.emplace(quilt_.planned()->plan, setting.helpers, setting.start);
        moment = scenes_->at(quilt_.index(), Seconds{std::int64_t(moment_)});
    }
    const QTransform map = toPixels();
    const double ratio = window() ? window()->effectiveDevicePixelRatio() : 1;
    const Basting& basting = quilt_.job()->basting;
    const WayPoint& point = wayOf(basting.with).point;
    drawing::Scene scene{.plan = quilt_.plan(),
                         .top = &topAt(map.m11() * ratio),
                         .helpers = &quilt_.planned()->session.setting.helpers,
                         .unit = quilt_.planned()->plan.unit,
                         .shape = point.shape,
                         .pointLength =
                             (point.isPatch() ? basting.spacing : point.length(basting)).in(),
                         .pass = pass_,
                         .passBefore = passBefore_,
                         .moved = moved_,
                         .zone = zone_};
    if (moment) {
        scene.moment = &*moment;
        scene.pass = moment->pass;
        scene.passBefore = std::max(1, moment->pass - 1);
        scene.moved = moment->moved;
    }
    const drawing::Look look{.ground = ground_,
                             .paper = paper_,
                             .ink = ink_,
                             .wood = wood_,
                             .woodDark = woodDark_,
                             .backing = backing_,
                             .batting = batting_,
                             .accent = accent_,
                             .now = now_,
                             .nowInk = nowInk_,
                             .text = textSize_,
                             .figures = figures_,
                             .points = points_,
                             .family = family_};
    drawing::paint(*painter, scene, look, map);
    if (moment)
        drawing::paintPeople(*painter, *moment, quilt_, scene, look, map, size());
}
