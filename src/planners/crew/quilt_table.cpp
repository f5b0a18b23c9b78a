#include "planners/crew/quilt_table.h"

#include "planners/crew/slowest.h"
#include "planners/crew/step_times.h"
#include "planners/surface/helper_order.h"

#include <algorithm>
#include <set>

namespace bastewright::crew {
namespace {

/// Looked at of all the ways to spread people over the sides, for a glance, and closely.
constexpr std::size_t kTried = 24, kGlance = 4, kLookedAt = 5;
/// What it is worth to keep somebody where they are: seconds for a foot of the way.
constexpr double kSecondsAFoot = 1;
constexpr double kUnreached = 1e5;

std::vector<int> sorted(std::vector<int> people) {
    std::ranges::sort(people);
    return people;
}

/// The same whatever zones the points came from.
std::vector<PlacedPoint> inOneOrder(std::vector<PlacedPoint> points) {
    std::ranges::sort(points, {}, [](const PlacedPoint& p) {
        return std::tuple{p.at.y, p.at.x, p.angle};
    });
    return points;
}

} // namespace

std::vector<std::vector<PlacedPoint>> pointsByPass(const QuiltPlan& quilt,
                                                   std::span<const PlacedPoint> points) {
    std::vector<std::vector<PlacedPoint>> out(quilt.passes.size());
    for (const PlacedPoint& p : inOneOrder({points.begin(), points.end()}))
        for (std::size_t k = 0; k < out.size(); ++k)
            if (quilt.passes[k].fresh.contains(p.at)) {
                out[k].push_back(p);
                break;
            }
    return out;
}

QuiltTable::QuiltTable(const Session& session, int job, const QuiltPlan& quilt,
                       std::vector<std::vector<PlacedPoint>> points, std::vector<BastedPass> basted,
                       const std::vector<Hand>& hands, SharingMemory& sharings,
                       std::stop_token stop)
    : quilt_{quilt}
    , hands_{hands}
    , stop_{std::move(stop)}
    , job_{session.jobs[static_cast<std::size_t>(job)]}
    , points_{std::move(points)}
    , basted_{std::move(basted)} {
    for (const Hand& h : hands_)
        helpers_.push_back(&h.helper);
    bool any = false;
    for (std::size_t k = 0; k < quilt.passes.size(); ++k) {
        const Pass& p = quilt.passes[k];
        sharings_.push_back(&sharings.of(crew::groundOf(p, points_[k], job_.basting.spacing, rows(),
                                                        !quilt.surface.floor, *basted_[k].way)));
        sides_.width = p.table.width();
        sides_.length = p.table.length();
        for (const PlacedPoint& q : points_[k]) {
            const Length x = q.at.x - p.table.x0, y = q.at.y - p.table.y0;
            if (!any)
                sides_.workX = {x, x}, sides_.workY = {y, y};
            any = true;
            sides_.workX = {std::min(sides_.workX.lo, x), std::max(sides_.workX.hi, x)};
            sides_.workY = {std::min(sides_.workY.lo, y), std::max(sides_.workY.hi, y)};
        }
    }
    sides_.closed = quilt.surface.closed;
}

std::vector<Post> QuiltTable::posts(const std::vector<Home>& homes, std::size_t pass,
                                    Roaming roaming) const {
    std::vector<Post> out;
    for (std::size_t k = 0; k < homes.size(); ++k)
        out.push_back(postOf(sides_, homes, k, *helpers_[static_cast<std::size_t>(homes[k].person)],
                             quilt_.passes[pass].table, roaming));
    return out;
}

QuiltTable::Trial QuiltTable::trial(const std::vector<Home>& homes, std::size_t pass) const {
    std::optional<Trial> best;
    double roams = 0;
    for (const Roaming roaming : {Roaming::little, Roaming::ownSides, Roaming::everywhere}) {
        Trial one;
        one.posts = posts(homes, pass, roaming);
        one.sharing = sharings_[pass]->among(one.posts);
        one.cost = 2 * one.sharing.slowest + roams + kUnreached * one.sharing.unreached;
        roams += kRoams;
        if (!best || one.cost < best->cost)
            best = std::move(one);
        if (best->sharing.unreached == 0)
            break;
    }
    return std::move(*best);
}

void QuiltTable::keepPlaces(const PassCrew& crew) {
    const auto key = sorted(crew.asked.empty() ? crew.people : crew.asked);
    kept_.insert(key);
    const std::size_t before = stood_.size();
    for (const Home& h : arrangementOf(key).homes)
        stood_.try_emplace(h.person, onTheWayRound(sides_, h.side, h.at));
    if (stood_.size() == before)
        return;
    // What was only tried did not know where they stand.
    std::erase_if(arrangements_, [&](const auto& a) { return !kept_.contains(a.first); });
    std::erase_if(crews_, [&](const auto& c) { return !kept_.contains(c.first.second); });
}

void QuiltTable::leaveOutPlaces(std::size_t better) {
    leftOut_ = better;
    others_ = false;
    arrangements_.clear();
    crews_.clear();
}

double QuiltTable::walking(const std::vector<Home>& homes) const {
    double out = 0;
    for (const Home& h : homes)
        if (const auto was = stood_.find(h.person); was != stood_.end())
            out += kSecondsAFoot / 12 *
                   walkBetween(sides_, was->second, onTheWayRound(sides_, h.side, h.at)).in();
    return out;
}

QuiltTable::Arrangement QuiltTable::arranged(const std::vector<int>& people,
                                             std::size_t most) const {
    Arrangement best;
    const int n = static_cast<int>(people.size());
    if (n == 0 || sharings_.empty())
        return best;
    // In the order in which they stand already; whoever is new comes last.
    std::vector<int> order = people;
    std::ranges::stable_sort(order, {}, [&](int p) {
        const auto was = stood_.find(p);
        return was == stood_.end() ? wayRound(sides_) : was->second;
    });
    const bool alike = std::ranges::all_of(people, [&](int p) {
        const Helper& h = *helpers_[static_cast<std::size_t>(p)];
        return !h.seated && !h.side;
    });
    std::vector<Arrangement> all;
    // Unevenly only where sides and seats that people keep allow nothing else.
    for (const bool evenly : {true, false}) {
        if (!all.empty())
            break;
        for (const PerSide<int>& count : spreads(sides_, n, evenly))
            for (int turn = 0; turn < (alike && stood_.empty() ? 1 : n); ++turn)
                if (auto homes = homesFor(sides_, count, order, helpers_, turn,
                                          quilt_.surface.quiltLengthAlongLength);
                    homes && keepSeats(sides_, *homes, helpers_, stood_))
                    all.push_back({std::move(*homes), 0});
    }
    // Of very many as many, from all over them.
    if (all.size() > most) {
        for (std::size_t k = 0; k < most; ++k)
            if (const std::size_t from = k * all.size() / most; from > k)
                all[k] = std::move(all[from]);
        all.resize(most);
    }
    std::size_t largest = 0;
    for (std::size_t k = 1; k < points_.size(); ++k)
        if (points_[k].size() > points_[largest].size())
            largest = k;
    for (std::size_t k = 0; k < all.size(); ++k) {
        if (k > 0 && stop_.stop_requested())
            all.resize(k);
        else
            all[k].cost = trial(all[k].homes, largest).cost + walking(all[k].homes);
    }
    std::ranges::stable_sort(all, {}, &Arrangement::cost);
    if (all.size() > kLookedAt)
        all.resize(kLookedAt);
    for (std::size_t k = 0; k < all.size(); ++k) {
        if (k > 0 && stop_.stop_requested()) {
            all.resize(k);
            break;
        }
        Arrangement& a = all[k];
        a.cost = walking(a.homes);
        for (std::size_t j = 0; j < sharings_.size(); ++j)
            if (!points_[j].empty()) {
                const Trial one = trial(a.homes, j);
                a.cost += one.cost;
                a.shared += 2 * one.sharing.slowest;
            }
    }
    std::ranges::stable_sort(all, {}, &Arrangement::cost);
    const bool others = stood_.empty() && leftOut_ + 1 < all.size();
    if (stood_.empty() && leftOut_ < all.size())
        all.erase(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(leftOut_));
    // The best in which nobody is in anybody's way.
    for (Arrangement& a : all) {
        // Zones take no less than shares do.
        if (!best.homes.empty() && best.overlaps == 0 && best.cost <= a.cost)
            break;
        a.others = others;
        const bool good = weighZones(a);
        if (a.isBetterThan(best, 1e-9))
            best = std::move(a);
        if (good && hands_.size() > kFew)
            break;
    }
    return best;
}

/// No way to spread these people over the sides costs less.
double QuiltTable::leastCost(const std::vector<int>& people) const {
    std::vector<double> paces;
    for (const int p : people) {
        paces.push_back(soundPace(helpers_[static_cast<std::size_t>(p)]->pace));
    }
    const double rate = mostWorkInASecond(paces);
    double out = 0;
    for (std::size_t k = 0; k < sharings_.size(); ++k)
        out += 2 * double(points_[k].size()) * groundOf(k).secondsAPoint / rate;
    return out;
}

const QuiltTable::Arrangement& QuiltTable::arrangementOf(const std::vector<int>& people) {
    const auto key = sorted(people);
    if (const auto known = arrangements_.find(key); known != arrangements_.end())
        return known->second;
    Arrangement best;
    std::vector<int> some = key;
    while (static_cast<int>(some.size()) > roomFor(sides_))
        some.erase(std::ranges::min_element(
            some, {}, [&](int p) { return helpers_[static_cast<std::size_t>(p)]->pace; }));
    best = arranged(some, kTried);
    // Somebody slow, or beyond what the table has room for, may be better without zones.
    while (some.size() > 1 && !(stop_.stop_requested() && !best.homes.empty())) {
        some.erase(std::ranges::min_element(
            some, {}, [&](int p) { return helpers_[static_cast<std::size_t>(p)]->pace; }));
        if (!best.homes.empty() && best.overlaps == 0 && leastCost(some) >= best.cost)
            break;
        Arrangement fewer = arranged(some, kTried);
        if (fewer.homes.empty() || !fewer.isBetterThan(best))
            break;
        best = std::move(fewer);
    }
    // Where somebody is in another's way however they stand, one has no zones, or one more; where
    // two share a place as many more as it takes.
    std::vector<int> all = key;
    if (!best.homes.empty()) {
        all.clear();
        for (const Home& h : best.homes)
            all.push_back(h.person);
        std::ranges::sort(all);
    }
    while (best.cost >= kConflict && all.size() > 1 &&
           (best.overlaps > 0 || !stop_.stop_requested() || best.homes.empty())) {
        // At a glance whom to leave out, then how the others stand.
        std::vector<int> left;
        Arrangement least;
        for (std::size_t k = 0; k < all.size(); ++k) {
            some = all;
            some.erase(some.begin() + static_cast<std::ptrdiff_t>(k));
            if (Arrangement fewer = arranged(some, kGlance);
                !fewer.homes.empty() && fewer.isBetterThan(least)) {
                least = std::move(fewer);
                left = some;
            }
        }
        Arrangement fewer = left.empty() ? Arrangement{} : arranged(left, kTried);
        const bool better = fewer.isBetterThan(best);
        if (fewer.homes.empty() || (!better && best.overlaps == 0))
            break;
        if (better)
            best = std::move(fewer);
        all = std::move(left);
    }
    if (best.overlaps > 0)
        best = {};
    others_ = others_ || best.others;
    return arrangements_.emplace(key, std::move(best)).first->second;
}

PassCrew QuiltTable::crewOf(const std::vector<Home>& homes, std::size_t pass,
                            SharingMemory::OfPass& sharings, Letters& letters,
                            const std::map<std::string, int>& turns) const {
    const Ground& ground = sharings.ground();
    PassCrew out;
    std::vector<std::size_t> order(homes.size());
    for (std::size_t k = 0; k < order.size(); ++k)
        order[k] = k;
    // Letters go round the table from the one who is listed first on.
    const auto listed = [&](const Home& h) {
        return hands_[static_cast<std::size_t>(h.person)].listed;
    };
    const auto first =
        static_cast<std::size_t>(std::ranges::min_element(homes, {}, listed) - homes.begin());
    std::ranges::rotate(order, order.begin() + static_cast<std::ptrdiff_t>(first));
    for (const std::size_t k : order) {
        const auto& who = helpers_[static_cast<std::size_t>(homes[k].person)]->name;
        if (letters.contains(who))
            continue;
        // The first that is nobody's: of those who stood here before some had no stretch.
        std::size_t next = 0;
        while (std::ranges::any_of(
            letters, [&](const auto& had) { return had.second == placeLetter(next); }))
            ++next;
        letters.emplace(who, placeLetter(next));
    }
    std::optional<PassCrew> best;
    for (const Roaming roaming : {Roaming::little, Roaming::ownSides, Roaming::everywhere}) {
        const auto where = posts(homes, pass, roaming);
        const Sharing& sharing = sharings.among(where);
        PassCrew one;
        for (const Home& h : homes) {
            one.people.push_back(h.person);
            one.letters.push_back(letters.at(helpers_[static_cast<std::size_t>(h.person)]->name));
        }
        PassZones zones =
            zonesOf(ground, where, sharing, quilt_.passes[pass].number, one.letters, turns,
                    {quilt_.layers.top.width / 2, quilt_.layers.top.length / 2});
        one.zones = std::move(zones.zones);
        one.conflicts = zones.conflicts;
        one.overlaps = zones.overlaps;
        one.posts = where;
        one.table = ground.table;
        one.limited = ground.limited;
        if (!best || std::pair{one.overlaps > 0, one.conflicts} <
                         std::pair{best->overlaps > 0, best->conflicts})
            best = std::move(one);
        if (best->conflicts == 0)
            break;
    }
    sayHowBasted(pass, best->zones);
    return std::move(*best);
}

const PassCrew& QuiltTable::share(std::size_t pass, const std::vector<int>& people,
                                  Letters& letters) {
    const auto key = std::pair{pass, sorted(people)};
    if (const auto known = crews_.find(key); known != crews_.end())
        return known->second;
    const auto& homes = arrangementOf(people).homesIn(pass);
    PassCrew crew;
    if (!homes.empty())
        crew = crewOf(homes, pass, *sharings_[pass], letters, {});
    crew.asked = key.second;
    return crews_.emplace(key, std::move(crew)).first->second;
}

PassCrew QuiltTable::shareRest(std::size_t pass, const std::vector<int>& people, Letters& letters,
                               Region area, std::vector<PlacedPoint> points,
                               const std::map<std::string, int>& turns) {
    const auto& homes = arrangementOf(people).homesIn(pass);
    if (homes.empty())
        return {};
    Pass rest = quilt_.passes[pass];
    rest.fresh = std::move(area);
    const Ground ground = crew::groundOf(rest, std::move(points), job_.basting.spacing, rows(),
                                         !quilt_.surface.floor, *basted_[pass].way);
    SharingMemory::OfPass sharings{ground};
    return crewOf(homes, pass, sharings, letters, turns);
}

} // namespace bastewright::crew
