#include "planners/rolls/lifting.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

namespace bastewright {
namespace {

// Revised NIOSH lifting equation, DHHS (NIOSH) Publication 94-110 (1994), metric.
constexpr double kLoadConstant = 23;
constexpr double kKnuckleHeightCm = 75;

struct FrequencyRow {
    double perMinute;
    std::array<double, 6> factors; // up to 1 h, 2 h, 8 h; each below and from 75 cm
};
/// Table 5 of the publication.
constexpr std::array kFrequency{
    FrequencyRow{0.2, {1.00, 1.00, 0.95, 0.95, 0.85, 0.85}},
    FrequencyRow{0.5, {0.97, 0.97, 0.92, 0.92, 0.81, 0.81}},
    FrequencyRow{1, {0.94, 0.94, 0.88, 0.88, 0.75, 0.75}},
    FrequencyRow{2, {0.91, 0.91, 0.84, 0.84, 0.65, 0.65}},
    FrequencyRow{3, {0.88, 0.88, 0.79, 0.79, 0.55, 0.55}},
    FrequencyRow{4, {0.84, 0.84, 0.72, 0.72, 0.45, 0.45}},
    FrequencyRow{5, {0.80, 0.80, 0.60, 0.60, 0.35, 0.35}},
    FrequencyRow{6, {0.75, 0.75, 0.50, 0.50, 0.27, 0.27}},
    FrequencyRow{7, {0.70, 0.70, 0.42, 0.42, 0.22, 0.22}},
    FrequencyRow{8, {0.60, 0.60, 0.35, 0.35, 0.18, 0.18}},
    FrequencyRow{9, {0.52, 0.52, 0.30, 0.30, 0.00, 0.15}},
    FrequencyRow{10, {0.45, 0.45, 0.26, 0.26, 0.00, 0.13}},
    FrequencyRow{11, {0.41, 0.41, 0.00, 0.23, 0.00, 0.00}},
    FrequencyRow{12, {0.37, 0.37, 0.00, 0.21, 0.00, 0.00}},
    FrequencyRow{13, {0.00, 0.34, 0.00, 0.00, 0.00, 0.00}},
    FrequencyRow{14, {0.00, 0.31, 0.00, 0.00, 0.00, 0.00}},
    FrequencyRow{15, {0.00, 0.28, 0.00, 0.00, 0.00, 0.00}},
};

// The multipliers, each with the range in which the publication defines it.

double horizontalMultiplier(double cm) {
    return cm > 63 ? 0 : 25 / std::max(cm, 25.0);
}

double verticalMultiplier(double cm) {
    return cm < 0 || cm > 175 ? 0 : 1 - 0.003 * std::abs(cm - kKnuckleHeightCm);
}

double distanceMultiplier(double cm) {
    return cm > 175 ? 0 : 0.82 + 4.5 / std::max(cm, 25.0);
}

double asymmetryMultiplier(double degrees) {
    return degrees < 0 || degrees > 135 ? 0 : 1 - 0.0032 * degrees;
}

double couplingMultiplier(Lift::Coupling coupling, double verticalCm) {
    switch (coupling) {
    case Lift::Coupling::good:
        return 1.00;
    case Lift::Coupling::fair:
        return verticalCm < kKnuckleHeightCm ? 0.95 : 1.00;
    case Lift::Coupling::poor:
        return 0.90;
    }
    return 0;
}

} // namespace

double frequencyMultiplier(double perMinute, double hours, double verticalCm) {
    if (hours > 8 || perMinute > kFrequency.back().perMinute)
        return 0;
    const std::size_t column = (hours <= 1   ? 0U
                                : hours <= 2 ? 2U
                                             : 4U) +
                               (verticalCm < kKnuckleHeightCm ? 0U : 1U);
    const double f = std::max(perMinute, kFrequency.front().perMinute);
    const auto above = std::ranges::lower_bound(kFrequency, f, {}, &FrequencyRow::perMinute);
    if (above->perMinute == f)
        return above->factors[column];
    const auto below = above - 1;
    const double part = (f - below->perMinute) / (above->perMinute - below->perMinute);
    return std::lerp(below->factors[column], above->factors[column], part);
}

double recommendedWeightLimit(const Lift& lift) {
    return kLoadConstant * horizontalMultiplier(lift.horizontalCm) *
           verticalMultiplier(lift.verticalCm) * distanceMultiplier(lift.distanceCm) *
           asymmetryMultiplier(lift.asymmetryDegrees) *
           frequencyMultiplier(lift.perMinute, lift.hours, lift.verticalCm) *
           couplingMultiplier(lift.coupling, lift.verticalCm);
}

double quiltKilograms(const Job& job, Size size) {
    const double squareMetres = size.width.mm() / 1000 * size.length.mm() / 1000;
    return squareMetres * (job.batting.gsm + 2 * kClothGsm) / 1000;
}

int peopleToSlide(double kilograms) {
    static const double share = recommendedWeightLimit(kSlide);
    assert(kilograms >= 0);
    return std::max(1, static_cast<int>(std::ceil(kilograms / share)));
}

} // namespace bastewright
