#include "planners/crew/table_teams.h"

#include "planners/crew/random.h"
#include "planners/crew/rests.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace bastewright::crew {
namespace {

/// A table without somebody it needs is worse than any lateness.
constexpr double kLacking = 1e6;
/// It has to be worth so many seconds that somebody changes tables: whoever goes waits for the next
/// pass there, and what is uneven now can be made even later.
constexpr double kWorthMoving = 250;
/// Seconds for everybody at a table, for each whole stretch between two breaks by which somebody
/// who comes is more tired: the break they bring forward, and those after it.
constexpr double kTired = 2 * kBreakLasts;
/// What the other tables count beside the last.
constexpr double kOthers = 0.05;
/// Changes looked at when teams are made first, and whenever a table is through with a pass, for
/// each person and table; and how much worse than before, as a share of the whole time, is taken by
/// chance to begin with.
constexpr int kFirstLook = 700, kLook = 10;
constexpr double kFirstHeat = 0.05, kHeat = 0.002;

class Belonging {
public:
    Belonging(const std::vector<Hand>& hands, const std::vector<TableLeft>& tables,
              const std::vector<Whereabouts>& people, std::vector<int> belongs, std::uint64_t seed)
        : hands_{hands}
        , tables_{tables}
        , people_{people}
        , random_{seed}
        , seconds_(tables.size()) {
        meant_ = belongs;
        now_.belongs = std::move(belongs);
        now_.teams.resize(tables.size());
        now_.ends.assign(tables.size(), 0);
        now_.lacks.assign(tables.size(), 0);
        for (std::size_t p = 0; p < hands_.size(); ++p)
            if (hands_[p].from < kAlways)
                who_.push_back(static_cast<int>(p));
        // Quickest first, so that teams are in that order.
        std::ranges::stable_sort(who_, {}, [&](int p) {
            return std::pair{-hand(p).helper.pace, p};
        });
        rank_.assign(hands_.size(), 0);
        for (std::size_t k = 0; k < who_.size(); ++k)
            rank_[ix(who_[k])] = static_cast<int>(k);
        for (std::size_t t = 0; t < tables_.size(); ++t)
            if (!tables_[t].work.empty())
                open_.push_back(static_cast<int>(t));
    }

    std::vector<int> run() {
        if (open_.empty() || who_.empty())
            return std::move(now_.belongs);
        const bool first = std::ranges::all_of(who_, [&](int p) { return of(p) == kNoTable; });
        for (const int p : who_) {
            int& table = of(p);
            if (table != kNoTable && tables_[ix(table)].work.empty())
                table = meant_[ix(p)] = kNoTable;
            if (table != kNoTable)
                put(now_.teams[ix(table)], p);
        }
        for (std::size_t t = 0; t < tables_.size(); ++t)
            measure(t);
        deal();
        now_.cost = cost();
        const auto ways = static_cast<int>(who_.size() * open_.size());
        improve(ways * (first ? kFirstLook : kLook), first ? kFirstHeat : kHeat);
        return std::move(now_.belongs);
    }

private:
    using Team = std::vector<int>;

    /// Who belongs where, and what comes of it.
    struct State {
        std::vector<int> belongs;
        std::vector<Team> teams; ///< of each table, quickest first
        std::vector<double> ends;
        std::vector<int> lacks;
        double cost = 0;
    };
    struct Move {
        int person, from;
    };
    struct Measured {
        std::size_t table;
        double end;
        int lack;
    };

    static std::size_t ix(int i) { return static_cast<std::size_t>(i); }
    const Hand& hand(int p) const { return hands_[ix(p)]; }
    int& of(int p) { return now_.belongs[ix(p)]; }

    void put(Team& team, int p) const {
        const auto rank = [&](int q) { return rank_[ix(q)]; };
        team.insert(std::ranges::lower_bound(team, rank(p), {}, rank), p);
    }

    /// How long a table takes a team for all that is left.
    double seconds(std::size_t table, const Team& team) {
        const TableLeft& t = tables_[table];
        std::uint64_t key = 0xcbf29ce484222325ULL;
        paces_.clear();
        for (const int p : team) {
            key = (key ^ static_cast<std::uint64_t>(p + 1)) * 0x100000001b3ULL;
            paces_.push_back(hand(p).helper.pace);
        }
        const auto [at, isNew] = seconds_[table].try_emplace(key, 0);
        if (isNew)
            for (const PassWork& w : t.work)
                at->second += t.scale * aboutSeconds(w, paces_);
        return at->second;
    }

