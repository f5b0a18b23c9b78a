#include "fixture.h"

#include "job/job_json.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace bastewright::fixture {
namespace {

const Length kTableLength = 72_in, kTableWidth = 60_in;

std::vector<Length> cuts(Length whole, Length most) {
    const auto n = std::max<std::int64_t>(1, ceilDiv(whole, most));
    std::vector<Length> at;
    for (std::int64_t i = 0; i <= n; ++i)
        at.push_back(whole * i / n);
    return at;
}

PerSide<Length> beyond(const Rect& layer, const Rect& table) {
    return {table.y0 - layer.y0, layer.y1 - table.y1, table.x0 - layer.x0, layer.x1 - table.x1};
}

std::vector<Length> middleOut(Length lo, Length hi, int n) {
    std::vector<Length> at;
    for (int i = 0; i < n; ++i)
        at.push_back(lo + (hi - lo) * (2 * i + 1) / (2 * n));
    const Length middle = (lo + hi) / 2;
    std::ranges::stable_sort(at, {}, [&](Length l) { return abs(l - middle); });
    return at;
}

Pass makePass(const QuiltPlan& q, int number, const Rect& fresh, const Pass* before) {
    const Rect top{Length{}, Length{}, q.layers.top.width, q.layers.top.length};
    const Length bx = (q.layers.backing.width - top.width()) / 2,
                 by = (q.layers.backing.length - top.length()) / 2;
    const Rect backing{top.x0 - bx, top.y0 - by, top.x1 + bx, top.y1 + by};
    const Point c = fresh.middle();
    Pass p;
    p.number = number;
    p.fresh = fresh;
    p.table = {c.x - kTableWidth / 2, c.y - kTableLength / 2, c.x + kTableWidth / 2,
               c.y + kTableLength / 2};
    p.field = intersection(p.table.grown(-2_in), top);
    if (before)
        p.shift = {before->table.x0 - p.table.x0, before->table.y0 - p.table.y0};
    p.backingOverhang = beyond(backing, p.table);
    p.topOverhang = beyond(top, p.table);
    p.battingOverhang = p.topOverhang;
    p.backingSpare = {by, by, bx, bx};
    p.battingSpare = {by / 2, by / 2, bx / 2, bx / 2};
    const Rect on = intersection(backing, p.table);
    for (const Side s : {Side::left, Side::right, Side::head, Side::foot}) {
        const bool clamp = p.backingOverhang[s] > Length{};
        Hold h{s, clamp ? Hold::Kind::clamp : Hold::Kind::tape, 4, clamp ? Length{} : 24_in, {}};
        h.positions = isAcross(s) ? middleOut(on.x0, on.x1, 4) : middleOut(on.y0, on.y1, 4);
        // The middles of the sides first; those that face each other have one number.
        for (int k = 0; k < h.count; ++k)
            h.numbers.push_back(2 * k + (isAcross(s) ? 2 : 1));
        h.apart = 10_in;
        p.holds.push_back(h);
        if (p.topOverhang[s] > Length{})
            p.beyond[s] = p.topOverhang[s] > 12_in ? Beyond::rolled : Beyond::hangs;
        if (p.topOverhang[s] > 12_in)
            p.rolls.push_back({s, p.topOverhang[s], isAcross(s) ? on.width() : on.length(), 3_in,
                               3_in, 4, s == Side::foot});
    }
    p.smoothTowards = before ? std::vector{Side::right, Side::foot}
                             : std::vector{Side::head, Side::foot, Side::left, Side::right};
    p.liftPeople = before ? 2 : 1;
    p.liftKilograms = 4;
    return p;
}

void addZones(QuiltPlan& q) {
    std::vector<Length> xs, ys;
    for (const auto& p : q.passes) {
        for (const Length l : cuts(p.fresh.bounds().width(), 24_in))
            xs.push_back(p.fresh.bounds().x0 + l);
        for (const Length l : cuts(p.fresh.bounds().length(), 24_in))
            ys.push_back(p.fresh.bounds().y0 + l);
    }
    for (auto* v : {&xs, &ys}) {
        std::ranges::sort(*v);
        v->erase(std::unique(v->begin(), v->end()), v->end());
    }
    for (std::size_t i = 0; i + 1 < xs.size(); ++i)
        for (std::size_t j = 0; j + 1 < ys.size(); ++j) {
            Zone z;
            z.area = {xs[i], ys[j], xs[i + 1], ys[j + 1]};
            for (auto& p : q.passes)
                if (p.fresh.contains(z.area.middle())) {
                    z.pass = p.number;
                    z.id = zoneId(p.number, placeLetter(i), int(j) + 1);
                    p.zones.push_back(z.id);
                    break;
                }
            for (Length x = z.area.x0 + 2_in; x < z.area.x1; x += 4_in)
                for (Length y = z.area.y0 + 2_in; y < z.area.y1; y += 4_in)
                    z.points.push_back({{x, y}, 0});
            q.zones.push_back(z);
        }
}

void addCloth(QuiltPlan& q, const Job& job) {
    const Size b = q.layers.backing;
    const std::string cloth =
        job.backing.fabrics.empty() ? "sea blue" : job.backing.fabrics[0].name;
    BackingPlan plan;
    const Length side = (b.width - 40_in) / 2;
    plan.panels = {{cloth, {Length{}, Length{}, side, b.length}},
                   {cloth, {side, Length{}, side + 40_in, b.length}},
                   {cloth, {side + 40_in, Length{}, b.width, b.length}}};
    plan.cuts = {{cloth, {Length{}, Length{}, 40_in, b.length}, "middle"},
                 {cloth, {Length{}, b.length, side + 1_in, b.length * 2}, "left side"},
                 {cloth, {Length{}, b.length * 2, side + 1_in, b.length * 3}, "right side"}};
    plan.buy = {{cloth, b.length * 3}};
    plan.runnerUp = "Lengths run across take 10 1/4 yd, three seams more.";
    plan.nearestMiss = "Half an inch less overage on the left and right saves a whole length.";
    q.backing = plan;
    BattingPlan batting;
    const Size w = q.layers.batting;
    batting.pieces = {
        {"A", {Length{}, Length{}, w.width / 2, w.length}, false},
        {"B", {w.width / 2, Length{}, w.width, w.length / 2}, true},
        {"long name of a leftover piece", {w.width / 2, w.length / 2, w.width, w.length}, false}};
    batting.joins = {{{w.width / 2, w.length / 2}, {w.width, w.length / 2}},
                     {{w.width / 2, Length{}}, {w.width / 2, w.length}}};
    batting.strip = w.width / 2 + w.length;
    batting.leftOver = {"D"};
    q.batting = batting;
    q.machineRolls = {{Side::left, 40_in, b.length, 5_in, 5_in, 6, false},
                      {Side::right, 40_in, b.length, 8_in, Length{}, 6, false}};
}

/// Tasks handed out in turn; each begins when the one before it in its person's hands has ended.
class Rota {
public:
    Rota(const Session& session, Plan& plan)
        : session_{session}
        , plan_{plan} {}

