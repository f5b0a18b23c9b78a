#pragma once

#include "planners/crew/hands.h"
#include "planners/crew/homes.h"
#include "planners/crew/sharing_memory.h"
#include "planners/crew/stand_ins.h"

#include <map>
#include <set>
#include <stop_token>

namespace bastewright::crew {

/// Who has which zones in one pass.
struct PassCrew {
    std::vector<int> asked{};         ///< hands among whom it was to be shared
    std::vector<int> people;          ///< hands who belong to the table, by post
    std::vector<std::string> letters; ///< of their places, by post
    std::vector<OwnedZone> zones;     ///< `post` counts in `people`
    int conflicts = 0, overlaps = 0;  ///< see PassZones
    std::vector<Post> posts{};        ///< where each may stand, for the bound
    /// Where people stood or sat, by hand, of a pass that is begun or done.
    std::map<int, std::vector<StandingPlace>> before{};
    Rect table{};
    bool limited = true;
};

/// Letters of places by person, kept as long as the work goes on.
using Letters = std::map<std::string, std::string>;

/// One quilt on its table: where everybody belongs, and what of each pass is theirs. Remembers what
/// it has worked out; the same question has the same answer.
class QuiltTable {
public:
    /// `points` and how they are basted by pass, in the order of the quilt's passes. `sharings`
    /// outlives this. After a stop the first way found is taken.
    QuiltTable(const Session& session, int job, const QuiltPlan& quilt,
               std::vector<std::vector<PlacedPoint>> points, std::vector<BastedPass> basted,
               const std::vector<Hand>& hands, SharingMemory& sharings, std::stop_token stop = {});

    const std::vector<PlacedPoint>& points(std::size_t pass) const { return points_[pass]; }
    /// How a pass is basted; as long as it is not shared that is not said of its zones.
    const BastedPass& basted(std::size_t pass) const { return basted_[pass]; }
    void sayHowBasted(std::size_t pass, std::vector<OwnedZone>& zones) const {
        crew::sayHowBasted(zones, basted_[pass], job_, quilt_.layers.top);
    }

    /// Shares a pass among those who may have zones; who is better left without them is.
    /// `letters` gets a letter for whoever has none. `standing` says where people stood before, on
    /// the way round this table; they stay near.
    const PassCrew& share(std::size_t pass, const std::vector<int>& people, Letters& letters);

    /// Shares what is not begun of a pass: these areas and their points. `turns` are those that
    /// each place has had.
    PassCrew shareRest(std::size_t pass, const std::vector<int>& people, Letters& letters,
                       Region area, std::vector<PlacedPoint> points,
                       const std::map<std::string, int>& turns);

    /// Where people stood before, on the way round the table.
    void stood(const std::map<int, Length>& places) { stood_ = places; }
    const std::map<int, Length>& stood() const { return stood_; }
    /// They stand where this says from now on: who sits stays there, others near.
    void keepPlaces(const PassCrew& crew);

    const TableSides& sides() const { return sides_; }

    /// Where nobody has stood anywhere yet, of the few best ways to spread people over the sides
    /// the one after so many others; forgets what was worked out.
    void leaveOutPlaces(std::size_t better);
    /// There are other such ways than the one that was taken.
    bool hasOtherPlaces() const { return others_; }

private:
    /// Going beyond one's own part costs a minute, going anywhere two: hands first.
    static constexpr double kRoams = 60;
    static constexpr double kConflict = 1e4;
    /// Among more people than this each way to stand takes long to look at: the first in which
    /// nobody is in anybody's way is taken, and who is in others' way is left out of all passes.
    static constexpr std::size_t kFew = 4;

    struct Arrangement {
        std::vector<Home> homes;
        double cost = 0;
        double shared = 0;   ///< of it, as points are shared
        int overlaps = 0;    ///< places without room, or shared by two: never taken
        bool others = false; ///< another way was left for later
        /// Passes in which one would be in others' way: who has zones in them.
        std::map<std::size_t, std::vector<Home>> fewer{};
        const std::vector<Home>& homesIn(std::size_t pass) const {
            const auto at = fewer.find(pass);
            return at == fewer.end() ? homes : at->second;
        }
        bool isBetterThan(const Arrangement& o, double by = 0) const {
            return o.homes.empty() ||
                   ((overlaps > 0) == (o.overlaps > 0) ? cost < o.cost - by : o.overlaps > 0);
        }
    };
    struct Trial {
        Sharing sharing;
        std::vector<Post> posts;
        double cost = 0;
    };

    const Arrangement& arrangementOf(const std::vector<int>& people);
    Arrangement arranged(const std::vector<int>& people, std::size_t most) const;
    std::vector<Post> posts(const std::vector<Home>& homes, std::size_t pass,
                            Roaming roaming) const;
    Trial trial(const std::vector<Home>& homes, std::size_t pass) const;
    PassCrew crewOf(const std::vector<Home>& homes, std::size_t pass,
                    SharingMemory::OfPass& sharings, Letters& letters,
                    const std::map<std::string, int>& turns) const;
    /// True where nobody is in anybody's way.
    bool weighZones(Arrangement& a) const;
    std::optional<std::vector<Home>> withoutOne(const std::vector<Home>& homes,
                                                std::size_t pass) const;
    double slowestOf(const PassCrew& crew, std::size_t pass) const;
    const Ground& groundOf(std::size_t pass) const { return sharings_[pass]->ground(); }
    double leastCost(const std::vector<int>& people) const;
    double walking(const std::vector<Home>& homes) const;
    const PinRows* rows() const { return quilt_.rows ? &*quilt_.rows : nullptr; }

    const QuiltPlan& quilt_;
    const std::vector<Hand>& hands_;
    std::stop_token stop_;
    std::vector<const Helper*> helpers_;
    const Job& job_;
    std::vector<std::vector<PlacedPoint>> points_;
    std::vector<BastedPass> basted_;
    std::vector<SharingMemory::OfPass*> sharings_; ///< by pass
    TableSides sides_;
    std::map<int, Length> stood_;
    std::size_t leftOut_ = 0; ///< better ways to spread people
    bool others_ = false;
    std::set<std::vector<int>> kept_; ///< people whose places are kept
    std::map<std::vector<int>, Arrangement> arrangements_;
    std::map<std::pair<std::size_t, std::vector<int>>, PassCrew> crews_;
};

/// Points by pass: those in its fresh area.
std::vector<std::vector<PlacedPoint>> pointsByPass(const QuiltPlan& quilt,
                                                   std::span<const PlacedPoint> points);

} // namespace bastewright::crew
