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
         {"crew.list", "crew.tasks", "crew.times"},
         [](Good& g) { g.task("1.1 place-open p1.A2").zone = "p3.A1"; }},
        {"ATaskOfTheWholePassNamesAZone",
         {"crew.list"},
         [](Good& g) { g.task("1.1 smooth").zone = "p1.A2"; }},
        {"APassIsNotReclamped", {"crew.tasks"}, [](Good& g) { g.remove("1.1 reclamp"); }},
        {"TheBackingIsNotClamped", {"crew.tasks"}, [](Good& g) { g.remove("1.1 clamp"); }},
        {"NothingIsSetUp", {"crew.tasks"}, [](Good& g) { g.remove("1.1 set-up"); }},
        {"AZoneIsNotClosed", {"crew.tasks"}, [](Good& g) { g.remove("1.1 close-pins p1.A2"); }},
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
         {"crew.tasks", "crew.times", "crew.cooled"},
         [](Good& g) { g.task("1.1 close-pins p1.A3").kind = TaskKind::press; }},
        {"ThickBattingIsNotTurned",
         {"crew.tasks", "crew.order"},
         [](Good& g) { g.remove("1.3 turn-over"); },
         goodThickDots},
        {"AThingThatIsNotThereMustHaveEnded",
         {"crew.after"},
         [](Good& g) { g.task("1.1 smooth").after.push_back("1.9 smooth"); }},
        {"ATaskBeginsBeforeWhatItComesAfter",
         {"crew.after"},
         [](Good& g) { g.task("1.1 smooth").after.push_back("1.1 close-pins p1.A2"); }},
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
         {"crew.order", "crew.times"},
         [](Good& g) { exchange(g, "1.1 dot-upper p1.A2", "1.1 press p1.A2"); },
         goodDots},
        {"AZoneIsClosedBeforeItIsSmoothed",
         {"crew.order", "crew.smoothed", "crew.times"},
         [](Good& g) { exchange(g, "1.1 place-open p1.A3", "1.1 close-pins p1.A2"); }},
        {"ThereIsNoTimeToCool",
         {"crew.cooled", "crew.times"},
         [](Good& g) {
             Task& cool = g.task("1.1 cool");
             cool.end = cool.start + Seconds{50};
         },
         goodDots},
        {"APlacingTakesNoTime",
         {"crew.times"},
         [](Good& g) { g.task("1.1 place-open p1.A3").end -= Seconds{2}; }},
        {"BoIsSlow", {"crew.times"}, [](Good& g) { g.session.setting.helpers.back().pace = 0.5; }},
        {"ANeighbourClosesWhatAdaPutIn",
         {"crew.hands"},
         [](Good& g) {
             std::swap(g.task("1.1 close-pins p1.A2").people,
                       g.task("1.1 close-pins p1.B2").people);
         }},
        {"NobodyRestsForTwoHours",
         {"crew.rests"},
         [](Good& g) {
             g.session.setting.proposeBreaks = true;
             for (Task& t : g.plan.tasks)
                 if (t.kind == TaskKind::handOver)
                     t.end += Seconds{3600};
             g.plan.finishBound = {};
             g.reorder();
         }},
        {"SomebodyWorksInTheBreak",
         {"crew.rests"},
         [](Good& g) {
             g.plan.breaks = {{Seconds{700}, Seconds{1300}, true, {}}};
         }},
        {"TheFinishIsNotTheLastEnd", {"crew.finish"}, [](Good& g) { g.plan.finish += Seconds{1}; }},
        {"TheFinishIsBeforeTheEarliest",
         {"crew.finish"},
         [](Good& g) { g.plan.finishBound += Seconds{1}; }},
    };
}

} // namespace bastewright::testing
