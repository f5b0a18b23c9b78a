#include "planners/crew/tasks.h"

#include "plan/share.h"
#include "plan/trade_times.h"
#include "planners/crew/able.h"
#include "planners/crew/words.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace bastewright::crew {

using namespace trade_times;

namespace {

/// From this thickness on dots are pressed from the back too.
constexpr Length kThickBatting = Length::millimetres(10);

/// The 'wave' of what is pressed after turning.
constexpr int kFromBack = 2;

/// Zones of one pass in waves: nearest to the middle of the quilt first.
std::vector<std::vector<int>> wavesOf(const QuiltPlan& quilt, const Pass& pass, int zonesInWave) {
    std::vector<int> zones;
    for (std::size_t z = 0; z < quilt.zones.size(); ++z)
        if (quilt.zones[z].pass == pass.number)
            zones.push_back(static_cast<int>(z));
    const Point middle{quilt.layers.top.width / 2, quilt.layers.top.length / 2};
    const auto away = [&](int z) {
        const Point p = quilt.zones[static_cast<std::size_t>(z)].area.middle();
        return std::max(abs(p.x - middle.x), abs(p.y - middle.y));
    };
    const auto count = static_cast<int>(zones.size());
    const int waves = std::max(1, (count + zonesInWave - 1) / std::max(1, zonesInWave));
    if (waves > 1)
        std::ranges::stable_sort(zones, {}, away);
    std::vector<std::vector<int>> out;
    for (int w = 0; w < waves; ++w)
        out.emplace_back(zones.begin() + count * w / waves,
                         zones.begin() + count * (w + 1) / waves);
    return out;
}

class Drafter {
public:
    Drafter(const Session& session, const std::vector<Helper>& helpers, const DraftOptions& options)
        : session_(session)
        , helpers_(helpers)
        , options_(options) {}

    /// Appends one quilt's tasks, the first of them after `first`; returns the last.
    int quilt(int job, const QuiltPlan& plan, int first) {
        job_ = job;
        plan_ = &plan;
        dots_ = basting().with == Basting::With::dots;
        frontier_.clear();
        if (first >= 0)
            frontier_ = {first};
        workable_ = workableZones(helpers_, plan, dots_, this->job().unit, out_.findings);
        countLifters();
        for (std::size_t k = 0; k < plan.passes.size(); ++k)
            pass(plan.passes[k], k == 0);
        if (turned() && !plan.passes.empty())
            fromTheBack();
        const int last = plan.passes.empty() ? 1 : plan.passes.back().number;
        return step(TaskKind::handOver, last, {.byHand = kHandOver}, 1, {.afoot = true});
    }

    Drafts take() { return std::move(out_); }

private:
    const Job& job() const { return session_.jobs[static_cast<std::size_t>(job_)]; }
    const Basting& basting() const { return job().basting; }
    const Batting& batting() const { return job().batting; }

    int count(const Needs& needs) const {
        return static_cast<int>(
            std::ranges::count_if(helpers_, [&](const Helper& h) { return may(h, needs); }));
    }

    int add(TaskDraft draft) {
        draft.job = job_;
        out_.tasks.push_back(std::move(draft));
        return static_cast<int>(out_.tasks.size()) - 1;
    }

    /// A task that everything before it leads to and everything after it waits for.
    int step(TaskKind kind, int passNumber, Effort effort, int team, Needs needs, int wave = 0) {
        // Where too few walk, seated people help out; where too few lift, those who do must do.
        if (needs.lifts)
            team = std::max(1, std::min(team, count(needs)));
        else
            team = std::min(team, static_cast<int>(helpers_.size()));
        if (count(needs) < team)
            needs.afoot = needs.lifts = false;
        const int id = add({.kind = kind,
                            .pass = passNumber,
                            .wave = wave,
                            .effort = effort,
                            .team = team,
                            .needs = needs,
                            .after = frontier_});
        frontier_ = {id};
        return id;
    }

    void stop(std::string field, Sentence text, Sentence cure) {
        out_.findings.push_back(
            {Finding::Level::stop, std::move(field), std::move(text), std::move(cure)});
    }

    void zoneTasks(TaskKind kind, const std::vector<int>& zones, int passNumber, int wave) {
        std::vector<int> done;
        for (const int z : zones)
            std::ranges::copy(zoneTask(kind, z, passNumber, wave, frontier_),
                              std::back_inserter(done));
        if (!done.empty())
            frontier_ = done;
    }

