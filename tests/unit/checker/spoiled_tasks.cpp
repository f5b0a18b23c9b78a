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
         {{"crew.list"}, "/tasks/40/id"},
         [](Good& g) { // nothing comes after the last two
             g.plan.tasks.back().id = g.plan.tasks.front().id;
         }},
        {"TasksAreOutOfOrder",
         {{"crew.list"}, "/tasks/1"},
         [](Good& g) { std::swap(g.plan.tasks.front(), g.plan.tasks.back()); }},
        {"ATaskNamesAZoneOfAnotherPass",
         {{"crew.list", "crew.tasks", "crew.times"}, "/tasks/6/zone"},
         [](Good& g) { g.task("1.1 place-open p1.A2").zone = "p3.A1"; }},
        {"ATaskOfTheWholePassNamesAZone",
         {{"crew.list"}, "/tasks/10/zone"},
         [](Good& g) { g.task("1.1 smooth").zone = "p1.A2"; }},
        {"APassIsNotReclamped",
         {{"crew.tasks"}, "/tasks"},
         [](Good& g) { g.remove("1.1 reclamp"); }},
        {"TheBackingIsNotClamped",
         {{"crew.tasks"}, "/tasks"},
         [](Good& g) { g.remove("1.1 clamp"); }},
        {"NothingIsSetUp", {{"crew.tasks"}, "/tasks"}, [](Good& g) { g.remove("1.1 set-up"); }},
        {"AZoneIsNotClosed",
         {{"crew.tasks"}, "/tasks"},
         [](Good& g) { g.remove("1.1 close-pins p1.A2"); }},
        {"TheUndersideIsNotChecked",
         {{"crew.tasks"}, "/tasks"},
         [](Good& g) { g.remove("1.2 check-underside"); }},
        {"TheQuiltIsNotHandedOver",
         {{"crew.tasks"}, "/tasks"},
         [](Good& g) {
             g.remove("1.3 hand-over");
             g.plan.finishBound = {};
         }},
        {"PinsArePressed",
         {{"crew.tasks", "crew.times", "crew.order", "crew.cooled"}, "/tasks"},
         [](Good& g) { g.task("1.1 close-pins p1.A3").kind = TaskKind::press; }},
        {"ThickBattingIsNotTurned",
         {{"crew.tasks", "crew.order"}, "/tasks"},
         [](Good& g) { g.remove("1.3 turn-over"); },
         goodThickDots},
        {"AThingThatIsNotThereMustHaveEnded",
         {{"crew.after"}, "/tasks/10/after/4"},
         [](Good& g) { g.task("1.1 smooth").after.push_back("1.9 smooth"); }},
        {"ATaskBeginsBeforeWhatItComesAfter",
         {{"crew.after"}, "/tasks/10/start"},
         [](Good& g) { g.task("1.1 smooth").after.push_back("1.1 close-pins p1.A2"); }},
        {"TheUndersideIsCheckedWhilePinsAreClosed",
         {{"crew.order", "crew.twice"}, "/tasks/15/start"},
         [](Good& g) {
             g.forget("1.1 check-underside");
             Task& t = g.task("1.1 check-underside");
             t.start -= Seconds{30};
             t.end -= Seconds{30};
             g.reorder();
         }},
        {"BattingIsLaidAfterTheTop",
         {{"crew.order"}, "/tasks/3/start"},
         [](Good& g) { exchange(g, "1.1 lay-batting", "1.1 lay-top"); }},
        {"AZoneIsPressedBeforeItsUpperDotsLie",
         {{"crew.order", "crew.times"}, "/tasks/13/start"},
         [](Good& g) { exchange(g, "1.1 dot-upper p1.A2", "1.1 press p1.A2"); },
         goodDots},
        {"AZoneIsClosedBeforeItIsSmoothed",
         {{"crew.order", "crew.smoothed", "crew.times"}, "/tasks/8/start"},
         [](Good& g) { exchange(g, "1.1 place-open p1.A3", "1.1 close-pins p1.A2"); }},
        {"ThereIsNoTimeToCool",
         {{"crew.cooled", "crew.times"}, "/tasks/20/end"},
         [](Good& g) {
             Task& cool = g.task("1.1 cool");
             cool.end = cool.start + Seconds{50};
         },
         goodDots},
        {"APlacingTakesNoTime",
         {{"crew.times"}, "/tasks/8/end"},
         [](Good& g) { g.task("1.1 place-open p1.A3").end -= Seconds{2}; }},
        {"BoIsSlow",
         {{"crew.times"}, "/tasks/1/end"},
         [](Good& g) { g.session.setting.helpers.back().pace = 0.5; }},
        {"ANeighbourClosesWhatAdaPutIn",
         {{"crew.hands"}, "/tasks/11/people"},
         [](Good& g) {
             std::swap(g.task("1.1 close-pins p1.A2").people,
                       g.task("1.1 close-pins p1.B2").people);
         }},
        {"NobodyRestsForTwoHours",
         {{"crew.rests"}, "/breaks"},
         [](Good& g) {
             g.session.setting.proposeBreaks = true;
             for (Task& t : g.plan.tasks)
                 if (t.kind == TaskKind::handOver)
                     t.end += Seconds{3600};
             g.plan.finishBound = {};
             g.reorder();
         }},
        {"SomebodyWorksInTheBreak",
         {{"crew.rests"}, "/tasks/1"},
         [](Good& g) {
             g.plan.breaks = {{Seconds{700}, Seconds{1300}, true, {}}};
         }},
        {"TheFinishIsNotTheLastEnd",
         {{"crew.finish"}, "/finish"},
         [](Good& g) { g.plan.finish += Seconds{1}; }},
        {"TheFinishIsBeforeTheEarliest",
         {{"crew.finish"}, "/bounds/finish"},
         [](Good& g) { g.plan.finishBound += Seconds{1}; }},
    };
}

} // namespace bastewright::testing
