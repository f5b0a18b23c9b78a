#include "plan/call.h"
#include "plan/find.h"
#include "planners/crew/behind.h"
#include "planners/crew/pass_steps.h"
#include "ways/way.h"

#include <algorithm>
#include <set>

/// Who has which zones of a pass: shared anew, or kept where work has begun.
namespace bastewright::crew {

/// Zones that are begun stay; of the others the hands as far as they are here, else they are shared
/// anew.
PassCrew PassSteps::keptCrew() {
    const Situation& s = given_.situation;
    const QuiltPlan& was = s.before->quilts[static_cast<std::size_t>(start_.job)];
    struct Kept {
        const Zone* zone;
        int owner = -1;
        std::optional<StandingPlace> place{};
        bool begun = false;
    };
    std::vector<Kept> zones;
    std::set<int> before;
    for (const Zone& z : was.zones) {
        if (z.pass != pass().number)
            continue;
        Kept k{&z};
        k.begun = s.setAside.contains({start_.job, z.id}) || s.begun.contains({start_.job, z.id});
        for (const Task& t : s.before->tasks) {
            if (t.job != start_.job || t.zone != z.id)
                continue;
            k.begun = k.begun || s.done.contains(t.id) || s.inHand.contains(t.id);
            if (t.kind == TaskKind::press || t.people.empty())
                continue;
            if (k.owner < 0)
                k.owner = personNamed(t.people.front());
            if (!k.place && !t.places.empty())
                k.place = t.places.front();
        }
        if (k.owner >= 0 && !z.points.empty())
            before.insert(k.owner);
        zones.push_back(k);
    }
    const auto here = [&](int p) {
        return p >= 0 && std::ranges::find(pinners_, p) != pinners_.end();
    };
    const bool same = isOver(s, job(), start_.job, pass().number) ||
                      (std::ranges::all_of(before, here) &&
                       std::ranges::all_of(pinners_, [&](int p) { return before.contains(p); }));
    PassCrew out;
    std::vector<Rect> rest;
    std::vector<PlacedPoint> points;
    std::map<std::string, int> turns;
    if (!same)
        for (const Kept& k : zones)
            if (!k.begun && !k.zone->points.empty()) {
                rest.push_back(k.zone->area);
                points.insert(points.end(), k.zone->points.begin(), k.zone->points.end());
            }
    for (const Kept& k : zones) {
        int& turn = turns[std::string{zonePlace(k.zone->id)}];
        turn = std::max(turn, zoneTurn(k.zone->id));
    }
    if (!rest.empty())
        out = table_.shareRest(start_.pass, pinners_, letters_, Region{rest}, std::move(points),
                               turns);
    const bool anew = !rest.empty() && !out.zones.empty();
    for (const Kept& k : zones) {
        if (anew && !k.begun && !k.zone->points.empty())
            continue;
        OwnedZone z;
        z.zone = *k.zone;
        auto post = std::ranges::find(out.people, k.owner);
        if (k.owner >= 0 && post == out.people.end()) {
            out.people.push_back(k.owner);
            const auto letter = letters_.find(hand(k.owner).helper.name);
            out.letters.push_back(letter == letters_.end() ? std::string{zonePlace(k.zone->id)}
                                                           : letter->second);
            post = std::prev(out.people.end());
        }
        z.post = k.owner < 0 ? -1 : static_cast<int>(post - out.people.begin());
        if (k.place)
            z.place = *k.place;
        else if (const auto open = openSides(pass().table, quilt().surface.closed); !open.empty())
            z.place = inFront(pass().table, open.front(), z.zone.points);
        out.zones.push_back(std::move(z));
    }
    if (const Pass* p = findPass(was, pass().number))
        out.before = placesIn(given_.hands, *p);
    return out;
}

void PassSteps::takeCrew() {
    if (keepsZones(given_.situation, start_.job, pass().number)) {
        out_.crew = keptCrew();
        return;
    }
    out_.crew = table_.share(start_.pass, pinners_, letters_);
    if (!out_.crew.zones.empty())
        return;
    // Nobody can have zones: the area is there all the same, for somebody who comes yet.
    int turn = 0;
    for (const Rect& part : pass().fresh.parts) {
        OwnedZone z;
        z.post = -1;
        z.reached = false;
        z.zone = {zoneId(pass().number, placeLetter(0), ++turn), pass().number, part, {}};
        for (const PlacedPoint& p : table_.points(start_.pass))
            if (part.contains(p.at) &&
                std::ranges::none_of(out_.crew.zones, [&](const OwnedZone& o) {
                    return o.zone.area.contains(p.at);
                }))
                z.zone.points.push_back(p);
        out_.crew.zones.push_back(std::move(z));
    }
    table_.sayHowBasted(start_.pass, out_.crew.zones);
}

/// Places whose people do none of their zones, though others do; what was handed over or is begun
/// does not count.
int PassSteps::deserted() const {
    std::set<int> others, own;
    const PassCrew& crew = out_.crew;
    for (const OwnedZone& z : crew.zones) {
        if (z.post < 0)
            continue;
        const bool handed =
            std::ranges::find(job().handed, z.zone.id, &HandedZone::zone) != job().handed.end();
        const auto& owner = hand(crew.people[static_cast<std::size_t>(z.post)]).helper.name;
        for (const Task& t : out_.tasks)
            if (t.pass == pass().number && t.zone == z.zone.id && !t.people.empty())
                (handed || t.people.front() == owner ? own : others).insert(z.post);
        if (std::ranges::any_of(wayOf(job(), z.zone).zoneWork(), [&](TaskKind kind) {
                return isZoneWorkDone(given_.situation, job(), start_.job, z.zone, kind, false);
            }))
            own.insert(z.post);
    }
    return static_cast<int>(
        std::ranges::count_if(others, [&](int post) { return !own.contains(post); }));
}

} // namespace bastewright::crew
