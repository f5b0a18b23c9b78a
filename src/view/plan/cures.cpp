#include "view/plan/cures.h"

#include "job/job_json.h"
#include "planners/bring/bring.h"
#include "planners/rolls/rolls.h"
#include "planners/whole/pins.h"
#include "view/base/words.h"

#include <QCoreApplication>

#include <cmath>
#include <map>

using namespace bastewright;

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Curing", text);
}

/// The quilt a finding's field belongs to, and the field within it.
struct About {
    std::size_t quilt = 0;
    std::string_view field;
};

About aboutOf(const Finding& finding, std::size_t quilts) {
    constexpr std::string_view kJobs = "/jobs/";
    std::string_view field = finding.field;
    if (!field.starts_with(kJobs))
        return {0, field};
    const auto end = field.find('/', kJobs.size());
    std::size_t quilt = 0;
    for (const char c : field.substr(kJobs.size(), end - kJobs.size()))
        quilt = quilt * 10 + std::size_t(c - '0');
    return {std::min(quilt, quilts - 1),
            end == std::string_view::npos ? std::string_view{} : field.substr(end)};
}

class Curing {
public:
    Curing(const Finding& finding, const Planned& planned)
        : finding_{finding}
        , planned_{planned}
        , about_{aboutOf(finding, planned.session.jobs.size())}
        , job_{planned.session.jobs[about_.quilt]} {}

    std::vector<Cure> take() {
        const auto field = about_.field;
        if (field == "/stash/pins")
            pins();
        else if (field == "/stash/clips")
            clips();
        else if (field.starts_with("/room"))
            room();
        else if (field.starts_with("/basting") || field == "/batting/meltable")
            basting();
        else if (field.starts_with("/batting") && stops())
            batting();
        else if (field == "/backing/fabrics" && stops())
            cloth();
        else if (field == "/handed")
            offer(tr("Let anybody work it"), [&](Session& s) { job(s).handed.clear(); });
        else if (field == "/helpers" && stops())
            hours();
        return std::move(out_);
    }

private:
    bool stops() const { return finding_.level == Finding::Level::stop; }
    Job& job(Session& s) const { return s.jobs[about_.quilt]; }

    template <class Edit>
    void offer(const QString& label, Edit edit) {
        Cure cure{label, planned_.session};
        edit(cure.next);
        if (cure.next != planned_.session)
            out_.push_back(std::move(cure));
    }

    void pins() {
        double need = 0;
        for (const Supply& s : planned_.plan.supplies)
            if (s.item == "pins")
                need += s.need;
        const int all = int(std::ceil(need)), have = planned_.session.setting.stash.pins;
        if (all > have)
            offer(tr("Bring %1 more pins").arg(all - have),
                  [&](Session& s) { s.setting.stash.pins = all; });
        const std::int64_t taken = pinsTaken(planned_.session, planned_.plan.quilts);
        if (have <= 0 || taken <= have)
            return;
        const Length wider = spacingFor(job_.basting.spacing, taken, have);
        const bool allowed = !job_.quilting.gapLimit || wider <= *job_.quilting.gapLimit;
        if (allowed && wider <= Length::inches(12))
            offer(tr("Space them %1 apart").arg(words::length(wider, job_.unit)), [&](Session& s) {
                for (Job& each : s.jobs)
                    if (each.basting.with == Basting::With::pins)
                        each.basting.spacing = std::max(each.basting.spacing, wider);
            });
    }

    /// A size of clip that holds the thickest folded part, as many as are on at any time.
    void clips() {
        Length most;
        for (const QuiltPlan& q : planned_.plan.quilts)
            for (const Pass& p : q.passes)
                for (const Roll& r : p.rolls)
                    if (r.folded)
                        most = std::max(most, r.diameter);
        if (most <= Length{})
            return;
        const Length holds = Length::inches(std::int64_t(std::ceil(most.in())));
        const int count = clipsTaken(holds);
        offer(tr("Bring %1 clips that hold %2").arg(count).arg(words::length(holds, job_.unit)),
              [&](Session& s) {
                  auto& all = s.setting.stash.clips;
                  const auto same = std::ranges::find(all, holds, &ClipStock::holds);
                  if (same == all.end())
                      all.push_back({holds, count});
                  else
                      same->count += count;
              });
    }

