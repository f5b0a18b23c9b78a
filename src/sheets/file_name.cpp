#include "sheets/file_name.h"

namespace bastewright::sheets {

QString fileStem(const std::string& name) {
    constexpr int kLongest = 50;
    QString stem;
    for (const QChar c : QString::fromStdString(name).toLower()) {
        if (c.isLetterOrNumber() || c.isMark())
            stem += c;
        else if (!stem.isEmpty() && !stem.endsWith(u'-'))
            stem += u'-';
    }
    stem.truncate(kLongest);
    while (stem.endsWith(u'-'))
        stem.chop(1);
    return stem.isEmpty() ? QStringLiteral("quilt") : stem;
}

} // namespace bastewright::sheets
