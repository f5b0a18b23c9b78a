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

/// Weight of a basted quilt of this size: batting by its grams per square metre, and two layers of
/// quilting cotton of about 140 g/m² (from memory).
double quiltKilograms(const Job& job, Size size);

/// People needed to lift and slide so many kilograms across a table, each carrying an equal share
/// within the recommended limit for leaning over a table's edge (docs/computation/rolls.md). At
/// least 1.
int peopleToSlide(double kilograms);

} // namespace bastewright
