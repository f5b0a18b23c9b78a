#include "sheets/printable.h"
#include "sheets/type.h"

#include <QGlyphRun>
#include <QTextLayout>
#include <gtest/gtest.h>

namespace bastewright::sheets {
namespace {

TEST(Printable, plainTextPassesUnchanged) {
    const auto text = QStringLiteral("Ada’s quilt · 12 in × 3, Zoë Łuczak-Østergaard");
    EXPECT_EQ(printable(text), text);
}

TEST(Printable, lineBreaksAndControlsBecomeSpaces) {
    EXPECT_EQ(printable(QStringLiteral("a\nb\tc\u2028d\u0007e")), QStringLiteral("a b c d e"));
}

TEST(Printable, halfASurrogateIsSeen) {
    EXPECT_EQ(printable(QString{QChar{0xD800}}), QStringLiteral("\u25A1"));
}

TEST(Printable, whatNoFontHasIsSeenOncePerCharacter) {
    // A noncharacter of plane 16: no font has it (Unicode, 23.7).
    const QString missing = QString::fromUcs4(U"\U0010FFFD");
    EXPECT_EQ(printable(QStringLiteral("Ada ") + missing + QStringLiteral("!")),
              QStringLiteral("Ada \u25A1!"));
}

TEST(Printable, resultNeverHoldsAMissingGlyph) {
    for (const auto& text :
         {QStringLiteral("\u79CB\u5B50"), QStringLiteral("\u0E14\u0E32\u0E27"),
          QStringLiteral("\u05E9\u05DC\u05D5\u05DD"), QString::fromUcs4(U"\U0001F9F5")}) {
        QTextLayout layout{printable(text), font(type::kBody)};
        layout.beginLayout();
        layout.createLine();
        layout.endLayout();
        for (const auto& run : layout.glyphRuns())
            EXPECT_FALSE(run.glyphIndexes().contains(0)) << text.toStdString();
    }
}

TEST(Isolated, onlyRightToLeftNamesAreIsolated) {
    EXPECT_EQ(isolated("Ada"), QStringLiteral("Ada"));
    EXPECT_EQ(isolated("\u05E9\u05DC"), QStringLiteral("\u2068\u05E9\u05DC\u2069"));
}

} // namespace
} // namespace bastewright::sheets
