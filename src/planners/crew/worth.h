#pragma once

#include "planners/crew/pass_work.h"
#include "planners/crew/rests.h"
#include "planners/crew/slowest.h"

#include <map>

/// What a second of each of several tables and of everybody's time is worth
/// (docs/computation/crew.md, "Several tables").
namespace bastewright::crew {

/// One pass at one of the tables.
struct PassAt {
    PassWork work;
    std::size_t table = 0;
};

struct WorthOptions {
    /// People of about one pace count as one kind, as quick as the quickest of them.
    std::size_t kinds = 7;
    /// Where there is room for more, teams larger than this are as quick as everybody and as dear
    /// as so many of the cheapest.
    std::size_t largest = 10;
    int rounds = 150;
    double now = 0; ///< nothing is done before this
    /// Nobody, and no table, works on for more seconds than this without a break (`kBreakLasts`) or
    /// as long a wait; 0: as long as there is work.
    double restAfter = 0;
    double lastRest = 0;              ///< when the last break ended
    std::vector<PlannedBreak> told{}; ///< nobody's time and no table's
};

/// Any sharing of people and tables gives every pass a team; at a price for a second of each table
/// and of each person, the pass costs at least as much as with the team that is cheapest for it.
/// What there is of tables and people until some moment, at the same prices, must cover the sum
/// (weak duality, as with columns of teams in linear programming). Prices rise for what would be in
/// use for longer than there is of it: any prices prove something, so how they are found does not
/// matter to the proof.
///
/// There is of everybody what lies within their hours, and of everybody and every table only what
/// is left by breaks. Of work that goes on for so long at most between two waits of ten minutes, as
/// many waits as whole stretches of it lie within the work are needed (`timeBetween`).
class Worth {
public:
    Worth(const std::vector<Hand>& hands, std::size_t tables, const std::vector<PassAt>& passes,
          WorthOptions options);

    /// The latest moment before which, as some prices prove, not all passes are done.
    double prove();

private:
    struct Kind {
        double pace = 1;
        std::vector<int> people;
    };
    struct Team {
        std::vector<int> of; ///< how many of each kind
        std::vector<double> paces;
        std::vector<std::size_t> smaller; ///< teams with one fewer
    };

    void sortKinds();
    void addTeams(std::vector<int>& of, std::size_t kind, std::size_t people);
    void addTeam(const std::vector<int>& of);
    static double rateOf(const MostWork& most, std::vector<int> of, std::size_t room);
    std::vector<double>& ratesFor(std::size_t room, double steppingUp);
    std::vector<float> secondsOf(const PassWork& work);
    std::vector<int> cheapest() const;
    double cost(std::vector<double>& usedTable, std::vector<double>& usedKind) const;
    double timeBetween(double from, double until, const Hand* hand) const; ///< null: of a table
    double timeOfTable(double until) const;
    double timeOf(const Kind& kind, double until) const;
    double endFor(double cost) const;
    void change(double end, double rate, const std::vector<double>& usedTable,
                const std::vector<double>& usedKind);

    const std::vector<Hand>& hands_;
    WorthOptions options_;
    bool full_ = false; ///< no team larger than the largest finds room
    std::vector<Kind> kinds_;
    std::vector<Team> teams_;
    std::map<std::vector<int>, std::size_t> index_;
    std::map<std::pair<std::size_t, double>, std::vector<double>>
        rates_; ///< of every team and, last, of everybody, by room and stepping up
    std::vector<std::size_t> tableOf_;
    std::vector<std::vector<float>> seconds_; ///< of each pass, by team; last: larger ones
    std::vector<double> table_, kind_;        ///< prices
};

} // namespace bastewright::crew
