#include "planners/crew/table_teams.h"

#include <algorithm>
#include <cmath>

namespace bastewright::crew {
namespace {

/// A table without somebody it needs is worse than any lateness.
constexpr double kLacking = 1e6;
/// It has to be worth so many seconds that somebody changes tables.
constexpr double kWorthMoving = 10;
constexpr int kSweeps = 12;

class Belonging {
public:
    Belonging(const std::vector<Hand>& hands, const std::vector<TableLeft>& tables,
              const std::vector<Whereabouts>& people, std::vector<int> belongs)
        : hands_{hands}
        , tables_{tables}
        , people_{people}
        , belongs_{std::move(belongs)}
        , teams_(tables.size())
        , ends_(tables.size(), 0)
        , lacks_(tables.size(), 0) {
        for (std::size_t p = 0; p < hands_.size(); ++p)
            if (hands_[p].from < kAlways)
                who_.push_back(static_cast<int>(p));
        // Quickest first, so that teams are in that order.
        std::ranges::stable_sort(who_, {}, [&](int p) {
            return std::pair{-hand(p).helper.pace, p};
        });
        rank_.assign(hands_.size(), 0);
        for (std::size_t k = 0; k < who_.size(); ++k)
            rank_[static_cast<std::size_t>(who_[k])] = static_cast<int>(k);
    }

    std::vector<int> run() {
        for (const int p : who_) {
            int& table = of(p);
            if (table != kNoTable && tables_[static_cast<std::size_t>(table)].work.empty())
                table = kNoTable;
            if (table != kNoTable)
                put(teams_[static_cast<std::size_t>(table)], p);
        }
        for (std::size_t t = 0; t < tables_.size(); ++t)
            measure(t);
        deal();
        for (int sweep = 0; sweep < kSweeps; ++sweep)
            if (const bool moved = moveOne(), exchanged = exchangeTwo(); !moved && !exchanged)
                break;
        return std::move(belongs_);
    }

private:
    using Team = std::vector<int>;

    const Hand& hand(int p) const { return hands_[static_cast<std::size_t>(p)]; }
    int& of(int p) { return belongs_[static_cast<std::size_t>(p)]; }

    void put(Team& team, int p) const {
        const auto rank = [&](int q) { return rank_[static_cast<std::size_t>(q)]; };
        team.insert(std::ranges::lower_bound(team, rank(p), {}, rank), p);
    }
    Team with(Team team, int p) const {
        put(team, p);
        return team;
    }
    static Team without(Team team, int p) {
        std::erase(team, p);
        return team;
    }

    /// From when on somebody is at a table: whoever is elsewhere has to be through there.
    int joins(int p, std::size_t table) const {
        const Whereabouts& w = people_[static_cast<std::size_t>(p)];
        const int ready = std::max(tables_[table].ready, hand(p).from);
        return w.table == static_cast<int>(table) ? ready : std::max(ready, w.free);
    }

    double seconds(std::size_t table, const Team& team) {
        paces_.clear();
        for (const int p : team)
            paces_.push_back(hand(p).helper.pace);
        double sum = 0;
        for (const PassWork& w : tables_[table].work)
            sum += aboutSeconds(w, paces_);
        return sum;
    }

    /// When a table is through with such a team, some of whom join later or leave before.
    double endOf(std::size_t table, const Team& team) {
        const TableLeft& t = tables_[table];
        if (t.work.empty())
            return 0;
        if (team.empty())
            return kLacking;
        turns_.clear();
        for (const int p : team) {
            if (const int at = joins(p, table); at > t.ready)
                turns_.push_back(at);
            if (hand(p).until < kAlways)
                turns_.push_back(hand(p).until);
        }
        std::ranges::sort(turns_);
        turns_.push_back(kAlways);
        double now = t.ready, left = 1;
        Team here;
        for (const int turn : turns_) {
            if (turn <= now)
                continue;
            here.clear();
            for (const int p : team)
                if (joins(p, table) <= now && hand(p).until > now)
                    here.push_back(p);
            if (here.empty()) {
                now = turn;
                continue;
            }
            const double all = seconds(table, here);
            if (now + left * all <= turn)
                return now + left * all;
            left -= (turn - now) / all;
            now = turn;
        }
        return kLacking * (1 + left);
    }

    int lacks(std::size_t table, const Team& team) const {
        return tables_[table].work.empty() ? 0 : lacking(hands_, tables_[table], team);
    }

    void measure(std::size_t t) {
        ends_[t] = endOf(t, teams_[t]);
        lacks_[t] = lacks(t, teams_[t]);
    }

    /// How late the whole is with two tables changed: ends count by their eighth power, the last
    /// most, the others too.
    double lateness(std::size_t a, double endA, int lackA, std::size_t b, double endB,
                    int lackB) const {
        double last = 1, sum = 0, lack = 0;
        for (std::size_t t = 0; t < tables_.size(); ++t) {
            last = std::max(last, t == a ? endA : t == b ? endB : ends_[t]);
            lack += t == a ? lackA : t == b ? lackB : lacks_[t];
        }
        for (std::size_t t = 0; t < tables_.size(); ++t) {
            const double share = (t == a ? endA : t == b ? endB : ends_[t]) / last;
            const double fourth = share * share * share * share;
            sum += fourth * fourth;
        }
        return last * std::sqrt(std::sqrt(std::sqrt(sum / double(tables_.size())))) +
               kLacking * lack;
    }