    void quilt(int index) {
        const QuiltPlan& q = plan_.quilts[std::size_t(index)];
        const bool dots = session_.jobs[std::size_t(index)].basting.with == Basting::With::dots;
        for (const auto& pass : q.passes) {
            if (pass.number == 1) {
                team(index, 1, TaskKind::layBacking, 2, 240);
                team(index, 1, TaskKind::layBatting, 2, 180);
                team(index, 1, TaskKind::layTop, 2, 180);
            } else {
                team(index, pass.number, TaskKind::shift, pass.liftPeople, 300);
            }
            team(index, pass.number, TaskKind::reclamp, 1, 200);
            if (dots) {
                zones(index, pass, TaskKind::dotLower);
                zones(index, pass, TaskKind::dotUpper);
                zones(index, pass, TaskKind::press);
            } else {
                zones(index, pass, TaskKind::placeOpen);
                team(index, pass.number, TaskKind::smooth, 2, 120);
                zones(index, pass, TaskKind::closePins);
            }
            team(index, pass.number, TaskKind::checkUnderside, 1, 90);
        }
        team(index, int(q.passes.size()), TaskKind::handOver, 1, 300);
    }

private:
    void add(Task t, int seconds) {
        t.id = "t" + std::to_string(plan_.tasks.size() + 1);
        t.start = now_;
        t.end = now_ + Seconds{seconds};
        last_ = std::max(last_, t.end);
        plan_.tasks.push_back(std::move(t));
    }
    void team(int job, int pass, TaskKind kind, int hands, int seconds) {
        Task t;
        t.kind = kind;
        t.job = job;
        t.pass = pass;
        for (int i = 0; i < hands && i < int(session_.setting.helpers.size()); ++i)
            t.people.push_back(next());
        now_ = last_;
        add(t, seconds);
        now_ = last_;
    }
    void zones(int job, const Pass& pass, TaskKind kind) {
        const QuiltPlan& q = plan_.quilts[std::size_t(job)];
        const auto people = session_.setting.helpers.size();
        std::size_t i = 0;
        now_ = last_;
        for (const auto& id : pass.zones) {
            const auto z = std::ranges::find(q.zones, id, &Zone::id);
            if (i > 0 && i % people == 0)
                now_ = last_;
            Task t;
            t.kind = kind;
            t.job = job;
            t.pass = pass.number;
            t.zone = id;
            t.people = {next()};
            const Point c = z->area.middle();
            const bool left = c.x - pass.table.x0 < pass.table.x1 - c.x;
            t.places = {{left ? Side::left : Side::right, {c.y - 12_in, c.y + 12_in}}};
            add(t, int(z->points.size()) * 5 + 15);
            ++i;
        }
        now_ = last_;
    }
    std::string next() {
        const auto& all = session_.setting.helpers;
        return all[turn_++ % all.size()].name;
    }

