#include "sheets/file_name.h"

namespace bastewright::sheets {

QString fileStem(const std::string& name) {
    constexpr int kLongest = 50;
    QString stem;
    const QString lower = QString::fromStdString(name).toLower();
    for (const QChar c : lower) {
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
