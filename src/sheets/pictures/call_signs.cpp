#include "sheets/pictures/call_signs.h"

#include <QPainter>
#include <QSvgRenderer>

namespace bastewright::sheets {
namespace {

/// What is stroked and what is filled, as SVG path data on a grid of 24 × 24.
struct Outline {
    const char* strokes;
    const char* solids;
    int turned = 0; ///< degrees
};

Outline outline(Sign sign) {
    switch (sign) {
    case Sign::layers:
        return {"M20.5 5.2H6a2.3 2.3 0 0 0 0 4.6H20.5M20.5 9.8H6a2.4 2.4 0 0 0 0 4.8H20.5M20.5 "
                "14.6H6a2.3 2.3 0 0 0 0 4.6H20.5V5.2",
                "M13 5.2h3.6v4.6H13zM9.6 9.8h3.6v4.8H9.6zM13 14.6h3.6v4.6H13z"};
    case Sign::clamp:
        return {"M14.5 4.4H5.4V19.6H14.5M14.5 19.6V14.4M11.6 14.4h5.8M12.4 21.6h4.2",
                "M8.6 "
                "8.4H22v3.2H8.6z"};
    case Sign::pinOpen:
        return {"M3.6 8.2H20M3.6 8.2a2.3 2.3 0 1 0 0 4.6L20.4 21.6M3.6 8.2a2.3 2.3 0 0 1 0 4.6",
                "M18.4 5.8h2.2a4.7 4.7 0 0 1 0 9.4h-2.2c1.6-2.8 1.6-6.6 0-9.4z", -26};
    case Sign::palm:
        return {"M7.2 13.2V7.4a1.45 1.45 0 0 1 2.9 0v3.9M10.1 11V4.6a1.45 1.45 0 0 1 2.9 "
                "0V11M13 11V5.3a1.45 1.45 0 0 1 2.9 0v6.2M15.9 11.5V7.8a1.45 1.45 0 0 1 2.9 "
                "0V15c0 4.2-2.5 6.8-6.2 6.8-3 0-4.6-1.5-6.2-4.2l-2.9-3.7a1.45 1.45 0 0 1 "
                "2.4-1.6l1.3 1.7",
                ""};
    case Sign::pinClosed:
        return {"M3.6 9.7H20M3.6 14.3H20M3.6 9.7a2.3 2.3 0 1 0 0 4.6M3.6 9.7a2.3 2.3 0 0 1 0 4.6",
                "M18.4 7.3h2.2a4.7 4.7 0 0 1 0 9.4h-2.2z", -38};
    case Sign::under:
        return {"M5.4 8V20.6M18.6 8V20.6M7.4 14.6c2.8-3.4 6.4-3.4 9.2 0-2.8 3.4-6.4 3.4-9.2 0z",
                "M2.6 4.4H21.4V8H2.6zM12 13a1.6 1.6 0 1 0 .01 0z"};
    case Sign::slide:
        return {"M5.4 16V21.4M18.6 16V21.4M4 7.4H18.6M15.4 4.4l3.4 3-3.4 3",
                "M2.6 12.6H21.4V16H2.6z"};
    case Sign::needle:
        return {"M20.8 3.2L8.4 15.6M6.2 17.8a1.6 1.6 0 1 1-2.2-2.2c1-1 3.6-2.4 5.2-3.6M6 16.6c-1.8 "
                "2.2-3.6 4.4 0 4.4h3.2M12 21h3.6M18.4 21h3.2",
                ""};
    case Sign::dot:
        return {"M3.4 3.6H20.6V20.4H3.4z", "M9 9h6v6H9z"};
    case Sign::can:
        return {"M4.6 11.4H13.4V21.4H4.6zM6.6 11.4V8.4h4.8v3M7.8 8.4V5.6h2.4v2.8",
                "M12.2 5.4h2.4v1.6h-2.4zM16.6 5.2h1.8v1.8h-1.8zM16.2 2.4h1.8v1.8h-1.8zM16.2 "
                "8h1.8v1.8h-1.8zM20.2 1.4h1.8v1.8h-1.8zM20.6 5.2h1.8v1.8h-1.8zM20.2 "
                "9h1.8v1.8h-1.8z"};
    case Sign::iron:
        return {"M2.6 18.6H21.4V14.6c0-1.6-.5-3.2-1.5-4.6H11c-4.6 0-7.9 3.6-8.4 8.6zM11.4 "
                "9.8V8a2 2 0 0 1 2-2h4.4a2 2 0 0 1 2 2v1.8",
                "M6.5 14.6h12.6v1.8H5.7z"};
    case Sign::wait:
        return {"M20.4 12a8.4 8.4 0 1 1-8.4-8.4 8.4 8.4 0 0 1 8.4 8.4M12 7v5l3.4 2.2", ""};
    case Sign::chair:
        return {"M7 3.4V20.6M17 13V20.6M7 16.8H17", "M7 11.2H17.8V14H7z"};
    case Sign::lift:
        return {"M4.6 20.4c0-3 .8-4.4 3-4.4H11M19.4 20.4c0-3-.8-4.4-3-4.4H13M12 10.4V3M8.6 "
                "6.2L12 2.8l3.4 3.4",
                "M5.4 11.4H18.6V14.2H5.4z"};
    case Sign::roll:
        return {"M21 18.6H9.4a5.8 5.8 0 1 1 5.8-5.8a3.6 3.6 0 0 1-7.2 0a1.8 1.8 0 0 1 3.4-.8", ""};
    case Sign::care:
        return {"M12 2.6L20.2 7.3V16.7L12 21.4 3.8 16.7V7.3zM12 7.4V13.4",
                "M12 15.4a1.2 1.2 0 1 0 .01 0z"};
    }
    return {"", ""};
}

} // namespace

void drawSign(QPainter& p, QRectF box, Sign sign, const QColor& ink) {
    const Outline way = outline(sign);
    const QString svg =
        QStringLiteral("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 24 24'><g "
                       "transform='rotate(%4 12 12)'><path d='%1' fill='none' stroke='%3' "
                       "stroke-width='1.9' stroke-linecap='round' stroke-linejoin='round'/><path "
                       "d='%2' fill='%3'/></g></svg>")
            .arg(QLatin1String(way.strokes), QLatin1String(way.solids), ink.name())
            .arg(way.turned);
    QSvgRenderer{svg.toUtf8()}.render(&p, box);
}

} // namespace bastewright::sheets
