#include "session/private/learnt.h"

#include "plan/trade_times.h"

#include <cmath>

namespace bastewright {
namespace {

using namespace trade_times;

/// People tire and warm up: what is learnt of somebody is never surer than this.
constexpr double kDrift = 0.10;

/// What somebody's ticks say: their mean, and how far it may be off.
struct Evidence {
    double planned = 0, actual = 0;
    int ticks = 0;
    // A ratio of sums, so that zones ticked late and together come out right.
    double mean() const { return std::log(std::max(actual, 1.0) / std::max(planned, 1.0)); }
    double variance() const { return kOfWork * kOfWork / ticks + kDrift * kDrift; }
};

double square(double x) {
    return x * x;
}

} // namespace

Learnt learntFrom(const WorkLog& log) {
    std::map<std::string, Evidence> all;
    for (const auto& t : log.ticks)
        if (t.measured) {
            auto& e = all[t.person];
            e.planned += t.plannedSeconds;
            e.actual += t.actualSeconds;
            ++e.ticks;
        }
    Learnt out;
    double precision = 1 / square(kInCommon), sum = 0;
    for (const auto& [who, e] : all) {
        const double variance = square(kOfPeople) + e.variance();
        precision += 1 / variance;
        sum += e.mean() / variance;
    }
    out.common = {sum / precision, std::sqrt(1 / precision)};
    for (const auto& [who, e] : all) {
        // The person's own part, given the common one's middle; that the two are known together only
        // is left to the common part's spread.
        const double own = 1 / square(kOfPeople) + 1 / e.variance();
        out.people[who] = {(e.mean() - out.common.middle) / e.variance() / own,
                           std::hypot(std::sqrt(1 / own), kDrift / 2)};
    }
    return out;
}

double Learnt::slowness(const std::string& person) const {
    const auto own = people.find(person);
    return std::exp(common.middle + (own == people.end() ? 0.0 : own->second.middle));
}

} // namespace bastewright
