#include "view/paint/cloth.h"

#include "sheets/pictures/top_photo.h"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

using namespace bastewright;

namespace cloth {
namespace {

QRectF inInches(const Rect& r) {
    return {QPointF{r.x0.in(), r.y0.in()}, QPointF{r.x1.in(), r.y1.in()}};
}

/// The print of a fabric: one tile that repeats.
enum class Print { plain, dots, sprigs, stripes, checks };

QColor mixed(const QColor& a, const QColor& b, qreal share) {
    return QColor::fromRgbF(float(a.redF() + (b.redF() - a.redF()) * share),
                            float(a.greenF() + (b.greenF() - a.greenF()) * share),
                            float(a.blueF() + (b.blueF() - a.blueF()) * share));
}

QBrush fabric(const QColor& colour, Print print) {
    constexpr int kTile = 8;
    QImage tile{kTile, kTile, QImage::Format_RGB32};
    tile.fill(colour);
    QPainter p{&tile};
    // The weave: every other thread a little darker.
    const QColor thread = colour.darker(106);
    for (int y = 0; y < kTile; y += 2)
        p.fillRect(0, y, kTile, 1, thread);
    const bool dark = colour.lightnessF() < 0.55F;
    const QColor ink = mixed(colour, dark ? Qt::white : Qt::black, dark ? 0.34 : 0.16);
    switch (print) {
    case Print::plain:
        break;
    case Print::dots:
        p.fillRect(1, 1, 2, 2, ink);
        p.fillRect(5, 5, 2, 2, ink);
        break;
    case Print::sprigs:
        for (const QPoint& at : {QPoint{1, 2}, QPoint{2, 1}, QPoint{5, 5}, QPoint{6, 6}})
            p.fillRect(QRect{at, QSize{1, 1}}, ink);
        break;
    case Print::stripes:
        p.fillRect(2, 0, 1, kTile, ink);
        p.fillRect(6, 0, 1, kTile, ink);
        break;
    case Print::checks:
        p.fillRect(0, 0, 4, 4, mixed(colour, ink, 0.6));
        p.fillRect(4, 4, 4, 4, mixed(colour, ink, 0.6));
        break;
    }
    return QBrush{tile};
}

/// Where the seams inside a block divide a side of it, ends included.
std::vector<double> divided(const std::vector<Length>& seams, Length side) {
    std::vector<double> out{0};
    for (const Length l : seams)
        out.push_back(l.in());
    out.push_back(side.in());
    std::ranges::sort(out);
    return out;
}

constexpr int kPinScale = 2; ///< pixels of its image for each on the screen

QImage drawnPin(qreal length, qreal angle, bool open) {
    const int side = int(std::ceil(length * 1.3)) + 4;
    QImage image{QSize{side, side} * kPinScale, QImage::Format_ARGB32_Premultiplied};
    image.fill(Qt::transparent);
    QPainter painter{&image};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(kPinScale, kPinScale);
    painter.translate(side / 2.0, side / 2.0);
    painter.rotate(angle * 180 / M_PI);
    const qreal half = length / 2, thick = std::max(1.0, length * 0.12);
    QPainterPath wire;
    wire.moveTo(half, -thick);
    wire.lineTo(-half + thick, -thick);
    wire.cubicTo(-half - thick, -thick, -half - thick, thick, -half + thick, thick);
    wire.lineTo(half, open ? thick * 3 : thick);
    for (const auto& [colour, width] : {std::pair{QColor{16, 20, 34}, thick * 2.6},
                                        std::pair{QColor{255, 255, 255}, thick * 1.3}})
        painter.strokePath(wire, QPen{colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    return image;
}

/// A pin is drawn once for each size and of a few angles; there are hundreds in a picture. For the
/// thread of the screen only.
const QImage& pinImage(qreal length, qreal angle, bool open) {
    constexpr int kAngles = 64;
    constexpr std::size_t kMostKept = 500;
    static std::map<std::tuple<int, int, bool>, QImage> kept;
    if (kept.size() > kMostKept)
        kept.clear();
    const int turned = int(std::lround(angle / (2 * M_PI) * kAngles));
    const int sized = std::max(4, int(std::lround(length)));
    QImage& image = kept[{sized, turned, open}];
    if (image.isNull())
        image = drawnPin(sized, turned * 2 * M_PI / kAngles, open);
    return image;
}

} // namespace

Fabrics fabricsOf(const Top& top) {
    const auto own = [&](std::size_t i) {
        const Colour& c = top.fabrics[i];
        return QColor{c.red, c.green, c.blue};
    };
    switch (top.fabrics.size()) {
    case 2:
        return {own(0), own(0), own(0), own(1)};
    case 3:
        return {own(0), own(1), own(1), own(2)};
    case 4:
        return {own(0), own(1), own(2), own(3)};
    default:
        return {QColor{0x27, 0x36, 0x5c}, QColor{0x5e, 0x86, 0x90}, QColor{0xc9, 0x7f, 0x68},
                QColor{0xec, 0xe6, 0xd8}};
    }
}

std::vector<Rect> blocksOf(const Top& top) {
    std::vector<Rect> out;
    if (!top.grid)
        return out;
    const BlockGrid& grid = *top.grid;
    const Point first = grid.firstBlock(topRect(top));
    for (int row = 0; row < grid.rows; ++row)
        for (int column = 0; column < grid.columns; ++column) {
            const Length x = first.x + column * (grid.block + grid.sashing);
            const Length y = first.y + row * (grid.blockHeight() + grid.sashing);
            out.push_back({x, y, x + grid.block, y + grid.blockHeight()});
        }
    return out;
}

namespace {

void paintFabrics(QPainter& painter, const Top& top, const QTransform& map) {
    const Rect area = topRect(top);
    const Fabrics fabrics = fabricsOf(top);
    painter.setPen(Qt::NoPen);
    const auto fill = [&](const QRectF& inches, const QBrush& brush) {
        painter.fillRect(map.mapRect(inches), brush);
    };
    const QBrush border = fabric(fabrics.border, Print::dots),
                 second = fabric(fabrics.second, Print::sprigs),
                 accent = fabric(fabrics.accent, Print::checks),
                 light = fabric(fabrics.light, Print::plain);
    fill(inInches(area), top.grid ? border : second);
    if (top.grid) {
        const BlockGrid& grid = *top.grid;
        const auto blocks = blocksOf(top);
        fill(inInches({blocks.front().x0, blocks.front().y0, blocks.back().x1, blocks.back().y1}),
             light);
        const auto across = divided(grid.innerX, grid.block),
                   down = divided(grid.innerY, grid.blockHeight());
        const QBrush* const turns[] = {&border, &accent, &second};
        const auto columns = std::size_t(grid.columns);
        for (std::size_t i = 0; i < blocks.size(); ++i) {
            const std::size_t own = i / columns + i % columns;
            const QRectF block = inInches(blocks[i]);
            for (std::size_t y = 0; y + 1 < down.size(); ++y)
                for (std::size_t x = 0; x + 1 < across.size(); ++x) {
                    const QRectF patch{block.left() + across[x], block.top() + down[y],
                                       across[x + 1] - across[x], down[y + 1] - down[y]};
                    fill(patch, (x + y) % 2 == 0 ? *turns[own % 3] : light);
                }
        }
        // Posts where strips of sashing cross.
        for (int row = 1; row < grid.rows && grid.sashing > Length{}; ++row)
            for (int column = 1; column < grid.columns; ++column) {
                const QRectF next =
                    inInches(blocks[std::size_t(row) * columns + std::size_t(column)]);
                const double s = grid.sashing.in();
                fill({next.left() - s, next.top() - s, s, s}, border);
            }
    }
    paintSeams(painter, top, map);
}

/// A part of the photo, in so many pixels: scaled once and well, not by the painter each time.
QImage photoOf(const QImage& photo, const Top& top, const QRectF& area, QSize pixels) {
    const Rect whole = topRect(top);
    const qreal across = photo.width() / whole.width().in(),
                down = photo.height() / whole.length().in();
    const QRect part =
        QRectF{area.left() * across, area.top() * down, area.width() * across, area.height() * down}
            .toAlignedRect()
            .intersected(photo.rect());
    return photo.copy(part).scaled(pixels, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
}

} // namespace

void paintSeams(QPainter& painter, const Top& top, const QTransform& map) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{QColor{10, 14, 30, 90}, 1});
    for (const auto& s : seamsOf(top))
        painter.drawLine(map.map(QPointF{s.from.x.in(), s.from.y.in()}),
                         map.map(QPointF{s.to.x.in(), s.to.y.in()}));
}

void paintTop(QPainter& painter, const Top& top, const QTransform& map) {
    const QImage photo = sheets::photoInColour(top.photo);
    if (photo.isNull())
        return paintFabrics(painter, top, map);
    const QRectF inches = inInches(topRect(top)), pixels = map.mapRect(inches);
    const qreal ratio = painter.device() ? painter.device()->devicePixelRatioF() : 1;
    painter.drawImage(pixels, photoOf(photo, top, inches, (pixels.size() * ratio).toSize()));
}

QImage pictureOf(const Top& top, QRectF area, QSize pixels) {
    if (pixels.isEmpty() || area.isEmpty())
        return {};
    if (const QImage photo = sheets::photoInColour(top.photo); !photo.isNull())
        return photoOf(photo, top, area, pixels)
            .convertToFormat(QImage::Format_ARGB32_Premultiplied);
    QImage out{pixels, QImage::Format_ARGB32_Premultiplied};
    out.fill(Qt::transparent);
    QPainter painter{&out};
    QTransform map;
    map.scale(pixels.width() / area.width(), pixels.height() / area.height());
    map.translate(-area.left(), -area.top());
    paintFabrics(painter, top, map);
    return out;
}

QBrush backingFabric(const QColor& colour) {
    return fabric(colour, Print::stripes);
}

void paintBacking(QPainter& painter, const QRectF& pixels, const QColor& colour) {
    painter.fillRect(pixels, backingFabric(colour));
    painter.setPen(QPen{colour.darker(150), 1});
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(pixels);
}

void paintBatting(QPainter& painter, const QRectF& pixels, const QColor& colour) {
    painter.setPen(Qt::NoPen);
    QColor soft = colour;
    for (const auto& [out, alpha] :
         {std::pair{1.5, 90}, std::pair{0.5, 160}, std::pair{0.0, 255}}) {
        soft.setAlpha(alpha);
        painter.setBrush(soft);
        painter.drawRoundedRect(pixels.adjusted(-out, -out, out, out), 2 + out, 2 + out);
    }
}

void paintSewn(QPainter& painter, const QPainterPath& pixels, qreal pixelsPerInch) {
    // One stitch with the furrow it pulls, as a tile that repeats: dashed lines take long to draw.
    constexpr int kStitch = 6;
    const int step = std::max(4, int(std::lround(kSewnInches * pixelsPerInch)));
    QImage tile{kStitch, step, QImage::Format_ARGB32_Premultiplied};
    tile.fill(QColor{20, 26, 48, 26});
    QPainter p{&tile};
    p.fillRect(0, step / 2 + 1, kStitch, 1, QColor{10, 14, 34, 80});
    p.fillRect(0, step / 2, kStitch - 2, 1, QColor{255, 253, 246, 200});
    p.end();
    const QRectF all = pixels.boundingRect();
    QBrush brush{tile};
    brush.setTransform(QTransform::fromTranslate(std::floor(all.left()), std::floor(all.top())));
    painter.fillPath(pixels, brush);
}

void paintWood(QPainter& painter, const QRectF& pixels, const QColor& wood, const QColor& dark) {
    painter.fillRect(pixels, wood);
    painter.save();
    painter.setClipRect(pixels, Qt::IntersectClip);
    QColor grain = dark;
    grain.setAlpha(46);
    painter.setPen(QPen{grain, 1});
    const bool along = pixels.width() >= pixels.height();
    const qreal span = along ? pixels.height() : pixels.width();
    for (qreal at = 3; at < span; at += 5)
        painter.drawLine(
            along ? QLineF{pixels.left(), pixels.top() + at, pixels.right(), pixels.top() + at + 1}
                  : QLineF{pixels.left() + at, pixels.top(), pixels.left() + at + 1,
                           pixels.bottom()});
    painter.restore();
}

void paintOpen(QPainter& painter, const QRectF& pixels, qreal line, const QColor& thread,
               const QColor& outline) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen{outline, line * 3.4});
    painter.drawRect(pixels);
    painter.setPen(QPen{thread, line * 2.2, Qt::DashLine, Qt::FlatCap});
    painter.drawRect(pixels);
}

