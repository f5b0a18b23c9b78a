#include "sheets/type.h"

#include <QFontDatabase>
#include <QGlyphRun>
#include <QRawFont>
#include <QStringList>
#include <QTextLayout>

#include <algorithm>

namespace bastewright::sheets {
namespace {

QStringList installedFamilies() {
    // A humanist sans for Latin, Greek and Cyrillic, its siblings for the scripts names come in
    // most, and DejaVu Sans last, which is always there.
    static const QStringList wanted{QStringLiteral("Noto Sans"), QStringLiteral("Noto Sans Hebrew"),
                                    QStringLiteral("Noto Sans Arabic"),
                                    QStringLiteral("DejaVu Sans")};
    const QStringList installed = QFontDatabase::families();
    QStringList found;
    for (const QString& family : wanted)
        if (installed.contains(family))
            found << family;
    if (found.isEmpty())
        found << QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
    return found;
}

QFont made(const QStringList& families, int size, bool bold) {
    QFont f;
    f.setFamilies(families);
    f.setPixelSize(size); // a pixel is a point: painters are scaled so
    f.setBold(bold);
    f.setHintingPreference(QFont::PreferNoHinting);
    f.setKerning(true);
    return f;
}

/// Families of the glyphs a text is drawn with.
QStringList familiesOf(const QString& text) {
    QTextLayout layout{text, font(type::kBody)};
    layout.beginLayout();
    layout.createLine();
    layout.endLayout();
    QStringList out;
    for (const QGlyphRun& run : layout.glyphRuns())
        out << run.rawFont().familyName();
    return out;
}

} // namespace

QFont font(int size, bool bold) {
    static const QStringList families = installedFamilies();
    return made(families, size, bold);
}

QFont titleFont(int size) {
    static const QStringList families = [] {
        const QStringList installed = QFontDatabase::families();
        QStringList found;
        for (const QString& family : {QStringLiteral("Noto Serif"), QStringLiteral("DejaVu Serif")})
            if (installed.contains(family))
                found << family;
        return found + installedFamilies();
    }();
    return made(families, size, true);
}

bool hasBold(const QString& letters) {
    const QStringList families = familiesOf(letters);
    return std::ranges::all_of(families, [](const QString& family) {
        const QStringList styles = QFontDatabase::styles(family);
        return styles.isEmpty() || std::ranges::any_of(styles, [&](const QString& style) {
                   return QFontDatabase::weight(family, style) >= QFont::DemiBold;
               });
    });
}

} // namespace bastewright::sheets
