#include "view/base/people_palette.h"

#include "sheets/crew_key.h"
#include "view/base/words.h"

#include <QPainter>

#include <algorithm>
#include <array>

namespace people {
namespace {

struct Mark {
    QRgb fill;
    Qt::BrushStyle pattern;
};
constexpr std::array<Mark, kMarks> kLook{{
    {0xff56b4e9, Qt::NoBrush},
    {0xffe69f00, Qt::BDiagPattern},
    {0xff009e73, Qt::HorPattern},
    {0xfff0e442, Qt::DiagCrossPattern},
    {0xffcc79a7, Qt::VerPattern},
    {0xff0072b2, Qt::FDiagPattern},
    {0xffd55e00, Qt::CrossPattern},
}};

const Mark& look(int mark) {
    return kLook[std::size_t(mark < 0 ? 0 : mark % kMarks)];
}

} // namespace

QColor fill(int mark) {
    return QColor::fromRgb(look(mark).fill);
}
Qt::BrushStyle pattern(int mark) {
    return look(mark).pattern;
}

void paintMark(QPainter& painter, QRectF square, int mark, const QString& letter,
               const QString& family) {
    const qreal side = square.width();
    if (side < 4)
        return;
    const QColor ink{0x14, 0x21, 0x2b};
    const qreal line = std::max(1.0, side / 22);
    const QRectF disc = square.adjusted(line / 2, line / 2, -line / 2, -line / 2);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(fill(mark));
    painter.drawEllipse(disc);
    painter.setBrush(QBrush{ink, pattern(mark)});
    painter.setPen(QPen{ink, line});
    painter.drawEllipse(disc);
    const qreal ring = side * 0.17;
    const QRectF plain = disc.adjusted(ring, ring, -ring, -ring);
    painter.setBrush(Qt::white);
    painter.drawEllipse(plain);
    QFont font{family};
    font.setBold(true);
    font.setPixelSize(std::max(6, int(plain.height() * (letter.size() < 2   ? 0.78
                                                        : letter.size() < 3 ? 0.58
                                                                            : 0.42))));
    painter.setFont(font);
    painter.drawText(plain, Qt::AlignCenter, letter);
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
