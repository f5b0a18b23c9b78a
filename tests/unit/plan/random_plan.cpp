#include "unit/plan/random_plan.h"

#include "support/random.h"

#include <algorithm>

namespace bastewright {
namespace {

class Builder {
public:
    explicit Builder(std::uint64_t seed)
        : r_{seed} {}

    Plan plan() {
        Plan p;
        p.unit = r_.oneOf(std::vector{Unit::inch, Unit::centimetre, Unit::millimetre});
        for (int n = r_.chance(70) ? 1 : r_.count(0, 4); n > 0; --n)
            p.quilts.push_back(quilt());
        p.tasks = some(6, &Builder::task);
        for (int n = r_.count(0, 4); n > 0; --n)
            p.supplies.push_back({Supply::Kind(r_.count(0, int(Supply::Kind::joiningStrip))),
                                  sentence(), r_.real(0, 1000), double(r_.count(0, 1000)),
                                  r_.real(-1, 1), sentence(), sentence(),
                                  r_.chance(50) ? std::optional{length()} : std::nullopt});
        for (int n = r_.count(0, 2); n > 0; --n)
            p.help.push_back({Help::Kind(r_.count(0, int(Help::Kind::fewestPoints))), sentence(),
                              Seconds{r_.whole(-9, 99999)}, r_.count(-1, 9)});
        p.finish = Seconds{r_.whole(0, 99999)};
        for (int n = r_.count(0, 2); n > 0; --n)
            p.breaks.push_back(rest());
        p.range = {Seconds{r_.whole(0, 999)}, Seconds{r_.whole(1000, 9999)},
                   Seconds{r_.whole(10000, 99999)}};
        p.finishBound = Seconds{r_.whole(0, 99999)};
        using enum Finding::Level;
        for (int n = r_.count(0, 3); n > 0; --n)
            p.findings.push_back({Finding::Kind(r_.count(0, int(Finding::Kind::handedElsewhere))),
                                  r_.oneOf(std::vector{note, warn, stop}), text(), sentence(),
                                  sentence(), r_.name(r_.count(0, 9)),
                                  std::vector<int>(std::size_t(r_.count(0, 2)), r_.count(-9, 999)),
                                  r_.count(-1, 19)});
        return p;
    }

private:
    Random r_;

    template <class T>
    std::vector<T> some(int most, T (Builder::*make)()) {
        std::vector<T> out;
        for (int n = r_.count(0, most); n > 0; --n)
            out.push_back((this->*make)());
        return out;
    }
    std::string text() { return r_.chance(20) ? std::string{} : r_.name(r_.count(0, 99)); }
    /// A name, a figure, a time, or words with some of these in them.
    Sentence sentence() {
        switch (r_.count(0, 4)) {
        case 0:
            return text();
        case 1:
            return core::figure(r_.name(r_.count(1, 20)));
        case 2:
            return core::says("%1 in all");
        case 3:
            return core::says("%1 until %2", r_.name(r_.count(1, 20)),
                              ClockTime{std::chrono::minutes{r_.count(0, 24 * 60 - 1)}});
        default:
            return core::says("%2 of %1", r_.name(r_.count(0, 20)),
                              core::says("50 % of %1", core::figure(r_.name(r_.count(1, 20)))));
        }
    }
    /// Small and large, whole and odd, both signs.
    Length length() {
        return r_.chance(10)
                   ? r_.length(Length::millimetres(-1'000'000), Length::millimetres(1'000'000))
                   : r_.length(-300_in, 300_in);
    }
    Length positive() { return abs(length()); }
    Size size() { return {positive(), positive()}; }
    Rect rect() {
        const auto [x0, x1] = std::minmax({length(), length()});
        const auto [y0, y1] = std::minmax({length(), length()});
        return {x0, y0, x1, y1};
    }
    Segment segment() { return {{length(), length()}, {length(), length()}}; }
    PlacedPoint point() { return {{length(), length()}, r_.count(0, 179)}; }
    Side side() { return kSides[static_cast<std::size_t>(r_.whole(0, 3))]; }
    std::vector<Side> sides() {
        std::vector<Side> out;
        for (const Side s : kSides)
            if (r_.chance(40))
                out.push_back(s);
        return out;
    }
    PerSide<Length> perSide() { return {length(), length(), length(), length()}; }

