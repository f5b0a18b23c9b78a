#include "planners/crew/earliest.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace bastewright::crew {
namespace {

/// Everybody's time until some moment, in the quickest one's pace.
double handsUntil(const Given& given, double quickest, double now, double t) {
    double sum = 0;
    for (const Hand& h : given.hands) {
        double there = std::max(0.0, std::min<double>(t, h.until) - std::max<double>(now, h.from));
        for (const auto& [from, until] : h.away)
            there -= std::max(0.0, std::min<double>(t, until) - std::max<double>(now, from));
        sum += std::max(0.0, there) * h.helper.pace / quickest;
    }
    return sum;
}

} // namespace

int earliestOfSeveral(const Given& given, const std::vector<QuiltTable>& tables,
                      const std::vector<Block>& blocks, std::vector<double>* counts) {
    const auto now = double(given.situation.now.count());
    double quickest = 0, most = 0;
    for (const Hand& h : given.hands)
        if (h.from < kAlways)
            quickest = std::max(quickest, h.helper.pace);
    quickest = quickest > 0 ? quickest : 1;
    for (const Hand& h : given.hands)
        if (h.from < kAlways)
            most += h.helper.pace / quickest;
    std::map<int, std::vector<std::size_t>> perTable;
    std::vector<std::vector<double>> least; // of each block, with 1 and more people
    // People of one pace are counted whole.
    const bool alike = std::ranges::all_of(
        given.hands, [&](const Hand& h) { return h.from >= kAlways || h.helper.pace == quickest; });
    const double grain = alike ? 1 : 0.125;
    const int sizes = std::max(1, static_cast<int>((std::min(most, 24.0) - 1) / grain) + 1);
    for (std::size_t k = 0; k < blocks.size(); ++k) {
        const Block& b = blocks[k];
        const PassWork work =
            passWork(given, tables[static_cast<std::size_t>(b.job)], b.job, b.pass, quickest);
        std::vector<double> row;
        for (int n = 0; n < sizes; ++n)
            row.push_back(work.least(1 + grain * n));
        least.push_back(std::move(row));
        perTable[b.surface].push_back(k);
    }
    // Prices: a share of people's time, the rest on the tables by what they have to do.
    std::map<int, double> weight;
    for (const auto& [table, list] : perTable)
        weight[table] = 1.0 / double(perTable.size());
    const auto cost = [&](double hands, std::size_t k, int* best) {
        double out = 0;
        for (int n = 0; n < sizes; ++n) {
            const double x = 1 + grain * n;
            // Between two counts: the smaller count's people at the larger one's time are never too
            // dear.
            const double people = alike ? x : n == 0 ? 0 : x - grain;
            const double one = ((1 - hands) * weight[blocks[k].surface] + hands * people / most) *
                               least[k][static_cast<std::size_t>(n)];
            if (n == 0 || one < out) {
                out = one;
                if (best)
                    *best = n;
            }
        }
        return out;
    };
    const auto total = [&](double hands) {
        double sum = 0;
        for (std::size_t k = 0; k < blocks.size(); ++k)
            sum += cost(hands, k, nullptr);
        return sum;
    };
    // The moment by which both tables and people have enough time for what everything costs.
    const auto endAt = [&](double hands) {
        const double need = total(hands);
        double lo = now, hi = now + need * double(perTable.size()) + 1e6;
        for (int k = 0; k < 60; ++k) {
            const double t = (lo + hi) / 2;
            const double have =
                (1 - hands) * (t - now) + hands * handsUntil(given, quickest, now, t) / most;
            (have < need ? lo : hi) = t;
        }
        return hi - now;
    };
    double best = 0, bestHands = 0;
    for (int round = 0; round < 30; ++round) {
        for (int step = 0; step <= 20; ++step)
            if (const double t = endAt(step / 20.0); t > best) {
                best = t;
                bestHands = step / 20.0;
            }
        // Tables that would be in use for longest become dearer.
        double all = 0;
        for (auto& [table, list] : perTable) {
            double used = 0;
            for (const std::size_t k : list) {
                int n = 0;
                cost(bestHands, k, &n);
                used += least[k][static_cast<std::size_t>(n)];
            }
            weight[table] *= std::exp(0.3 * (used / std::max(1.0, best) - 1));
            all += weight[table];
        }
        for (auto& [table, w] : weight)
            w /= all;
    }
    if (counts) {
        counts->clear();
        for (std::size_t k = 0; k < blocks.size(); ++k) {
            int n = 0;
            cost(bestHands, k, &n);
            counts->push_back(1 + grain * n);
        }
    }
    return static_cast<int>(std::floor(best));
}

} // namespace bastewright::crew
