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
    out.common = {sum / precision, std::sqrt(1 / precision), 1};
    for (const auto& [who, e] : all) {
        // The person's own part given the common one: what the ticks say beyond it, drawn to
        // nothing by what is usual among people. Where the common part is taken higher, this is
        // lower.
        const double own = 1 / square(kOfPeople) + 1 / e.variance();
        const double weight = 1 / e.variance() / own;
        out.people[who] = {weight * (e.mean() - out.common.middle), std::sqrt(1 / own), 1 - weight};
    }
    return out;
}

double Learnt::slowness(const std::string& person) const {
    const auto own = people.find(person);
    return std::exp(common.middle + (own == people.end() ? 0.0 : own->second.middle));
}

} // namespace bastewright
