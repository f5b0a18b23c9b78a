#include "planners/crew/pass_steps.h"

#include "plan/call.h"
#include "plan/trade_times.h"
#include "planners/crew/behind.h"
#include "planners/crew/step_times.h"

#include <algorithm>
#include <cmath>

namespace bastewright::crew {

using namespace trade_times;

namespace {

/// Of work in hand a tenth is always left, for nobody has ticked it yet.
constexpr int kLeastShare = 10;

std::string partId(const std::string& id, int part) {
    return part == 1 ? id : id + "." + std::to_string(part);
}

} // namespace

PassSteps::PassSteps(const Given& given, QuiltTable& table, Letters& letters,
                     const PassStart& start, std::vector<int> pinners)
    : given_{given}
    , table_{table}
    , letters_{letters}
    , start_{start}
    , pinners_{std::move(pinners)}
    , now_{start.ready} {
    out_.start = start.ready;
    out_.lastRest = start.lastRest;
    out_.barrier = start.barrier;
    out_.work = start.work;
}

PassPlan PassSteps::run() {
    takeCrew();
    const bool over = isOver(given_.situation, job(), start_.job, pass().number);
    if (!over)
        before();
    out_.pinsFrom = now_;
    if (!over && !table_.points(start_.pass).empty())
        for (const WayStep* step : stepsOf(ways()))
            stepOfWay(*step);
    if (!over)
        lookBelow();
    if (last())
        afterwards();
    out_.end = now_;
    out_.deserted = deserted();
    std::ranges::sort(out_.tasks, {}, [](const Task& t) { return std::pair{t.start, t.id}; });
    return std::move(out_);
}

void PassSteps::before() {
    const Pass& p = pass();
    const bool first = start_.pass == 0;
    const auto layers = those(lays);
    if (first)
        setUp();
    else
        lift(TaskKind::shift, static_cast<std::size_t>(std::max(1, p.liftPeople)),
             [&](Paces paces) { return shiftSeconds(p, paces); });
    if (p.pulled) // held as it is
        return;
    const auto lay = [&](TaskKind kind) {
        teamStep(kind, layers, 1, 2, [&](Paces paces) { return laySeconds(p, first, paces); });
    };
    lay(TaskKind::layBacking);
    holdStep(TaskKind::clamp, holdsOf(p));
    lay(TaskKind::layBatting);
    lay(TaskKind::layTop);
    holdStep(TaskKind::reclamp, clampsOf(p));
}

void PassSteps::stepOfWay(const WayStep& step) {
    const Takes takes = [&](Paces paces) { return stepSeconds(step, pass(), paces); };
    switch (step.by) {
    case WayStep::By::zones:
    case WayStep::By::irons:
        zoneCall(step.kind);
        break;
    case WayStep::By::palm:
        teamStep(step.kind, those(walks), 1, 2, takes);
        break;
    case WayStep::By::fold:
        teamStep(step.kind, those(lays), 1, 2, takes);
        break;
    case WayStep::By::nobody:
        leaveAlone(step, false);
        break;
    }
}

std::vector<const Way*> PassSteps::ways() const {
    std::vector<const Way*> out;
    for (const OwnedZone& z : out_.crew.zones)
        addWay(out, job(), z.zone);
    return out;
}

const Way* PassSteps::turning() const {
    const auto find = [this](const PassCrew& crew) -> const Way* {
        for (const OwnedZone& z : crew.zones)
            if (const Way& way = wayOf(job(), z.zone);
                !z.zone.points.empty() && way.turns(job().batting))
                return &way;
        return nullptr;
    };
    const Way* out = find(out_.crew);
    for (const PassCrew* crew : start_.earlier)
        out = out == nullptr && crew != nullptr ? find(*crew) : out;
    return out;
}

void PassSteps::lookBelow() {
    teamStep(TaskKind::checkUnderside, those(looksBelow), 1, 1,
             [](Paces paces) { return together(kUnderside, paces); });
}

void PassSteps::afterwards() {
    if (const Way* way = turning())
        fromTheBack(*way);
    teamStep(TaskKind::handOver, those(walks), 1, 1,
             [](Paces paces) { return together(kHandOver, paces); });
}

/// Thick batting: turned once by everybody at the table who lifts, every zone that was pressed
/// pressed again from the back, pass by pass in reverse as the quilt slides home. The slides are in
/// the time of turning.
void PassSteps::fromTheBack(const Way& way) {
    const auto who = those(lays);
    stepOfAll(TaskKind::turnOver, who, liftersEver(who, 2),
              [&](Paces paces) { return turnSeconds(quilt(), paces); });
    for (std::size_t k = start_.pass + 1; k-- > 0;)
        if (k == start_.pass)
            zoneCall(way.lastWork(), out_.crew, pass(), true);
        else if (k < start_.earlier.size() && start_.earlier[k] != nullptr)
            zoneCall(way.lastWork(), *start_.earlier[k], quilt().passes[k], true);
    leaveAlone(way.steps.back(), true);
}

const Task* PassSteps::taskBefore(const std::string& id) const {
    if (given_.situation.before == nullptr)
        return nullptr;
    const auto& tasks = given_.situation.before->tasks;
    const auto at = std::ranges::find(tasks, id, &Task::id);
    return at == tasks.end() ? nullptr : &*at;
}

int PassSteps::spent(const std::string& id) const {
    const auto at = given_.situation.inHand.find(id);
    return at == given_.situation.inHand.end() ? 0
                                               : std::max(0, static_cast<int>(at->second.count()));
}

void PassSteps::advance(int end) {
    // A told break that lies behind is a break.
    for (const PlannedBreak& b : given_.told)
        if (const auto until = static_cast<int>(b.end.count()); until > now_ && until <= end)
            out_.lastRest = std::max(out_.lastRest, until);
    now_ = end;
}

/// A break before a call of so long, where there is to be one or the work would go on for too long
/// without, but for the latter not sooner after a break than that.
void PassSteps::restBefore(const std::string& call, int seconds, int soonest) {
    const int since = now_ - out_.lastRest;
    if (start_.rests != nullptr && since > 0 &&
        (start_.rests->contains(call) || (since > soonest && since + seconds > kBreakAtLast)))
        rest();
}

void PassSteps::rest() {
    const int start = clearOfBreaks(now_, 1);
    if (start > now_) { // there is one
        advance(start);
        return;
    }
    out_.breaks.push_back({Seconds{now_}, Seconds{now_ + kBreakLasts}, true});
    now_ += kBreakLasts;
    out_.lastRest = now_;
}

void PassSteps::called(const std::string& id, int start, int end) {
    out_.calls.push_back({id, start, end, out_.calls.empty()});
}

void PassSteps::add(TaskKind kind, const Team& team, const std::string& id) {
    Task t;
    t.id = id;
    t.kind = kind;
    t.job = start_.job;
    t.pass = pass().number;
    for (const int p : team.people) {
        t.people.push_back(hand(p).helper.name);
        out_.work[p] += team.seconds;
        out_.overtime += std::max(0, team.start + team.seconds - hand(p).until);
    }
    t.start = Seconds{team.start};
    t.end = Seconds{team.start + team.seconds};
    t.after = out_.barrier;
    out_.barrier = {t.id};
    called(t.id, team.start, team.start + team.seconds);
    out_.tasks.push_back(std::move(t));
    advance(team.start + team.seconds);
}

void PassSteps::teamStep(TaskKind kind, const std::vector<int>& who, std::size_t least,
                         std::size_t most, const Takes& takes) {
    step(kind, takes, {who, takes},
         [&](const Takes& part) { return choose(who, least, most, part); });
}

void PassSteps::stepOfAll(TaskKind kind, const std::vector<int>& who, std::size_t least,
                          const Takes& takes) {
    step(kind, takes, {who, takes}, [&](const Takes& part) { return chooseAll(who, least, part); });
}

/// The parts of a step, with breaks between them, where it is too long to go on without one.
int PassSteps::partsOf(const std::string& id, int seconds) const {
    if (given_.situation.done.contains(id) || given_.situation.inHand.contains(id)) {
        int parts = 1;
        while (taskBefore(partId(id, parts + 1)) != nullptr)
            ++parts;
        return parts;
    }
    return given_.session.setting.proposeBreaks ? std::max(1, (seconds - 1) / kBreakAtLast + 1) : 1;
}

void PassSteps::step(TaskKind kind, const Takes& takes, const InHand& inHand,
                     const Chosen& chosen) {
    const std::string id = taskId(start_.job, pass().number, {}, kind);
    const int parts = partsOf(id, chosen(takes).seconds);
    const Takes part = [&](Paces paces) { return takes(paces) / parts; };
    const InHand partInHand{inHand.may, [&](Paces paces) { return inHand.takes(paces) / parts; }};
    for (int k = 1; k <= parts; ++k)
        partOfStep(kind, partId(id, k), part, partInHand, chosen);
}

/// What is in hand stays with its people, where all of them are there and may do it.
std::optional<PassSteps::Team> PassSteps::goesOn(const std::string& id,
                                                 const InHand& inHand) const {
    const Task* was = taskBefore(id);
    if (was == nullptr || was->people.empty() || !given_.situation.inHand.contains(id))
        return {};
    Team team{{}, now_, 0};
    std::vector<double> paces;
    for (const int p : start_.team)
        if (std::ranges::find(was->people, hand(p).helper.name) != was->people.end()) {
            if (std::ranges::find(inHand.may, p) == inHand.may.end())
                return {};
            team.people.push_back(p);
            paces.push_back(pace(p));
        }
    if (team.people.size() != was->people.size())
        return {};
    std::ranges::sort(paces, std::greater{});
    const int all = wholeSeconds(inHand.takes(paces));
    team.seconds = std::max(all - spent(id), (all + kLeastShare - 1) / kLeastShare);
    return team;
}

void PassSteps::partOfStep(TaskKind kind, const std::string& id, const Takes& takes,
                           const InHand& inHand, const Chosen& chosen) {
    if (given_.situation.done.contains(id))
        return;
    if (const auto team = goesOn(id, inHand)) {
        add(kind, *team, id);
        return;
    }
    restBefore(id, chosen(takes).seconds);
    add(kind, chosen(takes), id);
}

void PassSteps::lift(TaskKind kind, std::size_t people, const Takes& takes) {
    const auto who = those(lays);
    std::size_t n = liftersEver(who, people);
    // Where so many are never there together, those who stay do it once the others have left.
    const auto everTogether = [&] {
        return std::ranges::any_of(
            times(who), [&](int t) { return chooseAt(who, n, takes, t, false).has_value(); });
    };
    while (n > 1 && !everTogether()) {
        int left = kAlways;
        for (const int p : who)
            if (hand(p).firstTime(now_, 1) < kAlways)
                left = std::min(left, hand(p).until);
        if (left >= kAlways)
            break;
        advance(left);
        n = liftersEver(who, people);
    }
    teamStep(kind, who, n, std::max<std::size_t>(n, std::min<std::size_t>(2, who.size())), takes);
    for (const Task& t : out_.tasks)
        if (t.kind == kind)
            out_.liftersMissing += static_cast<int>(people) - static_cast<int>(t.people.size());
    out_.liftersMissing = std::max(0, out_.liftersMissing);
}

void PassSteps::setUp() {
    const Takes takes = [&](Paces paces) {
        std::size_t points = 0;
        for (std::size_t k = 0; k < quilt().passes.size(); ++k)
            points += table_.points(k).size();
        return setUpSeconds(paces, points, start_.firstOnTheTable);
    };
    teamStep(TaskKind::setUp, start_.team, 1, start_.team.size(), takes);
}

void PassSteps::holdStep(TaskKind kind, int holds) {
    if (holds == 0)
        return;
    std::vector<int> who = out_.crew.people;
    // Of a pass that is begun some may be at another table by now.
    std::erase_if(who, [&](int p) {
        return std::ranges::find(start_.team, p) == start_.team.end() ||
               hand(p).firstTime(now_, 1) >= kAlways;
    });
    if (who.empty())
        who = those(walks);
    std::size_t hands = 0;
    // `choose` has the quickest first, and holdSeconds says how many of them serve best.
    HoldSeconds seconds{holds};
    const Takes those = [&](Paces paces) { return seconds(paces, hands); };
    const Takes takes = [&](Paces paces) {
        const double all = those(paces);
        return hands < paces.size() ? 1e9 : all;
    };
    step(kind, takes, {start_.team, those},
         [&](const Takes& part) { return choose(who, 1, who.size(), part); });
}

void PassSteps::leaveAlone(const WayStep& step, bool fromBack) {
    const std::string id = taskId(start_.job, pass().number, {}, step.kind, fromBack);
    if (given_.situation.done.contains(id))
        return;
    add(step.kind, {{}, now_, std::max(60, wholeSeconds(step.seconds) - spent(id))}, id);
}

} // namespace bastewright::crew
