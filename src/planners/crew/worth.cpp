#include "planners/crew/worth.h"

#include "planners/surface/helper_order.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace bastewright::crew {

Worth::Worth(const std::vector<Hand>& hands, std::size_t tables, const std::vector<PassAt>& passes,
             WorthOptions options)
    : hands_{hands}
    , options_{std::move(options)} {
    sortKinds();
    std::size_t room = 1;
    for (const PassAt& p : passes)
        room = std::max(room, p.work.room);
    full_ = options_.largest >= room;
    options_.largest = std::min(options_.largest, room);
    std::vector<int> none(kinds_.size(), 0);
    addTeams(none, 0, 0);
    std::vector<bool> inUse(tables, false);
    for (const PassAt& p : passes) {
        tableOf_.push_back(p.table);
        inUse[p.table] = true;
        seconds_.push_back(secondsOf(p.work));
    }
    // To begin with tables together are worth as much as people, who are by their paces.
    table_.assign(tables, 0);
    const auto used = std::max<std::ptrdiff_t>(1, std::ranges::count(inUse, true));
    for (std::size_t t = 0; t < tables; ++t)
        table_[t] = inUse[t] ? 0.5 / double(used) : 0;
    double people = 0;
    for (const Kind& k : kinds_)
        people += k.pace * double(k.people.size());
    for (const Kind& k : kinds_)
        kind_.push_back(0.5 * k.pace / people);
}

/// Neighbouring paces are put together where that adds least to anybody's pace.
void Worth::sortKinds() {
    std::map<double, std::vector<int>, std::greater<>> byPace;
    for (std::size_t p = 0; p < hands_.size(); ++p)
        if (hands_[p].from < kAlways)
            byPace[hands_[p].helper.pace].push_back(static_cast<int>(p));
    for (auto& [pace, people] : byPace)
        kinds_.push_back({soundPace(pace), std::move(people)});
    while (kinds_.size() > options_.kinds) {
        std::size_t best = 0;
        double least = 0;
        for (std::size_t k = 0; k + 1 < kinds_.size(); ++k) {
            const double adds =
                (kinds_[k].pace - kinds_[k + 1].pace) * double(kinds_[k + 1].people.size());
            if (k == 0 || adds < least) {
                best = k;
                least = adds;
            }
        }
        auto& into = kinds_[best].people;
        const auto& from = kinds_[best + 1].people;
        into.insert(into.end(), from.begin(), from.end());
        kinds_.erase(kinds_.begin() + static_cast<std::ptrdiff_t>(best) + 1);
    }
}

void Worth::addTeams(std::vector<int>& of, std::size_t kind, std::size_t people) {
    if (kind == kinds_.size()) {
        if (people > 0)
            addTeam(of);
        return;
    }
    const auto most = std::min(kinds_[kind].people.size(), options_.largest - people);
    for (std::size_t n = 0; n <= most; ++n) {
        of[kind] = static_cast<int>(n);
        addTeams(of, kind + 1, people + n);
    }
    of[kind] = 0;
}

void Worth::addTeam(const std::vector<int>& of) {
    Team team{.of = of, .paces = {}, .smaller = {}};
    for (std::size_t k = 0; k < of.size(); ++k)
        team.paces.insert(team.paces.end(), static_cast<std::size_t>(of[k]), kinds_[k].pace);
    for (std::size_t k = 0; k < of.size(); ++k) {
        auto fewer = of;
        if (--fewer[k] >= 0)
            if (const auto at = index_.find(fewer); at != index_.end())
                team.smaller.push_back(at->second);
    }
    index_.emplace(of, teams_.size());
    teams_.push_back(std::move(team));
}

/// Of the quickest who find room.
double Worth::rateOf(const MostWork& most, std::vector<int> of, std::size_t room) {
    auto left = static_cast<int>(room);
    for (int& n : of) { // quickest first
        n = std::min(n, left);
        left -= n;
    }
    return most.inASecond(of);
}

