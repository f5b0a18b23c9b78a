#include "checker/rules/lifting.h"

#include "checker/rules/rules.h"

#include <cmath>

namespace bastewright::check {

// Cotton of 140 g a square metre above and below (from memory). Each lifts what NIOSH Publication
// 94-110 recommends at a table's edge: 23 kg · 25/40 (hands 40 cm out) · 0.9 (cloth has no
// handles). Where a side is longer than 60 in one person's arms do not hold it (common practice).
Lifted liftOf(const QuiltView& v) {
    constexpr double kEach = 23.0 * 25 / 40 * 0.9, kSquareInch = 0.0254 * 0.0254;
    const Size backing = v.quilt.layers.backing;
    const double area = backing.width.in() * backing.length.in() * kSquareInch;
    Lifted out;
    out.kilograms = area * (v.job.batting.gsm + 2 * 140) / 1000;
    out.people = std::max(1, static_cast<int>(std::ceil(out.kilograms / kEach - 1e-9)));
    if (std::max(backing.width, backing.length) > Length::inches(60))
        out.people = std::max(out.people, 2);
    return out;
}

void passesLift(const QuiltView& v, Report& report) {
    const Lifted moved = liftOf(v);
    for (const Pass& p : v.quilt.passes) {
        const Lifted asked = p.number == 1 ? Lifted{} : moved; // nothing is shifted into the first
        if (p.liftPeople != asked.people ||
            !(std::abs(p.liftKilograms - asked.kilograms) <= 1e-6 * (1 + asked.kilograms)))
            report.add(where(v, p) /
                           (p.liftPeople != asked.people ? "lift_people" : "lift_kilograms"),
                       v.label() + ", pass " + std::to_string(p.number) + ": " +
                           std::to_string(p.liftPeople) + " people lift " +
                           figure(p.liftKilograms) + " kg; it weighs " + figure(asked.kilograms) +
                           " kg, for " + std::to_string(asked.people) + ".");
    }
}

} // namespace bastewright::check
