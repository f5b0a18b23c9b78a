#include "checker/rules/rules.h"
#include "checker/tolerances.h"
#include "checker/ways/seen_way.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace bastewright::check {
namespace {

struct Needed {
    Supply::Kind kind;
    double need, have;
    std::optional<Length> size{};
};

/// What is brought, in the order of its kinds.
constexpr std::array kThings{
    "things", "pins",          "fuse squares", "irons",     "pads",         "thread", "needles",
    "cans",   "covers",        "clips",        "clamps",    "center marks", "tape",   "tools",
    "fabric", "batting packs", "batting roll", "leftovers", "joining strip"};
static_assert(kThings.size() == std::size_t(Supply::Kind::joiningStrip) + 1);

constexpr Length kSquare = Length::inch64ths(48); ///< side of a fuse square (common practice)

/// A tenth more than are laid: some bend, some hide (common practice).
double withSpare(std::int64_t count) {
    return double((count * 11 + 9) / 10);
}

/// The clip a roll asks for: the one that holds it, or the next half inch.
Length clipOf(const Roll& roll) {
    const Length half = Length::inches(1) / 2;
    return roll.clipHolds > Length{} ? roll.clipHolds : half * ceilDiv(roll.diameter, half);
}

using Clips = std::map<Length, std::int64_t>;

void clipsOf(const std::vector<Roll>& rolls, Clips& to) {
    for (const Roll& roll : rolls)
        if (!roll.folded && roll.clips > 0)
            to[clipOf(roll)] += roll.clips;
}

/// Clips in use at most, by size: on each surface those of a pass beside those of the quilts that
/// are rolled for the machine already.
Clips clips(const PlanView& v) {
    std::map<int, std::pair<Clips, Clips>> surfaces; // the most, and what stays
    for (const QuiltView& q : v.quilts) {
        auto& [most, stays] = surfaces[q.quilt.surface.number];
        const auto raise = [&most = most](const Clips& now) {
            for (const auto& [size, count] : now)
                most[size] = std::max(most[size], count);
        };
        for (const Pass& p : q.quilt.passes) {
            Clips now = stays;
            clipsOf(p.rolls, now);
            raise(now);
        }
        clipsOf(q.quilt.machineRolls, stays);
        raise(stays);
    }
    Clips out;
    for (const auto& [number, of] : surfaces)
        for (const auto& [size, count] : of.first)
            out[size] += count;
    return out;
}

Length unitLength(Unit unit) {
    return unit == Unit::inch         ? Length::inches(1)
           : unit == Unit::centimetre ? Length::millimetres(10)
                                      : Length::millimetres(1);
}

/// Cloth and thread are sold in yards or metres.
Length clothUnit(const PlanView& v) {
    return v.session.jobs.front().unit == Unit::inch ? Length::inches(36)
                                                     : Length::millimetres(1000);
}

double inCloth(const PlanView& v, Length l) {
    return std::round(double(l.nm()) / double(clothUnit(v).nm()) * 1000) / 1000;
}

/// Cloth of the backings, by fabric: bought with what was there, or what is cut.
void fabrics(const PlanView& v, std::vector<Needed>& out) {
    std::map<std::string, std::pair<Length, Length>> all; // need, have
    for (const QuiltView& q : v.quilts) {
        if (!q.quilt.backing)
            continue;
        std::map<std::string, std::pair<Length, Length>> here;
        for (const ClothCut& cut : q.quilt.backing->cuts)
            here[cut.fabric].first = std::max(here[cut.fabric].first, cut.onCloth.y1);
        for (const Fabric& f : q.job.backing.fabrics)
            if (const auto at = here.find(f.name); at != here.end())
                at->second.second = f.onHand;
        for (const BackingPurchase& b : q.quilt.backing->buy)
            here[b.fabric].first = here[b.fabric].second + b.length;
        for (const auto& [name, of] : here) {
            all[name].first += of.first;
            all[name].second += std::min(of.first, of.second);
        }
    }
    for (const auto& [name, of] : all)
        out.push_back({Supply::Kind::fabric, inCloth(v, of.first), inCloth(v, of.second)});
}

void battings(const PlanView& v, std::vector<Needed>& out) {
    std::map<std::string, std::pair<double, double>> packs;
    std::map<Length, std::pair<Length, Length>> rolls; // off each width: need, have
    std::int64_t leftovers = 0;
    Length strip{};
    for (const QuiltView& q : v.quilts) {
        if (!q.quilt.batting)
            continue;
        const bool there = q.job.batting.width.has_value(); // measured, so it lies there already
        for (const BattingPurchase& b : q.quilt.batting->buy)
            if (b.pack.empty()) {
                rolls[b.width].first += b.length;
                rolls[b.width].second += there ? b.length : Length{};
            } else {
                packs[b.pack].first += 1;
                packs[b.pack].second += there ? 1 : 0;
            }
        for (const BattingPiecePlaced& p : q.quilt.batting->pieces)
            leftovers += p.bought < 0 ? 1 : 0;
        strip += q.quilt.batting->strip;
    }
    for (const auto& [name, of] : packs)
        out.push_back({Supply::Kind::battingPack, of.first, of.second});
    for (const auto& [width, of] : rolls)
        out.push_back(
            {Supply::Kind::battingRoll, inCloth(v, of.first), inCloth(v, of.second), width});
    out.push_back({Supply::Kind::leftovers, double(leftovers), double(leftovers)});
    out.push_back({Supply::Kind::joiningStrip,
                   double(ceilDiv(strip, unitLength(v.session.jobs.front().unit))), 0});
}

std::vector<Needed> needed(const PlanView& v) {
    using Kind = Supply::Kind;
    const Setting& setting = v.session.setting;
    const std::int64_t pinned = pinsOf(v);
    std::int64_t dotted = 0;
    Length sewn{};
    std::map<int, std::int64_t> clamped, pads;
    double sprayed = 0; // square feet
    std::map<int, int> covered;
    Length tape{};
    for (const QuiltView& q : v.quilts) {
        const SeenWay& way = seenWay(q.job);
        std::int64_t count = 0;
        for (const Zone& z : q.quilt.zones)
            count += std::ssize(z.points);
        std::int64_t pressed = 0;
        for (const Zone& z : q.quilt.zones)
            pressed += seenWay(q.job, z).irons ? std::ssize(z.points) : 0;
        dotted += pressed;
        sewn += way.apart != nullptr ? count * way.apart(q.job.basting) : Length{};
        if (way.patches && count > 0) {
            sprayed += areaSquareInches(q.top) / 144;
            int& covers = covered[q.quilt.surface.number];
            covers = std::max(covers, q.quilt.surface.floor ? 1 : 2);
        }
        std::int64_t& most = clamped[q.quilt.surface.number];
        for (const Pass& p : q.quilt.passes) {
            std::int64_t here = 0;
            for (const Hold& h : p.holds) {
                here += h.kind == Hold::Kind::clamp ? h.count : 0;
                tape += h.kind == Hold::Kind::tape ? h.length : Length{};
            }
            most = std::max(most, here);
        }
        if (way.irons || pressed > 0)
            pads[q.quilt.surface.number] = std::max<std::int64_t>(
                pads[q.quilt.surface.number],
                std::max<std::int64_t>(1, std::ssize(q.quilt.surface.tables)));
    }
    std::int64_t clamps = 0, tables = 0;
    for (const auto& [number, count] : clamped)
        clamps += count;
    for (const auto& [number, count] : pads)
        tables += count;
    std::vector<Needed> out{{Kind::pins, withSpare(pinned), double(setting.stash.pins)},
                            {Kind::fuseSquares, withSpare(2 * dotted), 0, kSquare}};
    out.push_back({Kind::irons, dotted > 0 ? 1.0 : 0.0, double(setting.room.irons)});
    out.push_back({Kind::heatSafePads, double(tables), 0});
    // Half as much thread again as the rows are long (from memory), a needle for everybody who
    // sews.
    out.push_back({Kind::thread, double(ceilDiv(sewn + sewn / 2, clothUnit(v))), 0});
    out.push_back(
        {Kind::needles,
         sewn > Length{} ? double(std::ranges::count(setting.helpers, true, &Helper::pins)) : 0.0,
         0});
    // A can for every 150 square feet, begun (common practice); a cover for the floor and one for
    // the tables.
    out.push_back({Kind::sprayCans, std::ceil(sprayed / 150 - 1e-9), 0});
    int covers = 0;
    for (const auto& [number, count] : covered)
        covers += count;
    out.push_back({Kind::covers, double(covers), 0});
    for (const auto& [size, count] : clips(v)) {
        std::int64_t have = 0;
        for (const ClipStock& c : setting.stash.clips)
            have += c.holds == size ? c.count : 0;
        out.push_back({Supply::Kind::clips, double(count), double(have), size});
    }
    out.push_back({Supply::Kind::clamps, double(clamps), double(setting.stash.clamps)});
    out.push_back({Kind::centreMarks, 4.0 * double(clamped.size()), 0});
    const Length one = unitLength(v.session.jobs.front().unit);
    out.push_back({Supply::Kind::tape, double(ceilDiv(tape, one)),
                   std::floor(double(setting.stash.tape.nm()) / double(one.nm()))});
    const auto close = std::ranges::count(setting.helpers, true, &Helper::closes);
    out.push_back({Kind::closingTools, pinned > 0 ? double(close) : 0.0, 0});
    fabrics(v, out);
    battings(v, out);
    std::erase_if(out, [](const Needed& n) { return n.need <= 0; });
    return out;
}

} // namespace