void paintStitch(QPainter& painter, QPointF at, qreal length, qreal angle, qreal line) {
    const QPointF half{length / 2 * std::cos(angle), length / 2 * std::sin(angle)};
    for (const auto& [colour, width] :
         {std::pair{kOutline, line * 2.6}, std::pair{kThread, line * 1.5}}) {
        painter.setPen(QPen{colour, width, Qt::SolidLine, Qt::RoundCap});
        painter.drawLine(at - half, at + half);
    }
}

void paintPatch(QPainter& painter, const QRectF& pixels, qreal line) {
    constexpr qreal kWithin = 0.06;
    const qreal in = kWithin * std::min(pixels.width(), pixels.height());
    const QRectF wet = pixels.adjusted(in, in, -in, -in);
    QColor mist = kThread;
    mist.setAlpha(120);
    painter.setBrush(mist);
    painter.setPen(QPen{kOutline, line});
    painter.drawRoundedRect(wet, 2 * in, 2 * in);
}

void paintPin(QPainter& painter, QPointF at, qreal length, qreal angle, bool open) {
    const QImage& image = pinImage(length, angle, open);
    const QSizeF size = QSizeF{image.size()} / kPinScale;
    painter.drawImage(QRectF{at - QPointF{size.width() / 2, size.height() / 2}, size}, image);
}

} // namespace cloth