    const Session& session_;
    Plan& plan_;
    Seconds now_{}, last_{};
    std::size_t turn_ = 0;
};

/// The zones' pins, told by their rows.
PinRows inRows(const QuiltPlan& q) {
    std::map<Length, std::set<Length>> lines;
    for (const Zone& z : q.zones)
        for (const PlacedPoint& p : z.points)
            lines[p.at.y].insert(p.at.x);
    PinRows out;
    out.gap = out.step = 4_in;
    std::set<Length> marks[2];
    for (const auto& [y, xs] : lines) {
        marks[out.lines.size() % 2].insert(xs.begin(), xs.end());
        out.lines.push_back({y, {xs.begin(), xs.end()}, {}});
        out.ribbons.side.push_back(y);
    }
    out.ribbons.odd.assign(marks[0].begin(), marks[0].end());
    out.ribbons.even.assign(marks[1].begin(), marks[1].end());
    return out;
}

QuiltPlan quiltByHand(const Job& job) {
    QuiltPlan q;
    q.name = job.name;
    const Rect top = topRect(job.top);
    const auto grown = [&](Length by) { return Size{top.width() + 2 * by, top.length() + 2 * by}; };
    q.layers = {grown({}), grown(job.batting.overage), grown(job.backing.overage)};
    q.surface = {"2 tables side by side",
                 1,
                 kTableLength,
                 kTableWidth,
                 false,
                 true,
                 {{Length{}, Length{}, 72_in, 30_in}, {Length{}, 30_in, 72_in, 60_in}},
                 {Side::head}};
    int number = 0;
    const auto xs = cuts(top.width(), 50_in), ys = cuts(top.length(), 62_in);
    for (std::size_t j = 0; j + 1 < ys.size(); ++j)
        for (std::size_t i = 0; i + 1 < xs.size(); ++i) {
            const Pass* before = q.passes.empty() ? nullptr : &q.passes.back();
            q.passes.push_back(makePass(q, ++number, {xs[i], ys[j], xs[i + 1], ys[j + 1]}, before));
        }
    addZones(q);
    addCloth(q, job);
    q.rows = inRows(q);
    q.alternatives = {{"2 tables side by side", Basting::Start::centred, true, 9, 0, Seconds{7600},
                       8, 31_in, true, false, "more shifts"},
                      {"2 tables side by side", Basting::Start::besideMiddle, true, 4, 0,
                       Seconds{5400}, 3, 50_in, true, true,
                       "Fewest passes, and every zone is within somebody's reach."},
                      {"2 tables end to end", Basting::Start::besideMiddle, false, 5, 0,
                       Seconds{6100}, 4, 26_in, true, false, ""},
                      {"floor", Basting::Start::centred, false, 1, 0, Seconds{5000}, 0, Length{},
                       false, false, ""}};
    q.bounds = {600, 4};
    return q;
}

Helper helper(const char* name) {
    Helper h;
    h.name = name;
    return h;
}

} // namespace

Session demo(const std::string& name) {
    return readSessionFile(BASTEWRIGHT_SOURCE "/assets/demo/" + name + ".json").session.value();
}

