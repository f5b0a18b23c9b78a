#include "unit/session/table_plan.h"

#include <algorithm>
#include <initializer_list>

namespace bastewright::made {
namespace {

Zone tenPoints(const std::string& id, int pass, int column, int row) {
    Zone z{.id = id, .pass = pass, .area = {}, .points = {}};
    z.area = {24_in * column, 20_in * row, 24_in * (column + 1), 20_in * (row + 1)};
    for (int i = 0; i < 10; ++i)
        z.points.push_back({{z.area.x0 + 4_in * (i % 5 + 1), z.area.y0 + 6_in * (i / 5 + 1)}, 0});
    return z;
}

class TaskList {
public:
    void add(const std::string& id, TaskKind kind, int pass, const std::string& zone,
             std::vector<std::string> people, int start, int end, std::vector<std::string> after) {
        tasks.push_back({.id = id,
                         .kind = kind,
                         .job = 0,
                         .pass = pass,
                         .zone = zone,
                         .people = std::move(people),
                         .places = {},
                         .start = Seconds{start},
                         .end = Seconds{end},
                         .after = std::move(after)});
    }
    std::vector<Task> tasks;
};

Pass passOf(int number, std::vector<std::string> zones) {
    Pass p;
    p.number = number;
    const int row = number - 1;
    p.field = {0_in, 20_in * row, 48_in, 20_in * (row + 1)};
    p.fresh = p.field;
    p.table = p.field.grown(2_in);
    p.zones = std::move(zones);
    p.liftPeople = 2;
    return p;
}

/// One quilt of the zones A1 and B1, without tasks.
Plan ofOnePass(std::string name) {
    Plan plan;
    auto& quilt = plan.quilts.emplace_back();
    quilt.name = std::move(name);
    quilt.layers.top = {48_in, 20_in};
    quilt.passes = {passOf(1, {"A1", "B1"})};
    quilt.zones = {tenPoints("A1", 1, 0, 0), tenPoints("B1", 1, 1, 0)};
    return plan;
}

} // namespace

Plan pinnedPlan() {
    Plan plan;
    auto& quilt = plan.quilts.emplace_back();
    quilt.name = "Harbour Lights";
    quilt.layers.top = {48_in, 40_in};
    quilt.surface.length = 52_in;
    quilt.surface.width = 24_in;
    quilt.passes = {passOf(1, {"A1", "B1"}), passOf(2, {"A2", "B2"})};
    quilt.zones = {tenPoints("A1", 1, 0, 0), tenPoints("B1", 1, 1, 0), tenPoints("A2", 2, 0, 1),
                   tenPoints("B2", 2, 1, 1)};
    const std::vector<std::string> both{"Ada", "Bo"};
    TaskList t;
    using enum TaskKind;
    t.add("lay-backing", layBacking, 1, "", both, 0, 134, {});
    t.add("lay-batting", layBatting, 1, "", both, 134, 268, {"lay-backing"});
    t.add("lay-top", layTop, 1, "", both, 268, 402, {"lay-batting"});
    t.add("open-A1", placeOpen, 1, "A1", {"Ada"}, 402, 467, {"lay-top"});
    t.add("open-B1", placeOpen, 1, "B1", {"Bo"}, 402, 467, {"lay-top"});
    t.add("smooth-1", smooth, 1, "", both, 467, 541, {"open-A1", "open-B1"});
    t.add("close-A1", closePins, 1, "A1", {"Ada"}, 541, 606, {"smooth-1"});
    t.add("close-B1", closePins, 1, "B1", {"Bo"}, 541, 606, {"smooth-1"});
    t.add("check-1", checkUnderside, 1, "", {"Ada"}, 606, 696, {"close-A1", "close-B1"});
    t.add("shift-2", shift, 2, "", both, 696, 916, {"check-1"});
    t.add("open-A2", placeOpen, 2, "A2", {"Ada"}, 916, 981, {"shift-2"});
    t.add("open-B2", placeOpen, 2, "B2", {"Bo"}, 916, 981, {"shift-2"});
    t.add("smooth-2", smooth, 2, "", both, 981, 1055, {"open-A2", "open-B2"});
    t.add("close-A2", closePins, 2, "A2", {"Ada"}, 1055, 1120, {"smooth-2"});
    t.add("close-B2", closePins, 2, "B2", {"Bo"}, 1055, 1120, {"smooth-2"});
    t.add("check-2", checkUnderside, 2, "", {"Ada"}, 1120, 1210, {"close-A2", "close-B2"});
    t.add("hand-over", handOver, 2, "", {"Ada"}, 1210, 1510, {"check-2"});
    plan.tasks = std::move(t.tasks);
    plan.finish = Seconds{1510};
    return plan;
}

Plan calledPlan() {
    Plan plan;
    auto& quilt = plan.quilts.emplace_back();
    quilt.name = "Harbour Lights";
    quilt.layers.top = {72_in, 40_in};
    quilt.surface.length = 76_in;
    quilt.surface.width = 24_in;
    quilt.passes = {passOf(1, {"p1.A1", "p1.B1", "p1.B2"}), passOf(2, {"p2.A1", "p2.B1"})};
    quilt.zones = {tenPoints("p1.A1", 1, 0, 0), tenPoints("p1.B1", 1, 1, 0),
                   tenPoints("p1.B2", 1, 2, 0), tenPoints("p2.A1", 2, 0, 1),
                   tenPoints("p2.B1", 2, 1, 1)};
    const std::vector<std::string> both{"Ada", "Bo"};
    TaskList t;
    std::vector<std::string> barrier;
    int now = 0;
    using enum TaskKind;
    const auto step = [&](const std::string& id, TaskKind kind, int pass,
                          const std::vector<std::string>& people) {
        t.add(id, kind, pass, "", people, now, now + 60, barrier);
        now += 60;
        barrier = {id};
    };
    const auto zones = [&](TaskKind kind, int pass) {
        std::vector<std::string> ids;
        for (const auto& z : quilt.zones)
            if (z.pass == pass) {
                const bool ada = zonePlace(z.id) == "A";
                const auto id = (kind == placeOpen ? "open-" : "close-") + z.id;
                const int start = now + (zoneTurn(z.id) - 1) * 60;
                t.add(id, kind, pass, z.id, {ada ? "Ada" : "Bo"}, start, start + 60, barrier);
                ids.push_back(id);
            }
        now += 120;
        barrier = ids;
    };
    for (int pass = 1; pass <= 2; ++pass) {
        const auto n = "-" + std::to_string(pass);
        step(pass == 1 ? "set-up" : "move" + n, pass == 1 ? setUp : shift, pass, both);
        step("backing" + n, layBacking, pass, both);
        step("clamp" + n, clamp, pass, both);
        step("batting" + n, layBatting, pass, both);
        step("top" + n, layTop, pass, both);
        step("reclamp" + n, reclamp, pass, both);
        zones(placeOpen, pass);
        step("smooth" + n, smooth, pass, {"Bo"});
        zones(closePins, pass);
        step("check" + n, checkUnderside, pass, {"Ada"});
    }
    step("roll-up", handOver, 2, both);
    plan.tasks = std::move(t.tasks);
    plan.finish = Seconds{now};
    return plan;
}

Plan dottedPlan(bool thick) {
    Plan plan = ofOnePass("Dotted");
    const std::vector<std::string> both{"Ada", "Bo"};
    TaskList t;
    using enum TaskKind;
    t.add("lay-top", layTop, 1, "", both, 0, 134, {});
    t.add("fold-back", foldBack, 1, "", both, 134, 200, {"lay-top"});
    t.add("lower-A1", dotLower, 1, "A1", {"Ada"}, 200, 275, {"fold-back"});
    t.add("lower-B1", dotLower, 1, "B1", {"Bo"}, 200, 275, {"fold-back"});
    t.add("fold-forward", foldForward, 1, "", both, 275, 340, {"lower-A1", "lower-B1"});
    t.add("upper-A1", dotUpper, 1, "A1", {"Ada"}, 340, 415, {"fold-forward"});
    t.add("upper-B1", dotUpper, 1, "B1", {"Bo"}, 340, 415, {"fold-forward"});
    t.add("press-A1", press, 1, "A1", {"Ada"}, 415, 510, {"upper-A1"});
    t.add("press-B1", press, 1, "B1", {"Ada"}, 510, 605, {"upper-B1"});
    t.add("cool", cool, 1, "", {}, 605, 725, {"press-A1", "press-B1"});
    t.add("check", checkUnderside, 1, "", {"Bo"}, 725, 815, {"cool"});
    if (thick) { // and a cooling of its own, which holds up no release
        t.add("turn", turnOver, 1, "", both, 815, 1115, {"check"});
        t.add("back-A1", press, 1, "A1", {"Ada"}, 1115, 1210, {"turn"});
        t.add("back-B1", press, 1, "B1", {"Ada"}, 1210, 1305, {"turn"});
        t.add("cool-back", cool, 1, "", {}, 1305, 1425, {"back-A1", "back-B1"});
    }
    plan.tasks = std::move(t.tasks);
    plan.finish = plan.tasks.back().end;
    return plan;
}

Plan sewnPlan() {
    Plan plan = ofOnePass("Sewn");
    TaskList t;
    using enum TaskKind;
    t.add("lay-top", layTop, 1, "", {"Ada", "Bo"}, 0, 134, {});
    t.add("smooth", smooth, 1, "", {"Ada"}, 134, 224, {"lay-top"});
    t.add("stitch-A1", stitch, 1, "A1", {"Ada"}, 224, 539, {"smooth"});
    t.add("stitch-B1", stitch, 1, "B1", {"Bo"}, 224, 539, {"smooth"});
    t.add("check", checkUnderside, 1, "", {"Bo"}, 539, 659, {"stitch-A1", "stitch-B1"});
    plan.tasks = std::move(t.tasks);
    plan.finish = plan.tasks.back().end;
    return plan;
}

Plan sprayedPlan() {
    Plan plan = ofOnePass("Sprayed");
    TaskList t;
    using enum TaskKind;
    t.add("lay-top", layTop, 1, "", {"Ada", "Bo"}, 0, 134, {});
    t.add("spray-A1", spray, 1, "A1", {"Ada"}, 134, 269, {"lay-top"});
    t.add("spray-B1", spray, 1, "B1", {"Bo"}, 134, 269, {"lay-top"});
    t.add("smooth", smooth, 1, "", {"Ada"}, 269, 359, {"spray-A1", "spray-B1"});
    t.add("settle", settle, 1, "", {}, 359, 539, {"smooth"});
    t.add("check", checkUnderside, 1, "", {"Bo"}, 539, 659, {"settle"});
    plan.tasks = std::move(t.tasks);
    plan.finish = plan.tasks.back().end;
    return plan;
}

Setting smallSetting() {
    Setting setting;
    setting.room.tables = {Table{.length = 52_in, .width = 24_in, .count = 1}};
    setting.helpers.resize(3);
    setting.helpers[0].name = "Ada";
    setting.helpers[1].name = "Bo";
    setting.helpers[2].name = "Cai";
    setting.helpers[2].from = ClockTime{std::chrono::hours{14}};
    setting.stash.pins = 100;
    return setting;
}

Session smallSession() {
    Session session;
    auto& job = session.jobs.emplace_back();
    job.name = "Harbour Lights";
    job.top.width = {48_in};
    job.top.length = {40_in};
    session.setting = smallSetting();
    return session;
}

Reporter& Reporter::tell(What what) {
    if (!events_.empty())
        nowMs_ += std::int64_t{1000} * apart_;
    events_.push_back({"e" + std::to_string(events_.size() + 1), nowMs_, std::move(what)});
    return *this;
}

Reporter& Reporter::replanned(const Plan& plan) {
    return tell(happened::NewPlan{std::make_shared<const Plan>(plan)});
}

Reporter& Reporter::settingChanged(const Session& session) {
    return tell(happened::NewSetting{std::make_shared<const Session>(session)});
}

Reporter& Reporter::wait(int seconds) {
    nowMs_ += std::int64_t{1000} * seconds;
    return *this;
}

Reporter& Reporter::until(Seconds at) {
    nowMs_ = std::max(nowMs_, kStartMs + std::int64_t{1000} * at.count());
    return *this;
}

Reporter& Reporter::allOfPassOne() {
    return step("lay-backing")
        .step("lay-batting")
        .step("lay-top")
        .open("A1", "Ada")
        .open("B1", "Bo")
        .step("smooth-1")
        .close("A1", "Ada")
        .close("B1", "Bo")
        .step("check-1");
}

LiveState folded(const Reporter& told) {
    return folded(told, pinnedPlan());
}

LiveState folded(const Reporter& told, const Plan& plan) {
    return fold(plan, smallSetting(), told.events());
}

} // namespace bastewright::made