// What is brought is what the plan uses, each thing once, in the order of their kinds.
void suppliesNeeded(const PlanView& v, Report& report) {
    if (v.plan.supplies.empty() && v.stopped())
        return;
    std::vector<Needed> asked = needed(v);
    const auto same = [](const Needed& n, const Supply& s) {
        return n.kind == s.kind && std::abs(n.need - s.need) < 1e-6 &&
               std::abs(n.have - s.have) < 1e-6 && n.size == s.size;
    };
    const auto row = [&](Supply::Kind kind, double need, double have,
                         const std::optional<Length>& size) {
        return std::string{kThings.at(std::size_t(kind))} +
               (size ? " of " + figure(*size, v.plan.unit) : std::string{}) + ", " + figure(need) +
               " needed and " + figure(have) + " on hand.";
    };
    const Supply* last = nullptr;
    for (const Supply& s : v.plan.supplies) {
        const Pointer there = Pointer{}.in("supplies", v.plan.supplies, s);
        const std::string what =
            "No. " + std::to_string(&s - v.plan.supplies.data() + 1) + " of what to bring";
        if (last != nullptr && std::pair{s.kind, s.size} < std::pair{last->kind, last->size})
            report.add(there, what + " is listed out of turn.");
        last = &s;
        const auto found = std::ranges::find_if(asked, [&](const Needed& n) { return same(n, s); });
        if (found == asked.end())
            report.add(there,
                       what + " is not what the plan uses: " + row(s.kind, s.need, s.have, s.size));
        else
            asked.erase(found);
    }
    for (const Needed& n : asked)
        report.add(Pointer{} / "supplies", "What the plan uses is not to be brought: " +
                                               row(n.kind, n.need, n.have, n.size));
}

} // namespace bastewright::check
