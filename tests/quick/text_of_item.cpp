#include "quick/text_of_item.h"

#include <QFont>
#include <QFontMetricsF>
#include <QJSValue>
#include <QTextBoundaryFinder>
#include <QTextLayout>
#include <QVariant>

namespace bastewright::app {
namespace {

constexpr qreal kRounding = 1.5;

// As the QML type Text numbers them.
constexpr int kWrapAtWordOrAnywhere = 4;
constexpr int kNativeRendering = 1;

QFont fontOf(const QQuickItem& text) {
    auto font = text.property("font").value<QFont>();
    font.setPixelSize(std::max(1, int(sizeOfType(text))));
    return font;
}

QRectF inside(const QQuickItem& text) {
    const auto number = [&](const char* name) { return text.property(name).toReal(); };
    return {number("leftPadding"), number("topPadding"),
            text.width() - number("leftPadding") - number("rightPadding"),
            text.height() - number("topPadding") - number("bottomPadding")};
}

} // namespace

QString describe(const QQuickItem& item) {
    const QString text = item.property("text").toString();
    QString named = item.objectName();
    for (const auto* above = &item; named.isEmpty() && above; above = above->parentItem())
        named = above->objectName();
    return QStringLiteral("%1 %2 “%3” (%4 × %5)")
        .arg(QString::fromLatin1(item.metaObject()->className()).section(QLatin1Char('_'), 0, 0),
             named, text.left(80))
        .arg(qRound(item.width()))
        .arg(qRound(item.height()));
}

QRectF inkRect(const QQuickItem& text) {
    const QRectF room = inside(text);
    const qreal wide = text.property("contentWidth").toReal(),
                high = text.property("contentHeight").toReal();
    const int across = text.property("effectiveHorizontalAlignment").toInt();
    const int down = text.property("verticalAlignment").toInt();
    const qreal x = across & Qt::AlignHCenter ? (room.width() - wide) / 2
                    : across & Qt::AlignRight ? room.width() - wide
                                              : 0;
    const qreal y = down & Qt::AlignVCenter  ? (room.height() - high) / 2
                    : down & Qt::AlignBottom ? room.height() - high
                                             : 0;
    const QFontMetricsF metrics{fontOf(text)};
    const QRectF tight = metrics.tightBoundingRect(text.property("text").toString());
    const qreal above = std::max(0.0, metrics.ascent() + tight.top()),
                below = std::max(0.0, metrics.descent() - tight.bottom());
    return {room.left() + x, room.top() + y + above, wide, std::max(1.0, high - above - below)};
}

qreal sizeOfType(const QQuickItem& text) {
    constexpr int kFixed = 0; // nothing is shrunk
    if (text.property("fontSizeMode").toInt() != kFixed)
        return text.property("fontInfo")
            .value<QJSValue>()
            .property(QStringLiteral("pixelSize"))
            .toNumber();
    return text.property("font").value<QFont>().pixelSize();
}

QString whatIsCut(const QQuickItem& text) {
    if (text.property("truncated").toBool())
        return QStringLiteral("elided");
    const QRectF room = inside(text);
    if (text.property("contentWidth").toReal() > room.width() + kRounding)
        return QStringLiteral("wider than its item");
    if (text.property("contentHeight").toReal() > room.height() + kRounding)
        return QStringLiteral("higher than its item");
    return {};
}

QString brokenWord(const QQuickItem& text) {
    if (text.property("wrapMode").toInt() != kWrapAtWordOrAnywhere)
        return {};
    for (const QString& line : text.property("text").toString().split(QLatin1Char('\n'))) {
        QTextLayout layout{line, fontOf(text)};
        QTextOption option;
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        option.setUseDesignMetrics(text.property("renderType").toInt() != kNativeRendering);
        layout.setTextOption(option);
        QTextBoundaryFinder between{QTextBoundaryFinder::Line, line};
        layout.beginLayout();
        for (auto row = layout.createLine(); row.isValid(); row = layout.createLine()) {
            row.setLineWidth(inside(text).width());
            const int end = row.textStart() + row.textLength();
            if (end >= line.size())
                continue;
            if (line[end - 1].isSpace() || line[end].isSpace())
                continue;
            between.setPosition(end);
            if (!between.isAtBoundary())
                return QStringLiteral("broken after “%1”")
                    .arg(line.mid(row.textStart(), row.textLength()));
        }
        layout.endLayout();
    }
    return {};
}

} // namespace bastewright::app