    SurfacePlan surface() {
        SurfacePlan s;
        s.name = sentence();
        s.number = r_.count(1, 4);
        s.length = positive();
        s.width = positive();
        s.floor = r_.chance(20);
        s.quiltLengthAlongLength = r_.chance(50);
        s.tables = some(3, &Builder::rect);
        s.closed = sides();
        return s;
    }
    Hold hold() {
        return {side(),
                r_.chance(50) ? Hold::Kind::clamp : Hold::Kind::tape,
                r_.count(0, 9),
                positive(),
                some(4, &Builder::length),
                some(4, &Builder::round),
                positive()};
    }
    Stretch stretch() { return {text(), text(), some(2, &Builder::place)}; }
    PlannedBreak rest() {
        return {Seconds{r_.whole(0, 99999)}, Seconds{r_.whole(0, 99999)}, r_.chance(50),
                some(2, &Builder::text)};
    }
    int round() { return r_.count(1, 30); }
    Beyond beyond() { return static_cast<Beyond>(r_.count(0, 5)); }
    Roll roll() {
        return {side(),     positive(),     positive(),   positive(),
                positive(), r_.count(0, 9), r_.chance(50)};
    }
    Pass pass() {
        Pass p;
        p.number = r_.count(1, 30);
        p.pulled = r_.chance(20);
        p.beyond = {beyond(), beyond(), beyond(), beyond()};
        p.field = rect();
        while (p.fresh.empty()) // every pass bastes something
            p.fresh = rect();
        p.table = rect();
        p.shift = {length(), length()};
        p.zones = some(4, &Builder::text);
        p.stretches = some(3, &Builder::stretch);
        p.holds = some(3, &Builder::hold);
        p.backingOverhang = perSide();
        p.battingOverhang = perSide();
        p.topOverhang = perSide();
        p.backingSpare = perSide();
        p.battingSpare = perSide();
        p.rolls = some(2, &Builder::roll);
        p.smoothTowards = sides();
        p.liftPeople = r_.count(1, 9);
        p.liftKilograms = r_.real(0, 20);
        return p;
    }
    Zone zone() {
        Zone out{text(), r_.count(1, 9), rect(), some(12, &Builder::point)};
        if (r_.chance(20))
            out.with = static_cast<Basting::With>(r_.count(0, 3));
        return out;
    }
    PinRow row() {
        PinRow out{positive(), some(9, &Builder::positive), {}};
        for (int n = r_.count(0, 3); n > 0; --n)
            out.aside.push_back({positive(), {length(), length()}});
        return out;
    }
    PinRows rows() {
        PinRows out;
        out.along = r_.chance(50) ? PinRows::Along::width : PinRows::Along::length;
        out.gap = positive();
        out.step = positive();
        out.lines = some(5, &Builder::row);
        out.ribbons = {some(9, &Builder::positive), some(9, &Builder::positive),
                       some(9, &Builder::positive)};
        out.slack = positive();
        out.singles = some(3, &Builder::spot);
        return out;
    }
    Point spot() { return {length(), length()}; }
    EdgeLine edge() { return {side(), positive(), some(9, &Builder::positive)}; }
    PinBlocks blocks() {
        return {positive(),
                some(9, &Builder::spot),
                r_.count(0, 3),
                r_.chance(50),
                some(4, &Builder::edge),
                some(2, &Builder::spot),
                some(2, &Builder::spot)};
    }
    BackingPlan backing() {
        BackingPlan b;
        b.along = r_.chance(50);
        for (int n = r_.count(0, 3); n > 0; --n) {
            b.buy.push_back({text(), positive()});
            b.panels.push_back({text(), rect(), text()});
            b.cuts.push_back({text(), rect(), text(), r_.chance(50), r_.chance(50)});
            b.alternatives.push_back({r_.chance(50), positive(), r_.real(0, 99), r_.real(0, 9999),
                                      r_.count(0, 9), sentence(), sentence(), r_.chance(50)});
        }
        b.leastBought = sentence();
        b.toBring = some(2, &Builder::sentence);
        b.runnerUp = sentence();
        b.nearestMiss = sentence();
        return b;
    }
    BattingPlan batting() {
        BattingPlan b;
        b.pack = text();
        for (int n = r_.count(0, 3); n > 0; --n) {
            b.pieces.push_back({text(), rect(), r_.chance(50), rect(), r_.count(-1, 3)});
            b.buy.push_back({text(), positive(), positive()});
            b.alternatives.push_back({text(), positive(), positive(), r_.count(0, 9), positive(),
                                      r_.chance(50), sentence(), r_.chance(50)});
        }
        b.joinCost = sentence();
        b.toBring = some(2, &Builder::sentence);
        b.joins = some(3, &Builder::segment);
        b.strip = positive();
        b.leftOver = some(3, &Builder::sentence);
        for (int n = r_.count(0, 2); n > 0; --n)
            b.splits.push_back({text(), r_.chance(50), positive()});
        return b;
    }
    Alternative alternative() {
        using enum Basting::Start;
        return {sentence(),           r_.oneOf(std::vector{centred, besideMiddle, oneEnd}),
                r_.chance(50),        r_.count(0, 9),
                r_.count(0, 3),       Seconds{r_.whole(0, 99999)},
                r_.count(0, 9),       positive(),
                r_.chance(50),        r_.chance(50),
                sentence(),           positive(),
                r_.count(1, 9),       r_.real(0, 99),
                {length(), length()}, positive(),
                positive(),           positive()};
    }
    QuiltPlan quilt() {
        QuiltPlan q;
        q.name = text();
        q.layers = {size(), size(), size()};
        q.surface = surface();
        q.passes = some(4, &Builder::pass);
        q.zones = some(5, &Builder::zone);
        if (r_.chance(60))
            q.rows = rows();
        if (r_.chance(40))
            q.blocks = blocks();
        if (r_.chance(60))
            q.backing = backing();
        if (r_.chance(60))
            q.batting = batting();
        q.machineRolls = some(2, &Builder::roll);
        q.alternatives = some(2, &Builder::alternative);
        q.bounds = {r_.count(0, 999), r_.count(0, 9)};
        return q;
    }
    StandingPlace place() { return {side(), {length(), length()}}; }
    Task task() {
        return {text(),
                static_cast<TaskKind>(r_.count(0, static_cast<int>(TaskKind::handOver))),
                r_.count(0, 9),
                r_.count(0, 9),
                text(),
                some(3, &Builder::text),
                some(3, &Builder::place),
                Seconds{r_.whole(0, 99999)},
                Seconds{r_.whole(0, 99999)},
                some(3, &Builder::text)};
    }
};

} // namespace

Plan randomPlan(std::uint64_t seed) {
    return Builder{seed}.plan();
}

} // namespace bastewright
