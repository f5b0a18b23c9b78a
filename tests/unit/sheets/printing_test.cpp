#include "fixture.h"
#include "sheets/print/print_sheets.h"

#include <QFile>
#include <QLibraryInfo>
#include <QTemporaryDir>
#include <gtest/gtest.h>

/// The library that prints, where it is not: this program has none beside it. That it is found, and
/// prints, is tested where a print service is (tests/sheets/print_test.cpp).
namespace bastewright {
namespace {

bool oneSentence(const std::string& words) {
    return words.ends_with("in color.") && words.find('\n') == std::string::npos;
}

TEST(LibraryThatPrints, missingIsOneSentence) {
    const auto none = printing::service();
    ASSERT_FALSE(none);
    EXPECT_TRUE(oneSentence(none.error())) << none.error();
    EXPECT_NE(none.error().find("bastewright-printing.so is missing"), std::string::npos)
        << none.error();
    const auto all = printers();
    ASSERT_FALSE(all);
    EXPECT_EQ(all.error(), none.error());
    const Session session = fixture::harbourLights();
    const auto printed =
        printSheets(session, fixture::planByHand(session), {.printer = "hall", .sheets = {}});
    ASSERT_FALSE(printed);
    EXPECT_EQ(printed.error(), none.error());
}

TEST(LibraryThatPrints, brokenIsOneSentence) {
    const QTemporaryDir folder;
    QFile file{folder.filePath("bastewright-printing.so")};
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("half of a download");
    file.close();
    const auto none = printing::serviceIn(file.fileName());
    ASSERT_FALSE(none);
    EXPECT_TRUE(oneSentence(none.error())) << none.error();
    EXPECT_NE(none.error().find("cannot be opened"), std::string::npos) << none.error();
}

TEST(LibraryThatPrints, anotherPluginIsNotTaken) {
    const QString other =
        QLibraryInfo::path(QLibraryInfo::PluginsPath) + "/imageformats/libqgif.so";
    ASSERT_TRUE(QFile::exists(other)) << other.toStdString();
    const auto none = printing::serviceIn(other);
    ASSERT_FALSE(none);
    EXPECT_TRUE(oneSentence(none.error())) << none.error();
    EXPECT_NE(none.error().find("another version"), std::string::npos) << none.error();
}

} // namespace
} // namespace bastewright
