#include "sheets/text_block.h"

#include <gtest/gtest.h>

namespace bastewright::sheets {
namespace {

const QString kLong =
    QStringLiteral("Wilhelmina-Cordelia Featherstonehaugh-Ravenscroft the Younger");

TEST(TextBlock, wrapsWithinItsWidth) {
    for (const double width : {60.0, 120.0, 300.0}) {
        const TextBlock block{kLong, width};
        EXPECT_LE(block.naturalWidth(), width + 0.1) << width;
        EXPECT_GE(block.height(), block.lines() * type::kBody * 1.3 - 0.01);
    }
}

TEST(TextBlock, aWordWiderThanTheColumnIsBrokenNotCut) {
    const TextBlock block{QString{60, QChar{'m'}}, 80};
    EXPECT_GT(block.lines(), 5);
    EXPECT_LE(block.naturalWidth(), 80.1);
}

TEST(TextBlock, isElidedToTheLinesItMayHave) {
    for (const int lines : {1, 2}) {
        const TextBlock block{kLong, 120, {.size = type::kBody, .maxLines = lines}};
        EXPECT_EQ(block.lines(), lines);
        EXPECT_LE(block.naturalWidth(), 120.1);
    }
    EXPECT_EQ((TextBlock{QStringLiteral("Ada"), 120, {.size = type::kBody, .maxLines = 1}}
                   .naturalWidth()),
              textWidth(QStringLiteral("Ada"), {}));
}

TEST(TextBlock, narrowerThanALetterStillEnds) {
    const TextBlock block{kLong, 1, {.size = type::kBody, .maxLines = 1}};
    EXPECT_EQ(block.lines(), 1);
}

TEST(TextBlock, boldIsWider) {
    EXPECT_GT(textWidth(kLong, {type::kBody, true}), textWidth(kLong, {type::kBody, false}));
    const TextBlock mixed{std::vector<Span>{{QStringLiteral("A"), true}, {kLong}}, 1000};
    EXPECT_GT(mixed.naturalWidth(), textWidth(kLong, {}));
}

// A script whose fonts have no bold is set plain: Qt would draw every letter of it twice.
TEST(TextBlock, aScriptWithoutBoldIsNotMadeBold) {
    const QString scripts[] = {QStringLiteral("Ada"), QStringLiteral("\u05E9\u05DC\u05D5\u05DD"),
                               QStringLiteral("\u0645\u0631\u064A\u0645"),
                               QStringLiteral("\u1B05\u1B13\u1B2E"),
                               QStringLiteral("\u0E14\u0E32\u0E27")};
    EXPECT_TRUE(hasBold(scripts[0]));
    for (const QString& word : scripts) {
        const bool wider = textWidth(word, {type::kBody, true}) > textWidth(word, {type::kBody});
        EXPECT_TRUE(hasBold(word) || !wider) << word.toStdString();
    }
}

} // namespace
} // namespace bastewright::sheets
