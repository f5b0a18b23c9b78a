#include "planners/crew/stand_ins.h"

#include "plan/call.h"
#include "planners/crew/dot_zones.h"

#include <algorithm>

namespace bastewright::crew {
namespace {

std::int64_t count(const std::vector<PlacedPoint>& points) {
    return std::ssize(points);
}

/// Chooses for all quilts, whose pins come out of one box.
class Choosing {
public:
    Choosing(const Session& session, const std::vector<QuiltPlan>& quilts,
             std::span<const std::vector<std::vector<PlacedPoint>>> points,
             const Situation& situation)
        : session_{session}
        , quilts_{quilts}
        , points_{points}
        , situation_{situation}
        , left_{situation.pins.value_or(session.setting.stash.pins)} {}

    std::vector<std::vector<BastedPass>> run() {
        for (std::size_t q = 0; q < quilts_.size(); ++q) {
            const Way& own = wayOf(session_.jobs[q]);
            out_.emplace_back();
            for (std::size_t p = 0; p < quilts_[q].passes.size(); ++p) {
                if (isKept(q, p)) {
                    out_[q].push_back(keeps(q, quilts_[q].passes[p].number));
                    continue;
                }
                out_[q].push_back({&own});
                if (own.fromBox)
                    left_ -= count(points_[q][p]);
            }
        }
        if (situation_.pins || session_.setting.stash.pins > 0) // else nobody has said how many
            choose();
        return std::move(out_);
    }

private:
    /// As its zones were planned; those that wait take their pins yet.
    BastedPass keeps(std::size_t q, int number) {
        const Job& job = session_.jobs[q];
        std::vector<const Way*> ways;
        std::int64_t waiting = 0;
        for (const Zone& z : situation_.before->quilts[q].zones) {
            const std::pair key{int(q), z.id};
            if (z.pass != number || situation_.begun.contains(key) ||
                situation_.setAside.contains(key))
                continue;
            addWay(ways, job, z);
            if (&wayOf(job, z) == &wayOf(job))
                waiting += count(z.points);
        }
        if (wayOf(job).fromBox)
            left_ -= waiting;
        if (ways.size() < 2)
            return {ways.empty() ? &wayOf(job) : ways.front()};
        return {ways.back(), ways.front(), waiting};
    }

    void choose() {
        for (std::size_t q = quilts_.size(); q-- > 0;)
            for (std::size_t p = quilts_[q].passes.size(); p-- > 1;)
                if (const Way* instead = standIn(q, p)) {
                    left_ += count(points_[q][p]);
                    out_[q][p] = {instead};
                }
        for (std::size_t q = quilts_.size(); q-- > 0;)
            if (const Way* instead = quilts_[q].passes.empty() ? nullptr : standIn(q, 0)) {
                const std::int64_t all = count(points_[q][0]), pins = all + left_;
                left_ += all - std::max<std::int64_t>(0, pins);
                out_[q][0] =
                    pins > 0 ? BastedPass{out_[q][0].way, instead, pins} : BastedPass{instead};
            }
    }

    /// What the pass could get so that more pins are left; null where it need not, or cannot.
    const Way* standIn(std::size_t q, std::size_t p) const {
        return left_ >= 0 || points_[q][p].empty() || isKept(q, p)
                   ? nullptr
                   : standInOf(session_.jobs[q], session_);
    }

    bool isKept(std::size_t q, std::size_t p) const {
        return keepsZones(situation_, int(q), quilts_[q].passes[p].number);
    }

    const Session& session_;
    const std::vector<QuiltPlan>& quilts_;
    std::span<const std::vector<std::vector<PlacedPoint>>> points_;
    const Situation& situation_;
    std::int64_t left_; ///< in the box once all that is pinned has its pins; below 0: missing
    std::vector<std::vector<BastedPass>> out_;
};

} // namespace

std::vector<std::vector<BastedPass>>
bastedPasses(const Session& session, const std::vector<QuiltPlan>& quilts,
             std::span<const std::vector<std::vector<PlacedPoint>>> points,
             const Situation& situation) {
    return Choosing{session, quilts, points, situation}.run();
}

void sayHowBasted(std::vector<OwnedZone>& zones, const BastedPass& how, const Job& job, Size top) {
    const auto say = [&](OwnedZone& z, const Way* way) {
        z.zone.with.reset();
        if (way != &wayOf(job) && !z.zone.points.empty())
            z.zone.with = way->with;
    };
    for (OwnedZone& z : zones)
        say(z, how.way);
    if (how.instead == nullptr)
        return;
    std::vector<Zone> all;
    std::int64_t points = 0;
    for (const OwnedZone& z : zones) {
        all.push_back(z.zone);
        points += count(z.zone.points);
    }
    const auto instead = zonesForDots(all, top, points - how.pins);
    for (OwnedZone& z : zones)
        if (std::ranges::find(instead, z.zone.id) != instead.end())
            say(z, how.instead);
}

bool keepsZones(const Situation& s, int job, int pass) {
    if (s.before == nullptr || static_cast<std::size_t>(job) >= s.before->quilts.size())
        return false;
    for (const Task& t : s.before->tasks)
        if (t.job == job && t.pass == pass && isOfZone(t.kind) &&
            (s.done.contains(t.id) || s.inHand.contains(t.id)))
            return true;
    const auto& zones = s.before->quilts[static_cast<std::size_t>(job)].zones;
    return std::ranges::any_of(zones, [&](const Zone& z) {
        return z.pass == pass &&
               (s.setAside.contains({job, z.id}) || s.begun.contains({job, z.id}));
    });
}

} // namespace bastewright::crew
