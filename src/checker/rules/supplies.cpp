#include "checker/rules/rules.h"
#include "checker/tolerances.h"
#include "checker/ways/seen_way.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace bastewright::check {
namespace {

/// All rows of one kind of thing, added up: pins of all lengths, clips of all sizes.
Supply supply(const PlanView& v, Supply::Kind kind) {
    Supply out;
    for (const Supply& s : v.plan.supplies)
        if (s.kind == kind) {
            out.need += s.need;
            out.have += s.have;
        }
    return out;
}

/// A field of the first row of such a thing; all rows where there is none.
Pointer rowOf(const PlanView& v, Supply::Kind kind, std::string_view key) {
    const auto at = std::ranges::find(v.plan.supplies, kind, &Supply::kind);
    return at == v.plan.supplies.end() ? Pointer{} / "supplies"
                                       : Pointer{}.in("supplies", v.plan.supplies, *at) / key;
}

int clampsOf(const Pass& p) {
    int out = 0;
    for (const Hold& h : p.holds)
        if (h.kind == Hold::Kind::clamp)
            out += h.count;
    return out;
}

int clipsOf(const Pass& p) {
    int out = 0;
    for (const Roll& r : p.rolls)
        out += r.clipHolds > Length{} && !r.folded ? r.clips : 0;
    return out;
}

/// The most that is in use at once, where each pass of each quilt uses so much from its first task
/// to the first task of the next pass, or to the quilt's last.
double mostAtOnce(const PlanView& v, int (*ofPass)(const Pass&)) {
    std::map<Seconds, int> change;
    for (const QuiltView& quilt : v.quilts) {
        std::map<int, Seconds> begins;
        Seconds ends{};
        for (const Task* t : quilt.tasks()) {
            const auto [it, fresh] = begins.emplace(t->pass, t->start);
            it->second = std::min(it->second, t->start);
            ends = std::max(ends, t->end);
        }
        for (auto it = begins.begin(); it != begins.end(); ++it) {
            const Pass* pass = quilt.pass(it->first);
            const auto next = std::next(it);
            if (pass == nullptr)
                continue;
            change[it->second] += ofPass(*pass);
            change[next == begins.end() ? ends : next->second] -= ofPass(*pass);
        }
    }
    int now = 0, most = 0;
    for (const auto& [at, by] : change)
        most = std::max(most, now += by);
    return most;
}

/// Tape is not reusable, so all of it is needed.
Length tapeOf(const PlanView& v) {
    Length out{};
    for (const QuiltView& quilt : v.quilts)
        for (const Pass& p : quilt.quilt.passes)
            for (const Hold& h : p.holds)
                out += h.length;
    return out;
}

Length inUnits(double number, Unit unit) {
    return Length::nearestInches(unit == Unit::centimetre   ? number / 2.54
                                 : unit == Unit::millimetre ? number / 25.4
                                                            : number);
}

} // namespace

void suppliesSums(const PlanView& v, Report& report) {
    for (const Supply& s : v.plan.supplies) {
        const double short_ = std::max(0.0, s.need - s.have);
        if (!std::isfinite(s.need) || !(s.need >= 0) || !(s.have >= 0) ||
            !(std::abs(s.buy - short_) <= 1e-6))
            report.add(Pointer{}.in("supplies", v.plan.supplies, s) / "buy",
                       "Of '" + s.item.english() + "' " + figure(s.need) + " " + s.unit.english() +
                           " are needed and " + figure(s.have) + " on hand, but " + figure(s.buy) +
                           " are to be bought.");
    }
}

void suppliesEnough(const PlanView& v, Report& report) {
    const auto pins = double(pinsOf(v));
    const Stash& stash = v.session.setting.stash;
    const auto check = [&](Supply::Kind kind, const char* name, double least, double have) {
        const Supply said = supply(v, kind);
        if (said.need < least)
            report.add(rowOf(v, kind, "need"), "The plan uses " + figure(least) + " " + name +
                                                   "; " + figure(said.need) +
                                                   " are said to be needed.");
        if (said.have > have)
            report.add(rowOf(v, kind, "have"), "There are " + figure(have) + " " + name +
                                                   " in the stash; the plan counts on " +
                                                   figure(said.have) + ".");
    };
    // A tenth more than the points: some bend, some hide (common practice).
    check(Supply::Kind::pins, "pins", std::ceil(pins * 1.1 - 1e-9), stash.pins);
    check(Supply::Kind::clamps, "clamps", mostAtOnce(v, clampsOf), stash.clamps);
    int clips = 0;
    for (const ClipStock& c : stash.clips)
        clips += c.count;
    check(Supply::Kind::clips, "clips", mostAtOnce(v, clipsOf), clips);
    const Length tape = inUnits(supply(v, Supply::Kind::tape).need, v.plan.unit);
    if (tape < tapeOf(v) - kFine)
        report.add(rowOf(v, Supply::Kind::tape, "need"),
                   "The passes take " + figure(tapeOf(v), v.plan.unit) + " of tape; " +
                       figure(tape, v.plan.unit) + " are said to be needed.");
}

} // namespace bastewright::check
