#include "planners/crew/behind.h"

#include <algorithm>

namespace bastewright::crew {

bool anyOf(const Situation& s, const std::vector<Task>& tasks, int job, int pass, bool done) {
    return std::ranges::any_of(tasks, [&](const Task& t) {
        return t.job == job && t.pass == pass && s.done.contains(t.id) == done;
    });
}

bool isBehind(const Situation& s, int job, const Pass& pass) {
    if (s.before == nullptr)
        return false;
    const auto open = [&](const Task& t) {
        return t.job == job && t.pass == pass.number && !s.done.contains(t.id) &&
               !(!t.zone.empty() && s.setAside.contains({job, t.zone}));
    };
    return anyOf(s, s.before->tasks, job, pass.number, true) &&
           std::ranges::none_of(s.before->tasks, open);
}

PassCrew crewBehind(const Situation& situation, int job, const QuiltPlan& was, int pass) {
    PassCrew out;
    for (const Zone& z : was.zones) {
        if (z.pass != pass)
            continue;
        OwnedZone own{.zone = z, .post = -1, .place = {}};
        for (const Task& t : situation.before->tasks)
            if (t.job == job && t.zone == z.id && !t.places.empty())
                own.place = t.places.front();
        out.zones.push_back(std::move(own));
    }
    return out;
}

void tellZones(const std::vector<Hand>& hands, const Block& block, const PassCrew& crew,
               QuiltPlan& quilt) {
    Pass& p = quilt.passes[block.pass];
    std::erase_if(quilt.zones, [&](const Zone& z) { return z.pass == p.number; });
    p.zones.clear();
    p.stretches.clear();
    for (const OwnedZone& z : crew.zones) {
        quilt.zones.push_back(z.zone);
        p.zones.push_back(z.zone.id);
    }
    for (std::size_t k = 0; k < crew.people.size(); ++k) {
        std::vector<StandingPlace> places;
        for (const OwnedZone& z : crew.zones)
            if (z.post == static_cast<int>(k) && !z.zone.points.empty() && z.reached)
                places.push_back(z.place);
        if (!places.empty())
            p.stretches.push_back({crew.letters[k],
                                   hands[static_cast<std::size_t>(crew.people[k])].helper.name,
                                   together(std::move(places))});
    }
    std::ranges::sort(p.stretches, {}, [](const Stretch& s) {
        return std::pair{s.place.size(), s.place};
    });
    std::ranges::stable_sort(quilt.zones, {}, &Zone::pass);
}

} // namespace bastewright::crew
