#include "language/said.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>
#include <QTime>

#include <array>

namespace bastewright::language {
namespace {

/// Fills all places in one sweep: a name may itself hold a "%1".
QString filled(const QString& form, const Sentences& values) {
    QString out;
    for (qsizetype i = 0; i < form.size(); ++i) {
        const int place =
            form[i] == QLatin1Char('%') && i + 1 < form.size() ? form[i + 1].digitValue() : -1;
        if (place < 1 || place > int(values.size())) {
            out += form[i];
            continue;
        }
        out += said(values[std::size_t(place - 1)]);
        ++i;
    }
    return out;
}

/// The sign of a fraction of eighths, quarters or halves; null for any other.
QChar sign(int over, int under) {
    static constexpr std::array kEighths{u'⅛', u'¼', u'⅜', u'½', u'⅝', u'¾', u'⅞'};
    if (under != 2 && under != 4 && under != 8)
        return {};
    const int eighths = over * (8 / under);
    return eighths >= 1 && eighths <= 7 ? QChar{kEighths[std::size_t(eighths - 1)]} : QChar{};
}

/// "12 1/2" as "12½".
QString withSigns(const QString& printed) {
    static const QRegularExpression fraction{
        QStringLiteral("(?:(?<=\\d) )?(?<![\\d/.,])([1357])/([248])(?![\\d/])")};
    QString out;
    qsizetype from = 0;
    for (auto found = fraction.globalMatch(printed); found.hasNext();) {
        const auto match = found.next();
        const QChar as = sign(match.captured(1).toInt(), match.captured(2).toInt());
        if (as.isNull())
            continue;
        out += QStringView{printed}.mid(from, match.capturedStart() - from);
        out += as;
        from = match.capturedEnd();
    }
    out += QStringView{printed}.mid(from);
    return out;
}

bool isOfNumber(QChar c) {
    return c.isNumber(); // signs of fractions are numbers, too
}

} // namespace

QString said(const Sentence& sentence) {
    switch (sentence.kind()) {
    case Sentence::Kind::name:
        return QString::fromStdString(sentence.text());
    case Sentence::Kind::figure:
        return figure(QString::fromStdString(sentence.text()));
    case Sentence::Kind::time:
        return clock(*parseClock(sentence.text()));
    case Sentence::Kind::words:
        break;
    }
    return filled(QCoreApplication::translate(kCore, sentence.text().c_str()), sentence.values());
}

QString figure(const QString& printed) {
    QString out = withSigns(printed);
    const QString mark = QLocale{}.decimalPoint();
    for (qsizetype i = out.size() - 2; i > 0; --i)
        if (out[i] == QLatin1Char('.') && out[i - 1].isDigit() && out[i + 1].isDigit())
            out.replace(i, 1, mark);
        else if (out[i] == QChar::Space && isOfNumber(out[i - 1]) && out[i + 1].isLower())
            out[i] = QChar::Nbsp;
    return out;
}

bool hasTwelveHours() {
    return QLocale::system()
        .timeFormat(QLocale::ShortFormat)
        .contains(QLatin1Char('a'), Qt::CaseInsensitive);
}

QString clock(ClockTime time) {
    const QTime of = QTime{0, 0}.addSecs(int(Seconds{time.sinceMidnight}.count()));
    return hasTwelveHours() ? QLocale{}.toString(of, QStringLiteral("h:mm\u00a0AP"))
                            : of.toString(QStringLiteral("HH:mm"));
}

} // namespace bastewright::language
