#include "language/language.h"

#include "language/british.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QLocale>
#include <QTranslator>

#include <algorithm>
#include <array>
#include <memory>

namespace bastewright::language {
namespace {

struct Known {
    const char* code;
    const char* name; ///< in itself, so that whoever is lost in another language finds it
};
constexpr const char* kBritish = "en-GB";
constexpr std::array kKnown{Known{"en", "English"}, Known{kBritish, "English (British)"},
                            Known{"de", "Deutsch"}};

/// The kind of English of a device: British where wadding is what goes between top and backing.
bool isBritish(const QLocale& locale) {
    static constexpr std::array kThere{QLocale::UnitedKingdom, QLocale::Ireland, QLocale::Australia,
                                       QLocale::NewZealand, QLocale::SouthAfrica};
    return locale.language() == QLocale::English &&
           std::find(kThere.begin(), kThere.end(), locale.territory()) != kThere.end();
}

/// The system's own kind of a language, e.g. Austrian German, else the language's usual one.
QLocale localeOf(const QString& code) {
    const QLocale own = QLocale::system();
    const QLocale plain{code};
    return own.language() == plain.language() ? own : plain;
}

} // namespace

QStringList all() {
    QStringList out;
    for (const Known& k : kKnown)
        out << QLatin1String(k.code);
    return out;
}

QString ownName(const QString& code) {
    for (const Known& k : kKnown)
        if (code == QLatin1String(k.code))
            return QString::fromUtf8(k.name);
    return code;
}

QString ofSystem() {
    const QStringList known = all();
    for (const QString& wanted : QLocale::system().uiLanguages()) {
        if (isBritish(QLocale{wanted}))
            return QLatin1String(kBritish);
        if (QString code = wanted.section(QLatin1Char('-'), 0, 0); known.contains(code))
            return code;
    }
    return known.first();
}

Qt::LayoutDirection directionOf(const QString& code) {
    return QLocale{code}.textDirection();
}

namespace {

struct Spoken {
    QString code = QStringLiteral("en");
    std::unique_ptr<QTranslator> translator; ///< none for English
};

Spoken& now() {
    static Spoken one;
    return one;
}

} // namespace

void speak(const QString& code) {
    const QStringList known = all();
    auto& [spoken, translator] = now();
    const auto found = std::find_if(known.begin(), known.end(), [&](const QString& one) {
        return one.compare(code, Qt::CaseInsensitive) == 0;
    });
    spoken = found == known.end() ? known.first() : *found;
    if (translator)
        QCoreApplication::removeTranslator(translator.get());
    translator.reset();
    QLocale::setDefault(localeOf(spoken));
    QGuiApplication::setLayoutDirection(directionOf(spoken));
    if (spoken == known.first())
        return;
    if (spoken == QLatin1String(kBritish)) {
        translator = std::make_unique<British>();
        QCoreApplication::installTranslator(translator.get());
        return;
    }
    translator = std::make_unique<QTranslator>();
    if (translator->load(QStringLiteral(":/translations/bastewright_%1.qm").arg(spoken)))
        QCoreApplication::installTranslator(translator.get());
}

QString spoken() {
    return now().code;
}

} // namespace bastewright::language