    /// The zone's task, or the two who share it; none where it has no work or nobody can do it.
    std::vector<int> zoneTask(TaskKind kind, int z, int passNumber, int wave,
                              const std::vector<int>& after) {
        const Zone& zone = plan_->zones[static_cast<std::size_t>(z)];
        if (!workable_[static_cast<std::size_t>(z)] || zone.points.empty())
            return {};
        const bool closing = kind == TaskKind::closePins, pressing = kind == TaskKind::press;
        if (pressing && !mayPress(zone, passNumber))
            return {};
        TaskDraft draft{.kind = kind,
                        .pass = passNumber,
                        .wave = wave,
                        .zone = z,
                        .effort = zoneWork(kind, pointCount(zone, {})),
                        .team = 1,
                        .needs = {.irons = pressing, .closes = closing, .reach = true},
                        .after = after};
        const auto shared = options_.shares.find({job_, z, kind});
        if (shared == options_.shares.end())
            return {add(std::move(draft))};
        const Share one = shared->second;
        const Share other{opposite(one.side), pointCount(zone, {}) - one.points};
        const int first = static_cast<int>(out_.tasks.size());
        for (const Share& share : {one, other}) {
            TaskDraft part = draft;
            part.share = share;
            part.apart = share == one ? first + 1 : first;
            part.effort = zoneWork(kind, share.points);
            add(std::move(part));
        }
        return {first, first + 1};
    }

    bool mayPress(const Zone& zone, int passNumber) {
        if (session_.setting.room.irons < 1) {
            once("/room/irons", core::says("Dots have to be pressed, and there is no iron."),
                 core::says("Bring one iron."));
            return false;
        }
        if (count({.irons = true}) == 0) {
            once("/helpers", core::says("Dots have to be pressed, and nobody may iron."),
                 core::says("Let one helper iron."));
            return false;
        }
        for (const Pass& p : plan_->passes)
            if (p.number == passNumber && anyReach(helpers_, *plan_, p, zone, {.irons = true}))
                return true;
        once("/helpers",
             core::says("%1, pass %2: nobody who may iron reaches zone %3.", plan_->name,
                        passNumber, zone.id),
             core::says("Let somebody who reaches it iron."));
        return false;
    }

    void once(std::string field, Sentence text, Sentence cure) {
        for (const Finding& f : out_.findings)
            if (f.text == text)
                return;
        stop(std::move(field), std::move(text), std::move(cure));
    }

    void pass(const Pass& p, bool first) {
        if (first) {
            step(TaskKind::layBacking, p.number, layLayer(p), 2, {.afoot = true});
            step(TaskKind::layBatting, p.number, layLayer(p), 2, {.afoot = true});
            step(TaskKind::layTop, p.number, layLayer(p), 2, {.afoot = true});
        } else {
            shiftInto(p);
        }
        if (clampsOf(p) > 0)
            step(TaskKind::reclamp, p.number, reclamp(p), 1, {.afoot = true});
        if (dots_)
            dotPass(p);
        else
            pinPass(p);
        step(TaskKind::checkUnderside, p.number, {.byHand = kUnderside}, 1, {.afoot = true});
    }

    /// Who lifts, for the shift that asks most of them.
    void countLifters() {
        const int lifters = count({.lifts = true});
        const Pass* most = nullptr;
        for (const Pass& p : plan_->passes)
            if (p.number > 1 && (most == nullptr || p.liftPeople > most->liftPeople))
                most = &p;
        if (lifters == 0 && (most != nullptr || turned()))
            once("/helpers", core::says("The quilt has to be moved, and nobody lifts."),
                 core::says("Let one helper who stands lift."));
        else if (most != nullptr && lifters < most->liftPeople)
            out_.findings.push_back(
                {Finding::Level::warn, "/helpers",
                 lifters == 1
                     ? core::says("%1, shift into pass %2: %3 kg wants %4 people who lift, and "
                                  "there is 1.",
                                  plan_->name, most->number, std::lround(most->liftKilograms),
                                  most->liftPeople)
                     : core::says("%1, shift into pass %2: %3 kg wants %4 people who lift, and "
                                  "there are %5.",
                                  plan_->name, most->number, std::lround(most->liftKilograms),
                                  most->liftPeople, lifters),
                 core::says("Ask for more hands at the shifts, or slide the quilt in short "
                            "steps.")});
    }

    bool turned() const { return dots_ && batting().thickness > kThickBatting; }

    void shiftInto(const Pass& p) {
        step(TaskKind::shift, p.number, shift(p), std::max(1, p.liftPeople),
             {.lifts = true, .afoot = true});
    }

