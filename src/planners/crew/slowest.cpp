#include "planners/crew/slowest.h"

#include "plan/trade_times.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace bastewright::crew {
namespace {

/// Share of a standard normal deviate below x.
double below(double x) {
    return 0.5 * std::erfc(-x / std::numbers::sqrt2);
}

/// Minus the logarithm of the chance that a time of middle m (in units of the moment looked at) is
/// over by that moment. Rises with m.
double doubt(double m, double spread) {
    return -std::log(below(-std::log(m) / spread));
}

constexpr int kSteps = 96;

/// What of one unit of time a person can be given, for the doubt it costs; a table to search in.
struct Table {
    std::array<double, kSteps> share, doubt;
    Table() {
        const double spread = spreadOfWork();
        for (int k = 0; k < kSteps; ++k) {
            const auto i = static_cast<std::size_t>(k);
            // From hardly any doubt to all of it: ln 2 belongs to a share of 1.
            share[i] = std::exp(-spread * 3.5 * (1 - double(k) / (kSteps - 1)));
            doubt[i] = crew::doubt(share[i], spread);
        }
    }
};

const Table& shareTable() {
    static const Table all;
    return all;
}

/// An upper bound of the work by weak duality at one price of doubt.
double atPrice(const Table& table, std::span<const double> paces, double price) {
    double sum = price * std::numbers::ln2;
    for (const double pace : paces) {
        double best = 0;
        for (std::size_t k = 0; k < table.share.size(); ++k)
            best = std::max(best, pace * table.share[k] - price * table.doubt[k]);
        sum += best;
    }
    return sum;
}

} // namespace

double spreadOfWork() {
    return std::hypot(trade_times::kOfPeople, trade_times::kOfWork);
}

double middleOfSlowest(std::span<const double> middles, double spread) {
    double most = 0;
    std::size_t people = 0;
    for (const double m : middles) {
        most = std::max(most, m);
        people += m > 0 ? 1 : 0;
    }
    if (people < 2 || spread <= 0)
        return most;
    // The chance that all are through by t rises with t from at most 1/2 at the longest middle.
    double lo = most, hi = most * std::exp(spread * 5);
    for (int k = 0; k < 40 && hi - lo > 1e-6 * hi; ++k) {
        const double t = (lo + hi) / 2;
        double all = 0;
        for (const double m : middles)
            if (m > 0)
                all += doubt(m / t, spread);
        (all > std::numbers::ln2 ? lo : hi) = t;
    }
    return hi;
}

double mostWorkInASecond(std::span<const double> paces) {
    if (paces.empty())
        return 0;
    if (paces.size() == 1)
        return paces.front();
    const Table& table = shareTable();
    // Convex in the price: golden section. Steps of the table are 1 % apart, and the best share
    // lies between two of them where the curve is flat: far less than the two thousandths added.
    double lo = 1e-6, hi = 0;
    for (const double p : paces)
        hi += p;
    constexpr double kGolden = 0.6180339887498949;
    double a = hi - kGolden * (hi - lo), b = lo + kGolden * (hi - lo);
    double fa = atPrice(table, paces, a), fb = atPrice(table, paces, b);
    for (int k = 0; k < 26; ++k) {
        if (fa < fb) {
            hi = b;
            b = a;
            fb = fa;
            a = hi - kGolden * (hi - lo);
            fa = atPrice(table, paces, a);
        } else {
            lo = a;
            a = b;
            fa = fb;
            b = lo + kGolden * (hi - lo);
            fb = atPrice(table, paces, b);
        }
    }
    return 1.002 * std::min(fa, fb);
}

MostWork::MostWork(std::span<const double> paces) {
    const Table& table = shareTable();
    const double most = paces.empty() ? 1 : *std::ranges::max_element(paces);
    // Any price proves a bound; the best lies where one doubt more is worth about one person.
    for (double price = 0.02 * most; price < 10 * most; price *= 1.06) {
        price_.push_back(price);
        auto& row = worth_.emplace_back();
        for (const double pace : paces) {
            double best = 0;
            for (std::size_t k = 0; k < table.share.size(); ++k)
                best = std::max(best, pace * table.share[k] - price * table.doubt[k]);
            row.push_back(best);
        }
    }
}

double MostWork::inASecond(std::span<const int> people) const {
    double out = 0;
    for (std::size_t q = 0; q < price_.size(); ++q) {
        double sum = price_[q] * std::numbers::ln2;
        for (std::size_t k = 0; k < people.size(); ++k)
            sum += people[k] * worth_[q][k];
        out = q == 0 ? sum : std::min(out, sum);
    }
    return 1.002 * out;
}

} // namespace bastewright::crew