std::vector<double>& Worth::ratesFor(std::size_t room, double steppingUp) {
    auto& rates = rates_[{room, steppingUp}];
    if (!rates.empty())
        return rates;
    std::vector<double> paces;
    std::vector<int> all;
    for (const Kind& k : kinds_) {
        paces.push_back(withSteppingUp(k.pace, steppingUp));
        all.push_back(static_cast<int>(k.people.size()));
    }
    const MostWork most{paces};
    for (const Team& t : teams_)
        rates.push_back(rateOf(most, t.of, room));
    rates.push_back(rateOf(most, all, room));
    return rates;
}

std::vector<float> Worth::secondsOf(const PassWork& work) {
    const auto& plain = ratesFor(work.room, 0);
    const auto& turns = ratesFor(work.room, work.steppingUp);
    std::vector<double> all;
    for (const Kind& k : kinds_)
        all.insert(all.end(), k.people.size(), k.pace);
    const double together = std::accumulate(all.begin(), all.end(), 0.0);
    std::vector<float> out;
    out.reserve(teams_.size() + 1);
    for (std::size_t k = 0; k < teams_.size(); ++k) {
        const auto& paces = teams_[k].paces;
        double least = leastSeconds(work, paces, {plain[k], turns[k]});
        // Stands for all larger ones, who find no room: they only open more pins.
        if (full_ && paces.size() == options_.largest)
            least -= work.opened / std::accumulate(paces.begin(), paces.end(), 0.0) -
                     work.opened / together;
        for (const std::size_t s : teams_[k].smaller)
            least = std::min(least, double(out[s]));
        out.push_back(static_cast<float>(least));
    }
    PassWork few = work;
    few.calls = 0; // whoever takes part
    out.push_back(full_ || all.size() <= options_.largest
                      ? std::numeric_limits<float>::max() / 4
                      : static_cast<float>(leastSeconds(few, all, {plain.back(), turns.back()})));
    return out;
}

/// How many of each kind are in the cheapest team that is larger than all others.
std::vector<int> Worth::cheapest() const {
    std::vector<int> out(kind_.size(), 0);
    std::vector<std::size_t> order(kind_.size());
    std::iota(order.begin(), order.end(), 0);
    std::ranges::stable_sort(order, {}, [&](std::size_t k) { return kind_[k]; });
    int left = static_cast<int>(options_.largest) + 1;
    for (const std::size_t k : order) {
        out[k] = std::min(left, static_cast<int>(kinds_[k].people.size()));
        left -= out[k];
    }
    return out;
}

double Worth::cost(std::vector<double>& usedTable, std::vector<double>& usedKind) const {
    const auto large = cheapest();
    const auto priceOf = [&](const std::vector<int>& of) {
        double out = 0;
        for (std::size_t k = 0; k < kind_.size(); ++k)
            out += of[k] * kind_[k];
        return static_cast<float>(out);
    };
    std::vector<float> price;
    for (const Team& t : teams_)
        price.push_back(priceOf(t.of));
    price.push_back(priceOf(large));
    usedTable.assign(table_.size(), 0);
    usedKind.assign(kind_.size(), 0);
    double sum = 0;
    for (std::size_t p = 0; p < seconds_.size(); ++p) {
        const auto& seconds = seconds_[p];
        const auto place = static_cast<float>(table_[tableOf_[p]]);
        std::size_t best = 0;
        float least = (place + price[0]) * seconds[0];
        for (std::size_t t = 1; t < price.size(); ++t)
            if (const float one = (place + price[t]) * seconds[t]; one < least) {
                least = one;
                best = t;
            }
        sum += double(least);
        usedTable[tableOf_[p]] += double(seconds[best]);
        for (std::size_t k = 0; k < kind_.size(); ++k)
            usedKind[k] +=
                (best < teams_.size() ? teams_[best].of[k] : large[k]) * double(seconds[best]);
    }
    return sum * (1 - 1e-5); // single precision
}

