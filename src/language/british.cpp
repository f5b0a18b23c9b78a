#include "language/british.h"

#include <QRegularExpression>

#include <array>

namespace bastewright::language {
namespace {

struct Pair {
    const char* american;
    const char* british;
};
// Common practice: British quilters say wadding; the rest is spelling.
constexpr std::array kPairs{
    Pair{"batting", "wadding"},
    Pair{"battings", "waddings"},
    Pair{"center", "centre"},
    Pair{"centers", "centres"},
    Pair{"centered", "centred"},
    Pair{"color", "colour"},
    Pair{"colors", "colours"},
    Pair{"gray", "grey"},
    Pair{"meter", "metre"},
    Pair{"meters", "metres"},
    Pair{"centimeters", "centimetres"},
    Pair{"millimeters", "millimetres"},
    Pair{"neighbor", "neighbour"},
    Pair{"neighbors", "neighbours"},
    Pair{"synchronization", "synchronisation"},
    Pair{"toward", "towards"},
};

QString ofWord(const QString& word) {
    for (const Pair& pair : kPairs)
        if (word.compare(QLatin1String(pair.american), Qt::CaseInsensitive) == 0) {
            QString out = QLatin1String(pair.british);
            if (word[0].isUpper())
                out[0] = out[0].toUpper();
            return out;
        }
    return {};
}

} // namespace

QString inBritish(const QString& american) {
    // Not the names of fields in files ("/batting", "batting.width").
    static const QRegularExpression word{QStringLiteral("(?<![\\w/.])[A-Za-z]+(?![\\w]|\\.\\w)")};
    QString out;
    qsizetype from = 0;
    for (auto found = word.globalMatch(american); found.hasNext();) {
        const auto match = found.next();
        const QString other = ofWord(match.captured());
        if (other.isNull())
            continue;
        out += QStringView{american}.mid(from, match.capturedStart() - from);
        out += other;
        from = match.capturedEnd();
    }
    if (from == 0)
        return {};
    out += QStringView{american}.mid(from);
    return out;
}

QString British::translate(const char*, const char* source, const char*, int) const {
    return inBritish(QString::fromUtf8(source));
}

} // namespace bastewright::language
