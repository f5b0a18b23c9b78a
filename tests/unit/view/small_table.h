#pragma once

#include "view/base/planned.h"

namespace bastewright::made {

/// Two zones side by side in one pass, two people.
inline Planned small() {
    using namespace bastewright::literals;
    Planned made;
    auto& session = made.session;
    Job job;
    job.name = "Knots";
    job.top.width = {40_in};
    job.top.length = {20_in};
    session.jobs = {job};
    session.setting.room.tables = {Table{}};
    for (const char* name : {"Ada", "Bo"})
        session.setting.helpers.emplace_back().name = name;
    session.setting.stash.pins = 100;

    QuiltPlan quilt;
    quilt.name = job.name;
    quilt.layers = {.top = {40_in, 20_in}, .batting = {44_in, 24_in}, .backing = {48_in, 28_in}};
    quilt.surface.length = 72_in;
    quilt.surface.width = 30_in;
    Pass pass;
    pass.field = Rect{0_in, 0_in, 40_in, 20_in};
    pass.fresh = pass.field;
    pass.table = Rect{Length{} - 16_in, Length{} - 5_in, 56_in, 25_in};
    pass.zones = {"A1", "B1"};
    quilt.passes = {pass};
    Zone a, b;
    a.id = "A1";
    a.area = {0_in, 0_in, 20_in, 20_in};
    a.points = {{{5_in, 5_in}}, {{15_in, 15_in}}};
    b.id = "B1";
    b.area = {20_in, 0_in, 40_in, 20_in};
    b.points = {{{25_in, 5_in}}};
    quilt.zones = {a, b};
    made.plan.quilts = {quilt};

    const auto task = [&](const char* id, TaskKind kind, const char* zone, const char* person,
                          std::vector<std::string> after) {
        Task t;
        t.id = id;
        t.kind = kind;
        t.zone = zone;
        t.people = {person};
        t.after = std::move(after);
        const int n = int(made.plan.tasks.size());
        t.start = Seconds{n * 60};
        t.end = Seconds{n * 60 + 60};
        made.plan.tasks.push_back(t);
    };
    task("lay", TaskKind::layBacking, "", "Ada", {});
    task("oA", TaskKind::placeOpen, "A1", "Ada", {"lay"});
    task("oB", TaskKind::placeOpen, "B1", "Bo", {"lay"});
    task("smooth", TaskKind::smooth, "", "Ada", {"oA", "oB"});
    task("cA", TaskKind::closePins, "A1", "Bo", {"smooth"});
    task("cB", TaskKind::closePins, "B1", "Bo", {"smooth"});
    task("under", TaskKind::checkUnderside, "", "Ada", {"cA", "cB"});
    task("over", TaskKind::handOver, "", "Ada", {"under"});
    made.plan.finish = made.plan.tasks.back().end;
    return made;
}

} // namespace bastewright::made
