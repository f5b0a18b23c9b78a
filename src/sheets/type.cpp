#include "sheets/type.h"

#include <QFontDatabase>
#include <QStringList>

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

} // namespace

QFont font(int size, bool bold) {
    static const QStringList families = installedFamilies();
    QFont f;
    f.setFamilies(families);
    f.setPixelSize(size); // a pixel is a point: painters are scaled so
    f.setBold(bold);
    f.setHintingPreference(QFont::PreferNoHinting);
    f.setKerning(true);
    return f;
}

} // namespace bastewright::sheets
