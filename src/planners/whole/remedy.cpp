#include "planners/whole/remedy.h"

#include "job/spacings.h"
#include "planners/whole/pins.h"
#include "ways/way.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace bastewright {
namespace {

constexpr std::chrono::minutes kLastMinute{24 * 60 - 1};

std::string freeName(const std::vector<Helper>& helpers) {
    for (std::size_t n = helpers.size() + 1;; ++n) {
        std::string name = "Helper " + std::to_string(n);
        if (std::ranges::find(helpers, name, &Helper::name) == helpers.end())
            return name;
    }
}

// Changes that cure findings and help otherwise, too.

Remedy pulledOffTheWalls() {
    return {core::says("Pull the tables away from the walls"),
            [](Session& s) { s.setting.room.walls.clear(); }};
}

Remedy oneMoreIron() {
    return {core::says("Bring one more iron"), [](Session& s) { ++s.setting.room.irons; }};
}

/// Of one quilt, or of all.
Remedy anyStart(std::optional<std::size_t> quilt) {
    return {core::says("Take the quickest start"), [quilt](Session& s) {
                for (std::size_t i = 0; i < s.jobs.size(); ++i)
                    if (!quilt || i == *quilt)
                        s.jobs[i].basting.start = Basting::Start::best;
            }};
}

Remedy spacedApart(Length spacing, Unit unit, std::function<void(Session&)> edit) {
    return {core::says("Space them %1 apart", core::length(spacing, unit)), std::move(edit)};
}

/// What cures one finding.
class Curing {
public:
    Curing(const Finding& finding, const Session& session, const Plan& plan)
        : finding_{finding}
        , session_{session}
        , plan_{plan}
        , quilt_{std::min(static_cast<std::size_t>(std::max(finding.quilt, 0)),
                          session.jobs.size() - 1)}
        , job_{session.jobs[quilt_]} {}

    std::vector<Remedy> take() {
        using enum Finding::Kind;
        switch (finding_.kind) {
        case pinsShort:
            pins();
            break;
        case noClip:
            clips();
            break;
        case otherTables:
            offer({core::says("Let the tables stand as is quickest"),
                   [](Session& s) { s.setting.room.together.reset(); }});
            break;
        case noIron:
            offer(oneMoreIron());
            break;
        case noSurface:
            offer(pulledOffTheWalls());
            offer({core::says("Work on the floor"), [](Session& s) {
                       s.setting.room.tables.clear();
                       s.setting.room.together.reset();
                   }});
            break;
        case otherStart:
            offer(anyStart(quilt_));
            break;
        case otherLie:
            ofJob(core::says("Let it lie as is quickest"),
                  [](Job& j) { j.basting.along = Basting::Along::either; });
            break;
        case notVentilated:
            offer({core::says("Go outdoors, or open windows and doors"),
                   [](Session& s) { s.setting.room.ventilated = true; }});
            [[fallthrough]];
        case battingMelts:
        case troubleBreathing:
        case sprayAndIrons:
            baste([](const Way&) { return true; });
            break;
        case spacingTooWide:
            offer(spacedApart(*job_.quilting.gapLimit, job_.unit, [i = quilt_](Session& s) {
                s.jobs[i].basting.spacing = *s.jobs[i].quilting.gapLimit;
            }));
            break;
        case pinsNearSeams:
            baste([](const Way& way) { return !way.point.clearOfSeams; });
            break;
        case battingShort:
        case unknownPack:
            ofJob(core::says("Buy new batting"), [](Job& j) {
                j.batting.pack.reset();
                j.batting.roll.reset();
                j.batting.rolls = Batting{}.rolls;
                j.batting.pieces.clear();
            });
            break;
        case fabricShort:
            ofJob(core::says("Buy more fabric"), [](Job& j) {
                if (j.backing.fabrics.empty())
                    j.backing.fabrics.emplace_back();
                j.backing.fabrics.front().buyable = true;
            });
            break;
        case handedElsewhere:
            ofJob(core::says("Anyone may do it"), [](Job& j) { j.handed.clear(); });
            break;
        case hoursShort:
            hours();
            break;
        default:
            break;
        }
        return std::move(out_);
    }

private:
    void offer(Remedy remedy) {
        if (remedy.applied(session_) != session_)
            out_.push_back(std::move(remedy));
    }
    template <class Edit>
    void ofJob(Sentence words, Edit edit) {
        offer({std::move(words), [edit, i = quilt_](Session& s) { edit(s.jobs[i]); }});
    }

    /// In any other such way that nothing speaks against.
    void baste(bool (*so)(const Way&)) {
        for (const Way& way : allWays()) {
            if (&way == &wayOf(job_) || !so(way))
                continue;
            const auto edit = [with = way.with](Job& j) {
                j.basting = bastedWith(j.basting, with);
            };
            Session then = session_;
            edit(then.jobs[quilt_]);
            if (way.against(then.jobs[quilt_], then).empty())
                ofJob(way.words.choose, edit);
        }
    }

    void pins() {
        double need = 0;
        for (const Supply& s : plan_.supplies)
            if (s.kind == Supply::Kind::pins)
                need += s.need;
        const int all = static_cast<int>(std::ceil(need)), have = session_.setting.stash.pins;
        if (all > have)
            offer({core::says("Bring %1 more pins", all - have),
                   [all](Session& s) { s.setting.stash.pins = all; }});
        const std::int64_t taken = pinsTaken(session_, plan_.quilts);
        if (have <= 0 || taken <= have)
            return;
        standIns();
        const Length wider = spacingFor(job_.basting.spacing, taken, have);
        const bool allowed = !job_.quilting.gapLimit || wider <= *job_.quilting.gapLimit;
        if (allowed && wider <= Length::inches(12))
            offer(spacedApart(wider, job_.unit, [wider](Session& s) {
                for (Job& each : s.jobs)
                    if (wayOf(each).fromBox)
                        each.basting.spacing = std::max(each.basting.spacing, wider);
            }));
    }

