#include "measures/length_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <ostream>
#include <vector>

namespace bastewright {

void PrintTo(Length l, std::ostream* out) {
    *out << l.nm() << " nm";
}

namespace {

using testing::HasSubstr;

struct Good {
    const char* text;
    Unit bare;
    Length length;
};

TEST(LengthText, ReadsWhatPeopleWrite) {
    constexpr auto in = Unit::inch, cm = Unit::centimetre, mm = Unit::millimetre;
    const std::vector<Good> rows{
        // whole numbers take the unit at hand
        {"12", in, 12_in},
        {"12", cm, 12_cm},
        {"12", mm, 12_mm},
        {"0", in, 0_in},
        {"  7\t", in, 7_in},
        {"\u00a07\u202f", in, 7_in},
        // decimals, with a point or a comma
        {"12.5", in, 12.5_in},
        {"12,5", in, 12.5_in},
        {".5", in, 0.5_in},
        {",5", in, 0.5_in},
        {"0.000001", mm, Length::nanometres(1)},
        {"31.75 cm", in, 12.5_in},
        {"317.5mm", in, 12.5_in},
        {"1.2 m", in, 120_cm},
        {"2.54", cm, 1_in},
        // fractions
        {"1/2", in, 0.5_in},
        {"12 1/2", in, 12.5_in},
        {"12-1/2", in, 12.5_in},
        {"12  1/2 in", cm, 12.5_in},
        {"½", in, 0.5_in},
        {"12½", in, 12.5_in},
        {"12 ½ in", cm, 12.5_in},
        {"12-¾", in, 12.75_in},
        {"⅜\"", cm, 0.375_in},
        {"1⁄8", in, 0.125_in},
        {"2 3⁄8 in", cm, 2.375_in},
        {"3/2", in, 1.5_in},
        {"4/2", in, 2_in},
        {"1/64", in, Length::inch64ths(1)},
        {"1/1000", mm, Length::nanometres(1'000)},
        // thirds go to the nearest nanometre
        {"1/3", in, Length::nanometres(8'466'667)},
        {"2/3", in, Length::nanometres(16'933'333)},
        {"⅔", in, Length::nanometres(16'933'333)},
        // inches, feet and yards by all their names
        {"12 1/2\"", cm, 12.5_in},
        {"12 1/2”", cm, 12.5_in},
        {"12 1/2″", cm, 12.5_in},
        {"12''", cm, 12_in},
        {"1 inch", cm, 1_in},
        {"2 inches", cm, 2_in},
        {"2 in.", cm, 2_in},
        {"2 In", cm, 2_in},
        {"2 CM", in, 2_cm},
        {"5' 6\"", cm, 66_in},
        {"5'6\"", cm, 66_in},
        {"5′ 6″", cm, 66_in},
        {"5’ 6”", cm, 66_in},
        {"5 ft 6 in", cm, 66_in},
        {"5ft6in", cm, 66_in},
        {"1 foot", cm, 12_in},
        {"3 feet", cm, 1_yd},
        {"2 yd", cm, 2_yd},
        {"2 yds", cm, 2_yd},
        {"1 yard", cm, 1_yd},
        {"5 1/2 yards", cm, 198_in},
        {"2 yd 9 in", cm, 81_in},
        {"1 yd 1 ft 1 in", cm, 49_in},
        {"1 m 20 cm 5 mm", in, 1205_mm},
        // below zero
        {"-3", in, -3_in},
        {"−3", in, -3_in},
        {"- 12 1/2", in, -12.5_in},
        {"-5' 6\"", in, -66_in},
        // the longest
        {"1000 m", in, Length::millimetres(1'000'000)},
        {"-1000 m", in, Length::millimetres(-1'000'000)},
    };
    for (const auto& row : rows) {
        const auto read = parseLength(row.text, row.bare);
        ASSERT_TRUE(read) << row.text << ": " << read.error();
        EXPECT_EQ(*read, row.length) << row.text;
    }
}

TEST(LengthText, RefusesTheRestAndSaysWhy) {
    const std::string many(65, '1');
    const std::vector<std::pair<std::string, const char*>> rows{
        {"", "empty"},
        {"   ", "empty"},
        {"-", "empty"},
        {"abc", "'abc' is not a number"},
        {"in", "'in' is not a number"},
        {"+3", "not a number"},
        {"--3", "not a number"},
        {"1e5", "'e5' is not understood"},
        {"0x10", "'x10' is not understood"},
        {"nan", "not a number"},
        {"inf", "not a number"},
        {"12 1/0 in", "lower number must be 1 to 1000"},
        {"1/1001", "lower number must be 1 to 1000"},
        {"1/", "is not a number"},
        {"/2", "is not a number"},
        {"1/2/3", "'/3' is not understood"},
        {"12 1/2 1/4", "not understood"},
        {"12 13", "not understood"},
        {"1.2.3", "not understood"},
        {"1.", "not a number"},
        {".", "not a number"},
        {"12 fathoms", "'fathoms' is not understood"},
        {"12 inx", "'inx' is not understood"},
        {"12 km", "'km' is not understood"},
        {"5' 6", "last number has no unit"},
        {"6 in 5 ft", "larger to smaller"},
        {"6 in 5 in", "larger to smaller"},
        {"3 mm -2", "not a number"},
        {"1000.001 m", "1 km"},
        {"2000 yd", "1 km"},
        {"999999999 m", "1 km"},
        {"1000 m 1 mm", "1 km"},
        {"1234567890", "too many digits"},
        {"0.1234567891", "too many digits"},
        {"1/12345", "too many digits"},
        {many, "64 characters"},
        {"\xff\xfe", "not a number"},
        {"12 \xc3", "not understood"},
        {std::string("12\0in", 5), "not understood"},
        {"１２", "not a number"}, // full-width digits
    };
    for (const auto& [text, why] : rows) {
        const auto read = parseLength(text, Unit::inch);
        ASSERT_FALSE(read) << text << " was read as " << read->nm() << " nm";
        EXPECT_THAT(read.error(), HasSubstr(why)) << text;
        EXPECT_THAT(read.error(), HasSubstr("accepted")) << text;
    }
}

TEST(LengthText, QuotesWholeCharacters) {
    const auto read = parseLength("12 aaaaaaaaaaaaaaaaaaaé", Unit::inch);
    ASSERT_FALSE(read);
    EXPECT_THAT(read.error(), HasSubstr("'aaaaaaaaaaaaaaaaaaa'"));
}

TEST(LengthText, ManyLongTermsStayExact) {
    // Four terms of nine decimals each: their common denominator alone would not fit 64 bits.
    const auto read =
        parseLength("1.123456789m1.123456789yd1.123456789ft1.123456789in", Unit::inch);
    ASSERT_TRUE(read) << read.error();
    EXPECT_EQ(read->nm(),
              std::llround(1.123456789 * (1e9 + 914'400'000 + 304'800'000 + 25'400'000)));
    const auto fractions =
        parseLength("1/997m 1/991yd 1/983ft 1/977in 1/971cm 1/967mm", Unit::inch);
    ASSERT_TRUE(fractions) << fractions.error();
    EXPECT_EQ(fractions->nm(), std::llround(1e9 / 997 + 914'400'000.0 / 991 + 304'800'000.0 / 983 +
                                            25'400'000.0 / 977 + 1e7 / 971 + 1e6 / 967));
}

TEST(LengthText, NumbersFromFilesAreTakenInTheirUnit) {
    EXPECT_EQ(lengthOf(12.5, Unit::inch), 12.5_in);
    EXPECT_EQ(lengthOf(2.54, Unit::centimetre), 1_in);
    EXPECT_EQ(lengthOf(25.4, Unit::millimetre), 1_in);
    EXPECT_EQ(lengthOf(-0.0, Unit::inch), Length{});
    EXPECT_EQ(lengthOf(1e6, Unit::millimetre), Length::millimetres(1'000'000));
    for (const double bad :
         {std::nan(""), std::numeric_limits<double>::infinity(), -1e300, 1e300, 1'000'000.001})
        EXPECT_FALSE(lengthOf(bad, Unit::millimetre)) << bad;
}

TEST(LengthText, ANumberInItsUnitReadsBackEqual) {
    for (const Unit unit : {Unit::inch, Unit::centimetre, Unit::millimetre})
        for (std::int64_t nm = -999'999'999'937; nm < 1'000'000'000'000; nm += 1'234'567'891) {
            const auto length = Length::nanometres(nm);
            ASSERT_EQ(lengthOf(inUnit(length, unit), unit), length);
        }
}

struct Shown {
    Length length;
    Unit unit;
    const char* text;
};

TEST(LengthText, IsShownToTheEighthOrTheMillimetre) {
    constexpr auto in = Unit::inch, cm = Unit::centimetre, mm = Unit::millimetre;
    for (const auto& row : std::vector<Shown>{
             {0_in, in, "0 in"},
             {12_in, in, "12 in"},
             {12.5_in, in, "12 1/2 in"},
             {0.25_in, in, "1/4 in"},
             {0.75_in, in, "3/4 in"},
             {0.875_in, in, "7/8 in"},
             {-12.5_in, in, "-12 1/2 in"},
             {-0.125_in, in, "-1/8 in"},
             {Length::inch64ths(3), in, "0 in"},
             {Length::inch64ths(4), in, "1/8 in"}, // halves go up
             {Length::inch64ths(63), in, "1 in"},
             {12.5_in, cm, "31.8 cm"}, // 31.75
             {30_cm, cm, "30 cm"},
             {-305_mm, cm, "-30.5 cm"},
             {-4_mm, cm, "-0.4 cm"},
             {3_mm, mm, "3 mm"},
             {12.5_in, mm, "317.5 mm"},
         })
        EXPECT_EQ(format(row.length, row.unit), row.text);
    EXPECT_EQ(format(12.5_in, in, false), "12 1/2");
}

TEST(LengthText, ClothIsSoldByTheEighthOfAYardUpwards) {
    EXPECT_EQ(formatYardsUp(0_in), "0 yd");
    EXPECT_EQ(formatYardsUp(1_in), "1/8 yd");
    EXPECT_EQ(formatYardsUp(4.5_in), "1/8 yd");
    EXPECT_EQ(formatYardsUp(4.5_in + Length::nanometres(1)), "1/4 yd");
    EXPECT_EQ(formatYardsUp(36_in), "1 yd");
    // Common practice: 5.22 yd is bought as 5 1/4 at least.
    EXPECT_EQ(formatYardsUp(188_in), "5 1/4 yd");
    EXPECT_EQ(formatYardsUp(-5_in), "0 yd");
}

// The international pound is 0.45359237 kg exactly (agreement of 1959; NIST Handbook 44, appendix
// C).
TEST(LengthText, WeighsInPoundsWhereItMeasuresInInches) {
    EXPECT_EQ(formatWeight(0.45359237, Unit::inch), "1 lb");
    EXPECT_EQ(formatWeight(3.2, Unit::inch), "7 lb");
    EXPECT_EQ(formatWeight(4.08, Unit::inch), "9 lb");
    EXPECT_EQ(formatWeight(0.2, Unit::inch), "7 oz");
    EXPECT_EQ(formatWeight(3.2, Unit::centimetre), "3.2 kg");
    EXPECT_EQ(formatWeight(3.98, Unit::millimetre), "4 kg");
    EXPECT_EQ(formatWeight(0, Unit::centimetre), "0 kg");
}

TEST(LengthText, WhatIsShownReadsBackAsShown) {
    for (std::int64_t eighths = -400; eighths < 4000; eighths += 7) {
        const Length length = Length::inch64ths(8 * eighths);
        EXPECT_EQ(parseLength(format(length, Unit::inch), Unit::millimetre), length);
        const Length tenths = Length::millimetres(eighths);
        EXPECT_EQ(parseLength(format(tenths, Unit::centimetre), Unit::inch), tenths);
    }
}

} // namespace
} // namespace bastewright
