#pragma once

#include "planners/crew/pass_day.h"

#include <functional>

namespace bastewright::crew {

/// The steps of one pass, one after another: who, from when, for how long.
class PassSteps {
public:
    PassSteps(const Given& given, QuiltTable& table, Letters& letters, const PassStart& start,
              std::vector<int> pinners);

    PassPlan run();

private:
    using Paces = std::span<const double>;
    using Takes = std::function<double(Paces)>;

    struct Team {
        std::vector<int> people;
        int start = 0, seconds = 0;
    };

    void before();
    /// A step of the way of basting.
    void stepOfWay(const WayStep& step);
    void lookBelow();
    void afterwards();
    int deserted() const;
    void fromTheBack(const Way& way);

    /// A step of a few people together; takes as many of `who`, between two numbers, as end it
    /// soonest.
    void teamStep(TaskKind kind, const std::vector<int>& who, std::size_t least, std::size_t most,
                  const Takes& takes);
    /// A step of everybody who is there.
    void holdStep(TaskKind kind, int holds);
    void setUp();
    void leaveAlone(const WayStep& step, bool fromBack);
    /// Everybody their own zones, one after another; all begin together.
    void zoneCall(TaskKind kind);
    void zoneCall(TaskKind kind, const PassCrew& crew, const Pass& pass, bool fromBack);
    void lift(TaskKind kind, std::size_t people, const Takes& takes);
    /// So many of those who lift, or as many as will be there at all.
    std::size_t liftersEver(const std::vector<int>& who, std::size_t people) const;
    /// A step of all of `who` who are there for the whole of it, and so many at least.
    void stepOfAll(TaskKind kind, const std::vector<int>& who, std::size_t least,
                   const Takes& takes);
    using Chosen = std::function<Team(const Takes&)>;
    /// Who may go on with a step they have in hand, and how long all of it takes them, however
    /// many they are.
    struct InHand {
        const std::vector<int>& may;
        Takes takes;
    };
    void step(TaskKind kind, const Takes& takes, const InHand& inHand, const Chosen& chosen);
    void partOfStep(TaskKind kind, const std::string& id, const Takes& takes, const InHand& inHand,
                    const Chosen& chosen);
    std::optional<Team> goesOn(const std::string& id, const InHand& inHand) const;
    int partsOf(const std::string& id, int seconds) const;

    void takeCrew();
    PassCrew keptCrew();
    /// A zone's work with whoever does it now.
    struct ZoneJob {
        const OwnedZone* zone = nullptr;
        std::string id{};
        int person = -1;
        StandingPlace place{};
        int seconds = 0;
    };
    bool able(int person, TaskKind kind) const;
    /// Who keeps to a side leaves it only where that is said.
    enum class Keeping { side, nothing };
    bool give(ZoneJob& work, int person, TaskKind kind, const PassCrew& crew, const Pass& pass,
              Keeping keeping = Keeping::side) const;
    /// From the side they keep to, else from anywhere.
    bool giveSomehow(ZoneJob& work, int person, TaskKind kind, const PassCrew& crew,
                     const Pass& pass) const;
    void assign(std::vector<ZoneJob>& work, TaskKind kind, const PassCrew& crew, const Pass& pass);
    void assignPresses(std::vector<ZoneJob>& work, const PassCrew& crew, const Pass& pass);
    void press(std::vector<ZoneJob>& work, std::vector<int> who, const PassCrew& crew,
               const Pass& pass) const;
    bool giveToSomebody(ZoneJob& work, TaskKind kind, const PassCrew& crew, const Pass& pass,
                        const std::vector<ZoneJob>& others);
    bool honour(ZoneJob& work, TaskKind kind, const PassCrew& crew, const Pass& pass,
                const std::vector<ZoneJob>& others) const;
    void letSomebodyStay(ZoneJob& work, TaskKind kind, const PassCrew& crew,
                         const Pass& pass) const;
    static bool inSomebodysWay(const ZoneJob& work, const std::vector<ZoneJob>& others);
    int startOf(const std::vector<ZoneJob>& work, int length) const;
    static int lengthOf(const std::vector<ZoneJob>& work);
    std::vector<std::vector<ZoneJob>> withRests(std::vector<ZoneJob> work) const;
    void workAtZones(TaskKind kind, const Pass& pass, std::vector<ZoneJob> work);
    void inOneGo(std::vector<ZoneJob>& work, const PassCrew& crew, const Pass& pass) const;
    int withIrons(int start, int length, int irons) const;
    int personNamed(std::string_view name) const;

    Team choose(const std::vector<int>& who, std::size_t least, std::size_t most,
                const Takes& takes) const;
    /// As many as can be, as early as can be.
    Team chooseAll(const std::vector<int>& who, std::size_t least, const Takes& takes) const;
    std::optional<Team> chooseAt(const std::vector<int>& who, std::size_t n, const Takes& takes,
                                 int t, bool overtime) const;
    std::vector<int> times(const std::vector<int>& who) const;
    int clearOfBreaks(int t, int seconds) const;
    void restBefore(const std::string& call, int seconds, int soonest = 0);
    void rest();
    void called(const std::string& id, int start, int end);
    void add(TaskKind kind, const Team& team, const std::string& id);
    int spent(const std::string& id) const;
    const Task* taskBefore(const std::string& id) const;
    void advance(int end);

    std::vector<int> those(bool (*may)(const Helper&)) const;
    const Hand& hand(int p) const { return given_.hands[static_cast<std::size_t>(p)]; }
    double pace(int p) const { return hand(p).helper.pace; }
    const Job& job() const { return given_.session.jobs[static_cast<std::size_t>(start_.job)]; }
    const QuiltPlan& quilt() const { return given_.quilts[static_cast<std::size_t>(start_.job)]; }
    const Pass& pass() const { return quilt().passes[start_.pass]; }
    bool last() const { return start_.pass + 1 == quilt().passes.size(); }
    /// How the zones of the pass are basted, in the order of the work.
    std::vector<const Way*> ways() const;
    /// The way of some zones of the quilt that are finished from the back too; null: none are.
    const Way* turning() const;

    const Given& given_;
    QuiltTable& table_;
    Letters& letters_;
    const PassStart& start_;
    std::vector<int> pinners_;
    PassPlan out_;
    int now_ = 0;
};

} // namespace bastewright::crew
