#pragma once

#include "job/fields/field_reader.h"
#include "job/fields/field_writer.h"
#include "plan/plan.h"

/// The parts of a quilt's plan in files. Private to the plan format.
namespace bastewright {

/// Everything of one quilt, as fields of the object at hand. A plan of one quilt has the bound of
/// its finishing time beside the quilt's own bounds.
void readQuiltPlan(FieldReader& reader, QuiltPlan& quilt, Seconds* finishBound = nullptr);
void writeQuiltPlan(FieldWriter& writer, const QuiltPlan& quilt,
                    const Seconds* finishBound = nullptr);

/// Limits against hostile files; far beyond any real plan.
namespace plan_limits {
inline constexpr std::size_t kValues = 3'000'000;
inline constexpr std::size_t kPasses = 400;
inline constexpr std::size_t kZones = 10'000;
inline constexpr std::size_t kPoints = 100'000; ///< of one zone or row
inline constexpr std::size_t kTasks = 100'000;
inline constexpr std::size_t kList = 10'000; ///< of anything else
inline constexpr std::size_t kText = 4'000;  ///< bytes of a sentence
inline constexpr Within<Length> kLength{Length::millimetres(-1'000'000),
                                        Length::millimetres(1'000'000)};
inline constexpr Within<int> kCount{-1'000'000'000, 1'000'000'000};
inline constexpr Within<double> kNumber{-1e12, 1e12};
inline constexpr Within<std::int64_t> kSeconds{-1'000'000'000, 1'000'000'000};
} // namespace plan_limits

/// An interval along a side of the table.
template <class Fields, class P>
void standingPlaceFields(Fields& f, P& place) {
    f.require({"side", "from", "to"});
    f.word("side", place.side, kSideWords);
    f.length("from", place.along.lo, plan_limits::kLength);
    f.length("to", place.along.hi, plan_limits::kLength);
}

} // namespace bastewright
