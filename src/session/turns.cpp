#include "session/turns.h"

#include "session/checks.h"
#include "session/private/fold.h"
#include "session/private/open_work.h"
#include "session/private/words.h"
#include "session/ticks.h"

#include <algorithm>

namespace bastewright {
namespace {

using Why = TapAnswer::Why;

TapAnswer no(Why why, Sentence said) {
    return {.why = why, .said = std::move(said)};
}

/// Who is said to have done it: whoever tapped, else the first of those whose work it is.
std::string oneOf(const std::vector<std::string>& people, const std::string& tapped = {}) {
    return !tapped.empty() || people.empty() ? tapped : people.front();
}

void addOnce(std::vector<std::string>& to, const std::string& what) {
    if (std::ranges::find(to, what) == to.end())
        to.push_back(what);
}

} // namespace

Turns::Turns(const Plan& plan, const std::vector<Helper>& helpers, const LiveState& state)
    : own_{std::make_unique<PlanIndex>(plan)}
    , work_{std::make_unique<OpenWork>(*own_, state)}
    , helpers_{helpers}
    , state_{state} {}

Turns::Turns(const PlanIndex& index, const std::vector<Helper>& helpers, const LiveState& state)
    : work_{std::make_unique<OpenWork>(index, state)}
    , helpers_{helpers}
    , state_{state} {}

Turns::~Turns() = default;
Turns::Turns(Turns&&) noexcept = default;

// ------------------------------------------------------------------------------------- taps

TapAnswer Turns::mayTick(const Tap& tap) const {
    if (!state_.started)
        return no(Why::notStarted, core::says("The session has not begun."));
    if (state_.ended)
        return no(Why::ended,
                  core::says("The session has ended. Take the ending back to go on with it."));
    if (tap.job < 0 || tap.job >= work_->index().quilts())
        return no(Why::unknown, core::says("There is no quilt %1.", tap.job + 1));
    if (state_.paused && tap.what != Tap::What::end)
        return no(Why::onBreak, core::says("It is a break. Resume first."));
    switch (tap.what) {
    case Tap::What::zone:
        return zone(tap);
    case Tap::What::step:
        return step(tap);
    case Tap::What::release:
        return release(tap);
    case Tap::What::end:
        break;
    }
    return end(tap);
}

TapAnswer Turns::zone(const Tap& tap) const {
    const auto& index = work_->index();
    const std::string name{zoneName(tap.zone)};
    const Zone* z = index.zone(tap.job, tap.zone);
    const auto live = state_.zones.find({tap.job, tap.zone});
    if (!z || live == state_.zones.end())
        return no(Why::unknown, core::says("There is no zone %1.", name));
    if (state_.setAside.contains({tap.job, tap.zone}))
        return no(Why::leftOut, core::says("%1 was left out with its pass.", name));
    const int current = work_->pass(tap.job);
    const auto tick = nextTick(index, state_, tap.job, tap.zone);
    if (!tick && live->second.done())
        return no(Why::done, core::says("%1 is done. Hold it to take its last tick back.", name));
    if (!tick)
        return no(Why::notOnTable, core::says("%1 belongs to pass %2; pass %3 is on the table.",
                                              name, z->pass, current));
    if (tap.meant && *tap.meant != *tick)
        return no(Why::done, core::says("%1 is ticked already.", name));
    const auto hands = whoseTurn(tap.job, tap.zone);
    if (!tap.person.empty() && !hands.empty() &&
        std::ranges::find(hands, tap.person) == hands.end())
        return no(Why::notTheirs, core::says("%1 is the work of %2. Tick it at the table.", name,
                                             core::listed(hands)));
    if (!tap.otherwise) {
        ComesFirst first;
        bool isAnyone = false;
        for (const Task* t : index.ticked(tap.job, tap.zone, *tick))
            if (!work_->isDone(*t)) {
                isAnyone = true;
                if (first.empty())
                    first = work_->before(*t);
            }
        if (!isAnyone)
            first = work_->before(*z, tap.job, *tick);
        if (!first.empty())
            return no(Why::early, notYet(first));
    }
    return {.what = happened::ZoneTick{*tick, tap.job, tap.zone, oneOf(hands, tap.person)}};
}

TapAnswer Turns::step(const Tap& tap) const {
    const Task* t = work_->index().task(tap.task);
    if (!t || t->job != tap.job || !t->zone.empty())
        return no(Why::unknown, core::says("The plan has no step %1.", tap.task));
    if (work_->isDone(*t))
        return no(Why::done,
                  core::says("%1 of pass %2 is ticked already.", spokenFirst(t->kind), t->pass));
    for (const Check c : checksOf(t->kind))
        if (answerTo(state_, t->id, c) == false)
            return no(Why::answeredNo,
                      core::says("One answer is 'not yet'. Put it right and answer again."));
    if (!work_->onTable(*t) && (tap.otherwise || work_->before(*t).empty()))
        return no(Why::notOnTable, core::says("%1 belongs to pass %2; pass %3 is on the table.",
                                              spokenFirst(t->kind), t->pass, work_->pass(tap.job)));
    if (!tap.otherwise)
        if (const auto first = work_->before(*t); !first.empty())
            return no(Why::early, notYet(first));
    return {.what = happened::Step{tap.job, t->pass, oneOf(t->people, tap.person), t->id}};
}

TapAnswer Turns::release(const Tap& tap) const {
    const int current = work_->pass(tap.job);
    if (state_.released.contains({tap.job, tap.pass}))
        return no(Why::done, core::says("Pass %1 is released already.", tap.pass));
    if (tap.pass != current)
        return no(Why::notOnTable,
                  core::says("Pass %1 is not on the table; pass %2 is.", tap.pass, current));
    if (const auto left = work_->open(tap.job); !left.empty() && !tap.otherwise) {
        ComesFirst first;
        for (const Task* t : left)
            if (work_->ready(*t))
                first.tasks.push_back(t);
        return no(Why::early, first.empty() ? notYet(work_->before(*left.front())) : notYet(first));
    }
    if (const auto blocked = releaseBlockedBy(work_->index(), state_, tap.job, tap.pass);
        !blocked.empty())
        return no(Why::early, blocked.front());
    return {.what = happened::Released{tap.job, tap.pass}};
}

TapAnswer Turns::end(const Tap& tap) const {
    if (!tap.otherwise && !finished())
        return no(Why::early, core::says("There is still work open."));
    return {.what = happened::Ended{}};
}

// ----------------------------------------------------------------------------------- answers

std::vector<std::string> Turns::whoseTurn(int job, const std::string& zone) const {
    std::vector<std::string> out;
    const auto& index = work_->index();
    const auto tick = nextTick(index, state_, job, zone);
    if (!tick)
        return out;
    for (const Task* t : index.ticked(job, zone, *tick))
        if (!work_->isDone(*t))
            for (const auto& who : t->people)
                addOnce(out, who);
    return out;
}

std::optional<NextStep> Turns::mainStep(int job) const {
    if (!state_.started || state_.ended || job < 0 || job >= work_->index().quilts())
        return {};
    NextStep out;
    out.job = job;
    out.pass = work_->pass(job);
    const auto open = work_->open(job);
    const auto step = std::ranges::find_if(open, [](const Task* t) { return t->zone.empty(); });
    if (step != open.end()) {
        const Task& t = **step;
        out.kind = NextStep::Kind::step;
        out.pass = t.pass;
        out.call = callOf(t.kind);
        out.task = t.id;
        out.people = t.people;
        const auto answer = mayTick({.what = Tap::What::step, .job = job, .task = t.id});
        out.ready = answer.counts();
        out.asksAgain = answer.why == Why::answeredNo;
        out.waits = answer.why == Why::early ? whatIsLeft(work_->before(t)) : answer.said;
        return out;
    }
    if (!work_->lastReleased(job)) {
        out.kind = NextStep::Kind::release;
        out.call = Call::check;
        Tap tap{.what = Tap::What::release, .job = job, .pass = out.pass};
        const auto answer = mayTick(tap);
        out.ready = answer.counts();
        out.waits = answer.said;
        return out;
    }
    out.kind = NextStep::Kind::end;
    out.call = Call::rollUp;
    out.ready = finished() && !state_.paused;
    if (!out.ready)
        out.waits = core::says("There is still work open.");
    return out;
}

std::vector<NextStep> Turns::nextSteps(int job) const {
    std::vector<NextStep> out;
    const auto main = mainStep(job);
    if (!main)
        return out;
    const auto& index = work_->index();
    const auto addZone = [&](const std::string& zone, const Task* task) {
        const auto tick = nextTick(index, state_, job, zone);
        if (!tick || std::ranges::find(out, zone, &NextStep::zone) != out.end() ||
            !mayTick({.what = Tap::What::zone, .job = job, .zone = zone}).counts())
            return;
        NextStep next;
        next.kind = NextStep::Kind::zone;
        next.job = job;
        next.pass = task ? task->pass : work_->pass(job);
        next.call = callAt(*tick, index.way(job, zone));
        next.zone = zone;
        next.tick = tick;
        next.people = whoseTurn(job, zone);
        next.ready = true;
        out.push_back(std::move(next));
    };
    for (const Task* t : work_->open(job))
        if (!t->zone.empty() && work_->ready(*t))
            addZone(t->zone, t);
    for (const Zone* z : work_->zonesOfNobody(job))
        addZone(z->id, nullptr);
    out.push_back(*main);
    return out;
}

CallNow Turns::call(int job) const {
    CallNow out;
    out.pass = work_->pass(job);
    const auto& index = work_->index();
    const auto open = work_->open(job);
    const auto nobody = work_->zonesOfNobody(job);
    std::vector<Call> later; // of what comes after this pass, in the plan's order
    for (const auto& t : index.plan().tasks)
        if (t.job == job && !work_->isDone(t) && !work_->onTable(t))
            later.push_back(callOf(t.kind));
    const Task* going = nullptr;
    for (const Task* t : open)
        if (!going && work_->ready(*t))
            going = t;
    if (!going && !open.empty()) // it waits for another quilt on the same tables
        going = open.front();
    if (going) {
        out.now = callOf(going->kind);
        for (const Task* t : open)
            if (callOf(t->kind) == out.now)
                addOnce(t->zone.empty() ? out.tasks : out.zones, t->zone.empty() ? t->id : t->zone);
            else if (!out.next)
                out.next = callOf(t->kind);
    } else if (!nobody.empty()) {
        const auto tick = nextTick(index, state_, job, nobody.front()->id);
        out.now = callAt(*tick, index.way(job, *nobody.front()));
    } else {
        out.toRelease = !work_->lastReleased(job);
        out.finished = !out.toRelease;
        out.now = out.toRelease ? Call::check : Call::rollUp;
    }
    for (const Zone* z : nobody)
        if (const auto tick = nextTick(index, state_, job, z->id);
            tick && callAt(*tick, index.way(job, *z)) == out.now)
            addOnce(out.zones, z->id);
    if (!out.next && !later.empty())
        out.next = later.front();
    return out;
}

const Way& Turns::way(int job, const std::string& zone) const {
    return work_->index().way(job, zone);
}

bool Turns::finished() const {
    for (int q = 0; q < work_->index().quilts(); ++q)
        if (!work_->allDone(q) || !work_->lastReleased(q))
            return false;
    return true;
}

PersonNow Turns::personNow(const Helper& helper) const {
    using Doing = PersonNow::Doing;
    PersonNow out;
    out.person = helper.name;
    for (const auto& t : work_->index().plan().tasks) {
        if (work_->isDone(t) || work_->isSetAside(t) ||
            std::ranges::find(t.people, helper.name) == t.people.end())
            continue;
        if (!out.task) {
            out.task = &t;
        } else {
            out.next = &t;
            break;
        }
    }
    if (!state_.present.contains(helper.name)) {
        out.doing = Doing::away;
    } else if (state_.paused) {
        out.doing = Doing::onBreak;
    } else if (!out.task) {
        out.doing = Doing::done;
    } else if (const auto first = work_->before(*out.task); first.empty()) {
        out.doing = Doing::works;
    } else {
        out.doing = Doing::waits;
        out.waitsFor = waitsFor(first, helper.name);
    }
    return out;
}

std::vector<PersonNow> Turns::whoWaitsForWhat() const {
    std::vector<PersonNow> out;
    for (const auto& helper : helpers_)
        out.push_back(personNow(helper));
    return out;
}

std::vector<What> Turns::upTo(int job, Call call) const {
    std::vector<What> out;
    if (!state_.started || state_.ended || job < 0 || job >= work_->index().quilts())
        return out;
    for (const Task* t : work_->open(job)) {
        if (work_->isLast(*t) || orderOf(callOf(t->kind)) > orderOf(call))
            continue;
        if (t->zone.empty()) {
            out.push_back(happened::Step{job, t->pass, oneOf(t->people), t->id});
            continue;
        }
        const Tick tick = tickAt(t->kind);
        const bool told = std::ranges::any_of(out, [&](const What& o) {
            const auto* ticked = std::get_if<happened::ZoneTick>(&o);
            return ticked && ticked->kind == tick && ticked->zone == t->zone;
        });
        if (!told) // a zone shared by two is one tick
            out.push_back(happened::ZoneTick{tick, job, t->zone, oneOf(t->people)});
    }
    return out;
}

} // namespace bastewright