Session harbourLights() {
    Session s;
    Job job;
    job.name = "Harbour Lights";
    BlockGrid grid;
    grid.columns = 7;
    grid.rows = 9;
    grid.block = 10_in;
    grid.sashing = 2_in;
    grid.border = 3_in;
    job.top = {{88_in}, {112_in}, {}, grid, {}};
    job.quilting.method = Quilting::Method::inTheDitch;
    job.machine.throat = 7_in;
    Fabric cloth;
    cloth.name = "sea blue";
    job.backing.fabrics = {cloth};
    s.jobs = {job};
    s.setting.room.tables = {{72_in, 30_in, 2}};
    s.setting.room.irons = 1;
    s.setting.helpers = {helper("Ada"), helper("Bo"), helper("Cai"), helper("Dot")};
    s.setting.helpers[2].until = ClockTime{std::chrono::hours{15}};
    s.setting.helpers[3].seated = true;
    s.setting.helpers[3].reach = 25_in;
    s.setting.stash = {400, 12, {{3_in, 8}}, {}};
    return s;
}

Session manyPeople() {
    Session s = harbourLights();
    s.jobs[0].name = "A very large quilt with a name that runs on for sixty letters";
    s.jobs[0].top = {{120_in}, {120_in}, {}, {}, {}};
    s.setting.helpers = {
        helper("Wilhelmina-Cordelia Featherstonehaugh-Ravenscroft the Younger"),
        helper("Wilfreda Anastasia Montgomery-Blythe of the Upper Marsh Road"),
        helper("Unbreakablelongnamewithoutanyspaceatallfromendtoendofthepaper"),
        helper("\u05e9\u05dc\u05d5\u05dd \u05d1\u05df \u05d3\u05d5\u05d3"),      // Hebrew
        helper("\u0645\u0631\u064a\u0645 \u0627\u0644\u0646\u062c\u0627\u0631"), // Arabic
        helper("\u041e\u043b\u044c\u0433\u0430 \u041a\u043b\u0438\u043c\u043e\u0432\u0430"),
        helper("Zo\u00eb \u0141uczak-\u00d8stergaard"),
        helper("\u79cb\u5b50"), // no font for it may be installed
        helper("Ada")};
    return s;
}

Session threeLargeQuilts() {
    Session s = manyPeople();
    s.severalQuilts = true;
    s.jobs[0].top = {{120_in}, {130_in}, {}, {}, {}};
    for (const char* name : {"Tide Tables", "Knots"}) {
        s.jobs.push_back(s.jobs[0]);
        s.jobs.back().name = name;
    }
    return s;
}

Session twoQuilts() {
    Session s = harbourLights();
    s.severalQuilts = true;
    Job second = s.jobs[0];
    second.name = "Tide Tables";
    second.unit = Unit::inch;
    second.top = {{50_in}, {62_in}, {}, {}, {}};
    second.basting.with = Basting::With::dots;
    s.jobs.push_back(second);
    return s;
}

Plan planByHand(const Session& session) {
    Plan plan;
    plan.unit = session.jobs[0].unit;
    for (const auto& job : session.jobs)
        plan.quilts.push_back(quiltByHand(job));
    Rota rota{session, plan};
    for (int q = 0; q < int(plan.quilts.size()); ++q)
        rota.quilt(q);
    for (const auto& t : plan.tasks)
        plan.finish = std::max(plan.finish, t.end);
    plan.finishBound = plan.finish - Seconds{600};
    plan.supplies = {{Supply::Kind::pins, "pins, 1 in", 678, 400, 278, ""},
                     {Supply::Kind::clips, "clips for rolls of 3 in", 8, 8, 0, ""},
                     {Supply::Kind::clamps, "clamps", 16, 12, 4, ""},
                     {Supply::Kind::tape, "tape", 96, 0, 96, "in"},
                     {Supply::Kind::fabric, "sea blue, 40 in usable", 10.5, 0, 10.5, "yd"}};
    plan.findings = {{Finding::Kind::pinsShort, Finding::Level::warn, "/stash/pins",
                      "The plan takes 678 pins with the tenth over and the box holds 400.",
                      "Bring 278 more."},
                     {Finding::Kind::other, Finding::Level::note, "",
                      "Cai leaves at 15:00, before the last pass is done.", ""}};
    return plan;
}

} // namespace bastewright::fixture
