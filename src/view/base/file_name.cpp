#include "view/base/file_name.h"

#include <QCoreApplication>
#include <QRegularExpression>

QString fileName(const QString& title) {
    constexpr qsizetype kLongest = 80;
    static const QRegularExpression kNotInNames{QStringLiteral(R"([\\/:*?"<>|\x00-\x1f\x7f])")};
    QString name = title;
    name.replace(kNotInNames, QStringLiteral("-"));
    if (name.size() > kLongest)
        name.truncate(kLongest - (name[kLongest - 1].isHighSurrogate() ? 1 : 0));
    name = name.trimmed();
    if (name.isEmpty() || name.startsWith(QLatin1Char('.')))
        name.prepend(QCoreApplication::translate("FileName", "Quilt"));
    return name;
}
