#include "session/checked_log.h"

#include "checker/checker.h"
#include "session/checked_plan.h"
#include "session/checks.h"
#include "session/effective.h"
#include "session/private/fold.h"

#include <algorithm>
#include <optional>
#include <set>
#include <string>
#include <type_traits>

namespace bastewright {
namespace {

/// All that the plans and sessions of a log have names for, so far.
class Names {
public:
    void take(const Plan& plan) {
        quilts_ = std::max(quilts_, static_cast<int>(plan.quilts.size()));
        for (std::size_t q = 0; q < plan.quilts.size(); ++q) {
            const int job = static_cast<int>(q);
            for (const Pass& p : plan.quilts[q].passes)
                passes_.emplace(job, p.number);
            for (const Zone& z : plan.quilts[q].zones)
                zones_.emplace(job, z.id);
        }
        for (const Task& t : plan.tasks)
            tasks_.insert(t.id);
    }
    void take(const Session& session) {
        for (const Helper& h : session.setting.helpers)
            people_.insert(h.name);
    }
    void take(const std::string& event) { events_.insert(event); }
    void take(const happened::NewSetting& changed) { take(*changed.session); }
    void take(const happened::NewPlan& next) {
        take(*next.plan);
        if (next.session)
            take(*next.session);
    }
    void take(const auto&) {} ///< what carries no names

    /// What an event names that is not there; empty where all is.
    template <class Kind>
    Sentence missing(const Kind& what) const {
        if constexpr (std::is_same_v<Kind, happened::Unread>)
            return what.why;
        if constexpr (requires { what.job; })
            if (what.job < 0 || what.job >= quilts_)
                return core::says("There is no quilt %1.", what.job + 1);
        bool ofPass = std::is_same_v<Kind, happened::Released>;
        if constexpr (std::is_same_v<Kind, happened::LeftOut>)
            ofPass = what.zone.empty();
        if constexpr (requires { what.pass; })
            if (ofPass && !passes_.contains({what.job, what.pass}))
                return core::says("There is no pass %1.", what.pass);
        if constexpr (requires { what.zone; })
            if (!ofPass && !zones_.contains({what.job, what.zone}))
                return core::says("There is no zone %1.", what.zone);
        if constexpr (requires { what.task; })
            if (!tasks_.contains(what.task))
                return core::says("There is no step %1.", what.task);
        if constexpr (requires { what.check; })
            if (!checkNamed(what.check))
                return core::says("Nothing is asked that is called %1.", what.check);
        if constexpr (requires { what.person; }) {
            const bool anybody = what.person.empty() && !std::is_same_v<Kind, happened::Presence>;
            if (!anybody && !people_.contains(what.person))
                return core::says("Nobody called %1 is among the helpers.", what.person);
        }
        if constexpr (requires { what.target; })
            if (!events_.contains(what.target))
                return core::says("There is no event %1 to take back.", what.target);
        return {};
    }

private:
    int quilts_ = 0;
    std::set<std::pair<int, int>> passes_;
    std::set<std::pair<int, std::string>> zones_;
    std::set<std::string> tasks_, people_, events_;
};

/// When a plan was made that was taken at this time: nothing of it begins before.
Seconds madeAt(const Plan& plan, const LiveState& state, Seconds taken) {
    Seconds out = taken;
    for (const Task& t : plan.tasks)
        if (!state.doneTasks.contains(t.id))
            out = std::min(out, t.start);
    return out;
}

/// What the checker finds wrong with the plan in force: the one the session began with, or the last
/// that took over from another.
std::optional<Finding> faultInForce(const Session& session, const Plan& plan,
                                    std::span<const Event> events) {
    const auto counts = effective(events);
    std::optional<std::size_t> last;
    for (std::size_t i = 0; i < events.size(); ++i)
        if (events[i].is<happened::NewPlan>() && counts.inEffect[i])
            last = i;
    Findings faults;
    if (!last) {
        faults = checkPlan(session, plan);
    } else {
        Fold log = foldAll(borrowed(plan), session.setting, events.first(*last));
        const auto before = log.plan();
        const LiveState state = log.state();
        log.apply(events[*last]);
        const Plan& next = *log.plan();
        const Seconds taken{(events[*last].atMs - state.startedMs) / 1000};
        faults = faultsOfRest(log.session() ? *log.session() : session, next, *before, state,
                              madeAt(next, state, taken));
    }
    return faults.empty() ? std::nullopt : std::optional{faults.front()};
}

} // namespace

Sentence faultOfLog(const Session& session, const Plan& plan, std::span<const Event> events) {
    Names names;
    names.take(plan);
    names.take(session);
    std::size_t wrong = 0;
    Sentence first;
    for (const Event& e : events) {
        std::visit([&names](const auto& what) { names.take(what); }, e.what);
        if (auto why =
                std::visit([&names](const auto& what) { return names.missing(what); }, e.what);
            !why.empty() && ++wrong == 1)
            first = std::move(why);
        names.take(e.id);
    }
    if (wrong == 1)
        return core::says("One of the %1 things noted in this session cannot be and is left out of "
                          "account; nothing is lost. %2",
                          events.size(), first);
    if (wrong > 1)
        return core::says("%1 of the %2 things noted in this session cannot be and are left out of "
                          "account; nothing is lost. The first: %3",
                          wrong, events.size(), first);
    if (const auto fault = faultInForce(session, plan, events))
        return core::says("The plan of this session breaks a rule: %1 Tap More, then What has "
                          "changed, then Plan the rest again.",
                          fault->text);
    return {};
}

} // namespace bastewright