    double now() const {
        return tables_.empty() ? 0 : lateness(0, ends_[0], lacks_[0], 0, ends_[0], lacks_[0]);
    }

    /// Whoever belongs nowhere goes where that serves most.
    void deal() {
        for (const int p : who_) {
            if (of(p) != kNoTable)
                continue;
            int best = kNoTable;
            double least = now() + 1e-6; // one too many at a table does no harm
            for (std::size_t t = 0; t < tables_.size(); ++t) {
                if (tables_[t].work.empty() || teams_[t].size() >= tables_[t].work.front().room + 4)
                    continue;
                const Team team = with(teams_[t], p);
                const double one =
                    lateness(t, endOf(t, team), lacks(t, team), t, endOf(t, team), lacks(t, team));
                if (one < least) {
                    least = one;
                    best = static_cast<int>(t);
                }
            }
            if (best != kNoTable)
                change(p, best);
        }
    }

    void change(int p, int to) {
        const int from = of(p);
        of(p) = to;
        if (from != kNoTable) {
            std::erase(teams_[static_cast<std::size_t>(from)], p);
            measure(static_cast<std::size_t>(from));
        }
        if (to != kNoTable) {
            put(teams_[static_cast<std::size_t>(to)], p);
            measure(static_cast<std::size_t>(to));
        }
    }

    double fare(int p, int to) const {
        const int at = people_[static_cast<std::size_t>(p)].table;
        return at != kNoTable && at != to ? kWorthMoving : 0;
    }

    bool moveOne() {
        bool any = false;
        for (const int p : who_) {
            const int from = of(p);
            if (from == kNoTable)
                continue;
            const auto a = static_cast<std::size_t>(from);
            const Team left = without(teams_[a], p);
            const double endA = endOf(a, left);
            const int lackA = lacks(a, left);
            int best = from;
            double least = now() + fare(p, from) - 1e-6;
            for (std::size_t b = 0; b < tables_.size(); ++b) {
                if (b == a || tables_[b].work.empty())
                    continue;
                const Team team = with(teams_[b], p);
                const double one = lateness(a, endA, lackA, b, endOf(b, team), lacks(b, team)) +
                                   fare(p, static_cast<int>(b));
                if (one < least) {
                    least = one;
                    best = static_cast<int>(b);
                }
            }
            if (best != from) {
                change(p, best);
                any = true;
            }
        }
        return any;
    }

    bool exchangeTwo() {
        bool any = false;
        for (std::size_t i = 0; i < who_.size(); ++i)
            for (std::size_t j = i + 1; j < who_.size(); ++j) {
                const int p = who_[i], q = who_[j], from = of(p), to = of(q);
                if (from == to || from == kNoTable || to == kNoTable)
                    continue;
                const auto a = static_cast<std::size_t>(from), b = static_cast<std::size_t>(to);
                const Team one = with(without(teams_[a], p), q),
                           other = with(without(teams_[b], q), p);
                const double then =
                    lateness(a, endOf(a, one), lacks(a, one), b, endOf(b, other), lacks(b, other)) +
                    fare(p, to) + fare(q, from);
                if (then < now() + fare(p, from) + fare(q, to) - 1e-6) {
                    of(p) = to;
                    of(q) = from;
                    teams_[a] = one;
                    teams_[b] = other;
                    measure(a);
                    measure(b);
                    any = true;
                }
            }
        return any;
    }

    const std::vector<Hand>& hands_;
    const std::vector<TableLeft>& tables_;
    const std::vector<Whereabouts>& people_;
    std::vector<int> belongs_; ///< table of each hand
    std::vector<int> who_, rank_;
    std::vector<Team> teams_; ///< of each table, quickest first
    std::vector<double> ends_;
    std::vector<int> lacks_;
    std::vector<double> paces_; ///< working memory
    std::vector<int> turns_;
};

} // namespace

int lacking(const std::vector<Hand>& hands, const TableLeft& table, const std::vector<int>& team) {
    int lift = table.lifters;
    bool below = false, pins = false, finishes = false, finishesAnywhere = false;
    for (const int p : team) {
        const Helper& h = hands[static_cast<std::size_t>(p)].helper;
        lift -= lays(h) ? 1 : 0;
        below = below || looksBelow(h);
        pins = pins || h.pins;
        const bool one = table.dots ? h.irons : h.pins && h.closes;
        finishes = finishes || one;
        // Who sits does it at their own seat only.
        finishesAnywhere = finishesAnywhere || (one && !h.seated);
    }
    return std::max(0, lift) + (below ? 0 : 1) + (pins ? 0 : 1) + (finishes ? 0 : 1) +
           (finishesAnywhere ? 0 : 1);
}

std::vector<int> teamsFor(const std::vector<Hand>& hands, const std::vector<TableLeft>& tables,
                          const std::vector<Whereabouts>& people, std::vector<int> belongs) {
    return Belonging{hands, tables, people, std::move(belongs)}.run();
}

} // namespace bastewright::crew
