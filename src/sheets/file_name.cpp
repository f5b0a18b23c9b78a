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

QString fileStem(const Session& session) {
    const QString stem = fileStem(session.jobs.empty() ? std::string{} : session.jobs.front().name);
    return session.jobs.size() > 1
               ? QStringLiteral("%1-and-%2-more").arg(stem).arg(session.jobs.size() - 1)
               : stem;
}

} // namespace bastewright::sheets
