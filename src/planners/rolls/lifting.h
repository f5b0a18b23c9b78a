#pragma once

#include "plan/plan.h"

namespace bastewright {

/// One lift in the terms of the revised NIOSH lifting equation (Publication 94-110), metric.
struct Lift {
    double horizontalCm = 25;    ///< hands in front of the ankles
    double verticalCm = 75;      ///< hands above the floor
    double distanceCm = 25;      ///< travelled upward
    double asymmetryDegrees = 0; ///< turned to the side
    double perMinute = 0.2;
    double hours = 1; ///< work with lifting in a row: up to 1, 2 or 8
    enum class Coupling { good, fair, poor } coupling = Coupling::good;
};

/// Recommended weight limit of one person, kilograms: 23·HM·VM·DM·AM·FM·CM. Zero outside the ranges
/// for which the equation is given.
double recommendedWeightLimit(const Lift& lift);

/// FM of the equation: the publication's Table 5, linear between its rows; 0.2 a minute where
/// fewer.
double frequencyMultiplier(double perMinute, double hours, double verticalCm);

/// Grams per square metre of quilting cotton (from memory).
inline constexpr double kClothGsm = 140;

/// Weight of a basted quilt of this size: batting by its grams per square metre, and two layers of
/// quilting cotton.
double quiltKilograms(const Job& job, Size size);

/// Leaning over a table's edge: hands 40 cm in front of the ankles at table height, a short lift
/// now and then, cloth without handles (the posture is our assumption, docs/computation/rolls.md).
inline constexpr Lift kSlide{.horizontalCm = 40,
                             .verticalCm = 75,
                             .distanceCm = 25,
                             .asymmetryDegrees = 0,
                             .perMinute = 0.2,
                             .hours = 1,
                             .coupling = Lift::Coupling::poor};

/// People needed to lift and slide so many kilograms across a table, each carrying an equal share
/// within the recommended limit for `kSlide`. At least 1.
int peopleToSlide(double kilograms);

} // namespace bastewright
