#include "unit/crew/made_session.h"

namespace bastewright::made {

std::uint64_t Dice::next() {
    state_ += 0x9e3779b97f4a7c15ULL;
    std::uint64_t z = state_;
    z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27U)) * 0x94d049bb133111ebULL;
    return z ^ (z >> 31U);
}

const Task* taskOf(const Plan& plan, std::string_view id) {
    const auto at = std::ranges::find(plan.tasks, id, &Task::id);
    return at == plan.tasks.end() ? nullptr : &*at;
}

Helper helper(std::string name, double pace, int reachInches) {
    Helper h;
    h.name = std::move(name);
    h.pace = pace;
    h.reach = Length::inches(reachInches);
    return h;
}

std::vector<Helper> helpers(int count) {
    static const std::vector<std::string> names{"Ada", "Bo", "Cai", "Dot"};
    std::vector<Helper> out;
    for (int i = 0; i < count; ++i)
        out.push_back(helper(i < 4 ? names[static_cast<std::size_t>(i)]
                                   : std::string("H").append(std::to_string(i + 1))));
    return out;
}

CrewPlan plan(Afternoon& a, const CrewOptions& options) {
    return planCrew(a.session, a.quilts, a.points, options);
}

void addQuilt(Afternoon& a, const Shape& s) {
    Job job;
    job.name = std::string("Quilt ").append(std::to_string(a.quilts.size() + 1));
    job.top.width = {Length::inches(s.across * s.freshWidth)};
    job.top.length = {Length::inches(s.down * s.freshLength)};
    job.basting.with = s.with;
    a.session.jobs.push_back(job);

    QuiltPlan q;
    q.name = job.name;
    q.layers.top = {job.top.width.front(), job.top.length.front()};
    q.surface.number = s.surface;
    q.surface.closed = s.closed;
    q.surface.width = Length::inches(s.freshLength + 4 + 2 * s.table);
    q.surface.length = Length::inches(s.freshWidth + 4 + 2 * s.table);
    const Length pitch = Length::inches(s.spacing);
    // Thread: a stitch every 3 in of its row, common practice.
    const Length step = s.with == Basting::With::thread ? Length::inches(3) : pitch;
    auto& points = a.points.emplace_back();
    for (Length y = pitch / 2; y < q.layers.top.length; y += pitch)
        for (Length x = step / 2; x < q.layers.top.width; x += step)
            points.push_back({{x, y}, 0});
    Point before{};
    for (int j = 0; j < s.down; ++j)
        for (int turn = 0; turn < s.across; ++turn) {
            const int i = j % 2 == 0 ? turn : s.across - 1 - turn;
            Pass p;
            p.number = static_cast<int>(q.passes.size()) + 1;
            const Rect fresh{Length::inches(i * s.freshWidth), Length::inches(j * s.freshLength),
                             Length::inches((i + 1) * s.freshWidth),
                             Length::inches((j + 1) * s.freshLength)};
            p.field = fresh;
            p.fresh = fresh;
            p.table = fresh.grown(Length::inches(2 + s.table));
            if (p.number > 1)
                p.shift = {before.x - fresh.x0, before.y - fresh.y0};
            before = {fresh.x0, fresh.y0};
            p.holds = {{Side::head, Hold::Kind::clamp, 4, {}, {}},
                       {Side::foot, Hold::Kind::tape, 4, Length::inches(24), {}}};
            p.liftPeople = 2;
            p.liftKilograms = 4;
            q.passes.push_back(std::move(p));
        }
    a.quilts.push_back(std::move(q));
}

Afternoon anyAfternoon(std::uint64_t seed) {
    Dice dice{seed};
    Afternoon a;
    Setting& setting = a.session.setting;
    setting.helpers = helpers(dice.once(4) ? 1 : dice.between(2, 9));
    for (Helper& h : setting.helpers) {
        h.pace = 0.5 + 0.1 * dice.upTo(11);
        h.reach = Length::inches(dice.between(25, 32));
        h.closes = !dice.once(5);
        h.lifts = !dice.once(4);
        h.irons = dice.once(2);
        h.seated = dice.once(7);
        h.bends = !dice.once(6);
        h.pins = !dice.once(9);
        if (dice.once(8))
            h.breaks = {
                {after(setting.start, Seconds{60 * 60}), after(setting.start, Seconds{75 * 60})}};
        if (dice.once(4))
            h.from = after(setting.start, Seconds{60 * dice.between(1, 120)});
        if (dice.once(6))
            h.until = after(setting.start, Seconds{60 * dice.between(60, 300)});
    }
    setting.room.irons = dice.upTo(4);
    setting.proposeBreaks = !dice.once(5);
    if (dice.once(6))
        setting.breaks = {
            {after(setting.start, Seconds{95 * 60}), after(setting.start, Seconds{110 * 60})}};
    const int quilts = dice.once(2) ? 1 : dice.between(2, 5);
    const int surfaces = dice.between(1, quilts);
    for (int q = 0; q < quilts; ++q) {
        Shape s{.across = dice.between(1, 3),
                .down = dice.between(1, 3),
                .freshWidth = dice.between(30, 80),
                .freshLength = dice.between(30, 46),
                .spacing = dice.between(3, 6),
                .surface = 1 + q % surfaces,
                .with = dice.once(3)   ? Basting::With::dots
                        : dice.once(3) ? Basting::With::thread
                        : dice.once(4) ? Basting::With::spray
                                       : Basting::With::pins,
                .closed = {}};
        if (s.with == Basting::With::spray)
            s.spacing = 3 * s.spacing; // bands, common practice: 12 to 18 in
        if (dice.once(6))
            s.closed = {kSides[static_cast<std::size_t>(dice.upTo(4))]};
        addQuilt(a, s);
        for (Pass& p : a.quilts.back().passes)
            p.liftPeople = dice.between(1, 3);
        if (s.with == Basting::With::dots && dice.once(2))
            a.session.jobs.back().batting.thickness = Length::millimetres(13);
    }
    a.session.severalQuilts = quilts > 1;
    if (dice.once(3)) {
        setting.stash.pins = dice.between(40, 900);
        for (Job& job : a.session.jobs)
            if (!dice.once(4))
                job.basting.whereShort = Basting::With::dots;
    }
    return a;
}

} // namespace bastewright::made