    /// Lets dots stand in, with an iron where there is none, in all quilts that may have them;
    /// where the pins do for the others.
    void standIns() {
        const auto edit = [](Session& s) {
            for (Job& j : s.jobs) {
                const Basting before = j.basting;
                const int irons = s.setting.room.irons;
                if (const auto& instead = wayOf(j).instead) {
                    j.basting.whereShort = *instead;
                    s.setting.room.irons = std::max(irons, wayOf(*instead).irons ? 1 : 0);
                }
                if (standInOf(j, s) == nullptr) {
                    j.basting = before;
                    s.setting.room.irons = irons;
                }
            }
        };
        Session then = session_;
        edit(then);
        std::int64_t others = 0;
        for (std::size_t q = 0; q < plan_.quilts.size(); ++q)
            if (wayOf(then.jobs[q]).fromBox && standInOf(then.jobs[q], then) == nullptr)
                for (const Zone& z : plan_.quilts[q].zones)
                    others += std::ssize(z.points);
        if (others > session_.setting.stash.pins)
            return;
        offer({then.setting.room.irons > session_.setting.room.irons
                   ? core::says("Use fuse dots where the pins run short, with an iron")
                   : core::says("Use fuse dots where the pins run short"),
               edit});
    }

    void clips() {
        if (finding_.figures.size() != 2)
            return;
        const int count = finding_.figures[0];
        const Length holds = Length::inch64ths(finding_.figures[1]);
        offer({core::says("Bring %1 clips that hold %2", count, core::length(holds, job_.unit)),
               [count, holds](Session& s) {
                   auto& all = s.setting.stash.clips;
                   const auto same = std::ranges::find(all, holds, &ClipStock::holds);
                   if (same == all.end())
                       all.push_back({holds, count});
                   else
                       same->count += count;
               }});
    }

    /// Who is planned beyond their hours stays until their last task.
    void hours() {
        std::map<std::string, Seconds> last;
        for (const Task& t : plan_.tasks)
            for (const auto& who : t.people)
                last[who] = std::max(last[who], t.end);
        offer({core::says("Ask them to stay as long as it takes"), [last](Session& s) {
                   for (Helper& h : s.setting.helpers) {
                       const auto work = last.find(h.name);
                       if (!h.until || work == last.end())
                           continue;
                       const auto end = s.setting.start.sinceMidnight +
                                        std::chrono::ceil<std::chrono::minutes>(work->second);
                       if (end > h.until->sinceMidnight)
                           h.until = end < std::chrono::minutes{24 * 60}
                                         ? std::optional{ClockTime{end}}
                                         : std::nullopt;
                   }
               }});
    }

    const Finding& finding_;
    const Session& session_;
    const Plan& plan_;
    std::size_t quilt_;
    const Job& job_;
    std::vector<Remedy> out_;
};

} // namespace

std::optional<Remedy> remedyOf(Help::Kind kind, const Session& session) {
    const Setting& setting = session.setting;
    const auto anyJob = [&](auto is) { return std::ranges::any_of(session.jobs, is); };
    const auto anybody = [&](auto is) { return std::ranges::any_of(setting.helpers, is); };
    switch (kind) {
    case Help::Kind::helper:
        return Remedy{core::says("Ask one more helper"), [](Session& s) {
                          const std::string name = freeName(s.setting.helpers);
                          s.setting.helpers.emplace_back().name = name;
                      }};
    case Help::Kind::table: {
        if (setting.room.tables.empty())
            return {};
        const Table& t = setting.room.tables.front();
        return Remedy{core::says("Add a table of %1",
                                 core::size(t.width, t.length, session.jobs.front().unit)),
                      [](Session& s) { ++s.setting.room.tables.front().count; }};
    }
    case Help::Kind::offTheWall:
        if (setting.room.tables.empty() || setting.room.walls.empty())
            return {};
        return pulledOffTheWalls();
    case Help::Kind::iron:
        if (!anyJob([&](const Job& j) {
                const Way* instead = standInOf(j, session);
                return wayOf(j).irons || (instead != nullptr && instead->irons);
            }))
            return {};
        return oneMoreIron();
    case Help::Kind::hourLonger:
        if (!anybody([](const Helper& h) { return h.until.has_value(); }))
            return {};
        return Remedy{core::says("Ask everybody to stay an hour longer"), [](Session& s) {
                          for (Helper& h : s.setting.helpers)
                              if (h.until)
                                  h.until->sinceMidnight =
                                      std::min(h.until->sinceMidnight + std::chrono::minutes{60},
                                               kLastMinute);
                      }};
    case Help::Kind::anyStart:
        if (!anyJob([](const Job& j) { return j.basting.start != Basting::Start::best; }))
            return {};
        return anyStart({});
    case Help::Kind::wholeTime:
        if (!anybody([](const Helper& h) { return h.until || h.from; }))
            return {};
        return Remedy{core::says("Ask everybody to be there from start to end"), [](Session& s) {
                          for (Helper& h : s.setting.helpers)
                              h.from = h.until = {};
                      }};
    case Help::Kind::fewestPoints:
        return Remedy{{}, [](Session& s) {
                          for (Job& j : s.jobs)
                              j.basting.layout = Basting::Layout::fewest;
                      }};
    }
    return {};
}

std::vector<Remedy> remediesFor(const Finding& finding, const Session& session, const Plan& plan) {
    return Curing{finding, session, plan}.take();
}

} // namespace bastewright
