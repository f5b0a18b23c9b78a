#include "unit/crew/made_session.h"
#include "unit/crew/rules_oracle.h"
#include "unit/crew/walks_oracle.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <functional>
#include <map>

using namespace bastewright;

/// The oracle is worth something only if it sees a broken plan.
namespace {

struct Spoiling {
    const char* what;
    std::function<void(CrewPlan&)> spoil;
};

Task& first(CrewPlan& plan, TaskKind kind, int pass = 1) {
    return *std::ranges::find_if(plan.tasks,
                                 [&](const Task& t) { return t.kind == kind && t.pass == pass; });
}

TEST(Oracle, SeesEveryKindOfSpoiltPlan) {
    made::Afternoon a;
    a.session.setting.helpers = made::helpers(4);
    a.session.setting.helpers[3].closes = false;
    a.session.setting.helpers[2].lifts = false;
    made::addQuilt(a, {});
    const CrewPlan good = made::plan(a);
    ASSERT_THAT(made::brokenRules(a.session, a.quilts, good), testing::IsEmpty());
    const Spoiling rows[]{
        {"somebody unknown", [](CrewPlan& p) { first(p, TaskKind::placeOpen).people = {"Eve"}; }},
        {"closes who does not",
         [](CrewPlan& p) { first(p, TaskKind::closePins).people = {"Dot"}; }},
        {"lifts who does not",
         [](CrewPlan& p) {
             first(p, TaskKind::shift, 2).people = {"Ada", "Cai"};
         }},
        {"alone at a lift", [](CrewPlan& p) { first(p, TaskKind::shift, 2).people = {"Ada"}; }},
        {"nobody's place", [](CrewPlan& p) { first(p, TaskKind::placeOpen).places.clear(); }},
        {"out of reach",
         [](CrewPlan& p) {
             Task& t = first(p, TaskKind::placeOpen);
             const Side side = t.places[0].side;
             t.places[0].side = side == Side::head   ? Side::foot
                                : side == Side::foot ? Side::head
                                : side == Side::left ? Side::right
                                                     : Side::left;
         }},
        {"beyond the table's end",
         [](CrewPlan& p) {
             Interval& i = first(p, TaskKind::placeOpen).places[0].along;
             i = {i.lo - Length::inches(60), i.hi - Length::inches(60)};
         }},
        {"before the layers lie", [](CrewPlan& p) { first(p, TaskKind::placeOpen).start = {}; }},
        {"closed before smoothing",
         [](CrewPlan& p) {
             Task& t = first(p, TaskKind::closePins);
             t.start -= Seconds{3'000};
             t.end -= Seconds{3'000};
         }},
        {"a zone forgotten",
         [](CrewPlan& p) {
             std::erase_if(p.tasks, [id = first(p, TaskKind::closePins).id](const Task& t) {
                 return t.id == id;
             });
         }},
        {"the wrong finish", [](CrewPlan& p) { p.finish += Seconds{1}; }},
        {"a bound that is none", [](CrewPlan& p) { p.bound = p.finish + Seconds{1}; }},
        {"two tasks of one id", [](CrewPlan& p) { p.tasks[1].id = p.tasks[0].id; }},
        {"out of order", [](CrewPlan& p) { std::swap(p.tasks.front(), p.tasks.back()); }},
    };
    for (const Spoiling& row : rows) {
        CrewPlan spoilt = good;
        row.spoil(spoilt);
        EXPECT_THAT(made::brokenRules(a.session, a.quilts, spoilt),
                    testing::Not(testing::IsEmpty()))
            << row.what;
    }
}

TEST(Oracle, SeesDetoursStretchesTornApartAndBreaksLeftOut) {
    made::Afternoon a;
    a.session.setting.helpers = made::helpers(1);
    made::addQuilt(a, {});
    const CrewPlan good = made::plan(a);
    ASSERT_THAT(made::brokenWalks(a.session, a.quilts, good), testing::IsEmpty());

    // In every call from one end to the other and back, again and again.
    CrewPlan detour = good;
    std::map<std::vector<std::string>, std::vector<Task*>> calls;
    for (Task& t : detour.tasks)
        if (!t.zone.empty())
            calls[t.after].push_back(&t);
    for (auto& [after, zones] : calls) {
        std::vector<std::vector<StandingPlace>> places;
        for (const Task* t : zones)
            places.push_back(t->places);
        for (std::size_t k = 0; k < zones.size(); ++k)
            zones[k]->places = k % 2 == 0 ? places[k / 2] : places[zones.size() - 1 - k / 2];
    }
    EXPECT_THAT(made::brokenWalks(a.session, a.quilts, detour), testing::Not(testing::IsEmpty()));

    CrewPlan restless = good;
    ASSERT_FALSE(restless.breaks.empty());
    for (Task& t : restless.tasks)
        if (t.start >= restless.breaks.front().end) {
            t.start -= Seconds{600};
            t.end -= Seconds{600};
        }
    EXPECT_THAT(made::brokenWalks(a.session, a.quilts, restless), testing::Not(testing::IsEmpty()));

    made::Afternoon b;
    b.session.setting.helpers = made::helpers(4);
    made::addQuilt(b, {});
    const CrewPlan four = made::plan(b);
    ASSERT_THAT(made::brokenWalks(b.session, b.quilts, four), testing::IsEmpty());
    Pass& p = b.quilts[0].passes[0];
    ASSERT_GE(p.stretches.size(), 3U);
    p.stretches.front().edges = {{Side::head, {p.table.x0, p.table.x0 + Length::inches(24)}},
                                 {Side::head, {p.table.x1 - Length::inches(24), p.table.x1}}};
    p.stretches[1].edges = {
        {Side::head,
         {p.table.x().middle() - Length::inches(1), p.table.x().middle() + Length::inches(1)}}};
    EXPECT_THAT(made::brokenWalks(b.session, b.quilts, four), testing::Not(testing::IsEmpty()));
}

TEST(Stop, EndsTheSearchWithAGoodPlan) {
    made::Afternoon a;
    a.session.setting.helpers = made::helpers(6);
    for (int q = 0; q < 4; ++q)
        made::addQuilt(a, {.across = 3, .surface = 1 + q % 2});
    std::stop_source source;
    source.request_stop();
    const CrewPlan plan = planCrew(a.session, a.quilts, a.points, {}, source.get_token());
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), testing::IsEmpty());
}

} // namespace
