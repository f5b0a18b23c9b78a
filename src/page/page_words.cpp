#include "page/page_words.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace bastewright::page {
namespace {

// Every sentence of assets/page, for the catalogue.
[[maybe_unused]] constexpr const char* kSentences[] = {
    QT_TRANSLATE_NOOP("Page", "en"),
    QT_TRANSLATE_NOOP("Page", "At the table"),
    QT_TRANSLATE_NOOP("Page", "Follow the table"),
    QT_TRANSLATE_NOOP("Page", "The code on the tablet"),
    QT_TRANSLATE_NOOP("Page", "Follow"),
    QT_TRANSLATE_NOOP("Page", "Who are you?"),
    QT_TRANSLATE_NOOP("Page", "Somebody else"),
    QT_TRANSLATE_NOOP("Page", "Your zones"),
    QT_TRANSLATE_NOOP("Page", "Everybody"),
    QT_TRANSLATE_NOOP("Page", "This page needs JavaScript."),
    QT_TRANSLATE_NOOP("Page", "That did not work. Try again."),
    QT_TRANSLATE_NOOP("Page", "The tablet does not answer. Are you on the same network?"),
    QT_TRANSLATE_NOOP("Page", "The code has changed. Scan the one on the tablet."),
    QT_TRANSLATE_NOOP("Page", "No word from the tablet. What you see may be old; trying again."),
    QT_TRANSLATE_NOOP("Page", "That did not work."),
    QT_TRANSLATE_NOOP("Page", "%1 could not be ticked. Tell the person at the tablet."),
    QT_TRANSLATE_NOOP("Page", "No session is open on the tablet. This page goes on by itself."),
    QT_TRANSLATE_NOOP("Page", "The session has ended. Thank you."),
    QT_TRANSLATE_NOOP("Page", "On a break. Ticks wait until it is over."),
    QT_TRANSLATE_NOOP("Page", "Not on the list? Tell the person at the tablet that you have come."),
    QT_TRANSLATE_NOOP("Page", "Undo"),
    QT_TRANSLATE_NOOP("Page", "Take back the tick of %1"),
    QT_TRANSLATE_NOOP("Page", "Now: %1"),
    QT_TRANSLATE_NOOP("Page", "None at the moment. The next step at the table is below."),
    QT_TRANSLATE_NOOP("Page", "Tick %1: %2"),
    QT_TRANSLATE_NOOP("Page", "waiting"),
    QT_TRANSLATE_NOOP("Page", "dotted"),
    QT_TRANSLATE_NOOP("Page", "open"),
    QT_TRANSLATE_NOOP("Page", "closed"),
};

QString inScript(QString sentence) {
    for (const char c : {'\\', '"', '`', '$'})
        sentence.replace(QLatin1Char(c), QStringLiteral("\\%1").arg(QLatin1Char(c)));
    return sentence;
}

} // namespace

QByteArray inLanguage(const QByteArray& file, bool script) {
    static const QRegularExpression kPlace{QStringLiteral("\\{\\{([^{}]+)\\}\\}")};
    const QString text = QString::fromUtf8(file);
    QString out;
    qsizetype from = 0;
    for (auto found = kPlace.globalMatch(text); found.hasNext();) {
        const auto place = found.next();
        const QString said =
            QCoreApplication::translate("Page", place.captured(1).toUtf8().constData());
        out += QStringView{text}.mid(from, place.capturedStart() - from);
        out += script ? inScript(said) : said.toHtmlEscaped();
        from = place.capturedEnd();
    }
    out += QStringView{text}.mid(from);
    return out.toUtf8();
}

} // namespace bastewright::page
