#pragma once

#include "job/job.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>
#include <QTranslator>

/// Languages for tests: every sentence of the German catalogue, in other letters. Latin letters
/// that are left on a screen or a sheet were never translated, or are somebody's own words.
namespace bastewright {

class OtherLetters : public QTranslator {
public:
    OtherLetters(const char16_t* upper, const char16_t* lower)
        : upper_{upper}
        , lower_{lower} {
        if (!german_.load(QStringLiteral(":/translations/bastewright_de.qm")))
            qFatal("the German catalogue is not there");
        QCoreApplication::installTranslator(this);
    }
    ~OtherLetters() override { QCoreApplication::removeTranslator(this); }

    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char* comment,
                      int n) const override {
        if (german_.translate(context, source, comment, n).isNull())
            return {};
        QString out = QString::fromUtf8(source);
        for (QChar& c : out)
            if (const auto latin = c.unicode(); latin < 128 && c.isLetter())
                c = QChar(c.isUpper() ? upper_[latin - 'A'] : lower_[latin - 'a']);
        return out;
    }

private:
    QTranslator german_;
    const char16_t *upper_, *lower_; ///< for A to Z
};

struct GreekLetters : OtherLetters {
    GreekLetters()
        : OtherLetters{u"ΑΒΞΔΕΦΓΗΙΘΚΛΜΝΟΠΨΡΣΤΥΩΩΧΥΖ", u"αβξδεφγηιθκλμνοπψρστυωωχυζ"} {}
};

/// Read from right to left; there are no capitals.
struct HebrewLetters : OtherLetters {
    HebrewLetters()
        : OtherLetters{kLetters, kLetters} {}
    static constexpr const char16_t* kLetters = u"אבגדהופצחיכלמנסטקרשתםןףץזע";
};

/// A session's own words: names of people, quilts, cloths and pieces.
inline QStringList ownWords(const Session& session) {
    QStringList out;
    const auto add = [&out](const std::string& name) {
        if (!name.empty())
            out << QString::fromStdString(name);
    };
    for (const Helper& h : session.setting.helpers)
        add(h.name);
    for (const Job& job : session.jobs) {
        add(job.name);
        for (const Fabric& f : job.backing.fabrics)
            add(f.name);
        for (const BattingPiece& p : job.batting.pieces)
            add(p.name);
    }
    std::sort(out.begin(), out.end(),
              [](const QString& a, const QString& b) { return a.size() > b.size(); });
    return out;
}

/// Words in Latin letters that are neither somebody's own nor units nor ids ("C4", "a4").
inline QStringList latinWords(QString text, const QStringList& own) {
    for (const QString& name : own)
        text.replace(name, QStringLiteral(" "), Qt::CaseInsensitive);
    static const QRegularExpression kCode{
        QStringLiteral("\\b[A-Z0-9]{4}-[A-Z0-9]{4}\\b")}; // of phones
    text.remove(kCode);
    static const QRegularExpression kWord{QStringLiteral("[A-Za-z]+[0-9]*")};
    static const QStringList kUnits{"in", "cm", "mm", "yd", "kg", "lb", "m"};
    // Names of languages in themselves, the program's own, and sizes batting is sold in.
    static const QStringList kNames{"English", "British", "Deutsch", "Bastewright", "twin", "queen",
                                    "full",    "king",    "crib",    "throw",       "craft"};
    QStringList out;
    for (auto found = kWord.globalMatch(text); found.hasNext();) {
        const QString word = found.next().captured();
        const bool isId = word.size() < 2 || word.back().isDigit();
        if (!isId && !kUnits.contains(word) && !kNames.contains(word))
            out << word;
    }
    return out;
}

} // namespace bastewright
