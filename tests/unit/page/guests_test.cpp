#include "page/allowance.h"
#include "page/guests.h"

#include <QSet>
#include <gtest/gtest.h>

namespace bastewright::page {
namespace {

TEST(Guests, JoinWithTheCodeHoweverItIsTyped) {
    Guests guests;
    const QString code = guests.code();
    ASSERT_EQ(code.size(), 9);
    EXPECT_EQ(code[4], QLatin1Char('-'));
    const auto key = guests.join(code);
    EXPECT_EQ(key.size(), 32);
    EXPECT_TRUE(guests.knows(key));
    EXPECT_FALSE(guests.join(QString{code}.remove(QLatin1Char('-')).toLower()).isEmpty());
    EXPECT_EQ(guests.count(), 2);
}

TEST(Guests, AreNotLetInWithAnythingElse) {
    Guests guests;
    QString nearly = guests.code();
    nearly[8] = nearly[8] == QLatin1Char('A') ? QLatin1Char('B') : QLatin1Char('A');
    for (const QString& wrong : {QString{}, QStringLiteral("-"), nearly, guests.code().left(8),
                                 guests.code() + QLatin1Char('A'), QStringLiteral("ΑΒΓΔΕΖΗΘ")})
        EXPECT_TRUE(guests.join(wrong).isEmpty()) << wrong.toStdString();
    EXPECT_FALSE(guests.knows({}));
    EXPECT_FALSE(guests.knows("0"));
    EXPECT_EQ(guests.count(), 0);
}

TEST(Guests, LoseTheirKeysWithANewCode) {
    Guests guests;
    const auto before = guests.code();
    const auto key = guests.join(before);
    guests.renew();
    EXPECT_FALSE(guests.knows(key));
    EXPECT_NE(guests.code(), before);
    EXPECT_TRUE(guests.join(before).isEmpty());
}

TEST(Guests, AreAtMostSoMany) {
    Guests guests;
    const auto first = guests.join(guests.code());
    QByteArray last;
    for (int i = 0; i < Guests::kMost; ++i)
        last = guests.join(guests.code());
    EXPECT_EQ(guests.count(), Guests::kMost);
    EXPECT_FALSE(guests.knows(first));
    EXPECT_TRUE(guests.knows(last));
}

TEST(Guests, CodesUseAllLettersAndDoNotRepeat) {
    Guests guests;
    QSet<QString> codes;
    QSet<QChar> letters;
    for (int i = 0; i < 2000; ++i) {
        guests.renew();
        codes << guests.code();
        for (const QChar c : guests.code())
            letters << c;
    }
    EXPECT_EQ(codes.size(), 2000);
    EXPECT_EQ(letters.size(), 31); // thirty and the dash
    for (const char easilyMistaken : {'0', 'O', '1', 'I', 'L', 'U'})
        EXPECT_FALSE(letters.contains(QLatin1Char(easilyMistaken))) << easilyMistaken;
}

TEST(Allowance, IsUsedUpAndFillsAgain) {
    Allowance allowance{3, 1000};
    for (int i = 0; i < 3; ++i)
        EXPECT_TRUE(allowance.take("a", 0));
    EXPECT_FALSE(allowance.take("a", 0));
    EXPECT_TRUE(allowance.take("b", 0)) << "each address has its own";
    EXPECT_FALSE(allowance.take("a", 999));
    EXPECT_TRUE(allowance.take("a", 1001));
    EXPECT_FALSE(allowance.take("a", 500)) << "a clock that runs backwards gives nothing";
    for (int i = 0; i < 3; ++i)
        EXPECT_TRUE(allowance.take("a", 1'000'000)) << "never more than full";
    EXPECT_FALSE(allowance.take("a", 1'000'000));
}

TEST(Allowance, KnowsSoManyAddressesOnly) {
    Allowance allowance{1, 1000};
    for (int i = 0; i < 10'000; ++i)
        allowance.take(std::to_string(i), i);
    EXPECT_EQ(allowance.addresses(), Allowance::kMostAddresses);
}

} // namespace
} // namespace bastewright::page
