#include "plan/call.h"
#include "plan/find.h"
#include "planners/crew/behind.h"
#include "planners/crew/pass_steps.h"
#include "planners/crew/slowest.h"
#include "planners/crew/step_times.h"
#include "planners/surface/closed_sides.h"

#include <algorithm>
#include <array>

/// The calls at which everybody works at their own zones.
namespace bastewright::crew {
namespace {

/// So soon after a break a long call is begun, and broken off, rather than put off.
constexpr int kSoonAfterBreak = 30 * 60;

} // namespace

/// When all can begin, so that nobody has a break of their own, or all of them one, in between.
int PassSteps::startOf(const std::vector<ZoneJob>& work, int length) const {
    std::map<int, int> sums;
    for (const ZoneJob& w : work)
        sums[w.person] += w.seconds;
    int t = now_;
    for (int round = 0; round < 100; ++round) {
        const int before = t;
        t = clearOfBreaks(t, length);
        for (const auto& [p, seconds] : sums)
            if (const int first = hand(p).firstTime(t, seconds); first < kAlways)
                t = first;
        if (t == before)
            break;
    }
    return t;
}

/// When so many irons are not in use at another table.
int PassSteps::withIrons(int start, int length, int irons) const {
    const int all = given_.session.setting.room.irons;
    for (;;) {
        int used = 0, next = kAlways;
        for (const auto& [from, until] : given_.ironsUsed)
            if (from < start + length && start < until) {
                ++used;
                next = std::min(next, until);
            }
        if (used + irons <= all || next >= kAlways)
            return start;
        start = next;
    }
}

void PassSteps::zoneCall(TaskKind kind) {
    zoneCall(kind, out_.crew, pass(), false);
    out_.pinsUntil = now_;
}

void PassSteps::zoneCall(TaskKind kind, const PassCrew& crew, const Pass& pass, bool fromBack) {
    std::vector<ZoneJob> work;
    for (const OwnedZone& z : crew.zones)
        if (!z.zone.points.empty() && z.reached && &wayOf(job(), z.zone) == &wayWith(kind) &&
            !given_.situation.setAside.contains({start_.job, z.zone.id}) &&
            !isZoneWorkDone(given_.situation, job(), start_.job, z.zone, kind, fromBack))
            work.push_back({&z, taskId(start_.job, pass.number, z.zone.id, kind, fromBack)});
    // Back the way they came.
    if (kind == TaskKind::closePins || kind == TaskKind::dotUpper)
        std::ranges::reverse(work);
    // What is in hand comes first.
    std::ranges::stable_sort(
        work, {}, [&](const ZoneJob& w) { return given_.situation.inHand.contains(w.id) ? 0 : 1; });
    assign(work, kind, crew, pass);
    inOneGo(work, crew, pass);
    out_.unworked +=
        static_cast<int>(std::erase_if(work, [](const ZoneJob& w) { return w.person < 0; }));
    if (work.empty())
        return;
    const std::string id = taskId(start_.job, pass.number, {}, kind, fromBack);
    restBefore(id, lengthOf(work), kSoonAfterBreak);
    const int start = now_;
    auto parts = withRests(std::move(work));
    // All of the call wait for the call before, in whichever part they are.
    const std::vector<std::string> before = out_.barrier;
    std::vector<std::string> all;
    for (std::size_t k = 0; k < parts.size(); ++k) {
        if (parts[k].empty())
            continue;
        if (k > 0 && now_ > out_.lastRest)
            rest();
        out_.barrier = before;
        workAtZones(kind, pass, std::move(parts[k]));
        all.insert(all.end(), out_.barrier.begin(), out_.barrier.end());
    }
    out_.barrier = std::move(all);
    called(id, start, now_);
}

/// Whoever works elsewhere than at their own zones goes along the way round the table in one go
/// all the same, from the end that is nearer to where they were.
void PassSteps::inOneGo(std::vector<ZoneJob>& work, const PassCrew& crew, const Pass& pass) const {
    std::map<int, std::vector<std::size_t>> own;
    std::set<int> elsewhere;
    for (std::size_t k = 0; k < work.size(); ++k) {
        const ZoneJob& w = work[k];
        if (w.person < 0 || given_.situation.inHand.contains(w.id))
            continue;
        own[w.person].push_back(k);
        if (w.zone->post < 0 || crew.people[static_cast<std::size_t>(w.zone->post)] != w.person ||
            w.place != w.zone->place)
            elsewhere.insert(w.person);
    }
    const Length round = 2 * (pass.table.width() + pass.table.length());
    for (const int p : elsewhere) {
        std::vector<ZoneJob> jobs;
        std::vector<Length> places;
        for (const std::size_t k : own[p]) {
            places.push_back(wayOf(pass.table, work[k].place));
            jobs.push_back(work[k]);
        }
        Length at = places.front();
        for (const Task& t : out_.tasks)
            if (t.pass == pass.number && !t.places.empty() &&
                t.people.front() == hand(p).helper.name)
                at = wayOf(pass.table, t.places.front());
        const Length from = firstOnTheWay(places, round);
        const auto along = [&](Length place) {
            return place < from ? place + round - from : place - from;
        };
        std::ranges::stable_sort(
            jobs, {}, [&](const ZoneJob& w) { return along(wayOf(pass.table, w.place)); });
        const auto walk = [&](const ZoneJob& w) {
            const Length d = abs(wayOf(pass.table, w.place) - at);
            return std::min(d, round - d);
        };
        if (walk(jobs.back()) < walk(jobs.front()))
            std::ranges::reverse(jobs);
        for (std::size_t k = 0; k < jobs.size(); ++k)
            work[own[p][k]] = std::move(jobs[k]);
    }
}

int PassSteps::lengthOf(const std::vector<ZoneJob>& work) {
    std::map<int, double> sums;
    for (const ZoneJob& w : work)
        sums[w.person] += w.seconds;
    std::vector<double> times;
    for (const auto& [p, seconds] : sums)
        times.push_back(seconds);
    return wholeSeconds(middleOfSlowest(times, spreadOfWork()));
}

/// A call that is too long to go on without a break, in parts between breaks: everybody's zones in
/// their order. With what was worked before it everybody works about as long in each part, and
/// nobody for too long.
std::vector<std::vector<PassSteps::ZoneJob>> PassSteps::withRests(std::vector<ZoneJob> work) const {
    const int since = now_ - out_.lastRest, length = lengthOf(work);
    if (start_.rests == nullptr || since + length <= kBreakAtLast)
        return {std::move(work)};
    std::map<int, double> all;
    for (const ZoneJob& w : work)
        all[w.person] += w.seconds;
    std::vector<std::vector<ZoneJob>> out;
    for (int parts = (since + length + kBreakAtLast - 1) / kBreakAtLast;; ++parts) {
        out.assign(static_cast<std::size_t>(parts), {});
        std::map<int, double> sums;
        for (const ZoneJob& w : work) {
            double& done = sums[w.person];
            const double share = (done + w.seconds / 2.0) / all[w.person];
            const auto part =
                static_cast<std::size_t>((since + share * length) / (since + length) * parts);
            done += w.seconds;
            out[std::min(part, out.size() - 1)].push_back(w);
        }
        bool good = true;
        for (std::size_t k = 0; k < out.size(); ++k)
            good =
                good && (out[k].empty() || lengthOf(out[k]) + (k == 0 ? since : 0) <= kBreakAtLast);
        if (good || out.size() > work.size())
            return out;
    }
}

void PassSteps::workAtZones(TaskKind kind, const Pass& pass, std::vector<ZoneJob> work) {
    std::map<int, double> sums;
    for (const ZoneJob& w : work)
        sums[w.person] += w.seconds;
    const int length = lengthOf(work);
    int start = startOf(work, length);
    if (kind == TaskKind::press)
        start = withIrons(start, length, static_cast<int>(sums.size()));
    std::map<int, int> at;
    std::vector<std::string> ids;
    for (const ZoneJob& w : work) {
        int& from = at.try_emplace(w.person, start).first->second;
        Task t;
        t.id = w.id;
        t.kind = kind;
        t.job = start_.job;
        t.pass = pass.number;
        t.zone = w.zone->zone.id;
        t.people = {hand(w.person).helper.name};
        t.places = {w.place};
        t.start = Seconds{from};
        t.end = Seconds{from + w.seconds};
        t.after = out_.barrier;
        from += w.seconds;
        out_.work[w.person] += w.seconds;
        ids.push_back(t.id);
        out_.tasks.push_back(std::move(t));
    }
    for (const auto& [p, end] : at)
        out_.overtime += std::max(0, end - hand(p).until);
    out_.barrier = std::move(ids);
    advance(start + length);
}

} // namespace bastewright::crew
