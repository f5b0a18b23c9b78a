#include "view/base/glyph.h"

#include <QHash>
#include <QPainter>
#include <QPainterPath>
#include <QSvgRenderer>

namespace {

/// Outlines as SVG path data on a 24 × 24 grid, stroked with a round pen.
const QHash<QString, QByteArray>& outlines() {
    static const QHash<QString, QByteArray> all{
        {"back", "M14 5 L7 12 L14 19"},
        {"forward", "M10 5 L17 12 L10 19"},
        {"up", "M5 15 L12 8 L19 15"},
        {"down", "M5 9 L12 16 L19 9"},
        {"plus", "M12 4 V20 M4 12 H20"},
        {"minus", "M4 12 H20"},
        {"cross", "M6 6 L18 18 M18 6 L6 18"},
        {"check", "M4 13 L10 19 L20 6"},
        {"undo", "M9 5 L4 10 L9 15 M4 10 H14 C21 10 21 19 14 19 H10"},
        {"redo", "M15 5 L20 10 L15 15 M20 10 H10 C3 10 3 19 10 19 H14"},
        {"open", "M3 19 V6 H9 L11 9 H20 V19 Z"},
        {"save", "M12 3 V14 M7 9 L12 14 L17 9 M4 17 V20 H20 V17"},
        {"copy", "M8 8 H20 V20 H8 Z M4 16 V4 H16"},
        {"remove", "M5 7 H19 M9 7 V4 H15 V7 M7 7 L8 20 H16 L17 7"},
        {"sheet", "M6 3 H15 L19 7 V21 H6 Z M9 12 H16 M9 16 H16"},
        {"start", "M7 4 L19 12 L7 20 Z"},
        {"turn", "M18 8 C15 3 6 4 5 11 C4 18 13 22 18 16 M18 3 V9 H12"},
        {"note", "M12 3 A9 9 0 1 0 12.01 3 Z M12 11 V17 M12 7 V7.5"},
        {"warn", "M12 3 L22 20 H2 Z M12 9 V14 M12 17 V17.5"},
        {"stop", "M8 3 H16 L21 8 V16 L16 21 H8 L3 16 V8 Z M8 8 L16 16 M16 8 L8 16"},
        {"person", "M12 4 A4 4 0 1 0 12.01 4 Z M4 21 C4 13 20 13 20 21"},
        {"eye", "M2 12 C7 4 17 4 22 12 C17 20 7 20 2 12 Z M12 9 A3 3 0 1 0 12.01 9 Z"},
        {"pin", "M4 20 L13 11 M11 9 L15 13 L20 8 L16 4 Z"},
        {"lift", "M5 13 H19 V16 H5 Z M6 16 V21 M18 16 V21 M12 10 V3 M8.5 6.5 L12 3 L15.5 6.5"},
        {"iron", "M2 18 H21 V12 H10 C6 12 3 14 2 18 Z M10 12 C10 9 11 7 13 7 H17 L20 12"},
        {"chair", "M7 3 V21 M7 13 H17 V21"},
        {"breath",
         "M12 3 V10 M12 9 C6 8 3 14 3 20 C6 21 10 19 10 15 V12 M12 9 C18 8 21 14 21 20 C18 21 14 "
         "19 14 15 V12"},
        {"safetypin",
         "M4.6 16 A3 3 0 1 0 8.6 19.4 L20 9 M4.6 16 L16 4.5 M15 5.5 C16 1.5 24 5 20 9.5"},
        {"apart", "M3 7 H9 V17 H3 Z M15 7 H21 V17 H15 Z M11 12 H13"},
        {"together", "M4 7 H12 V17 H4 Z M12 7 H20 V17 H12 Z"},
        {"quilt", "M4 4 H20 V20 H4 Z M12 4 V20 M4 12 H20"},
        {"table", "M3 8 H21 V11 H3 Z M6 11 V20 M18 11 V20"},
        {"layers", "M3 9 L12 4 L21 9 L12 14 Z M3 13 L12 18 L21 13"},
        {"box", "M4 8 L12 4 L20 8 V17 L12 21 L4 17 Z M4 8 L12 12 L20 8 M12 12 V21"},
        {"clock", "M12 3 A9 9 0 1 0 12.01 3 Z M12 7 V12 L16 14"},
        {"ways", "M5 20 V12 L12 5 L19 12 V20 M12 5 V20"},
        {"why", "M8 9 C8 3 16 3 16 9 C16 12 12 12 12 15 M12 19 V19.5"},
        {"wall", "M3 5 H21 V19 H3 Z M3 12 H21 M9 5 V12 M15 12 V19"},
        {"seam", "M3 17 L7 13 M9 11 L13 7 M15 5 L18 2 M3 21 L21 3"},
        {"lean", "M7 20 L3 20 L7 4 H21 L17 20 Z M7 4 V20"},
        {"share", "M12 15 V3 M8 7 L12 3 L16 7 M6 11 H4 V21 H20 V11 H18"},
        {"phone", "M7 2 H17 V22 H7 Z M11 19 H13"},
        {"pause", "M8 5 V19 M16 5 V19"},
        {"lanes", "M3 6 H12 M15 6 H20 M3 12 H7 M10 12 H21 M3 18 H15 M18 18 H21"},
        {"swap", "M4 8 H19 M15 4 L19 8 L15 12 M20 16 H5 M9 12 L5 16 L9 20"},
        {"space", "M4 11 V17 H20 V11"},
        {"write", "M4 20 L5 15 L16 4 L20 8 L9 19 Z M14 6 L18 10"},
        {"erase", "M9 5 H21 V19 H9 L3 12 Z M12 9 L18 15 M18 9 L12 15"},
    };
    return all;
}

} // namespace

Glyph::Glyph(QQuickItem* parent)
    : QQuickPaintedItem{parent} {}

void Glyph::setName(const QString& name) {
    if (name == name_)
        return;
    if (!name.isEmpty() && !outlines().contains(name))
        qWarning("There is no drawing called '%s'.", qUtf8Printable(name));
    name_ = name;
    update();
    emit changed();
}

void Glyph::setColor(const QColor& color) {
    if (color == color_)
        return;
    color_ = color;
    update();
    emit changed();
}

void Glyph::paint(QPainter* painter) {
    const auto path = outlines().value(name_);
    if (path.isEmpty())
        return;
    QSvgRenderer svg{
        QByteArray{"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 24 24'><path d='"} + path +
        QByteArray{"' fill='none' stroke-width='2.2' stroke-linecap='round' "
                   "stroke-linejoin='round' stroke='"} +
        color_.name().toLatin1() + QByteArray{"'/></svg>"}};
    const qreal side = std::min(width(), height());
    svg.render(painter, QRectF{(width() - side) / 2, (height() - side) / 2, side, side});
}
