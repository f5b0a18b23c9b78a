#include "checker/checker.h"
#include "plan/plan_json.h"
#include "planners/whole/whole.h"
#include "property/checked_plans/random_session.h"
#include "property/live/afternoon.h"
#include "session/checked_plan.h"
#include "session/private/proposing.h"
#include "session/private/rest_plan.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdlib>
#include <functional>
#include <iostream>
#include <iterator>
#include <map>

/// Whatever happens in the middle of an afternoon, the plan that is offered for what is left passes
/// the checker; and a plan for the rest that was spoiled in one respect does not. Sessions and the
/// first seed are set by BASTEWRIGHT_JOBS and BASTEWRIGHT_SEED.
namespace bastewright::testing {
namespace {

using Kind = Change::Kind;

std::uint64_t number(const char* variable, std::uint64_t otherwise) {
    const char* text = std::getenv(variable);
    return text == nullptr ? otherwise : std::strtoull(text, nullptr, 10);
}

std::string sentences(const Findings& findings) {
    std::string out;
    for (const Finding& f : findings)
        out += "  " + f.subject + ": " + f.text.english() + "\n";
    return out;
}

constexpr std::uint64_t kParts = 2;

/// So often, of each way to spoil a plan, it is asked where the faults are said to be: writing and
/// reading the plan takes longer than judging it.
constexpr int kPlacesAsked = 5;

/// A plan for the rest, changed in one respect that somebody would stumble over.
struct Spoiled {
    std::string how;
    /// False where there is nothing of that kind to be spoiled.
    std::function<bool(Plan&, const LiveState&, Seconds now)> spoil;
    std::string rule{}; ///< that must notice; any where it is empty
};

bool isOpen(const Task& t, const LiveState& state) {
    return !state.doneTasks.contains(t.id);
}

Task* openTask(Plan& plan, const LiveState& state, auto which) {
    const auto at = std::ranges::find_if(
        plan.tasks, [&](const Task& t) { return isOpen(t, state) && which(t); });
    return at == plan.tasks.end() ? nullptr : &*at;
}

/// The zone that stands so, of whichever quilt.
Zone* zoneThat(Plan& plan, auto which) {
    for (std::size_t q = 0; q < plan.quilts.size(); ++q)
        for (Zone& z : plan.quilts[q].zones)
            if (!z.points.empty() && which(std::pair{static_cast<int>(q), z.id}))
                return &z;
    return nullptr;
}

bool isBegun(const LiveState& state, const std::pair<int, std::string>& zone) {
    const auto at = state.zones.find(zone);
    return at != state.zones.end() && at->second.state != ZoneState::waiting;
}

/// True where every task of what is left must be there.
bool asksForTasks(const Plan& p) {
    return !anyStop(p.findings) && std::ranges::find(p.findings, Finding::Kind::pinsShort,
                                                     &Finding::kind) == p.findings.end();
}

/// True where some zone of a task's pass is not left out.
bool works(const Plan& p, const LiveState& s, const Task& t) {
    return std::ranges::any_of(p.quilts[static_cast<std::size_t>(t.job)].zones, [&](const Zone& z) {
        return z.pass == t.pass && !z.points.empty() && !s.setAside.contains({t.job, z.id});
    });
}

/// Dots need no smoothing; with pins and thread every pass is smoothed.
bool isSmoothed(const Plan& p, const Task& t) {
    return std::ranges::any_of(p.tasks, [&](const Task& o) {
        return o.job == t.job && (o.kind == TaskKind::closePins || o.kind == TaskKind::stitch);
    });
}

/// Every kind of step of a pass, and of work at a zone, forgotten.
std::vector<Spoiled> forgetting() {
    using enum TaskKind;
    std::vector<Spoiled> out;
    for (const TaskKind kind : {setUp, layBacking, clamp, layBatting, layTop, reclamp, smooth,
                                checkUnderside, shift, foldBack, foldForward, cool, handOver,
                                placeOpen, closePins, dotLower, dotUpper, press, stitch})
        out.push_back({"forgotten: " + std::string{name(kind)},
                       [kind](Plan& p, const LiveState& s, Seconds) {
                           if (!asksForTasks(p))
                               return false;
                           const Task* t = openTask(p, s, [&](const Task& o) {
                               return o.kind == kind && works(p, s, o) &&
                                      !s.setAside.contains({o.job, o.zone}) &&
                                      (kind != smooth || isSmoothed(p, o));
                           });
                           if (t == nullptr)
                               return false;
                           const Task gone = *t;
                           // With all its parts, and the second time.
                           std::erase_if(p.tasks, [&](const Task& o) {
                               return o.kind == kind && o.job == gone.job && o.pass == gone.pass &&
                                      o.zone == gone.zone;
                           });
                           return true;
                       },
                       "rest.tasks"});
    return out;
}

std::vector<Spoiled> allWaysToSpoil() {
    std::vector<Spoiled> all{
        {"a task begins before now",
         [](Plan& p, const LiveState& s, Seconds now) {
             Task* t = openTask(p, s, [](const Task&) { return true; });
             if (t == nullptr || now < Seconds{1})
                 return false;
             t->start = now - Seconds{1};
             return true;
         }},
        {"somebody works who is not there",
         [](Plan& p, const LiveState& s, Seconds) {
             Task* t = openTask(p, s, [](const Task& o) { return !o.people.empty(); });
             if (t == nullptr)
                 return false;
             t->people.front() = "Nobody";
             return true;
         }},
        {"what is done is forgotten",
         [](Plan& p, const LiveState& s, Seconds) {
             return std::erase_if(p.tasks, [&](const Task& t) { return !isOpen(t, s); }) > 0;
         }},
        {"what is done was done by somebody else",
         [](Plan& p, const LiveState& s, Seconds) {
             const auto t = std::ranges::find_if(
                 p.tasks, [&](const Task& o) { return !isOpen(o, s) && !o.people.empty(); });
             if (t == p.tasks.end())
                 return false;
             t->people.clear();
             return true;
         }},
        {"a begun zone has a pin elsewhere",
         [](Plan& p, const LiveState& s, Seconds) {
             Zone* z = zoneThat(p, [&](const auto& key) { return isBegun(s, key); });
             if (z == nullptr)
                 return false;
             z->points.front().at.x += Length::inch64ths(1);
             return true;
         }},
        {"a begun zone is gone",
         [](Plan& p, const LiveState& s, Seconds) {
             Zone* z = zoneThat(p, [&](const auto& key) { return isBegun(s, key); });
             if (z == nullptr)
                 return false;
             z->id += "x";
             return true;
         }},
        {"a zone that waits has a pin less",
         [](Plan& p, const LiveState& s, Seconds) {
             Zone* z = zoneThat(
                 p, [&](const auto& key) { return !isBegun(s, key) && !s.setAside.contains(key); });
             if (z == nullptr)
                 return false;
             z->points.erase(z->points.begin());
             return true;
         }},
        {"a zone that waits is basted otherwise",
         [](Plan& p, const LiveState& s, Seconds) {
             Zone* z = zoneThat(
                 p, [&](const auto& key) { return !isBegun(s, key) && !s.setAside.contains(key); });
             if (z == nullptr || !asksForTasks(p))
                 return false;
             z->with = z->with ? std::nullopt : std::optional{Basting::With::dots};
             return true;
         }},
        {"a pass lies an inch farther",
         [](Plan& p, const LiveState&, Seconds) {
             for (QuiltPlan& q : p.quilts)
                 if (!q.passes.empty()) {
                     Pass& last = q.passes.back();
                     last.table.x0 += Length::inches(1);
                     last.table.x1 += Length::inches(1);
                     return true;
                 }
             return false;
         }},
        {"the finish is a minute off",
         [](Plan& p, const LiveState&, Seconds) {
             p.finish += Seconds{60};
             return true;
         }},
        {"somebody does two things at once",
         [](Plan& p, const LiveState& s, Seconds) {
             Task* one = openTask(p, s, [](const Task& t) { return t.people.size() == 1; });
             if (one == nullptr)
                 return false;
             Task* two = openTask(p, s, [&](const Task& t) {
                 return &t != one && t.start >= one->end && t.people == one->people;
             });
             if (two == nullptr)
                 return false;
             two->end -= two->start - one->start;
             two->start = one->start;
             return true;
         }},
        {"a task waits for nothing that is there",
         [](Plan& p, const LiveState& s, Seconds) {
             Task* t = openTask(p, s, [](const Task&) { return true; });
             if (t == nullptr)
                 return false;
             t->after.push_back("nothing");
             return true;
         }},
        {"a zone's work is too short",
         [](Plan& p, const LiveState& s, Seconds) {
             Task* t = nullptr; // the last: it cannot be in hand
             for (Task& o : p.tasks)
                 if (isOpen(o, s) && !o.zone.empty() && o.kind != TaskKind::press &&
                     o.end - o.start > Seconds{20})
                     t = &o;
             if (t == nullptr || t->after.empty() || s.doneTasks.contains(t->after.front()))
                 return false;
             t->end = t->start + (t->end - t->start) / 2;
             return true;
         }},
        {"pins that are missing are not said to be",
         [](Plan& p, const LiveState& s, Seconds) {
             return !s.doneTasks.empty() && std::erase_if(p.findings, [](const Finding& f) {
                                                return f.kind == Finding::Kind::pinsShort;
                                            }) > 0;
         }},
        {"a break that is proposed lasts a minute",
         [](Plan& p, const LiveState&, Seconds now) {
             const auto at = std::ranges::find_if(
                 p.breaks, [&](const PlannedBreak& b) { return b.proposed && b.start > now; });
             if (at == p.breaks.end())
                 return false;
             at->end = at->start + Seconds{60};
             return true;
         },
         "crew.pauses"},
        {"that nobody lifts is said of those who do",
         [](Plan& p, const LiveState& s, Seconds) {
             if (anyStop(p.findings) || !openTask(p, s, [](const Task&) { return true; }))
                 return false;
             p.findings.push_back({Finding::Kind::nobodyLifts,
                                   Finding::Level::stop,
                                   "/helpers",
                                   core::says("Nobody lifts."),
                                   {}});
             return true;
         },
         "rest.said"},
        {"other fabric is bought",
         [](Plan& p, const LiveState&, Seconds) {
             if (p.supplies.empty())
                 return false;
             p.supplies.front().need += 1;
             return true;
         }},
    };
    std::ranges::move(forgetting(), std::back_inserter(all));
    return all;
}

const std::vector<Spoiled>& waysToSpoil() {
    static const std::vector<Spoiled> all = allWaysToSpoil();
    return all;
}

class LiveChanges : public ::testing::TestWithParam<std::uint64_t> {
protected:
    void play(std::uint64_t seed) {
        SCOPED_TRACE("BASTEWRIGHT_SEED=" + std::to_string(seed) + " BASTEWRIGHT_JOBS=1");
        const Session session = randomSession(seed);
        const Plan plan = planWhole(session, {.effort = 0});
        if (!isGood(plan) || !checkPlan(session, plan).empty())
            return;
        ++sessions_;
        Afternoon a{seed, session, plan};
        for (int k = 0; k < 6; ++k) {
            a.tick(a.upTo(k == 0 ? 8 : 40));
            const Change change = a.anyChange();
            const LiveSession& live = a.live();
            const Proposal p = a.proposed(change);
            const auto name = static_cast<int>(change.kind);
            if (!p.refused.empty()) {
                if (const auto why = p.refused.english();
                    why.starts_with(notOffered({}).english())) {
                    ++kept_;
                    std::cout << "seed " << seed << ", change " << name << ": " << why << "\n";
                } else {
                    ++refused_[name];
                }
                a.keepOldPlan(p);
                continue;
            }
            ++offered_[name];
            // What was proposed, judged once more as it will be taken: after the facts.
            const Plan before = live.plan();
            const Seconds now = a.now();
            a.keepOldPlan(p);
            const LiveState state = live.state();
            EXPECT_EQ(sentences(faultsOfRest(p.session, p.plan, before, state, now)), "");
            spoil(p, before, state, now);
            if (a.upTo(4) > 0)
                a.take({.facts = {}, .session = p.session, .plan = p.plan});
        }
        EXPECT_THAT(a.live().state().ignored, ::testing::IsEmpty());
    }

