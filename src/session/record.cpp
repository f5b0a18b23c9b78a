#include "session/record.h"

#include "job/job_json.h"
#include "session/effective.h"
#include "session/private/fold.h"
#include "session/private/work_log.h"
#include "session/ticks.h"
#include "session/turns.h"

#include <algorithm>

namespace bastewright {
namespace {

Seconds seconds(std::int64_t ms) {
    return Seconds{ms / 1000};
}

class Recording {
public:
    Recording(const Session& session, const Plan& plan)
        : fold_{borrowed(plan), session.setting}
        , helpers_{session.setting.helpers} {
        out_.plannedFinish = plan.finish;
        callSince_.resize(plan.quilts.size());
        calls_.resize(plan.quilts.size());
    }

    void take(const Event& e, bool counts) {
        // An event that was taken back has still taken its time.
        clock_.advance(e.atMs);
        if (!counts)
            return;
        const auto before = fold_.state().present;
        if (!fold_.apply(e).empty())
            return;
        if (fold_.session())
            helpers_ = fold_.session()->setting.helpers;
        addLine(e);
        watchPeople(before);
        if (e.is<happened::Paused>())
            clock_.pause();
        else if (e.is<happened::Resumed>())
            clock_.resume();
        watchCalls(out_.lines.back().job);
    }

    Record finish(const Session& session, std::span<const Event> events) {
        watchCalls(-1); // the last ones up to the last event
        const auto& state = fold_.state();
        out_.startedMs = state.startedMs;
        if (state.ended)
            for (const auto& line : out_.lines)
                if (std::holds_alternative<happened::Ended>(line.what))
                    out_.endedMs = line.atMs;
        out_.worked = seconds(clock_.working());
        out_.rested = seconds(clock_.session() - clock_.working());
        for (const auto& who : state.present)
            people_[who].here += seconds(clock_.working() - here_[who]);
        const Setting& setting = fold_.session() ? fold_.session()->setting : session.setting;
        const WorkLog log = workLog(*fold_.plan(), events, 0);
        for (const auto& helper : setting.helpers) {
            PersonRecord person = people_[helper.name];
            person.name = helper.name;
            if (std::ranges::find(log.ticks, helper.name, &TimedTick::person) != log.ticks.end())
                person.pace = learntPace(log, helper.name);
            if (person.pace)
                person.speed = std::clamp(helper.pace * *person.pace, limits::kSlowestPace,
                                          limits::kFastestPace);
            if (person.here > Seconds{} || person.points > 0)
                out_.people.push_back(std::move(person));
        }
        for (auto& call : out_.calls)
            call.planned = planned(call);
        out_.pins = countPins(*fold_.plan(), setting, state);
        out_.zones = static_cast<int>(state.zones.size());
        out_.zonesDone = static_cast<int>(
            std::ranges::count_if(state.zones, [](const auto& z) { return z.second.done(); }));
        out_.notes = state.notes;
        out_.cautions = state.cautions;
        return std::move(out_);
    }

private:
    void addLine(const Event& e) {
        RecordLine line;
        line.atMs = e.atMs;
        line.since = seconds(clock_.session());
        line.what = e.what;
        std::visit([&](const auto& what) { tell(what, line); }, e.what);
        if (line.job >= 0)
            lastOf_[line.job] = clock_.working();
        out_.lines.push_back(std::move(line));
    }

    // What a line tells beside the event itself.
    void tell(const happened::ZoneTick& tick, RecordLine& line) {
        const auto now = clock_.working();
        ofZone(tick.job, tick.zone, tick.kind, line);
        line.took = seconds(now - std::max(personSince_[tick.person], quiltSince_[tick.job]));
        personSince_[tick.person] = now;
        auto& person = people_[tick.person];
        person.zonesOpened += tick.kind == Tick::opened;
        person.zonesClosed += tick.kind == Tick::closed;
        person.points += line.points;
    }
    void tell(const happened::ZoneAgain& again, RecordLine& line) {
        ofZone(again.job, again.zone, Tick::closed, line);
    }
    void tell(const happened::Step& step, RecordLine& line) {
        const Task* task = fold_.index().task(step.task);
        line.job = task->job;
        line.pass = task->pass;
        line.step = task->kind;
        line.call = callOf(task->kind);
        line.took =
            seconds(clock_.working() - std::max(quiltSince_[task->job], lastOf_[task->job]));
        quiltSince_[task->job] = clock_.working();
    }
    void tell(const happened::Answer& answer, RecordLine& line) { line.job = answer.job; }
    void tell(const happened::Released& pass, RecordLine& line) {
        line.job = pass.job;
        line.pass = pass.pass;
        quiltSince_[pass.job] = clock_.working();
    }
    void tell(const happened::LeftOut& part, RecordLine& line) {
        line.job = part.job;
        line.pass = part.pass;
    }
    void tell(const happened::Presence& who, RecordLine&) {
        if (who.kind == happened::Presence::Kind::in)
            personSince_[who.person] = clock_.working();
    }
    void tell(const auto&, RecordLine&) {}

