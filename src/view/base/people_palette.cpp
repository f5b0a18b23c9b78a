#include "view/base/people_palette.h"

#include "sheets/crew_key.h"
#include "view/base/words.h"

#include <QPainter>

#include <algorithm>
#include <array>

namespace people {
namespace {

struct Mark {
    QRgb fill, ink;
    Qt::BrushStyle pattern;
};
constexpr QRgb kPale = 0xd8ffffff;
constexpr std::array<Mark, kMarks> kLook{{
    {0xff56b4e9, kPale, Qt::Dense6Pattern},
    {0xffcc79a7, kPale, Qt::BDiagPattern},
    {0xff009e73, kPale, Qt::HorPattern},
    {0xff4a4f5c, kPale, Qt::CrossPattern},
    {0xffd8d2f0, 0xff4a3f86, Qt::DiagCrossPattern},
    {0xff0072b2, kPale, Qt::VerPattern},
    {0xffa5815a, kPale, Qt::FDiagPattern},
}};

const Mark& look(int mark) {
    return kLook[std::size_t(mark < 0 ? 0 : mark % kMarks)];
}

} // namespace

QColor fill(int mark) {
    return QColor::fromRgb(look(mark).fill);
}
QColor ink(int mark) {
    return QColor::fromRgba(look(mark).ink);
}
Qt::BrushStyle pattern(int mark) {
    return look(mark).pattern;
}

void paintMark(QPainter& painter, QRectF square, int mark, const QString& letter,
               const QString& family) {
    const qreal side = square.width();
    if (side < 4)
        return;
    const QColor dark{0x14, 0x1a, 0x28};
    const qreal rim = std::max(1.0, side / 22);
    const QRectF disc = square.adjusted(rim / 2, rim / 2, -rim / 2, -rim / 2);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(fill(mark));
    painter.drawEllipse(disc);
    painter.setBrush(QBrush{ink(mark), pattern(mark)});
    painter.drawEllipse(disc);
    // Domed like a covered button: light above, shade below.
    QLinearGradient dome{disc.topLeft(), disc.bottomRight()};
    dome.setColorAt(0, QColor{255, 255, 255, 90});
    dome.setColorAt(0.5, QColor{255, 255, 255, 0});
    dome.setColorAt(1, QColor{0, 0, 0, 70});
    painter.setBrush(dome);
    painter.setPen(QPen{dark, rim});
    painter.drawEllipse(disc);
    const qreal ring = side * 0.17;
    const QRectF plain = disc.adjusted(ring, ring, -ring, -ring);
    painter.setBrush(QColor{0xff, 0xfd, 0xf6});
    painter.setPen(QPen{dark, std::max(1.0, side / 40)});
    painter.drawEllipse(plain);
    QFont font{family};
    font.setBold(true);
    font.setPixelSize(std::max(6, int(plain.height() * (letter.size() < 2   ? 0.78
                                                        : letter.size() < 3 ? 0.58
                                                                            : 0.42))));
    painter.setFont(font);
    painter.drawText(plain, Qt::AlignCenter, letter);
}

void paintFabric(QPainter& painter, const QRectF& area, int mark, const QPen& edge) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(fill(mark));
    painter.drawRect(area);
    painter.setPen(edge);
    painter.setBrush(QBrush{ink(mark), pattern(mark)});
    painter.drawRect(area);
}

QStringList names(const std::vector<bastewright::Helper>& helpers) {
    QStringList out;
    for (const auto& helper : helpers)
        out << words::fromCore(helper.name);
    return out;
}

QStringList letters(const std::vector<bastewright::Helper>& helpers) {
    return bastewright::sheets::CrewKey{helpers}.all();
}

QString atAGlance(const std::vector<std::string>& people,
                  const std::vector<bastewright::Helper>& helpers) {
    QStringList names;
    for (const auto& person : people)
        names << words::fromCore(person);
    QString line = names.join(QStringLiteral(", "));
    constexpr qsizetype kGlance = 24;
    if (line.size() <= kGlance)
        return line;
    return bastewright::sheets::CrewKey{helpers}.letters(people).join(QStringLiteral(", "));
}

} // namespace people