    void pinPass(const Pass& p) {
        const auto waves = wavesOf(*plan_, p, options_.zonesInWave);
        const double area = areaSquareInches(p.fresh);
        const std::vector<int> laid = frontier_;
        std::vector<int> closes;
        int smoothed = -1;
        for (std::size_t w = 0; w < waves.size(); ++w) {
            const int wave = waves.size() > 1 ? static_cast<int>(w) + 1 : 0;
            frontier_ = laid;
            zoneTasks(TaskKind::placeOpen, waves[w], p.number, wave);
            // Pinning works outward: a later wave is smoothed after an earlier one.
            if (smoothed >= 0)
                frontier_.push_back(smoothed);
            double part = area;
            if (waves.size() > 1) {
                part = 0;
                for (const int z : waves[w])
                    part += areaSquareInches(plan_->zones[static_cast<std::size_t>(z)].area);
            }
            smoothed = step(TaskKind::smooth, p.number, smooth(part), 2, {.afoot = true}, wave);
            zoneTasks(TaskKind::closePins, waves[w], p.number, wave);
            closes.insert(closes.end(), frontier_.begin(), frontier_.end());
        }
        frontier_ = closes;
    }

    void dotPass(const Pass& p) {
        const auto zones = wavesOf(*plan_, p, 1'000'000).front();
        step(TaskKind::foldBack, p.number, fold(p), 2, {.afoot = true});
        zoneTasks(TaskKind::dotLower, zones, p.number, 0);
        step(TaskKind::foldForward, p.number, fold(p), 2, {.afoot = true});
        dotUpperAndPress(zones, p.number);
        cool(p.number);
    }

    void dotUpperAndPress(const std::vector<int>& zones, int passNumber) {
        std::vector<int> ends;
        for (const int z : zones) {
            const auto upper = zoneTask(TaskKind::dotUpper, z, passNumber, 0, frontier_);
            if (upper.empty())
                continue;
            const auto pressed = zoneTask(TaskKind::press, z, passNumber, 0, upper);
            std::ranges::copy(pressed.empty() ? upper : pressed, std::back_inserter(ends));
        }
        if (!ends.empty())
            frontier_ = ends;
    }

    void cool(int passNumber, int wave = 0) {
        const int id = add({.kind = TaskKind::cool,
                            .pass = passNumber,
                            .wave = wave,
                            .effort = {.fixed = kCool},
                            .team = 0,
                            .after = frontier_});
        frontier_ = {id};
    }

    /// Thick batting: turned once by everybody who lifts, every zone pressed again from the back,
    /// pass by pass in reverse as the quilt slides home. The slides are in the time of turning.
    void fromTheBack() {
        const int last = plan_->passes.back().number;
        Effort effort{.byHand = kTurnOver};
        for (std::size_t k = 1; k < plan_->passes.size(); ++k)
            effort.byHand += shift(plan_->passes[k]).byHand;
        step(TaskKind::turnOver, last, effort, std::max(1, count({.lifts = true})),
             {.lifts = true, .afoot = true});
        for (auto p = plan_->passes.rbegin(); p != plan_->passes.rend(); ++p)
            zoneTasks(TaskKind::press, wavesOf(*plan_, *p, 1'000'000).front(), p->number,
                      kFromBack);
        cool(last, kFromBack);
    }

    const Session& session_;
    const std::vector<Helper>& helpers_;
    const DraftOptions& options_;
    Drafts out_;
    int job_ = 0;
    const QuiltPlan* plan_ = nullptr;
    bool dots_ = false;
    std::vector<bool> workable_;
    std::vector<int> frontier_; ///< what the next task waits for
};

} // namespace

bool mayBeShared(TaskKind kind) {
    return kind == TaskKind::placeOpen || kind == TaskKind::closePins ||
           kind == TaskKind::dotLower || kind == TaskKind::dotUpper;
}

Drafts draftTasks(const Session& session, const std::vector<Helper>& helpers,
                  const std::vector<QuiltPlan>& quilts, const DraftOptions& options) {
    Drafter drafter{session, helpers, options};
    std::map<int, int> lastOn; // surface number -> the task that frees it
    for (std::size_t q = 0; q < quilts.size() && q < session.jobs.size(); ++q) {
        const auto before = lastOn.find(quilts[q].surface.number);
        const int first = before == lastOn.end() ? -1 : before->second;
        lastOn[quilts[q].surface.number] = drafter.quilt(static_cast<int>(q), quilts[q], first);
    }
    return drafter.take();
}

} // namespace bastewright::crew
