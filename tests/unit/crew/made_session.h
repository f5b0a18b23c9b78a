#pragma once

#include "planners/crew/crew.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

/// Sessions made for tests: plain quilts on a grid of passes and pins.
namespace bastewright::made {

/// A small generator of its own, equal on every machine (splitmix64, Vigna 2015, public domain).
class Dice {
public:
    explicit Dice(std::uint64_t seed)
        : state_(seed) {}
    std::uint64_t next();
    int upTo(int n) { return static_cast<int>(next() % static_cast<std::uint64_t>(n)); }
    int between(int lo, int hi) { return lo + upTo(hi - lo + 1); }
    bool once(int in) { return upTo(in) == 0; }

private:
    std::uint64_t state_;
};

struct Shape {
    int across = 2, down = 2;              ///< passes
    int freshWidth = 60, freshLength = 44; ///< inches
    int spacing = 4;
    int surface = 1;
    Basting::With with = Basting::With::pins;
    std::vector<Side> closed{};
    int table = 0; ///< deeper and longer than the fresh area by so many inches on every side
};

struct Afternoon {
    Session session;
    std::vector<QuiltPlan> quilts;
    std::vector<std::vector<PlacedPoint>> points; ///< of each quilt
};

/// A quilt whose passes lie one by one on a table 4 in larger than the fresh area.
void addQuilt(Afternoon& afternoon, const Shape& shape);

/// Plans it; its quilts get zones and stretches.
CrewPlan plan(Afternoon& afternoon, const CrewOptions& options = {});

/// The task of this id, or null.
const Task* taskOf(const Plan& plan, std::string_view id);

Helper helper(std::string name, double pace = 1.0, int reachInches = 27);

/// Ada, Bo, Cai … (then H5, H6, …)
std::vector<Helper> helpers(int count);

/// Any quilts and people, within what a practitioner might meet.
Afternoon anyAfternoon(std::uint64_t seed);

} // namespace bastewright::made
