#include "planners/rolls/lifting.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace bastewright {
namespace {

using Coupling = Lift::Coupling;

constexpr double kCmPerInch = 2.54; // NIST Handbook 44, Appendix C
constexpr double kPoundsPerKg =
    51.0 / 23.0; // the publication's two load constants, 51 lb and 23 kg

/// The equation's inch edition, which rounds its coefficients on its own: 10 in for 25 cm, .0075
/// for .00762, 30 in for 75 cm, 1.8 for 1.772. Together they differ by less than three in a
/// hundred.
double inchEdition(double h, double v, double d, double fm, double cm) {
    return 51 * (10 / std::max(h, 10.0)) * (1 - 0.0075 * std::abs(v - 30)) *
           (0.82 + 1.8 / std::max(d, 10.0)) * fm * cm;
}
constexpr double kEditions = 0.03;

TEST(Lifting, LoadConstantUnderIdealConditions) {
    // NIOSH Publication 94-110: all multipliers 1, hence 23 kg.
    EXPECT_DOUBLE_EQ(recommendedWeightLimit({}), 23.0);
}

struct Worked {
    double h, v, d, perMinute, fm, cm; ///< inches
    double pounds;                     ///< recommended weight limit, without rounding on the way
    const char* source;
};

TEST(Lifting, WorkedExamplesInInches) {
    for (const Worked& w : {
             // NIOSH Publication 94-110. On its worksheets, which round each multiplier, these are
             // 16.3, 14.5, 34.9 and 15.2 lb. Inputs of Example 1 from memory.
             Worked{23, 15, 48, 0.2, 1.00, 0.95, 16.031289, "Example 1, origin"},
             Worked{23, 63, 48, 0.2, 1.00, 1.00, 14.308133, "Example 1, destination"},
             Worked{10, 22, 37, 3, 0.88, 0.95, 34.813562, "Example 4, origin"},
             Worked{20, 59, 37, 3, 0.88, 1.00, 15.252862, "Example 4, destination"},
         }) {
        ASSERT_NEAR(inchEdition(w.h, w.v, w.d, w.fm, w.cm), w.pounds, 1e-6) << w.source;
        const double limit = recommendedWeightLimit({.horizontalCm = w.h * kCmPerInch,
                                                     .verticalCm = w.v * kCmPerInch,
                                                     .distanceCm = w.d * kCmPerInch,
                                                     .asymmetryDegrees = 0,
                                                     .perMinute = w.perMinute,
                                                     .hours = 1,
                                                     .coupling = Coupling::fair});
        EXPECT_NEAR(limit * kPoundsPerKg, w.pounds, kEditions * w.pounds) << w.source;
    }
}

// NIOSH Publication 94-110, the same examples as its worksheets print them: every multiplier is
// rounded to two digits first. The table of HM gives .44 at 23 in, where 10/23 is .4348.
TEST(Lifting, WorkedExamplesAsTheWorksheetsRoundThem) {
    struct Sheet {
        double hm, vm, dm, fm, cm;
        double pounds, lifted, index; ///< printed: limit, weight, lifting index
        const char* source;
    };
    const auto twoDigits = [](double m) { return std::round(m * 100) / 100; };
    const auto oneDigit = [](double m) { return std::round(m * 10) / 10; };
    for (const Sheet& s : {
             Sheet{0.44, 1 - 0.0075 * 15, 0.82 + 1.8 / 48, 1.00, 0.95, 16.3, 44, 2.7,
                   "Example 1, origin"},
             Sheet{0.44, 1 - 0.0075 * 33, 0.82 + 1.8 / 48, 1.00, 1.00, 14.5, 44, 3.0,
                   "Example 1, destination"},
             Sheet{1.00, 1 - 0.0075 * 8, 0.82 + 1.8 / 37, 0.88, 0.95, 34.9, 26, 0.7,
                   "Example 4, origin"},
             Sheet{0.50, 1 - 0.0075 * 29, 0.82 + 1.8 / 37, 0.88, 1.00, 15.2, 26, 1.7,
                   "Example 4, destination"},
         }) {
        const double limit = 51 * s.hm * twoDigits(s.vm) * twoDigits(s.dm) * s.fm * s.cm;
        EXPECT_DOUBLE_EQ(oneDigit(limit), s.pounds) << s.source;
        EXPECT_DOUBLE_EQ(oneDigit(s.lifted / oneDigit(limit)), s.index) << s.source;
    }
}

TEST(Lifting, WorkedExampleInCentimetres) {
    // Textbook exercise (homeworksource.com/p/1089113): RWL 15.7 kg, lifting index of 12 kg 0.76.
    const double limit = recommendedWeightLimit({.horizontalCm = 25,
                                                 .verticalCm = 55,
                                                 .distanceCm = 95,
                                                 .asymmetryDegrees = 0,
                                                 .perMinute = 3,
                                                 .hours = 1,
                                                 .coupling = Coupling::fair});
    EXPECT_NEAR(limit, 15.677094, 1e-6);
    EXPECT_NEAR(12 / limit, 0.76, 0.006);
}

TEST(Lifting, AgreesWithTheInchEditionEverywhere) {
    for (double h = 10; h <= 24; h += 2)
        for (double v = 0; v <= 68; v += 4)
            for (double d = 10; d <= 60; d += 10) {
                const double metric = recommendedWeightLimit({.horizontalCm = h * kCmPerInch,
                                                              .verticalCm = v * kCmPerInch,
                                                              .distanceCm = d * kCmPerInch,
                                                              .asymmetryDegrees = 0,
                                                              .perMinute = 0.2,
                                                              .hours = 1,
                                                              .coupling = Coupling::good});
                const double inches = inchEdition(h, v, d, 1, 1);
                EXPECT_NEAR(metric * kPoundsPerKg, inches, kEditions * inches)
                    << h << " " << v << " " << d;
            }
}

TEST(Lifting, FrequencyTable) {
    // NIOSH Publication 94-110, Table 5: lifts a minute; up to 1 h, 2 h, 8 h, each below and from
    // 75 cm.
    constexpr std::array<std::array<double, 7>, 17> kTable{{
        {0.2, 1.00, 1.00, 0.95, 0.95, 0.85, 0.85},
        {0.5, 0.97, 0.97, 0.92, 0.92, 0.81, 0.81},
        {1, 0.94, 0.94, 0.88, 0.88, 0.75, 0.75},
        {2, 0.91, 0.91, 0.84, 0.84, 0.65, 0.65},
        {3, 0.88, 0.88, 0.79, 0.79, 0.55, 0.55},
        {4, 0.84, 0.84, 0.72, 0.72, 0.45, 0.45},
        {5, 0.80, 0.80, 0.60, 0.60, 0.35, 0.35},
        {6, 0.75, 0.75, 0.50, 0.50, 0.27, 0.27},
        {7, 0.70, 0.70, 0.42, 0.42, 0.22, 0.22},
        {8, 0.60, 0.60, 0.35, 0.35, 0.18, 0.18},
        {9, 0.52, 0.52, 0.30, 0.30, 0.00, 0.15},
        {10, 0.45, 0.45, 0.26, 0.26, 0.00, 0.13},
        {11, 0.41, 0.41, 0.00, 0.23, 0.00, 0.00},
        {12, 0.37, 0.37, 0.00, 0.21, 0.00, 0.00},
        {13, 0.00, 0.34, 0.00, 0.00, 0.00, 0.00},
        {14, 0.00, 0.31, 0.00, 0.00, 0.00, 0.00},
        {15, 0.00, 0.28, 0.00, 0.00, 0.00, 0.00},
    }};
    constexpr std::array<std::pair<double, double>, 6> kColumns{
        {{1, 60}, {1, 75}, {2, 60}, {2, 75}, {8, 60}, {8, 75}}};
    for (const auto& row : kTable)
        for (std::size_t i = 0; i < kColumns.size(); ++i)
            EXPECT_DOUBLE_EQ(frequencyMultiplier(row[0], kColumns[i].first, kColumns[i].second),
                             row[i + 1])
                << row[0] << " a minute, column " << i;
}

TEST(Lifting, FrequencyBetweenAndBeyondTheRows) {
    // Page 7: linear between rows; below 0.2 as 0.2; above 15 never.
    EXPECT_DOUBLE_EQ(frequencyMultiplier(2.5, 1, 75), 0.895);
    EXPECT_DOUBLE_EQ(frequencyMultiplier(0.01, 2, 75), 0.95);
    EXPECT_DOUBLE_EQ(frequencyMultiplier(15.1, 1, 75), 0);
    EXPECT_DOUBLE_EQ(frequencyMultiplier(1, 8.5, 75), 0);
    EXPECT_DOUBLE_EQ(frequencyMultiplier(1, 1.5, 75), 0.88); // over an hour counts as two
}

TEST(Lifting, NothingBeyondTheRangesOfTheEquation) {
    EXPECT_EQ(recommendedWeightLimit({.horizontalCm = 64}), 0);
    EXPECT_EQ(recommendedWeightLimit({.horizontalCm = 25, .verticalCm = 176}), 0);
    EXPECT_EQ(recommendedWeightLimit({.horizontalCm = 25, .verticalCm = -1}), 0);
    EXPECT_EQ(recommendedWeightLimit({.horizontalCm = 25, .verticalCm = 75, .distanceCm = 176}), 0);
    EXPECT_EQ(
        recommendedWeightLimit(
            {.horizontalCm = 25, .verticalCm = 75, .distanceCm = 25, .asymmetryDegrees = 136}),
        0);
}

TEST(Lifting, HandsCloserThan25CmAndShortLiftsGainNothing) {
    EXPECT_DOUBLE_EQ(recommendedWeightLimit({.horizontalCm = 10}), 23);
    EXPECT_DOUBLE_EQ(
        recommendedWeightLimit({.horizontalCm = 25, .verticalCm = 75, .distanceCm = 5}), 23);
}

TEST(Lifting, TurningAndPoorGripCostTheirShare) {
    // AM 1 − .0032·A: 0.71 at 90°. CM: poor 0.90; fair 0.95 below 75 cm only.
    EXPECT_NEAR(
        recommendedWeightLimit(
            {.horizontalCm = 25, .verticalCm = 75, .distanceCm = 25, .asymmetryDegrees = 90}),
        23 * 0.712, 1e-9);
    Lift lift;
    lift.coupling = Coupling::fair;
    EXPECT_DOUBLE_EQ(recommendedWeightLimit(lift), 23);
    lift.coupling = Coupling::poor;
    EXPECT_DOUBLE_EQ(recommendedWeightLimit(lift), 23 * 0.9);
}

TEST(QuiltWeight, BattingAndTwoLayersOfCloth) {
    Job job;
    job.batting.gsm = 120;
    // 2 m × 2.5 m at 120 + 280 g/m²: 2 kg.
    EXPECT_NEAR(quiltKilograms(job, {200_cm, 250_cm}), 2.0, 1e-12);
    EXPECT_EQ(quiltKilograms(job, {}), 0);
}

TEST(PeopleToSlide, OneUpToThirteenKilogramsAShare) {
    // H 40, V 75, D 25 cm, now and then, no handles: 23·(25/40)·0.90 = 12.94 kg a person.
    EXPECT_EQ(peopleToSlide(0), 1);
    EXPECT_EQ(peopleToSlide(4), 1);
    EXPECT_EQ(peopleToSlide(12.9), 1);
    EXPECT_EQ(peopleToSlide(13.0), 2);
    EXPECT_EQ(peopleToSlide(25.8), 2);
    EXPECT_EQ(peopleToSlide(26.0), 3);
}

} // namespace
} // namespace bastewright