    /// From when on somebody is at a table: whoever is elsewhere has to be through there, and comes
    /// when the table begins a pass.
    double joins(int p, std::size_t table, double all) const {
        const TableLeft& t = tables_[table];
        const Whereabouts& w = people_[ix(p)];
        const int from =
            w.table == static_cast<int>(table) ? hand(p).from : std::max(w.free, hand(p).from);
        if (from <= t.ready)
            return t.ready;
        const double next = t.ready + t.next * all;
        const double pass = (1 - t.next) * all / std::max(1, t.passes - 1);
        return from <= next ? next : next + std::ceil((from - next) / pass) * pass;
    }

    /// What it costs a table that somebody comes who had a break before its people had theirs.
    double tired(std::size_t table, const Team& team) const {
        const TableLeft& t = tables_[table];
        int most = 0;
        for (const int p : team) {
            const Whereabouts& w = people_[ix(p)];
            if (w.table != static_cast<int>(table) && hand(p).from < t.ready &&
                t.ready - w.free < kBreakLasts)
                most = std::max(most, t.rested - w.rested);
        }
        return kTired * most / kBreakAtLast;
    }

    /// When a table is through with its team, some of whom join later or leave before.
    double endOf(std::size_t table) {
        const TableLeft& t = tables_[table];
        const Team& team = now_.teams[table];
        if (t.work.empty())
            return 0;
        if (team.empty())
            return kLacking;
        const double all = seconds(table, team);
        turns_.clear();
        for (const int p : team) {
            turns_.push_back(joins(p, table, all));
            if (hand(p).until < kAlways)
                turns_.push_back(hand(p).until);
        }
        std::ranges::sort(turns_);
        turns_.push_back(kAlways);
        double at = t.ready + tired(table, team), left = 1;
        for (const double turn : turns_) {
            if (turn <= at)
                continue;
            here_.clear();
            for (const int p : team)
                if (joins(p, table, all) <= at && hand(p).until > at)
                    here_.push_back(p);
            if (!here_.empty()) {
                const double rest = seconds(table, here_);
                if (at + left * rest <= turn)
                    return at + left * rest;
                left -= (turn - at) / rest;
            }
            at = turn;
        }
        return kLacking * (1 + left);
    }

    void measure(std::size_t t) {
        now_.ends[t] = endOf(t);
        now_.lacks[t] = tables_[t].work.empty() ? 0 : lacking(hands_, tables_[t], now_.teams[t]);
    }

    /// How late the whole is: the last table counts, the others a little, and who changes tables.
    double cost() const {
        double last = 0, sum = 0, lack = 0;
        for (std::size_t t = 0; t < tables_.size(); ++t) {
            last = std::max(last, now_.ends[t]);
            sum += now_.ends[t];
            lack += now_.lacks[t];
        }
        double out = last + kOthers * sum / double(tables_.size()) + kLacking * lack;
        for (const int p : who_) {
            const int was = meant_[ix(p)];
            const bool isSomewhere = was != kNoTable && people_[ix(p)].table != kNoTable;
            out += isSomewhere && was != now_.belongs[ix(p)] ? kWorthMoving : 0;
        }
        return out;
    }

    void change(int p, int to) {
        int& table = of(p);
        if (table != kNoTable)
            std::erase(now_.teams[ix(table)], p);
        table = to;
        if (to != kNoTable)
            put(now_.teams[ix(to)], p);
    }

    /// Whoever belongs nowhere goes where that serves most.
    void deal() {
        for (const int p : who_) {
            if (of(p) != kNoTable)
                continue;
            int best = kNoTable;
            double least = 0;
            for (const int t : open_) {
                const Measured was{ix(t), now_.ends[ix(t)], now_.lacks[ix(t)]};
                change(p, t);
                measure(ix(t));
                if (const double one = cost(); best == kNoTable || one < least) {
                    least = one;
                    best = t;
                }
                change(p, kNoTable);
                restore(was);
            }
            change(p, best);
            measure(ix(best));
        }
    }

