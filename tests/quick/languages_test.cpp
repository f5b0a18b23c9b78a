#include "app/tour.h"
#include "quick/whole_window.h"
#include "support/greek_letters.h"

#include <QLocale>

#include <algorithm>

namespace bastewright::app {
namespace {

/// What a person can read: the texts of all visible items.
QStringList textsOf(const QQuickItem* root) {
    QStringList out;
    if (!root->isVisible())
        return out;
    for (const char* property : {"text", "placeholderText"})
        if (const QString text = root->property(property).toString(); !text.isEmpty())
            out << text;
    for (const auto* child : root->childItems())
        out += textsOf(child);
    return out;
}

class AnotherLanguage : public WholeWindow {
protected:
    void expectNoEnglish(const QString& where) {
        // Names of the other examples, of paper, and the address phones are sent to; months and
        // days are named by the locale, not by the catalogue.
        auto own = ownWords(room.workroom->editor()->session()) + QStringList{"Me",
                                                                              "Lantern Walk",
                                                                              "Tide Table",
                                                                              "Knots",
                                                                              "Samphire",
                                                                              "Harbour Lights",
                                                                              "Saltmarsh Hall",
                                                                              "Slow Tide",
                                                                              "Letter",
                                                                              "http"};
        for (int month = 1; month <= 12; ++month)
            own << QLocale{}.monthName(month, QLocale::ShortFormat);
        // Longer ones first: "Bo" is in "Harbour".
        std::ranges::sort(own, std::greater<>{}, &QString::size);
        for (const QString& text : textsOf(room.window->contentItem())) {
            const QStringList left = latinWords(text, own);
            EXPECT_TRUE(left.isEmpty()) << where.toStdString() << ": “" << text.toStdString()
                                        << "”, " << left.join(QLatin1String(", ")).toStdString();
        }
    }
    void sayAllAgain() {
        emit room.workroom->comfort()->languageChanged();
        live(50);
    }
};

TEST_F(AnotherLanguage, IsSpokenAtOnceAndEverywhere) {
    sayAllAgain();
    EXPECT_FALSE(
        latinWords(textsOf(room.window->contentItem()).join(QLatin1Char(' ')), {}).isEmpty());
    {
        const GreekLetters greek;
        sayAllAgain();
        expectNoEnglish(QStringLiteral("planning"));
        room.workroom->goToTable();
        live(50);
        expectNoEnglish(QStringLiteral("at the table"));
    }
    sayAllAgain();
    EXPECT_FALSE(
        latinWords(textsOf(room.window->contentItem()).join(QLatin1Char(' ')), {}).isEmpty());
}

TEST_F(AnotherLanguage, LeavesNoEnglishOnAnyScreen) {
    const GreekLetters greek;
    sayAllAgain();
    room.surroundings->setStill(true);
    room.workroom->backToShelf();
    live(50);
    int stops = 0;
    Tour tour{room, 30};
    EXPECT_EQ(tour.walk([&](const QString& stop) {
        ++stops;
        expectNoEnglish(stop);
    }),
              QString{});
    EXPECT_GT(stops, 50);
}

TEST_F(AnotherLanguage, GermanHasItsOwnWordsAndDecimalComma) {
    room.workroom->comfort()->setLanguage(QStringLiteral("de"));
    live(50);
    const QString all = textsOf(room.window->contentItem()).join(QLatin1Char('\n'));
    EXPECT_TRUE(all.contains(QStringLiteral("Heften beginnen"))) << all.toStdString();
    EXPECT_EQ(QLocale{}.decimalPoint(), QStringLiteral(","));
    room.workroom->comfort()->setLanguage(QStringLiteral("en"));
    EXPECT_EQ(QLocale{}.decimalPoint(), QStringLiteral("."));
}

} // namespace
} // namespace bastewright::app
