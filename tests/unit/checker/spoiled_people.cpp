#include "unit/checker/spoiled.h"

namespace bastewright::testing {
namespace {

Helper& bo(Good& g) {
    return g.session.setting.helpers.back();
}

Helper cai() {
    Helper h;
    h.name = "Cai";
    return h;
}

/// A minute of a break in the midst of a task.
void restOfBo(Good& g, const Task& t) {
    const auto from =
        g.session.setting.start.sinceMidnight + std::chrono::ceil<std::chrono::minutes>(t.start);
    bo(g).breaks = {{ClockTime{from}, ClockTime{from + std::chrono::minutes{1}}}};
}

void warnOfLifters(Good& g) {
    g.plan.findings.push_back(
        {Finding::Kind::fewLift, Finding::Level::warn, "/helpers", "Few people lift.", ""});
}

/// So heavy that three would have to lift it.
void thickAsACarpet(Good& g) {
    g.job().batting.gsm = 16'280; // with cotton twice of the 8 280 g it has otherwise
    Alternative& how = g.quilt().alternatives.front();
    how.liftKilograms *= 2;
    how.liftPeople = 3;
    for (const int number : {2, 3}) {
        g.pass(number).liftKilograms *= 2;
        g.pass(number).liftPeople = 3;
    }
}

} // namespace

std::vector<Spoiled> spoiledPeople() {
    return {
        {"AStrangerSmooths",
         {{"crew.people"}, "/tasks/10/people/1"},
         [](Good& g) { g.task("1.1 smooth").people.back() = "Cai"; }},
        {"OnePersonIsNamedTwice",
         {{"crew.people"}, "/tasks/4/people/1"},
         [](Good& g) { g.task("1.1 lay-top").people.back() = "Ada"; }},
        {"NobodyLaysTheBacking",
         {{"crew.teams"}, "/tasks/1/people"},
         [](Good& g) { g.task("1.1 lay-backing").people.clear(); }},
        {"NobodySmooths",
         {{"crew.teams"}, "/tasks/10/people"},
         [](Good& g) { g.task("1.1 smooth").people.clear(); }},
        {"OnePersonShiftsWhatTakesTwo",
         {{"crew.teams"}, "/tasks/16/people"},
         [](Good& g) { g.task("1.2 shift").people.pop_back(); }},
        {"OneOfTwoTurnsTheQuiltOver",
         {{"crew.teams"}, "/tasks/54/people"},
         [](Good& g) { g.task("1.3 turn-over").people.pop_back(); },
         goodThickDots},
        {"BoRestsWhileAdaTurnsTheQuiltOver",
         {},
         [](Good& g) {
             Task& turn = g.task("1.3 turn-over");
             turn.people = {"Ada"};
             restOfBo(g, turn);
         },
         goodThickDots},
        {"CaiHasNothingToDoAtTheTableAndDoesNotTurn",
         {},
         [](Good& g) { g.session.setting.helpers.emplace_back(cai()); },
         goodTwoTables},
        {"CaiChecksAtTheTableAndDoesNotTurn",
         {{"crew.teams"}, "/tasks/54/people"},
         [](Good& g) {
             g.session.setting.helpers.emplace_back(cai());
             g.task("1.3 check-underside").people = {"Cai"};
         },
         goodTwoTables},
        {"CaiIsThereAndDoesNotTurnAtTheOnlyTable",
         {{"crew.teams"}, "/tasks/54/people"},
         [](Good& g) { g.session.setting.helpers.emplace_back(cai()); },
         goodThickDots},
        {"ThreePeopleCheckUnderneath",
         {{"crew.teams"}, "/tasks/15/people"},
         [](Good& g) {
             g.task("1.1 check-underside").people = {"Ada", "Bo"};
         }},
        {"SomebodyCools",
         {{"crew.teams"}, "/tasks/20/people"},
         [](Good& g) { g.task("1.1 cool").people = {"Ada"}; },
         goodDots},
        {"FewerPeopleLiftThanTheShiftAsksAndNoWarning",
         {{"crew.teams"}, "/passes/1/lift_people"},
         [](Good& g) { thickAsACarpet(g); }},
        {"FewerPeopleLiftThanTheShiftAsksWithAWarning",
         {},
         [](Good& g) {
             thickAsACarpet(g);
             warnOfLifters(g);
         }},
        {"BoDoesNotClosePins",
         {{"crew.skills"}, "/tasks/12/people/0"},
         [](Good& g) { bo(g).closes = false; }},
        {"BoDoesNotIron",
         {{"crew.skills"}, "/tasks/17/people/0"},
         [](Good& g) { bo(g).irons = false; },
         goodDots},
        {"BoIsSeatedAndLifts",
         {{"crew.skills"}, "/tasks/1/people/1"},
         [](Good& g) {
             bo(g).seated = true;
             warnOfLifters(g);
         }},
        {"BoIsSeatedAndWalksRoundTheTable",
         {{"crew.skills", "crew.seated"}, "/tasks/23/places/0"},
         [](Good& g) {
             bo(g).seated = true;
             warnOfLifters(g);
             g.task("1.2 place-open p2.B4").places.front().side = Side::foot;
         }},
        {"AZoneHandedToAdaIsWorkedByBo",
         {{"crew.handed"}, "/tasks/7/people"},
         [](Good& g) {
             g.job().handed = {{"p1.B2", "Ada"}};
         }},
        {"AZoneHandedToBoIsWorkedByBo",
         {},
         [](Good& g) {
             g.job().handed = {{"p1.B2", "Bo"}};
         }},
        {"OfTwoZonesHandedToOthersOneIsSaid",
         {{"crew.handed"}, "/tasks/7/people"},
         [](Good& g) {
             g.plan.findings.push_back({Finding::Kind::handedElsewhere, Finding::Level::warn,
                                        "/handed", "Neither Cai nor Ada can.", "", "Cai"});
             g.session.setting.helpers.emplace_back().name = "Cai";
             g.session.setting.helpers.back().reach = 6_in;
             g.job().handed = {{"p1.A2", "Cai"}, {"p1.B2", "Ada"}};
         }},
        {"AZoneHandedToSomebodyWhoMayNotIsAnybodysAndThatIsSaid",
         {},
         [](Good& g) {
             for (const char* who : {"Cai", "nobody here"})
                 g.plan.findings.push_back({Finding::Kind::handedElsewhere, Finding::Level::warn,
                                            "/handed", "They cannot.", "", who});
             g.session.setting.helpers.emplace_back().name = "Cai";
             g.session.setting.helpers.back().reach = 6_in;
             g.job().handed = {{"p1.B2", "Cai"}, {"p1.A2", "nobody here"}};
         }},
        {"BoHasNoZonesAndPins",
         {{"crew.skills"}, "/tasks/7/people/0"},
         [](Good& g) { bo(g).pins = false; }},
        {"AdaLooksUnderneathAndDoesNotBend",
         {{"crew.skills"}, "/tasks/15/people/0"},
         [](Good& g) { g.session.setting.helpers.front().bends = false; }},
        {"TwoShareAStretch",
         {{"crew.stretches"}, "/passes/0/stretches/0/edges/0"},
         [](Good& g) {
             g.pass(1).stretches = {{"A", "Ada", {{Side::head, {0_in, 24_in}}}},
                                    {"B", "Bo", {{Side::head, {20_in, 48_in}}}}};
         }},
        {"TwoPlacesHaveOneLetter",
         {{"crew.stretches"}, "/passes/0/stretches/1/place"},
         [](Good& g) {
             g.pass(1).stretches = {{"A", "Ada", {{Side::head, {0_in, 24_in}}}},
                                    {"A", "Bo", {{Side::head, {24_in, 48_in}}}}};
         }},
        {"BoKeepsToASideAndStandsAtAnother",
         {{"crew.reach"}, "/tasks/7/places/0/side"},
         [](Good& g) {
             const Side at = g.task("1.1 place-open p1.B2").places.front().side;
             bo(g).side = at == Side::head ? Side::foot : Side::head;
         }},
        {"BothKeepToASideAndStandAtAnother",
         {{"crew.reach"}, "/tasks/6/places/0/side"},
         [](Good& g) {
             for (Helper& h : g.session.setting.helpers)
                 h.side = Side::foot;
         }},
        {"BoKeepsToASideFromWhereHeDoesNotReachAndAdaLeaves",
         {},
         [](Good& g) {
             Helper& ada = g.session.setting.helpers.front();
             ada.until = ClockTime{std::chrono::minutes{18 * 60}};
             bo(g).side = Side::left; // of a table 72 in long
         }},
        {"BoComesLater",
         {{"crew.hours"}, "/tasks/0/start"},
         [](Good& g) { bo(g).from = ClockTime{std::chrono::minutes{13 * 60 + 5}}; }},
        {"BoLeavesEarlier",
         {{"crew.hours"}, "/tasks/7/end"},
         [](Good& g) { bo(g).until = ClockTime{std::chrono::minutes{13 * 60 + 30}}; }},
        {"BoComesAndLeavesInTime",
         {},
         [](Good& g) {
             bo(g).from = ClockTime{std::chrono::minutes{12 * 60}};
             bo(g).until = ClockTime{std::chrono::minutes{16 * 60}};
         }},
        {"BoHasABreakInBetween",
         {{"crew.breaks"}, "/tasks/1"},
         [](Good& g) {
             const auto at = [](int minutes) { return ClockTime{std::chrono::minutes{minutes}}; };
             bo(g).breaks = {{at(12 * 60), at(13 * 60)}, {at(13 * 60 + 20), at(13 * 60 + 30)}};
         }},
        {"BoHasBreaksBeforeAndAfter",
         {},
         [](Good& g) {
             const auto at = [](int minutes) { return ClockTime{std::chrono::minutes{minutes}}; };
             bo(g).breaks = {{at(12 * 60), at(13 * 60)}, {at(16 * 60), at(17 * 60)}};
         }},
        {"BoLeftBeforeTheStart",
         {{"crew.hours"}, "/tasks/0/end"},
         [](Good& g) { bo(g).until = ClockTime{std::chrono::minutes{12 * 60}}; }},
        {"AdaIsInTwoPlaces",
         {{"crew.twice", "crew.hands"}, "/tasks/7"},
         [](Good& g) { g.task("1.1 place-open p1.B2").people = {"Ada"}; }},
        {"TwoPressWithOneIron",
         {{"crew.irons"}, "/tasks"},
         [](Good& g) { g.session.setting.room.irons = 1; },
         goodDots},
        {"APlaceReachesBeyondTheTable",
         {{"crew.places"}, "/tasks/6/places/0"},
         [](Good& g) {
             g.task("1.1 place-open p1.A2").places.front().along = {-20_in, 4_in};
         }},
        {"APlaceIsTooNarrow",
         {{"crew.places"}, "/tasks/6/places/0"},
         [](Good& g) {
             g.task("1.1 place-open p1.A2").places.front().along = {0_in, 20_in};
         }},
        {"SomebodyStandsInAWall",
         {{"crew.places"}, "/tasks/22/places/0/side"},
         [](Good& g) {
             wallAtFoot(g);
             g.task("1.2 place-open p2.A4").places.front().side = Side::foot;
         }},
        {"AZoneIsWorkedFromNowhere",
         {{"crew.places"}, "/tasks/6/places"},
         [](Good& g) { g.task("1.1 place-open p1.A2").places.clear(); }},
        {"BoDoesNotReachHisZones",
         {{"crew.reach"}, "/tasks/9/places/0"},
         [](Good& g) { bo(g).reach = 10_in; }},
        {"APlaceIsTooFarFromItsZone",
         {{"crew.reach"}, "/tasks/6/places/0"},
         [](Good& g) {
             g.task("1.1 place-open p1.A2").places.front() = {Side::foot, {30_in, 54_in}};
         }},
        {"TwoStandInOnePlace",
         {{"crew.edges"}, "/tasks/7/places"},
         [](Good& g) {
             g.task("1.1 place-open p1.B2").places.front().along = {23_in, 47_in};
         }},
        {"TheNextQuiltComesTooEarly",
         {{"crew.after", "crew.surfaces", "crew.twice", "supplies.enough"}, "/tasks/41/start"},
         [](Good& g) {
             for (Task& t : g.plan.tasks)
                 if (t.job == 1) {
                     t.start -= Seconds{100};
                     t.end -= Seconds{100};
                 }
             g.reorder();
         },
         goodPair},
    };
}

} // namespace bastewright::testing
