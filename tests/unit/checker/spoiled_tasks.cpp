#include "unit/checker/spoiled.h"

#include <utility>

namespace bastewright::testing {
namespace {

/// Two tasks change their hours; nothing is said any more of what comes before and after them.
void exchange(Good& g, const std::string& a, const std::string& b) {
    g.forget(a);
    g.forget(b);
    std::swap(g.task(a).start, g.task(b).start);
    std::swap(g.task(a).end, g.task(b).end);
    g.reorder();
}

/// Ada places some of the pins of A2, and Bo the rest, beside her and at the same time. What is not
/// said is as it should be.
void shareA2(Good& g, std::optional<Share> adas, std::optional<Share> bos) {
    const int all = static_cast<int>(g.zone("A2").points.size()), some = all / 2;
    Task& ada = g.task("1.1 place-open A2");
    ada.places.front().along = {-12_in, 12_in};
    ada.share = adas.value_or(Share{Side::left, some});
    ada.end = ada.start + Seconds{15 + 5 * some};
    Task bo = ada;
    bo.id += " rest";
    bo.people = {"Bo"};
    bo.places.front().along = {12_in, 36_in};
    bo.share = bos.value_or(Share{Side::right, all - some});
    bo.end = bo.start + Seconds{15 + 5 * (all - some)};
    Task& next = g.task("1.1 place-open B2"); // Bo's, who comes a little later
    next.start = bo.end;
    next.end = next.start + Seconds{120};
    const Seconds then = g.task("1.1 place-open A3").start;
    for (Task& t : g.plan.tasks)
        if (t.start >= then && t.id != next.id) {
            t.start += Seconds{120};
            t.end += Seconds{120};
        }
    g.plan.tasks.push_back(bo);
    g.reorder();
    g.plan.finishBound = {};
}

} // namespace

std::vector<Spoiled> spoiledTasks() {
    return {
        {"TwoTasksHaveOneId",
         {"crew.list"},
         [](Good& g) { // nothing comes after the last two
             g.plan.tasks.back().id = g.plan.tasks.front().id;
         }},
        {"TasksAreOutOfOrder",
         {"crew.list"},
         [](Good& g) { std::swap(g.plan.tasks.front(), g.plan.tasks.back()); }},
        {"ATaskNamesAZoneOfAnotherPass",
         {"crew.list", "crew.shares", "crew.tasks"},
         [](Good& g) { g.task("1.1 place-open A2").zone = "A1"; }},
        {"ATaskOfTheWholePassNamesAZone",
         {"crew.list"},
         [](Good& g) { g.task("1.1 smooth").zone = "A2"; }},
        {"APassIsNotReclamped", {"crew.tasks"}, [](Good& g) { g.remove("1.1 reclamp"); }},
        {"AZoneIsNotClosed", {"crew.tasks"}, [](Good& g) { g.remove("1.1 close-pins A2"); }},
        {"TheUndersideIsNotChecked",
         {"crew.tasks"},
         [](Good& g) { g.remove("1.2 check-underside"); }},
        {"TheQuiltIsNotHandedOver",
         {"crew.tasks"},
         [](Good& g) {
             g.remove("1.3 hand-over");
             g.plan.finishBound = {};
         }},
        {"PinsArePressed",
         {"crew.tasks", "crew.times"},
         [](Good& g) { g.task("1.1 close-pins A2").kind = TaskKind::press; }},
        {"ThickBattingIsNotTurned",
         {"crew.tasks", "crew.order"},
         [](Good& g) { g.remove("1.3 turn-over"); },
         goodThickDots},
        {"AThingThatIsNotThereMustHaveEnded",
         {"crew.after"},
         [](Good& g) { g.task("1.1 smooth").after.push_back("1.9 smooth"); }},
        {"ATaskBeginsBeforeWhatItComesAfter",
         {"crew.after"},
         [](Good& g) { g.task("1.1 smooth").after.push_back("1.1 close-pins A2"); }},
        {"TheUndersideIsCheckedWhilePinsAreClosed",
         {"crew.order", "crew.twice"},
         [](Good& g) {
             g.forget("1.1 check-underside");
             Task& t = g.task("1.1 check-underside");
             t.start -= Seconds{30};
             t.end -= Seconds{30};
             g.reorder();
         }},
        {"BattingIsLaidAfterTheTop",
         {"crew.order"},
         [](Good& g) { exchange(g, "1.1 lay-batting", "1.1 lay-top"); }},
        {"AZoneIsPressedBeforeItsUpperDotsLie",
         {"crew.order"},
         [](Good& g) { exchange(g, "1.1 dot-upper A2", "1.1 press A2"); },
         goodDots},
        {"AZoneIsClosedBeforeItIsSmoothed",
         {"crew.smoothed"},
         [](Good& g) { exchange(g, "1.1 place-open A3", "1.1 close-pins A2"); }},
        {"ThereIsNoTimeToCool",
         {"crew.cooled", "crew.times"},
         [](Good& g) {
             Task& cool = g.task("1.1 cool");
             cool.end = cool.start + Seconds{50};
         },
         goodDots},
        {"APlacingTakesNoTime",
         {"crew.times"},
         [](Good& g) { g.task("1.1 place-open A3").end -= Seconds{2}; }},
        {"BoIsSlow", {"crew.times"}, [](Good& g) { g.session.setting.helpers.back().pace = 0.5; }},
        {"TwoMaySharePlacing", {}, [](Good& g) { shareA2(g, {}, {}); }},
        {"AShareIsLeftOver", {"crew.shares"}, [](Good& g) { shareA2(g, Share{Side::left, 6}, {}); }},
        {"BothSharesBeginAtOneSide",
         {"crew.shares"},
         [](Good& g) { shareA2(g, {}, Share{Side::left, 7}); }},
        {"SharesAreNotOfOneAnother",
         {"crew.shares"},
         [](Good& g) { shareA2(g, {}, Share{Side::head, 7}); }},
        {"APlacingIsDoneTwice",
         {"crew.shares"},
         [](Good& g) {
             shareA2(g, {}, {});
             for (Task& t : g.plan.tasks)
                 t.share.reset();
         }},
        {"AShareTakesNoTime",
         {"crew.times"},
         [](Good& g) {
             shareA2(g, {}, {});
             g.task("1.1 place-open A2").end -= Seconds{5};
             g.task("1.1 place-open A2 rest").end += Seconds{5};
             g.task("1.1 place-open B2").start += Seconds{5};
             g.task("1.1 place-open B2").end += Seconds{5};
         }},
        {"AnIronIsShared",
         {"crew.shares"},
         [](Good& g) {
             g.task("1.1 press A2").share = Share{Side::left, 9};
         },
         goodDots},
        {"SmoothingHasAShare",
         {"crew.shares"},
         [](Good& g) {
             g.task("1.1 smooth").share = Share{Side::left, 9};
         }},
        {"TheFinishIsNotTheLastEnd", {"crew.finish"}, [](Good& g) { g.plan.finish += Seconds{1}; }},
        {"TheFinishIsBeforeTheEarliest",
         {"crew.finish"},
         [](Good& g) { g.plan.finishBound += Seconds{1}; }},
    };
}

} // namespace bastewright::testing
