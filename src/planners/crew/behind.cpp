#include "planners/crew/behind.h"

#include "plan/call.h"
#include "plan/find.h"

#include <algorithm>

namespace bastewright::crew {

std::vector<Hand> handsNow(const std::vector<Helper>& helpers, ClockTime start,
                           const Situation& s) {
    std::vector<Hand> out = handsOf(helpers, start);
    const auto now = static_cast<int>(s.presentAt.value_or(s.now).count());
    if (!s.present)
        return out;
    for (Hand& h : out) {
        if (s.present->contains(h.helper.name)) {
            h.from = 0;
            if (h.until <= now)
                h.until = kAlways; // stays on
        } else if (h.from <= now) {
            h.from = h.until = kAlways; // gone, or not come
        }
    }
    return out;
}

bool anyOf(const Situation& s, const std::vector<Task>& tasks, int job, int pass, bool done) {
    return std::ranges::any_of(tasks, [&](const Task& t) {
        return t.job == job && t.pass == pass && s.done.contains(t.id) == done;
    });
}

bool isZoneWorkDone(const Situation& s, const Job& quilt, int job, const Zone& zone, TaskKind kind,
                    bool fromBack) {
    if (s.done.contains(taskId(job, zone.pass, zone.id, kind, fromBack)))
        return true;
    const auto begun = s.begun.find({job, zone.id});
    if (begun == s.begun.end())
        return false;
    const auto work = wayOf(quilt, zone).zoneWork();
    return begun->second >
           (fromBack ? std::ssize(work) : std::ranges::find(work, kind) - work.begin());
}

bool isOver(const Situation& s, const Job& quilt, int job, int pass) {
    if (s.before == nullptr || static_cast<std::size_t>(job) >= s.before->quilts.size())
        return false;
    if (s.finished.contains({job, pass}))
        return true;
    bool begun = false;
    // A zone that nobody could do has no task.
    for (const Zone& z : s.before->quilts[static_cast<std::size_t>(job)].zones) {
        if (z.pass != pass)
            continue;
        begun = begun || s.begun.contains({job, z.id});
        if (!z.points.empty() && !s.setAside.contains({job, z.id}) &&
            !isZoneWorkDone(s, quilt, job, z, wayOf(quilt, z).lastWork(), false))
            return false;
    }
    const auto open = [&](const Task& t) {
        return t.job == job && t.pass == pass && !s.done.contains(t.id) &&
               callOf(t.kind) != Call::rollUp && t.id != taskId(job, pass, t.zone, t.kind, true) &&
               !(!t.zone.empty() && s.setAside.contains({job, t.zone}));
    };
    return (begun || anyOf(s, s.before->tasks, job, pass, true)) &&
           std::ranges::none_of(s.before->tasks, open);
}

bool isBehind(const Situation& s, const Job& quilt, int job, const Pass& pass) {
    const auto open = [&](const Task& t) {
        return t.job == job && t.pass == pass.number && !s.done.contains(t.id) &&
               !(!t.zone.empty() && s.setAside.contains({job, t.zone}));
    };
    if (!isOver(s, quilt, job, pass.number) || std::ranges::any_of(s.before->tasks, open))
        return false;
    const bool last =
        s.before->quilts[static_cast<std::size_t>(job)].passes.back().number == pass.number;
    return !last || s.done.contains(taskId(job, pass.number, {}, TaskKind::handOver));
}

std::map<int, std::vector<StandingPlace>> placesIn(const std::vector<Hand>& hands,
                                                   const Pass& was) {
    std::map<int, std::vector<StandingPlace>> out;
    for (const Stretch& s : was.stretches)
        for (std::size_t h = 0; h < hands.size(); ++h)
            if (hands[h].helper.name == s.person)
                out.emplace(static_cast<int>(h), s.edges);
    return out;
}

PassCrew crewBehind(const std::vector<Hand>& hands, const Situation& situation, int job,
                    const QuiltPlan& was, int pass) {
    PassCrew out;
    if (const Pass* p = findPass(was, pass))
        out.before = placesIn(hands, *p);
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

void tellZones(const std::vector<Hand>& hands, const Situation& situation, const Block& block,
               const PassPlan& plan, QuiltPlan& quilt) {
    const PassCrew& crew = plan.crew;
    Pass& p = quilt.passes[block.pass];
    std::erase_if(quilt.zones, [&](const Zone& z) { return z.pass == p.number; });
    p.zones.clear();
    p.stretches.clear();
    for (const OwnedZone& z : crew.zones) {
        quilt.zones.push_back(z.zone);
        p.zones.push_back(z.zone.id);
    }
    for (std::size_t k = 0; k < crew.people.size(); ++k) {
        const std::string& who = hands[static_cast<std::size_t>(crew.people[k])].helper.name;
        std::vector<StandingPlace> places, ofOthers;
        for (const OwnedZone& z : crew.zones) {
            if (z.post != static_cast<int>(k) || z.zone.points.empty() || !z.reached ||
                situation.setAside.contains({block.job, z.zone.id}))
                continue;
            bool any = false, own = false;
            for (const Task& t : plan.tasks)
                if (t.pass == p.number && t.zone == z.zone.id) {
                    any = true;
                    own = own || std::ranges::find(t.people, who) != t.people.end();
                }
            (any && !own ? ofOthers : places).push_back(z.place);
        }
        if (places.empty())
            places = std::move(ofOthers);
        if (!places.empty())
            p.stretches.push_back({crew.letters[k], who, together(std::move(places))});
    }
    std::ranges::sort(p.stretches, {}, [](const Stretch& s) {
        return std::pair{s.place.size(), s.place};
    });
    std::ranges::stable_sort(quilt.zones, {}, &Zone::pass);
}

} // namespace bastewright::crew
