#include "language/language.h"
#include "planners/whole/whole.h"
#include "support/greek_letters.h"
#include "written.h"

namespace bastewright {
namespace {

QString textOf(const Written& w) {
    QString all;
    for (const QString& page : pdf::pageTexts(w.path))
        all += page + QLatin1Char('\n');
    return all;
}

TEST(SheetsInAnotherLanguage, LeaveNoEnglish) {
    SKIP_WITHOUT_POPPLER();
    for (const char* name : {"harbour-lights", "leftover-batting", "winter-thread"}) {
        const Session session = fixture::demo(name);
        const GreekLetters greek;
        const Written w{session, planWhole(session)};
        const QString text = textOf(w);
        EXPECT_GT(text.size(), 1000);
        const QStringList left = latinWords(text, ownWords(session));
        EXPECT_TRUE(left.isEmpty()) << name << ": " << left.join(QLatin1Char(' ')).toStdString();
    }
}

TEST(SheetsInAnotherLanguage, AreGermanWithADecimalComma) {
    SKIP_WITHOUT_POPPLER();
    Session session = fixture::demo("harbour-lights");
    for (Job& job : session.jobs)
        job.unit = Unit::centimetre;
    language::speak(QStringLiteral("de"));
    const Written w{session, planWhole(session)};
    const QString text = textOf(w);
    language::speak(QStringLiteral("en"));
    EXPECT_TRUE(text.contains(QStringLiteral("Rückseite")));
    EXPECT_TRUE(text.contains(QRegularExpression{QStringLiteral("\\d,\\d cm")}));
    EXPECT_FALSE(text.contains(QRegularExpression{QStringLiteral("\\d\\.\\d cm")}));
}

} // namespace
} // namespace bastewright
