#include "checker/rules/rules.h"
#include "checker/rules/stand_ins_asked.h"
#include "checker/ways/seen_way.h"

#include <algorithm>
#include <map>
#include <optional>

namespace bastewright::check {

bool mayStandIn(const PlanView& v, const QuiltView& quilt) {
    const SeenWay* asked = askedWhereShort(quilt.job);
    if (asked == nullptr || !asked->irons)
        return asked != nullptr;
    const Setting& s = v.session.setting;
    return !quilt.job.batting.meltable && s.room.irons > 0 &&
           std::ranges::any_of(s.helpers, asked->finishes) &&
           std::ranges::none_of(v.session.jobs, [](const Job& j) { return seenWay(j).patches; });
}

std::int64_t standingIn(const QuiltView& v) {
    std::int64_t out = 0;
    for (const Zone& z : v.quilt.zones)
        out += &seenWay(v.job, z) != &seenWay(v.job) ? std::ssize(z.points) : 0;
    return out;
}

bool isShortOfDots(const QuiltView& v) {
    const int pins = v.session.setting.stash.pins;
    return askedWhereShort(v.job) != nullptr && pins > 0 &&
           pinsOf(PlanView{v.session, v.plan}) > pins;
}

bool isPressed(const QuiltView& v) {
    return seenWay(v.job).irons || standingIn(v) > 0;
}

bool isOfItsLevel(const PlanView& v, const Finding& f) {
    using Kind = Finding::Kind;
    if (f.kind != Kind::noIron && f.kind != Kind::nobodyIrons && f.kind != Kind::sprayAndIrons)
        return true;
    return std::ranges::any_of(v.quilts, [&](const QuiltView& q) {
        return (f.quilt < 0 || f.quilt == q.index) &&
               (f.level == Finding::Level::stop ? isPressed(q) || seenWay(q.job).patches
                                                : isShortOfDots(q));
    });
}

namespace {

/// How a pass is basted, of what counts of it.
struct Mixed {
    std::int64_t pinned = 0, dotted = 0;
};

/// The passes of one quilt, by number.
using Passes = std::map<int, Mixed>;

Passes passesOf(const QuiltView& q, const PinsAsked& asked, bool open) {
    Passes out;
    for (const Zone& z : q.quilt.zones)
        if (asked.counts(q.index, z) && !z.points.empty() && asked.open(q.index, z.pass) == open)
            (seenWay(q.job, z).fromBox ? out[z.pass].pinned : out[z.pass].dotted) +=
                std::ssize(z.points);
    return out;
}

/// Of one quilt: no pass with pins after one with dots, and none but the first with both.
void inOrder(const QuiltView& q, const Passes& passes, Report& report) {
    bool dots = false;
    for (const auto& [number, pass] : passes) {
        for (const Zone& z : q.quilt.zones)
            if (z.pass == number && !z.points.empty() && seenWay(q.job, z).fromBox &&
                (dots || (number > 1 && pass.dotted > 0)))
                report.add(where(q, z) / "with",
                           q.label() + ": zone " + z.id + " has pins, though " +
                               (pass.dotted > 0 ? "others of its pass have dots."
                                                : "a pass before it has dots."));
        dots = dots || (number > 1 && pass.dotted > 0);
    }
}

bool any(const Passes& passes, std::int64_t Mixed::*what, bool first) {
    return std::ranges::any_of(
        passes, [&](const auto& p) { return (p.first == 1) == first && p.second.*what > 0; });
}

} // namespace

void standInsAsked(const PlanView& v, const PinsAsked& asked, Report& report) {
    std::vector<std::pair<const QuiltView*, Passes>> quilts; // that may have dots
    bool settled = false;                                    // dots that stay in any case
    for (const QuiltView& q : v.quilts)
        if (mayStandIn(v, q)) {
            quilts.emplace_back(&q, passesOf(q, asked, true));
            inOrder(q, quilts.back().second, report);
            for (const auto& [number, pass] : passesOf(q, asked, false))
                settled = settled || pass.dotted > 0;
        }
    for (const bool first : {false, true}) {
        const QuiltView* dotted = nullptr;
        for (const auto& [q, passes] : quilts) {
            if (dotted != nullptr && any(passes, &Mixed::pinned, first))
                report.add(where(*q) / "zones", q->label() + " has pins in " +
                                                    (first ? "its first pass" : "later passes") +
                                                    ", though " + dotted->label() +
                                                    ", which comes before it, has dots there.");
            if (dotted == nullptr && any(passes, &Mixed::dotted, first))
                dotted = q;
        }
    }
    const auto anywhere = [&](std::int64_t Mixed::*what, bool first) {
        return std::ranges::any_of(quilts,
                                   [&](const auto& q) { return any(q.second, what, first); });
    };
    if (anywhere(&Mixed::dotted, true) && anywhere(&Mixed::pinned, false))
        report.add(whereOfAll(v, "zones"),
                   "A first pass has dots, though pins of later passes could be saved.");
    if (asked.pinned > asked.have &&
        (anywhere(&Mixed::pinned, false) || anywhere(&Mixed::pinned, true)))
        report.add(whereOfAll(v, "zones"),
                   std::to_string(asked.pinned - asked.have) +
                       " pins are missing, and zones that may have dots have pins.");
    // What was taken last: the zones of a first pass, else the innermost pass.
    const bool first = anywhere(&Mixed::dotted, true);
    for (const auto& [q, passes] : quilts) {
        if (settled || !any(passes, &Mixed::dotted, first))
            continue;
        const int number = std::ranges::find_if(passes, [&](const auto& p) {
                               return (p.first == 1) == first && p.second.dotted > 0;
                           })->first;
        for (const Zone& z : q->quilt.zones) {
            const std::int64_t more = first ? std::ssize(z.points) : passes.at(number).dotted;
            if (z.pass == number && !seenWay(q->job, z).fromBox && !z.points.empty() &&
                asked.counts(q->index, z) && asked.pinned + more <= asked.have)
                report.add(where(*q, z) / "with",
                           q->label() + ": zone " + z.id + " has dots; there are " +
                               std::to_string(asked.have) + " pins, and with " +
                               (first ? "it" : "its pass") + " " +
                               std::to_string(asked.pinned + more) + " would be taken.");
        }
        break;
    }
}

// A zone is basted otherwise than its quilt only where the quilt asks for it, and where nothing
// speaks against it.
void zonesWith(const PlanView& v, Report& report) {
    for (const QuiltView& q : v.quilts) {
        const SeenWay* asked = askedWhereShort(q.job);
        for (const Zone& z : q.quilt.zones) {
            if (!z.with)
                continue;
            const char* why = *z.with == q.job.basting.with ? "as its quilt is, which needs no word"
                              : asked == nullptr || asked->with != *z.with
                                  ? "otherwise than its quilt, which does not ask for it"
                              : z.points.empty() ? "somehow, though it has no points"
                              : !mayStandIn(v, q)
                                  ? "otherwise than its quilt, though something speaks against it"
                                  : nullptr;
            if (why != nullptr)
                report.add(where(q, z) / "with",
                           q.label() + ": zone " + z.id + " is said to be basted " + why + ".");
        }
    }
}

// Dots where the box does not last, and no more of them than it takes.
void zonesShort(const PlanView& v, Report& report) {
    const int have = v.session.setting.stash.pins;
    if (have == 0) { // nobody has said how many there are
        for (const QuiltView& q : v.quilts)
            for (const Zone& z : q.quilt.zones)
                if (z.with)
                    report.add(where(q, z) / "with",
                               q.label() + ": zone " + z.id +
                                   " has dots, though nobody has said how many pins there are.");
        return;
    }
    standInsAsked(v,
                  {.have = have,
                   .pinned = pinsOf(v),
                   .open = [](int, int) { return true; },
                   .counts = [](int, const Zone&) { return true; }},
                  report);
}

} // namespace bastewright::check
