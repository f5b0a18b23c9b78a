#include "unit/checker/good_plan.h"

#include "unit/checker/good_tasks.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>
#include <utility>

namespace bastewright::testing {
namespace {

/// Grams a square metre of batting, so that small as the quilt is two people move it.
constexpr double kHeavy = 8000;
/// 56 × 48 in of it, between two layers of cotton of 140 g.
constexpr double kKilograms = 56 * 48 * 0.0254 * 0.0254 * (kHeavy + 280) / 1000;

/// The deepest a band of spray may be.
constexpr Length kBand = 12_in;

Session session(Basting::With with, Length batting) {
    Session s;
    Job job;
    job.name = "Tide Table";
    job.top.width = {48_in};
    job.top.length = {40_in};
    job.top.grid = BlockGrid{.columns = 4,
                             .rows = 3,
                             .block = 11_in,
                             .blockLength = 12_in,
                             .border = 2_in,
                             .innerX = {},
                             .innerY = {}};
    job.quilting.method = Quilting::Method::inTheDitch;
    job.basting.with = with;
    if (with == Basting::With::spray)
        job.basting.spacing = kBand;
    job.basting.layout = Basting::Layout::fewest; // told by no rows and no blocks
    job.batting.thickness = batting;
    job.batting.gsm = kHeavy;
    job.batting.pieces = {{"wide", 30_in, 46_in}, {"narrow", 26_in, 46_in}};
    job.backing.fabrics.emplace_back().name = "blue";
    job.backing.squaring = {};
    s.jobs = {job};
    s.setting.room.tables = {{72_in, 30_in, 1}};
    s.setting.room.irons = 2;
    s.setting.room.ventilated = true;
    s.setting.proposeBreaks = false;
    for (const std::string_view name : {kAda, kBo})
        s.setting.helpers.emplace_back().name = name;
    s.setting.stash = {.pins = 200, .clamps = 12, .clips = {{3_in, 8}, {5_in, 8}}, .tape = 300_in};
    return s;
}

/// Rows at most 4 in apart, a stitch every 3 in, the last one nearer.
const std::vector<Length> kRows{1_in,  4_in,  8_in,  12_in, 16_in, 20_in,
                                24_in, 28_in, 32_in, 36_in, 39_in};
const std::vector<Length> kMarks{1.75_in,  4.75_in,  7.75_in,  10.75_in, 13.75_in, 16.75_in,
                                 19.75_in, 22.75_in, 25.75_in, 28.75_in, 31.75_in, 34.75_in,
                                 37.75_in, 40.75_in, 43.75_in, 46.25_in};

std::vector<PlacedPoint> stitches() {
    std::vector<PlacedPoint> out;
    for (const Length y : kRows)
        for (const Length x : kMarks)
            out.push_back({{x, y}, 0});
    return out;
}

/// No place is farther from a stitch than those beside the edge midway between rows, √(2² + 1 3/4²)
/// in; 4/√2 + 1/8 are asked, 0.296 in more.
PinRows stitchRows() {
    std::vector<PinRow> lines;
    for (const Length y : kRows)
        lines.push_back({y, kMarks, {}});
    return {PinRows::Along::width, 4_in, 3_in, lines, {kMarks, kMarks, kRows},
            Length::inch64ths(18), {}};
}

/// Four bands of 10 in, each in four patches of 12 in.
const std::vector<Length> kBands{5_in, 15_in, 25_in, 35_in}, kPatches{6_in, 18_in, 30_in, 42_in};

std::vector<PlacedPoint> patches() {
    std::vector<PlacedPoint> out;
    for (const Length y : kBands)
        for (const Length x : kPatches)
            out.push_back({{x, y}, 0});
    return out;
}

/// No place is farther from a middle than a patch's corner, √(5² + 6²) in; 12/√2 + 1/8 are asked,
/// 0.8 in more.
PinRows bands() {
    std::vector<PinRow> lines;
    for (const Length y : kBands)
        lines.push_back({y, kPatches, {}});
    return {PinRows::Along::width, 10_in, 12_in, lines, {kPatches, kPatches, kBands},
            Length::inch64ths(51), {}};
}

// Every place is within 2 in across and along of a point, and no pin comes near a seam: the blocks
// are 11 in wide and 12 in long, with their corner at 2, 2.
std::vector<PlacedPoint> points(Basting::With with) {
    if (with == Basting::With::thread)
        return stitches();
    if (with == Basting::With::spray)
        return patches();
    const std::vector<Length> columns{3.5_in,  7.5_in,  11.5_in, 14.5_in, 18.5_in, 22.5_in,
                                      25.5_in, 29.5_in, 33.5_in, 36.5_in, 40.5_in, 44.5_in};
    std::vector<PlacedPoint> out;
    const auto row = [&](Length y, Length first, Length last, int angle) {
        const int lies = with == Basting::With::pins ? angle : 0;
        out.push_back({{first, y}, lies});
        for (const Length x : columns)
            out.push_back({{x, y}, lies});
        out.push_back({{last, y}, lies});
    };
    row(1_in, 1.5_in, 46.5_in, 0);
    for (int i = 1; i <= 9; ++i)
        row(Length::inches(4 * i), 1_in, 47_in, 90);
    row(39_in, 1.5_in, 46.5_in, 0);
    return out;
}

struct Row {
    Length y0, y1;
    int pass;
};

std::vector<Zone> zones(Basting::With with) {
    const std::vector<Row> rows{
        {0_in, 10_in, 3}, {10_in, 18_in, 1}, {18_in, 30_in, 1}, {30_in, 40_in, 2}};
    std::vector<Zone> out;
    for (std::size_t r = 0; r < rows.size(); ++r)
        for (const bool right : {false, true}) {
            Zone z;
            z.pass = rows[r].pass;
            z.id = zoneId(z.pass, right ? "B" : "A", static_cast<int>(r) + 1);
            z.area = right ? Rect{24_in, rows[r].y0, 48_in, rows[r].y1}
                           : Rect{0_in, rows[r].y0, 24_in, rows[r].y1};
            for (const PlacedPoint& p : points(with))
                if (z.area.contains(p.at))
                    z.points.push_back(p);
            out.push_back(z);
        }
    std::ranges::stable_sort(out, {}, &Zone::pass);
    return out;
}

/// The table is 72 × 30 in, its middle under the middle of the quilt's width.
Pass pass(int number, Rect fresh, Length tableHead, std::vector<std::string> zones) {
    Pass p;
    p.number = number;
    p.fresh = fresh;
    p.table = {-12_in, tableHead, 60_in, tableHead + 30_in};
    p.zones = std::move(zones);
    p.liftPeople = number > 1 ? 2 : 1;
    p.liftKilograms = number > 1 ? kKilograms : 0;
    p.stretches = {{"A", std::string{kAda}, {{Side::head, {0_in, 24_in}}}},
                   {"B", std::string{kBo}, {{Side::head, {24_in, 48_in}}}}};
    return p;
}

/// Clamps every 14 in, tape every 12 in, from the middle outward.
Hold hold(Side side, bool hangs, Interval along) {
    const Length step = hangs ? 14_in : 12_in;
    Hold h;
    h.side = side;
    h.kind = hangs ? Hold::Kind::clamp : Hold::Kind::tape;
    h.count = static_cast<int>(ceilDiv(along.size(), step));
    for (int i = 0; i < h.count; ++i)
        h.positions.push_back(along.lo + along.size() * (2 * i + 1) / (2 * h.count));
    std::ranges::stable_sort(h.positions, {}, [&](Length at) { return abs(at - along.middle()); });
    if (!hangs)
        h.length = 6_in * h.count;
    h.apart = 1_in * ((along.size() / h.count + 0.5_in).nm() / (1_in).nm());
    return h;
}

Rect centred(Size layer) {
    const Length x = (layer.width - 48_in) / 2, y = (layer.length - 40_in) / 2;
    return {-x, -y, 48_in + x, 40_in + y};
}

PerSide<Length> beyond(const Rect& layer, const Rect& table) {
    return {table.y0 - layer.y0, layer.y1 - table.y1, table.x0 - layer.x0, layer.x1 - table.x1};
}

/// Rounds: middles of head and foot, of left and right, then outward in turn.
void number(std::vector<Hold>& holds) {
    for (Hold& h : holds)
        for (int k = 0; k < h.count; ++k)
            h.numbers.push_back(2 * k + (isAcross(h.side) ? 1 : 2));
}

/// A patch lies on the table with all of it.
void layPass(Pass& p, const LayerSizes& layers, Basting::With with) {
    const Rect top = centred(layers.top), backing = centred(layers.backing);
    // The rim counts only where the top goes on past the table's edge.
    p.field = top;
    const Length rim = with == Basting::With::spray ? 2_in + kBand / 2 : 2_in;
    if (p.table.y0 > 0_in)
        p.field.y0 = p.table.y0 + rim;
    if (p.table.y1 < 40_in)
        p.field.y1 = p.table.y1 - rim;
    p.topOverhang = beyond(top, p.table);
    p.battingOverhang = beyond(centred(layers.batting), p.table);
    p.backingOverhang = beyond(backing, p.table);
    p.battingSpare = beyond(centred(layers.batting), top);
    p.backingSpare = beyond(backing, top);
    p.holds.clear();
    p.rolls.clear();
    for (const Side side : kSides) { // head and foot are the table's long sides
        // Along the new area, and 6 in of what is basted beside it.
        const Rect fresh = p.fresh.bounds();
        const Interval held{fresh.y0 <= 0_in ? backing.y0 : fresh.y0 - 6_in,
                            fresh.y1 >= 40_in ? backing.y1 : fresh.y1 + 6_in};
        const Interval along = isAcross(side) ? intersection(p.table.x(), backing.x())
                                              : intersection(p.table.y(), held);
        p.holds.push_back(hold(side, p.backingOverhang[side] > 0_in, along));
        p.beyond[side] = p.backingOverhang[side] > 0_in ? Beyond::hangs : Beyond::nothing;
    }
    number(p.holds);
}

BackingPlan backing() {
    BackingPlan b;
    b.buy = {{"blue", 99_in}};
    b.panels = {{"blue", {8.5_in, 0_in, 47.5_in, 48_in}, "A"},
                {"blue", {0_in, 0_in, 8.5_in, 48_in}, "B"},
                {"blue", {47.5_in, 0_in, 56_in, 48_in}, "C"}};
    b.cuts = {{"blue", {0_in, 0_in, 40_in, 48_in}, "A"},
              {"blue", {0_in, 48_in, 9_in, 96_in}, "B"},
              {"blue", {9_in, 48_in, 18_in, 96_in}, "C"}};
    b.alternatives = {{true, 99_in, 0, 99 * 40 - 56 * 48, 2, "Two seams.", "", true}};
    b.toBring = {"Blue."};
    return b;
}

BattingPlan batting() {
    BattingPlan b;
    b.pieces = {
        {"wide", {0_in, 0_in, 28_in, 44_in}, false, {0.5_in, 0.5_in, 29.25_in, 44.5_in}},
        {"narrow", {28_in, 0_in, 52_in, 44_in}, false, {0.5_in, 0.5_in, 25.25_in, 44.5_in}}};
    b.joins = {{{28_in, 0_in}, {28_in, 44_in}}};
    b.strip = 44_in;
    return b;
}

QuiltPlan quilt(Basting::With with, Length thickness) {
    QuiltPlan q;
    q.name = "Tide Table";
    q.layers = {{48_in, 40_in}, {52_in, 44_in}, {56_in, 48_in}};
    q.surface = {.name = "1 table",
                 .length = 72_in,
                 .width = 30_in,
                 .tables = {{0_in, 0_in, 72_in, 30_in}},
                 .closed = {}};
    q.passes = {pass(1, {0_in, 10_in, 48_in, 30_in}, 5_in, {"p1.A2", "p1.B2", "p1.A3", "p1.B3"}),
                pass(2, {0_in, 30_in, 48_in, 40_in}, 13_in, {"p2.A4", "p2.B4"}),
                pass(3, {0_in, 0_in, 48_in, 10_in}, -3_in, {"p3.A1", "p3.B1"})};
    q.passes[0].smoothTowards = {kSides.begin(), kSides.end()};
    q.passes[1].smoothTowards = {Side::foot, Side::left, Side::right};
    q.passes[2].smoothTowards = {Side::head, Side::left, Side::right};
    q.machineRolls = {goodRoll(Side::head, 24_in, thickness),
                      goodRoll(Side::foot, 24_in, thickness)};
    q.zones = zones(with);
    if (with == Basting::With::thread)
        q.rows = stitchRows();
    if (with == Basting::With::spray)
        q.rows = bands();
    q.backing = backing();
    q.batting = batting();
    Alternative& how = q.alternatives.emplace_back();
    how.surface = "1 table";
    how.start = Basting::Start::centred;
    how.passes = 3;
    how.chosen = true;
    how.surfaceLength = 72_in;
    how.surfaceWidth = 30_in;
    // The middle of the table; of spray that of a band beside it.
    how.reach = with == Basting::With::spray ? 10_in : 15_in;
    how.lifts = 2;
    how.liftPeople = 2;
    how.liftKilograms = kKilograms;
    how.shifted = 24_in; // 8 in to the foot, 16 in to the head
    how.largestShift = 16_in;
    // 1920 in² / (8 in² · 2.598); of spray / (72 in² · 2.598)
    q.bounds = {.points = with == Basting::With::spray ? 11 : 93, .passes = 1};
    return q;
}

/// A finish with its range, and the chosen way's time with it.
void setFinish(Plan& plan) {
    plan.range = {plan.finish * 4 / 5, plan.finish, plan.finish * 5 / 4};
    for (QuiltPlan& q : plan.quilts)
        for (Alternative& a : q.alternatives)
            a.predicted = plan.finish;
}

} // namespace

Zone& Good::zone(const std::string& id) {
    const auto at = std::ranges::find(quilt().zones, id, &Zone::id);
    return at == quilt().zones.end() ? throw std::out_of_range("no zone " + id) : *at;
}

Task& Good::task(const std::string& id) {
    const auto at = std::ranges::find(plan.tasks, id, &Task::id);
    return at == plan.tasks.end() ? throw std::out_of_range("no task " + id) : *at;
}

void Good::lay() {
    const Pass* last = nullptr;
    for (Pass& p : quilt().passes) {
        layPass(p, quilt().layers, job().basting.with);
        p.shift = last == nullptr ? Vec{} : Vec{0_in, last->table.y0 - p.table.y0};
        last = &p;
    }
}

void Good::lay(int number, Length tableHead) {
    pass(number).table = {-12_in, tableHead, 60_in, tableHead + 30_in};
    lay();
}

Roll goodRoll(Side side, Length rolled, Length batting) {
    // 0.3 mm is a layer of cotton; a roll made by hand fills 0.8 of its round.
    const double mm = std::sqrt(4 * rolled.mm() * (batting.mm() + 0.6) / (0.8 * std::numbers::pi));
    Roll r;
    r.side = side;
    r.rolled = rolled;
    r.along = 56_in;
    r.diameter = Length::nearestMillimetres(mm);
    r.clipHolds = r.diameter <= 3_in ? 3_in : 5_in;
    r.clips = 4;
    return r;
}

void wallAtFoot(Good& good) {
    good.session.setting.room.walls = good.quilt().surface.closed = {Side::foot};
    for (Pass& p : good.quilt().passes) {
        if (p.backingOverhang.foot <= 0_in)
            continue;
        p.beyond.foot = Beyond::onTable;
        p.rolls = {goodRoll(Side::foot, p.backingOverhang.foot, good.job().batting.thickness)};
        // Clear of all of the quilt, rolled.
        const Length room = goodRoll(Side::foot, 48_in, good.job().batting.thickness).diameter;
        p.field.y1 = std::min(40_in, p.table.y1 - room);
        std::erase_if(p.holds, [](const Hold& h) { return h.side == Side::foot; });
    }
    good.quilt().alternatives.front().reach = 26_in;
}

void Good::forget(const std::string& id) {
    task(id).after.clear();
    for (Task& t : plan.tasks)
        std::erase(t.after, id);
}

void Good::remove(const std::string& id) {
    forget(id);
    std::erase_if(plan.tasks, [&](const Task& t) { return t.id == id; });
    reorder();
}

void Good::reorder() {
    std::ranges::sort(plan.tasks, [](const Task& a, const Task& b) {
        return std::pair{a.start, a.id} < std::pair{b.start, b.id};
    });
    plan.finish = {};
    for (const Task& t : plan.tasks)
        plan.finish = std::max(plan.finish, t.end);
    setFinish(plan);
}

Good goodPlan(Basting::With with, Length thickness) {
    Good good{session(with, thickness), {}};
    good.plan.quilts = {quilt(with, thickness)};
    good.lay();
    good.plan.finishBound =
        goodTasks(good.plan.tasks, good.quilt().zones, 0, with, thickness > 10_mm, Seconds{});
    goodSupplies(good.plan, 1, with);
    good.reorder();
    return good;
}

Good goodPair() {
    Good good = goodPlan();
    good.session.severalQuilts = true;
    good.session.setting.stash.pins *= 2;
    good.session.jobs.push_back(good.session.jobs.front());
    good.plan.quilts.push_back(good.plan.quilts.front());
    goodTasks(good.plan.tasks, good.quilt().zones, 1, Basting::With::pins, false, good.plan.finish,
              {good.plan.tasks.back().id});
    goodSupplies(good.plan, 2, Basting::With::pins);
    good.reorder();
    return good;
}

Good goodTwoTables() {
    constexpr Length kThick = Length::millimetres(13);
    Good good = goodPlan(Basting::With::dots, kThick);
    good.session.severalQuilts = true;
    good.session.setting.room.tables.front().count = 2;
    good.session.jobs.push_back(good.session.jobs.front());
    good.plan.quilts.push_back(good.plan.quilts.front());
    good.plan.quilts.back().surface.number = 2;
    goodTasks(good.plan.tasks, good.quilt().zones, 1, Basting::With::dots, true, good.plan.finish);
    goodSupplies(good.plan, 2, Basting::With::dots, 2);
    good.reorder();
    return good;
}

std::set<std::string> broken(const Good& good) {
    std::set<std::string> out;
    for (const Finding& f : checkPlan(good.session, good.plan))
        out.insert(f.subject);
    return out;
}

} // namespace bastewright::testing
