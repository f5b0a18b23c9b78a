#include "planners/crew/findings.h"

#include "plan/quilt_name.h"
#include "planners/crew/behind.h"
#include "planners/crew/handed.h"
#include "planners/surface/closed_sides.h"
#include "planners/surface/reachable.h"
#include "ways/way.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace bastewright::crew {
namespace {

void say(Findings& out, Finding finding) {
    if (std::ranges::find(out, finding) == out.end())
        out.push_back(std::move(finding));
}

Sentence zoneNames(const std::vector<const Zone*>& zones) {
    Sentences names;
    for (const Zone* z : zones)
        names.emplace_back(std::string{zoneName(z->id)});
    return core::commaList(names);
}

/// The least reach that gets to every point of a zone from straight in front of it; nothing where
/// no side is open.
std::optional<Length> leastReach(const Rect& table, const std::vector<Side>& closed,
                                 const Zone& zone) {
    const std::vector<Side> open = bastewright::openSides(closed);
    if (open.empty())
        return {};
    Length most;
    for (const PlacedPoint& p : zone.points) {
        Length nearest = abs(depthFrom(p.at, table, open.front()));
        for (const Side side : open)
            nearest = std::min(nearest, abs(depthFrom(p.at, table, side)));
        most = std::max(most, nearest);
    }
    return most;
}

class Saying {
public:
    Saying(const CrewFacts& facts, std::span<const Task> tasks, Findings& out)
        : f_{facts}
        , tasks_{tasks}
        , out_{out}
        , there_{facts.helpers} {
        for (const Hand& h : facts.given.hands)
            if (h.from >= kAlways)
                std::erase_if(there_, [&](const Helper& o) { return o.name == h.helper.name; });
    }

    void run() {
        for (std::size_t q = 0; q < f_.crews.size(); ++q) {
            countLifters(q);
            for (std::size_t p = 0; p < f_.crews[q].size(); ++p)
                zonesOf(q, p);
        }
        below();
        hours();
        places();
        sayHanded(f_.given.session, f_.helpers, f_.given.quilts, tasks_, out_);
    }

private:
    const QuiltPlan& quilt(std::size_t q) const { return f_.given.quilts[q]; }
    const Job& job(std::size_t q) const { return f_.given.session.jobs[q]; }
    Sentence nameOf(std::size_t q) const {
        return quilt(q).name.empty() ? core::says("Quilt") : Sentence{quilt(q).name};
    }
    bool worked(std::size_t q, const Zone& z, TaskKind kind) const {
        const auto worked = [&](bool fromBack) {
            const std::string id = taskId(static_cast<int>(q), z.pass, z.id, kind, fromBack);
            return std::ranges::find(tasks_, id, &Task::id) != tasks_.end() ||
                   isZoneWorkDone(f_.given.situation, job(q), static_cast<int>(q), z, kind,
                                  fromBack);
        };
        const Way& way = wayOf(job(q), z);
        const bool twice = kind == way.lastWork() && way.turns(job(q).batting);
        return f_.given.situation.setAside.contains({static_cast<int>(q), z.id}) ||
               (worked(false) && (!twice || worked(true)));
    }

    void zonesOf(std::size_t q, std::size_t p) {
        const Pass& pass = quilt(q).passes[p];
        std::vector<const Zone*> unreached, unworked;
        std::map<const Way*, std::vector<const Zone*>> unfinished;
        std::optional<Length> reach;
        for (const OwnedZone& z : f_.crews[q][p].zones) {
            if (z.zone.points.empty())
                continue;
            const Way& way = wayOf(job(q), z.zone);
            if (!z.reached) {
                unreached.push_back(&z.zone);
                if (const auto least = leastReach(pass.table, quilt(q).surface.closed, z.zone))
                    reach = std::max(reach.value_or(Length{}), *least);
            } else if (!worked(q, z.zone, way.firstWork())) {
                unworked.push_back(&z.zone);
            } else if (!worked(q, z.zone, way.lastWork())) {
                unfinished[&way].push_back(&z.zone);
            }
        }
        const auto stop = [&](Finding::Kind kind, Sentence text, Sentence cure) {
            say(out_, {kind, Finding::Level::stop, "/helpers", std::move(text), std::move(cure)});
        };
        const bool anybody = std::ranges::any_of(there_, [](const Helper& h) { return h.pins; });
        if (!anybody && !(unreached.empty() && unworked.empty()))
            stop(Finding::Kind::nobodyPins,
                 core::says(
                     "Nobody here works at the zones: everybody leads, walks round and checks."),
                 core::says("Let one helper pin."));
        else if (!unreached.empty())
            stop(Finding::Kind::outOfReach,
                 core::says("%1, pass %2: nobody reaches all of zone %3 from an open side.",
                            nameOf(q), pass.number, zoneNames(unreached)),
                 reach ? core::says("A helper who reaches %1, or a table open on more sides.",
                                    core::length(*reach + Length::inch64ths(7), job(q).unit))
                       : core::says("Move the table away from a wall: no side of it is open."));
        if (anybody && !unworked.empty())
            stop(Finding::Kind::nobodyThere,
                 core::says("%1, pass %2: nobody is there for zone %3.", nameOf(q), pass.number,
                            zoneNames(unworked)),
                 core::says("Let somebody who reaches it stay."));
        for (const Way& way : allWays())
            if (const auto zones = unfinished.find(&way); zones != unfinished.end())
                say(out_, way.unfinished({.setting = f_.given.session.setting,
                                          .helpers = there_,
                                          .quilt = nameOf(q),
                                          .pass = pass.number,
                                          .zones = zoneNames(zones->second)}));
    }

