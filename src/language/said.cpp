#include "language/said.h"

#include <QCoreApplication>
#include <QLocale>

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

} // namespace

QString said(const Sentence& sentence) {
    switch (sentence.kind()) {
    case Sentence::Kind::name:
        return QString::fromStdString(sentence.text());
    case Sentence::Kind::figure:
        return figure(QString::fromStdString(sentence.text()));
    case Sentence::Kind::words:
        break;
    }
    return filled(QCoreApplication::translate(kCore, sentence.text().c_str()), sentence.values());
}

QString figure(const QString& printed) {
    QString out = printed;
    const QString mark = QLocale{}.decimalPoint();
    for (qsizetype i = out.size() - 2; i > 0; --i)
        if (out[i] == QLatin1Char('.') && out[i - 1].isDigit() && out[i + 1].isDigit())
            out.replace(i, 1, mark);
    return out;
}

} // namespace bastewright::language