    /// How many clips of this size would be on at one time if there were enough of them.
    int clipsTaken(Length holds) const {
        Stash enough = planned_.session.setting.stash;
        enough.clips.push_back({holds, limits::kOnHand});
        std::vector<QuiltPlan> quilts = planned_.plan.quilts;
        const auto clipAll = [&enough](std::vector<Roll>& rolls) {
            for (Roll& roll : rolls) {
                roll = clipped(roll, enough);
                roll.folded = roll.folded && roll.clipHolds == Length{};
            }
        };
        for (QuiltPlan& quilt : quilts) {
            for (Pass& pass : quilt.passes)
                clipAll(pass.rolls);
            clipAll(quilt.machineRolls);
        }
        return int(clipsAtOnce(quilts)[holds]);
    }

    void room() {
        if (about_.field == "/room/together")
            offer(tr("Let the tables stand as is quickest"),
                  [](Session& s) { s.setting.room.together.reset(); });
        else if (about_.field == "/room/irons")
            offer(tr("Bring an iron"), [](Session& s) { ++s.setting.room.irons; });
        else if (about_.field == "/room/tables" && stops()) {
            offer(tr("Pull the tables away from the walls"),
                  [](Session& s) { s.setting.room.walls.clear(); });
            offer(tr("Work on the floor"), [](Session& s) {
                s.setting.room.tables.clear();
                s.setting.room.together.reset();
            });
        }
    }

    void basting() {
        const auto field = about_.field;
        if (field == "/basting/start")
            offer(tr("Take the quickest start"),
                  [&](Session& s) { job(s).basting.start = Basting::Start::best; });
        else if (field == "/basting/quilt_length_along")
            offer(tr("Let it lie as is quickest"),
                  [&](Session& s) { job(s).basting.along = Basting::Along::either; });
        else if (field == "/batting/meltable")
            offer(tr("Baste with pins"),
                  [&](Session& s) { job(s).basting.with = Basting::With::pins; });
        else if (field == "/basting/spacing" && job_.quilting.gapLimit &&
                 job_.basting.spacing > *job_.quilting.gapLimit)
            offer(tr("Space them %1 apart").arg(words::length(*job_.quilting.gapLimit, job_.unit)),
                  [&](Session& s) { job(s).basting.spacing = *job_.quilting.gapLimit; });
        else if (field == "/basting/clear" && !job_.batting.meltable)
            offer(tr("Use fuse dots, which may lie on seams"),
                  [&](Session& s) { job(s).basting.with = Basting::With::dots; });
    }

    void batting() {
        offer(tr("Buy new batting"), [&](Session& s) {
            job(s).batting.pack.reset();
            job(s).batting.roll.reset();
            job(s).batting.rolls = Batting{}.rolls;
            job(s).batting.pieces.clear();
        });
    }

    void cloth() {
        offer(tr("Buy more fabric"), [&](Session& s) {
            auto& fabrics = job(s).backing.fabrics;
            if (fabrics.empty())
                fabrics.emplace_back();
            fabrics.front().buyable = true;
        });
    }

    /// Who is planned beyond their hours stays until their last task.
    void hours() {
        std::map<std::string, Seconds> last;
        for (const Task& t : planned_.plan.tasks)
            for (const auto& who : t.people)
                last[who] = std::max(last[who], t.end);
        const ClockTime start = planned_.session.setting.start;
        offer(tr("Ask them to stay as long as it takes"), [&](Session& s) {
            for (Helper& h : s.setting.helpers) {
                if (!h.until || !last.contains(h.name))
                    continue;
                const auto end =
                    start.sinceMidnight + std::chrono::ceil<std::chrono::minutes>(last[h.name]);
                if (end > h.until->sinceMidnight)
                    h.until = end < std::chrono::minutes{24 * 60} ? std::optional{ClockTime{end}}
                                                                  : std::nullopt;
            }
        });
    }

    const Finding& finding_;
    const Planned& planned_;
    About about_;
    const Job& job_;
    std::vector<Cure> out_;
};

} // namespace

std::vector<Cure> curesOf(const Finding& finding, const Planned& planned) {
    return Curing{finding, planned}.take();
}