    void spoil(const Proposal& p, const Plan& before, const LiveState& state, Seconds now) {
        const LiveState seen = asSeenBy(p.plan, state);
        for (const Spoiled& way : waysToSpoil()) {
            Plan bad = p.plan;
            if (!way.spoil(bad, seen, now))
                continue;
            ++spoiled_[way.how];
            const Findings faults = faultsOfRest(p.session, bad, before, state, now);
            EXPECT_TRUE(std::ranges::any_of(
                faults,
                [&](const Finding& f) { return way.rule.empty() || f.subject == way.rule; }))
                << way.how << " at " << now.count() << " s\n"
                << sentences(faults);
            if (spoiled_[way.how] > kPlacesAsked)
                continue;
            // Only a part of the plan is looked at; its places are those of the whole.
            const auto file = nlohmann::json::parse(writePlan(bad));
            for (const Finding& f : faults) {
                const nlohmann::json::json_pointer place{f.field};
                EXPECT_TRUE(file.contains(place) || file.contains(place.parent_pointer()))
                    << f.field << ": " << f.text;
            }
        }
    }

    int sessions_ = 0;
    int kept_ = 0; ///< plans that were made, broke a rule and were kept back
    std::map<int, int> offered_, refused_;
    std::map<std::string, int> spoiled_;
};

TEST_P(LiveChanges, AreAnsweredByPlansThatPassAndSpoiledOnesDoNot) {
    const std::uint64_t jobs = number("BASTEWRIGHT_JOBS", 60);
    const std::uint64_t base = number("BASTEWRIGHT_SEED", 1);
    for (std::uint64_t seed = base + jobs * GetParam() / kParts;
         seed < base + jobs * (GetParam() + 1) / kParts; ++seed)
        play(seed);
    std::cout << sessions_ << " sessions, " << kept_ << " plans kept back\n";
    EXPECT_EQ(kept_, 0) << "what is kept back is of no use to anybody";
    for (int k = 0; k <= static_cast<int>(Kind::planAgain); ++k)
        std::cout << "  change " << k << ": " << offered_[k] << " offered, " << refused_[k]
                  << " refused\n";
    for (const auto& [how, times] : spoiled_)
        std::cout << "  spoiled " << times << " times: " << how << "\n";
    if (jobs >= 60) {
        EXPECT_GT(sessions_, 10);
        EXPECT_EQ(spoiled_.size(), waysToSpoil().size()) << "some way to spoil was never tried";
    }
}

INSTANTIATE_TEST_SUITE_P(Parts, LiveChanges, ::testing::Range(std::uint64_t{0}, kParts));

} // namespace
} // namespace bastewright::testing