    /// One person moved, or two exchanged: kept where that is better, and by chance where it is not
    /// much worse, less and less.
    void improve(int looks, double heat) {
        if (open_.size() < 2)
            return;
        double last = 0;
        for (const double end : now_.ends)
            last = std::max(last, std::min(end, kLacking));
        State best = now_;
        for (int k = 0; k < looks; ++k) {
            const double warmth = heat * last * (1 - double(k) / looks) + 0.5, before = now_.cost;
            if (!changeSomething())
                continue;
            now_.cost = cost();
            if (now_.cost > before && random_.unit() >= std::exp((before - now_.cost) / warmth)) {
                undo();
                now_.cost = before;
            } else if (now_.cost < best.cost - 1e-6) {
                best = now_;
            }
        }
        now_ = std::move(best);
    }

    /// False where nothing came of it.
    bool changeSomething() {
        const auto any = [&](const std::vector<int>& of) {
            return of[ix(random_.below(static_cast<int>(of.size())))];
        };
        const bool exchange = random_.below(2) == 0;
        const int p = any(who_), q = any(who_), from = of(p), to = exchange ? of(q) : any(open_);
        if (from == to)
            return false;
        moves_.clear();
        measured_.clear();
        for (const int t : {from, to})
            measured_.push_back({ix(t), now_.ends[ix(t)], now_.lacks[ix(t)]});
        moves_.push_back({p, from});
        change(p, to);
        if (exchange) {
            moves_.push_back({q, to});
            change(q, from);
        }
        for (const Measured& m : measured_)
            measure(m.table);
        return true;
    }

    void undo() {
        for (const Move& m : moves_)
            change(m.person, m.from);
        for (const Measured& m : measured_)
            restore(m);
    }

    void restore(const Measured& m) {
        now_.ends[m.table] = m.end;
        now_.lacks[m.table] = m.lack;
    }

    const std::vector<Hand>& hands_;
    const std::vector<TableLeft>& tables_;
    const std::vector<Whereabouts>& people_;
    Random random_;
    State now_;
    std::vector<int> meant_; ///< the table of each hand so far
    std::vector<int> who_, rank_, open_;
    std::vector<std::unordered_map<std::uint64_t, double>> seconds_; ///< by table and team
    std::vector<Move> moves_; ///< the last change, and what was before it
    std::vector<Measured> measured_;
    std::vector<double> paces_, turns_; ///< working memory
    Team here_;
};

} // namespace

namespace {

/// Of those who stay until then.
int lackingUntil(int until, const std::vector<Hand>& hands, const TableLeft& table,
                 const std::vector<int>& team) {
    int lift = table.lifters;
    bool below = false, pins = false, finishes = false, finishesAnywhere = false;
    for (const int p : team) {
        if (hands[static_cast<std::size_t>(p)].until < until)
            continue;
        const Helper& h = hands[static_cast<std::size_t>(p)].helper;
        lift -= lays(h) ? 1 : 0;
        below = below || looksBelow(h);
        pins = pins || h.pins;
        const bool one = (table.way->irons || h.pins) && table.way->finishes(h);
        finishes = finishes || one;
        // Who sits does it at their own seat only.
        finishesAnywhere = finishesAnywhere || (one && !h.seated);
    }
    return std::max(0, lift) + (below ? 0 : 1) + (pins ? 0 : 1) + (finishes ? 0 : 1) +
           (finishesAnywhere ? 0 : 1);
}

} // namespace

int lacking(const std::vector<Hand>& hands, const TableLeft& table, const std::vector<int>& team) {
    // Whoever leaves before the pass is through is better than nobody.
    return 8 * lackingUntil(0, hands, table, team) +
           lackingUntil(table.ready + table.pass, hands, table, team);
}

std::vector<int> teamsFor(const std::vector<Hand>& hands, const std::vector<TableLeft>& tables,
                          const std::vector<Whereabouts>& people, std::vector<int> belongs,
                          std::uint64_t seed) {
    return Belonging{hands, tables, people, std::move(belongs), seed}.run();
}

} // namespace bastewright::crew
