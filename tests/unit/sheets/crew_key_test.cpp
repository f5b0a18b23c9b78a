#include "sheets/crew_key.h"

#include <gtest/gtest.h>

namespace bastewright::sheets {
namespace {

std::vector<Helper> named(std::initializer_list<const char*> names) {
    std::vector<Helper> out;
    for (const char* n : names) {
        Helper h;
        h.name = n;
        out.push_back(h);
    }
    return out;
}

TEST(CrewKey, takesTheShortestBeginningThatIsFree) {
    const CrewKey key{named({"Ada", "Bo", "Ben", "Beth"})};
    EXPECT_EQ(key.letter("Ada"), QStringLiteral("A"));
    EXPECT_EQ(key.letter("Bo"), QStringLiteral("B"));
    EXPECT_EQ(key.letter("Ben"), QStringLiteral("Be"));
    EXPECT_EQ(key.letter("Beth"), QStringLiteral("Bet"));
    EXPECT_EQ(key.letter("nobody"), QStringLiteral("?"));
}

TEST(CrewKey, fallsBackToTheNumberInTheSession) {
    const CrewKey key{named({"A", "a", ""})};
    EXPECT_EQ(key.letter("A"), QStringLiteral("A"));
    EXPECT_EQ(key.letter("a"), QStringLiteral("2"));
    EXPECT_EQ(key.letter(""), QStringLiteral("3"));
}

TEST(CrewKey, marksDifferForEverybody) {
    const auto all = named({"Ann", "Anna", "Annabel", "Anneke", "An", "A", "Ånn", "Ann-Kathrin"});
    const CrewKey key{all};
    QStringList marks;
    for (const auto& h : all)
        marks << key.letter(h.name);
    QStringList once = marks;
    once.removeDuplicates();
    EXPECT_EQ(once.size(), marks.size()) << marks.join(' ').toStdString();
}

TEST(CrewKey, speaksOfPeopleByLetterAndFirstWord) {
    const CrewKey key{named({"Ada", "Bo Bell", "Wilhelmina-Cordelia Ravenscroft"})};
    EXPECT_EQ(key.spoken({"Ada", "Bo Bell"}), QStringLiteral("A\u00A0Ada and B\u00A0Bo"));
    EXPECT_EQ(shortName("Wilhelmina-Cordelia Ravenscroft"),
              QStringLiteral("Wilhelmina-Cord\u2026"));
}

TEST(CrewKey, hoursAreSaidAsTheyAre) {
    Helper h;
    EXPECT_EQ(hoursWords(h), QStringLiteral("the whole time"));
    h.until = ClockTime{std::chrono::hours{15}};
    EXPECT_EQ(hoursWords(h), QStringLiteral("until 15:00"));
    h.from = ClockTime{std::chrono::minutes{14 * 60 + 5}};
    EXPECT_EQ(hoursWords(h), QStringLiteral("14:05 to 15:00"));
    h.breaks = {{ClockTime{std::chrono::minutes{14 * 60 + 30}},
                 ClockTime{std::chrono::minutes{14 * 60 + 45}}}};
    EXPECT_EQ(hoursWords(h), QStringLiteral("14:05 to 15:00, break 14:30 to 14:45"));
}

} // namespace
} // namespace bastewright::sheets
