#include "view/people_palette.h"

#include "sheets/crew_key.h"
#include "view/words.h"

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
    const QString line = names.join(QStringLiteral(", "));
    constexpr qsizetype kGlance = 24;
    if (line.size() <= kGlance)
        return line;
    return bastewright::sheets::CrewKey{helpers}.letters(people).join(QStringLiteral(", "));
}

} // namespace people