    void ofZone(int job, const std::string& id, Tick tick, RecordLine& line) {
        const auto& index = fold_.index();
        const Zone* zone = index.zone(job, id);
        line.job = job;
        line.pass = zone->pass;
        line.call = callAt(tick, index.way(job, *zone));
        line.points = static_cast<std::int64_t>(zone->points.size());
    }

    void watchPeople(const std::set<std::string>& before) {
        const auto& after = fold_.state().present;
        for (const auto& who : after)
            if (!before.contains(who))
                here_[who] = clock_.working();
        for (const auto& who : before)
            if (!after.contains(who))
                people_[who].here += seconds(clock_.working() - here_[who]);
    }

    // Which call has been in force since the last event, and which is from now on; of the quilt the
    // event is about, -1: of all.
    void watchCalls(int job) {
        const Turns turns{fold_.index(), helpers_, fold_.state()};
        for (std::size_t q = 0; q < calls_.size(); ++q) {
            if (job >= 0 && static_cast<std::size_t>(job) != q)
                continue;
            const auto now = turns.call(static_cast<int>(q));
            const bool isOver = now.finished || !fold_.state().started || fold_.state().ended;
            const std::optional<std::pair<int, Call>> call =
                isOver ? std::nullopt : std::optional{std::pair{now.pass, now.now}};
            if (calls_[q])
                add(static_cast<int>(q), *calls_[q], clock_.working() - callSince_[q]);
            calls_[q] = call;
            callSince_[q] = clock_.working();
        }
    }

    void add(int job, std::pair<int, Call> call, std::int64_t ms) {
        const auto at = std::ranges::find_if(out_.calls, [&](const CallRecord& c) {
            return c.job == job && c.pass == call.first && c.call == call.second;
        });
        auto& to = at == out_.calls.end()
                       ? out_.calls.emplace_back(
                             CallRecord{.job = job, .pass = call.first, .call = call.second})
                       : *at;
        spent_[{job, call.first, call.second}] += ms;
        to.took = seconds(spent_[{job, call.first, call.second}]);
    }

    // One call may come twice in a pass (the clamps): the time of both.
    Seconds planned(const CallRecord& call) const {
        std::map<TaskKind, std::pair<Seconds, Seconds>> spans;
        for (const auto& t : fold_.plan()->tasks)
            if (t.job == call.job && t.pass == call.pass && callOf(t.kind) == call.call) {
                auto& span = spans.try_emplace(t.kind, t.start, t.end).first->second;
                span = {std::min(span.first, t.start), std::max(span.second, t.end)};
            }
        Seconds sum{};
        for (const auto& [kind, span] : spans)
            sum += span.second - span.first;
        return sum;
    }

    Fold fold_;
    std::vector<Helper> helpers_;
    TableClock clock_;
    Record out_;
    std::map<std::string, PersonRecord> people_;
    std::map<std::string, std::int64_t> here_, personSince_;
    std::map<int, std::int64_t> quiltSince_, lastOf_;
    std::vector<std::optional<std::pair<int, Call>>> calls_;
    std::vector<std::int64_t> callSince_;
    std::map<std::tuple<int, int, Call>, std::int64_t> spent_;
};

} // namespace

Record recordOf(const Session& session, const Plan& plan, std::span<const Event> events) {
    Recording recording{session, plan};
    const auto counts = effective(events);
    for (std::size_t i = 0; i < events.size(); ++i)
        if (counts.reasons[i].empty())
            recording.take(events[i], counts.inEffect[i] && !events[i].is<happened::Undone>());
    return recording.finish(session, events);
}

} // namespace bastewright