/// The most seconds of work between two moments. Nobody works on for longer than `restAfter`
/// without a wait of ten minutes: whatever the waits are, proposed or of their own, n of them leave
/// n + 1 stretches of work, and n times ten minutes of the time between are not worked. Breaks of
/// their own are taken off already, so each of them is a stretch more for nothing.
double Worth::timeBetween(double from, double until, const Hand* hand) const {
    double there = until - from;
    const auto overlap = [&](double a, double b) {
        return std::max(0.0, std::min(until, b) - std::max(from, a));
    };
    for (const PlannedBreak& b : options_.told)
        there -= overlap(double(b.start.count()), double(b.end.count()));
    double stretches = 1;
    if (hand != nullptr)
        for (const auto& [a, b] : hand->away) {
            there -= overlap(a, b);
            stretches += overlap(a, b) > 0 ? 1 : 0;
        }
    if (options_.restAfter <= 0)
        return std::max(0.0, there);
    const double tired = from > options_.now ? 0 : options_.now - options_.lastRest;
    double out = 0;
    for (double left = there; left > out; left -= kBreakLasts, ++stretches) {
        // A table in use for longer than an hour and a half has a break at least.
        const bool unbroken = hand == nullptr && left == there;
        const double most = unbroken ? std::min<double>(options_.restAfter, kProposeBeyond)
                                     : stretches * options_.restAfter;
        out = std::max(out, std::min(left, most - std::min(tired, options_.restAfter) + 1));
    }
    return out;
}

double Worth::timeOfTable(double until) const {
    return timeBetween(options_.now, until, nullptr);
}

/// Seconds of people of a kind until some moment.
double Worth::timeOf(const Kind& kind, double until) const {
    double sum = 0;
    for (const int p : kind.people) {
        const Hand& h = hands_[static_cast<std::size_t>(p)];
        sum += timeBetween(std::max<double>(options_.now, h.from), std::min<double>(until, h.until),
                           &h);
    }
    return sum;
}

/// The moment by which there is enough of tables and people for what everything costs.
double Worth::endFor(double cost) const {
    double lo = options_.now, hi = options_.now + 1e7;
    for (int k = 0; k < 50; ++k) {
        const double t = (lo + hi) / 2;
        double have = 0;
        for (std::size_t q = 0; q < table_.size(); ++q)
            have += table_[q] * timeOfTable(t);
        for (std::size_t q = 0; q < kinds_.size(); ++q)
            have += kind_[q] > 0 ? kind_[q] * timeOf(kinds_[q], t) : 0;
        (have < cost ? lo : hi) = t;
    }
    return lo;
}

void Worth::change(double end, double rate, const std::vector<double>& usedTable,
                   const std::vector<double>& usedKind) {
    double all = 0;
    const auto times = [&](double used, double there) {
        const double share = there > 0 ? used / there : used > 0 ? 3 : 1;
        return std::exp(rate * std::clamp(share - 1, -1.0, 2.0));
    };
    for (std::size_t t = 0; t < table_.size(); ++t)
        all += table_[t] *= times(usedTable[t], timeOfTable(end));
    for (std::size_t k = 0; k < kinds_.size(); ++k) {
        kind_[k] *= times(usedKind[k], timeOf(kinds_[k], end));
        all += kind_[k] * double(kinds_[k].people.size());
    }
    for (auto* prices : {&table_, &kind_})
        for (double& p : *prices)
            p /= all;
}

double Worth::prove() {
    double out = options_.now;
    if (teams_.empty() || seconds_.empty())
        return out;
    std::vector<double> usedTable, usedKind;
    // Whatever people are worth: one table alone.
    const auto table = table_, kind = kind_;
    for (std::size_t t = 0; t < table.size(); ++t) {
        table_.assign(table.size(), 0);
        kind_.assign(kind.size(), 0);
        table_[t] = 1;
        out = std::max(out, endFor(cost(usedTable, usedKind)));
    }
    // Whatever tables are worth: people alone, by their paces.
    table_.assign(table.size(), 0);
    kind_ = kind;
    for (double& price : kind_)
        price *= 2;
    out = std::max(out, endFor(cost(usedTable, usedKind)));
    table_ = table;
    kind_ = kind;
    for (int round = 0; round < options_.rounds; ++round) {
        const double all = cost(usedTable, usedKind);
        const double end = endFor(all);
        out = std::max(out, end);
        change(end, 0.8 / (1 + 0.3 * round), usedTable, usedKind);
    }
    return out;
}

} // namespace bastewright::crew
