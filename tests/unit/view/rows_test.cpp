#include "unit/view/qt_application.h"
#include "view/base/people_palette.h"
#include "view/base/table_rows.h"

#include <gtest/gtest.h>

namespace {

TEST(TableRows, TellsOnlyAboutRowsThatDiffer) {
    TableRows rows{{"name", "count"}};
    rows.setRows({{"a", 1}, {"b", 2}, {"c", 3}});
    QList<int> changed;
    int resets = 0, inserted = 0, removed = 0;
    QObject::connect(&rows, &TableRows::dataChanged,
                     [&](const QModelIndex& i) { changed << i.row(); });
    QObject::connect(&rows, &TableRows::modelReset, [&] { ++resets; });
    QObject::connect(&rows, &TableRows::rowsInserted, [&](const QModelIndex&, int first, int last) {
        inserted += last - first + 1;
    });
    QObject::connect(&rows, &TableRows::rowsRemoved,
                     [&](const QModelIndex&, int first, int last) { removed += last - first + 1; });
    rows.setRows({{"a", 1}, {"b", 20}, {"c", 3}, {"d", 4}});
    EXPECT_EQ(changed, QList<int>{1});
    EXPECT_EQ(inserted, 1);
    rows.setRows({{"a", 1}});
    EXPECT_EQ(removed, 3);
    EXPECT_EQ(resets, 0);
    EXPECT_EQ(rows.data(rows.index(0), Qt::UserRole + 1), 1);
}

QStringList lettersOf(const std::vector<std::string>& names) {
    std::vector<bastewright::Helper> helpers(names.size());
    for (std::size_t i = 0; i < names.size(); ++i)
        helpers[i].name = names[i];
    return people::letters(helpers);
}

TEST(PeopleLetters, AreShortAndAllDifferent) {
    needApplication(); // fonts say what can be drawn
    EXPECT_EQ(lettersOf({"Ada", "Bo", "Cai", "Dot"}), (QStringList{"A", "B", "C", "D"}));
    EXPECT_EQ(lettersOf({"Bo", "Beth", "Bea", "Bess"}), (QStringList{"B", "Be", "Bea", "Bes"}));
    EXPECT_EQ(lettersOf({"Ada", "Ada"}), (QStringList{"A", "Ad"}));
    EXPECT_EQ(lettersOf({"", " "}), (QStringList{"1", "2"}));
}

TEST(PeopleMarks, DifferInPatternAsWellAsColour) {
    for (int a = 0; a < people::kMarks; ++a)
        for (int b = 0; b < a; ++b) {
            EXPECT_NE(people::pattern(a), people::pattern(b));
            EXPECT_NE(people::fill(a), people::fill(b));
        }
}

} // namespace
