#include "plan/call.h"
#include "plan/find.h"
#include "planners/crew/pass_steps.h"
#include "planners/crew/slowest.h"
#include "planners/crew/step_times.h"
#include "planners/surface/closed_sides.h"

#include <algorithm>
#include <array>

/// Who does which zone at a call.
namespace bastewright::crew {
namespace {

bool inTheWay(const StandingPlace& a, const StandingPlace& b) {
    return a.side == b.side && a.along.overlaps(b.along);
}

} // namespace

int PassSteps::personNamed(std::string_view name) const {
    for (std::size_t p = 0; p < given_.hands.size(); ++p)
        if (given_.hands[p].helper.name == name)
            return static_cast<int>(p);
    return -1;
}

bool PassSteps::able(int p, TaskKind kind) const {
    const Helper& h = hand(p).helper;
    return (kind != TaskKind::closePins || h.closes) && (kind != TaskKind::press || h.irons);
}

/// Puts a zone into somebody's hands, where they reach all of it: from where its owner stands, else
/// from anywhere they may stand.
bool PassSteps::give(ZoneJob& work, int p, TaskKind kind, const PassCrew& crew, const Pass& pass,
                     Keeping keeping) const {
    const Helper& h = hand(p).helper;
    const bool limited = !quilt().surface.floor;
    const auto& points = work.zone->zone.points;
    std::optional<StandingPlace> place;
    const auto post = std::ranges::find(crew.people, p) - crew.people.begin();
    const auto sat = crew.before.find(p);
    const std::vector<StandingPlace>* const seat =
        static_cast<std::size_t>(post) < crew.posts.size()
            ? &crew.posts[static_cast<std::size_t>(post)].edges
        : sat != crew.before.end() ? &sat->second
                                   : nullptr;
    const bool own = work.zone->post >= 0 && work.zone->post == post;
    if (h.seated && !own && seat == nullptr) // they sit somewhere else
        return false;
    auto stands = openSides(pass.table, quilt().surface.closed);
    if (h.side && !own && keeping == Keeping::side) {
        const std::array kept{*h.side};
        const Side side = closedSides(kept, quilt().surface.quiltLengthAlongLength).front();
        std::erase_if(stands, [&](const StandingPlace& s) { return s.side != side; });
    }
    const bool may = own || std::ranges::find(stands, work.zone->place.side,
                                              &StandingPlace::side) != stands.end();
    if (h.seated && !own)
        place = bestPlace(h, pass.table, *seat, points, limited);
    else if (may && leanings(h, pass.table, work.zone->place, points, limited))
        place = work.zone->place;
    else if (!h.seated)
        place = bestPlace(h, pass.table, stands, points, limited);
    if (!place)
        return false;
    const int leaning = leanings(h, pass.table, *place, points, limited).value_or(0);
    const double all = zoneSeconds(kind, static_cast<int>(points.size()), leaning, h.pace);
    work.person = p;
    work.place = *place;
    work.seconds = std::max(1, wholeSeconds(all));
    const auto inHand = given_.situation.inHand.find(work.id);
    if (inHand != given_.situation.inHand.end()) {
        const Task* was = taskBefore(work.id);
        if (was && !was->people.empty() && was->people.front() == h.name)
            work.seconds = std::max(work.seconds - spent(work.id), (work.seconds + 9) / 10);
    }
    return true;
}

bool PassSteps::giveSomehow(ZoneJob& work, int p, TaskKind kind, const PassCrew& crew,
                            const Pass& pass) const {
    return give(work, p, kind, crew, pass) ||
           (hand(p).helper.side && give(work, p, kind, crew, pass, Keeping::nothing));
}

/// Somebody of the team who is there, may do it and reaches it, in nobody's way, from the side they
/// keep to: who has least to do.
bool PassSteps::giveToSomebody(ZoneJob& work, TaskKind kind, const PassCrew& crew, const Pass& pass,
                               const std::vector<ZoneJob>& others) {
    std::optional<ZoneJob> best;
    std::tuple<bool, bool, bool, int> bestIs{};
    for (const int p : start_.team)
        for (const Keeping keeping : {Keeping::side, Keeping::nothing}) {
            const bool leaves = keeping == Keeping::nothing;
            if (!able(p, kind) || !hand(p).helper.pins || (leaves && !hand(p).helper.side))
                continue;
            ZoneJob one = work;
            if (!give(one, p, kind, crew, pass, keeping))
                continue;
            int load = one.seconds;
            for (const ZoneJob& o : others)
                load += o.person == p && o.zone != one.zone ? o.seconds : 0;
            const std::tuple is{inSomebodysWay(one, others), hand(p).firstTime(now_, load) > now_,
                                leaves, load};
            if (hand(p).firstTime(now_, 1) < kAlways && (!best || is < bestIs)) {
                best = std::move(one);
                bestIs = is;
            }
        }
    if (best)
        work = std::move(*best);
    return work.person >= 0;
}

/// Beyond everybody's hours: its owner, else who leaves last.
void PassSteps::letSomebodyStay(ZoneJob& work, TaskKind kind, const PassCrew& crew,
                                const Pass& pass) const {
    std::vector<int> who = start_.team;
    const int owner =
        work.zone->post >= 0 ? crew.people[static_cast<std::size_t>(work.zone->post)] : -1;
    std::erase_if(who, [&](int p) {
        return hand(p).from >= kAlways || !able(p, kind) || !hand(p).helper.pins;
    });
    std::ranges::stable_sort(who, {}, [&](int p) {
        return std::pair{p == owner ? 0 : 1, -hand(p).until};
    });
    for (const int p : who)
        if (giveSomehow(work, p, kind, crew, pass))
            return;
}

bool PassSteps::inSomebodysWay(const ZoneJob& work, const std::vector<ZoneJob>& others) {
    return std::ranges::any_of(others, [&](const ZoneJob& o) {
        return o.person >= 0 && o.person != work.person && o.zone != work.zone &&
               inTheWay(o.place, work.place);
    });
}

/// A zone that was handed to somebody is theirs, wherever they stand in nobody's way.
bool PassSteps::honour(ZoneJob& work, TaskKind kind, const PassCrew& crew, const Pass& pass,
                       const std::vector<ZoneJob>& others) const {
    const auto wish = std::ranges::find(job().handed, work.zone->zone.id, &HandedZone::zone);
    if (wish == job().handed.end())
        return false;
    const int p = personNamed(wish->person);
    if (p < 0 || !able(p, kind) || std::ranges::find(start_.team, p) == start_.team.end() ||
        hand(p).firstTime(now_, 1) >= kAlways)
        return false;
    ZoneJob one = work;
    if (!give(one, p, kind, crew, pass) || inSomebodysWay(one, others))
        return false;
    work = std::move(one);
    return true;
}

/// One iron is in one person's hands: zones go to as many as there are irons, the quickest of those
/// who are there; where they do not reach all of them, to others, or to who comes later.
void PassSteps::assignPresses(std::vector<ZoneJob>& work, const PassCrew& crew, const Pass& pass) {
    const auto irons = static_cast<std::size_t>(std::max(0, given_.session.setting.room.irons));
    const auto from = [&](int p, int when) {
        return when == 0 ? hand(p).there(now_, now_ + 1)
                         : when > 1 || hand(p).firstTime(now_, 1) < kAlways;
    };
    const auto gets = [&](int p) { // how far
        const Helper& h = hand(p).helper;
        return h.seated ? Length{} : h.reach + h.lean;
    };
    std::optional<std::vector<ZoneJob>> best;
    std::pair<std::ptrdiff_t, std::ptrdiff_t> least; // without anybody, in somebody's way
    for (int when = 0; when < 3; ++when)
        for (const bool farthest : {false, true}) {
            std::vector<int> who;
            for (const int p : start_.team)
                if (hand(p).helper.irons && from(p, when))
                    who.push_back(p);
            std::ranges::stable_sort(who, {}, [&](int p) {
                return std::pair{farthest ? -gets(p) : Length{}, -pace(p)};
            });
            if (who.size() > irons)
                who.resize(irons);
            // Where some would be in others' way, with fewer irons in use.
            for (std::size_t n = who.size(); n == who.size() || n > 0; --n) {
                auto one = work;
                press(one, {who.begin(), who.begin() + static_cast<std::ptrdiff_t>(n)}, crew, pass);
                const auto inTheWay = std::ranges::count_if(
                    one, [&](const ZoneJob& w) { return w.person >= 0 && inSomebodysWay(w, one); });
                const std::pair is{std::ranges::count(one, -1, &ZoneJob::person), inTheWay};
                if (!best || is < least) {
                    best = std::move(one);
                    least = is;
                }
                if (inTheWay == 0 || n == 0)
                    break;
            }
            if (least.first == 0) {
                work = std::move(*best);
                return;
            }
        }
    work = std::move(*best);
}

/// Deals out zones among people with an iron each, whole stretches, so that nobody works in
/// another's place.
void PassSteps::press(std::vector<ZoneJob>& work, std::vector<int> who, const PassCrew& crew,
                      const Pass& pass) const {
    std::vector<int> load(given_.hands.size(), 0);
    for (std::size_t post = 0; post < std::max<std::size_t>(1, crew.people.size()); ++post) {
        std::vector<ZoneJob*> own;
        for (ZoneJob& w : work)
            if (static_cast<std::size_t>(std::max(0, w.zone->post)) == post)
                own.push_back(&w);
        // Of equals who keeps to a side: they can go to fewer places.
        std::ranges::stable_sort(who, {}, [&](int p) {
            return std::pair{load[static_cast<std::size_t>(p)], hand(p).helper.side ? 0 : 1};
        });
        for (ZoneJob* w : own) {
            std::optional<ZoneJob> any;
            for (const Keeping keeping : {Keeping::side, Keeping::nothing})
                for (const int p : who) {
                    ZoneJob one = *w;
                    if ((any && !inSomebodysWay(*any, work)) ||
                        !give(one, p, TaskKind::press, crew, pass, keeping))
                        continue;
                    if (!any || !inSomebodysWay(one, work))
                        any = one;
                }
            if (any) {
                *w = *any;
                load[static_cast<std::size_t>(w->person)] += w->seconds;
            }
        }
    }
}

void PassSteps::assign(std::vector<ZoneJob>& work, TaskKind kind, const PassCrew& crew,
                       const Pass& pass) {
    if (kind == TaskKind::press) {
        assignPresses(work, crew, pass);
        return;
    }
    std::vector<ZoneJob*> open;
    for (ZoneJob& w : work) {
        int owner = w.zone->post >= 0 ? crew.people[static_cast<std::size_t>(w.zone->post)] : -1;
        if (given_.situation.inHand.contains(w.id))
            if (const Task* was = taskBefore(w.id); was && !was->people.empty())
                owner = personNamed(was->people.front());
        const bool there = owner >= 0 && able(owner, kind) &&
                           std::ranges::find(start_.team, owner) != start_.team.end() &&
                           hand(owner).firstTime(now_, 1) < kAlways;
        if (!there || !giveSomehow(w, owner, kind, crew, pass))
            open.push_back(&w);
    }
    for (ZoneJob* w : open)
        if (!giveToSomebody(*w, kind, crew, pass, work))
            letSomebodyStay(*w, kind, crew, pass);
    // Who was given a zone later may stand where somebody was put before: that one goes elsewhere.
    for (ZoneJob* w : open)
        if (const ZoneJob was = *w; w->person >= 0 && inSomebodysWay(*w, work)) {
            w->person = -1;
            if (!giveToSomebody(*w, kind, crew, pass, work))
                *w = was;
        }
    for (ZoneJob& w : work)
        honour(w, kind, crew, pass, work);
}

} // namespace bastewright::crew
