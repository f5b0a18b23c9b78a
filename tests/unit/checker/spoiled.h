#pragma once

#include "unit/checker/good_plan.h"

#include <functional>
#include <ostream>

namespace bastewright::testing {

/// All the rules that must notice something, and where in the plan's file one of them must say that
/// it is: a JSON pointer.
struct Noticed {
    std::set<std::string> by;
    std::string at;
};

/// One thing wrong with a good plan; noticed by nobody where it is none.
struct Spoiled {
    std::string how; ///< letters and digits only: it names the test
    Noticed noticed;
    std::function<void(Good&)> spoil;
    std::function<Good()> good = [] { return goodPlan(); };
    /// Rules that must stay silent even where they hold a figure to all that it follows from.
    std::set<std::string> keeps{};

    friend std::ostream& operator<<(std::ostream& out, const Spoiled& s) { return out << s.how; }
};

inline Good goodDots() {
    return goodPlan(Basting::With::dots);
}
inline Good goodThread() {
    return goodPlan(Basting::With::thread);
}
inline Good goodSpray() {
    return goodPlan(Basting::With::spray);
}
inline Good goodThickDots() {
    return goodPlan(Basting::With::dots, Length::millimetres(13));
}

// Part by part; spoiled_test.cpp asks that together they break every rule of the checker.
std::vector<Spoiled> spoiledLayers();
std::vector<Spoiled> spoiledSurfaces();
std::vector<Spoiled> spoiledPasses();
std::vector<Spoiled> spoiledZones();
std::vector<Spoiled> spoiledPoints();
std::vector<Spoiled> spoiledHolds();
std::vector<Spoiled> spoiledCloth();
std::vector<Spoiled> spoiledPeople();
std::vector<Spoiled> spoiledTasks();
std::vector<Spoiled> spoiledSupplies();
std::vector<Spoiled> spoiledFigures();

} // namespace bastewright::testing