    /// Those who lift at the shift into a pass; where it is behind, all there are.
    int liftersAt(std::size_t q, const Pass& pass) const {
        const auto shift = std::ranges::find_if(tasks_, [&](const Task& t) {
            return t.job == static_cast<int>(q) && t.pass == pass.number &&
                   t.kind == TaskKind::shift;
        });
        return static_cast<int>(std::ranges::count_if(there_, [&](const Helper& h) {
            return lays(h) && (shift == tasks_.end() ||
                               std::ranges::find(shift->people, h.name) != shift->people.end());
        }));
    }

    /// Of the shifts with too few who lift the one that asks for most.
    void countLifters(std::size_t q) {
        if (std::ranges::none_of(there_, lays)) {
            say(out_,
                {Finding::Kind::nobodyLifts, Finding::Level::stop, "/helpers",
                 core::says("The layers have to be laid and the quilt moved, and nobody lifts."),
                 core::says("Let one helper who stands lift.")});
            return;
        }
        const Pass* most = nullptr;
        for (const Pass& p : quilt(q).passes)
            if (p.number > 1 && liftersAt(q, p) < p.liftPeople &&
                (most == nullptr || p.liftPeople > most->liftPeople))
                most = &p;
        if (most == nullptr)
            return;
        const int lifters = liftersAt(q, *most);
        const Sentence weight = core::weight(most->liftKilograms, job(q).unit);
        say(out_,
            {Finding::Kind::fewLift, Finding::Level::warn, "/helpers",
             lifters == 1 ? core::says("%1, move into pass %2: it weighs %3 and must stay flat, so "
                                       "%4 people should slide it, and only one here can lift.",
                                       nameOf(q), most->number, weight, most->liftPeople)
                          : core::says("%1, move into pass %2: it weighs %3 and must stay flat, so "
                                       "%4 people should slide it, and only %5 here can lift.",
                                       nameOf(q), most->number, weight, most->liftPeople, lifters),
             core::says(
                 "Ask for more hands when the quilt is moved, or slide it in short steps.")});
    }

    void below() {
        if (std::ranges::none_of(there_, looksBelow))
            say(out_, {Finding::Kind::nobodyBends, Finding::Level::warn, "/helpers",
                       core::says("In every pass somebody has to bend down and look underneath the "
                                  "table, and nobody here can."),
                       core::says(
                           "Ask somebody to come for the end of each pass, or feel underneath with "
                           "a palm from every side.")});
    }

    /// Everybody who pins, is there and has not one zone; a rest of the work may have none for
    /// them.
    void places() {
        if (!f_.given.situation.done.empty() || std::ranges::any_of(out_, [](const Finding& f) {
                return f.level == Finding::Level::stop;
            }))
            return;
        for (const Helper& h : f_.helpers) {
            const bool works = std::ranges::any_of(tasks_, [&](const Task& t) {
                return !t.zone.empty() && std::ranges::find(t.people, h.name) != t.people.end();
            });
            if (!h.pins || works)
                continue;
            Finding f{
                Finding::Kind::noPlace, Finding::Level::note,
                "/helpers/" + std::to_string(&h - f_.helpers.data()),
                core::says(
                    "%1 has no zones in this plan: there is no room for one more place, or no "
                    "time for it. %1 lays, lifts and hands things on.",
                    h.name),
                core::says("One more table, or a side away from the wall, makes room.")};
            f.subject = h.name;
            say(out_, std::move(f));
        }
    }

    void hours() {
        Sentences who, cure;
        for (const Hand& h : f_.given.hands) {
            int last = 0;
            for (const Task& t : tasks_)
                if (std::ranges::find(t.people, h.helper.name) != t.people.end())
                    last = std::max(last, static_cast<int>(t.end.count()));
            const int over = last - h.until;
            if (over <= 0 || last == 0)
                continue;
            const Seconds toMinute{(last + 59) / 60 * 60};
            who.push_back(core::says("%1 (%2 longer)", h.helper.name, Seconds{over}));
            cure.push_back(core::says("%1 until %2", h.helper.name,
                                      after(f_.given.session.setting.start, toMinute)));
        }
        if (!who.empty())
            say(out_,
                {Finding::Kind::hoursShort, Finding::Level::stop, "/helpers",
                 core::says("The work takes longer than some can stay: %1.", core::commaList(who)),
                 core::says("Ask to stay: %1.", core::commaList(cure))});
    }

    const CrewFacts& f_;
    std::span<const Task> tasks_;
    Findings& out_;
    std::vector<Helper> there_; ///< or still to come
};

} // namespace

void sayWhoIsThere(std::vector<Helper>& helpers, Findings& findings) {
    if (helpers.empty()) {
        helpers.emplace_back().name = "Helper 1";
        findings.push_back({Finding::Kind::helperAssumed, Finding::Level::note, "/helpers",
                            core::says("No helpers are named: planned for one, 'Helper 1'."),
                            core::says("Name who comes.")});
    } else if (helpers.size() == 1) {
        findings.push_back(
            {Finding::Kind::worksAlone, Finding::Level::note, "/helpers",
             core::says("%1 works alone: laying the layers takes longer than planned for two.",
                        helpers.front().name),
             core::says("A second pair of hands for laying the layers.")});
    }
}

void sayFindings(const CrewFacts& facts, std::span<const Task> tasks, Findings& findings) {
    Saying{facts, tasks, findings}.run();
}

} // namespace bastewright::crew
