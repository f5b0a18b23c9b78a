#include "sheets/pages/helper_calls.h"

#include "language/said.h"
#include "sheets/calls.h"
#include "sheets/pages/lead_words.h"
#include "sheets/words.h"
#include "ways/way.h"

#include <algorithm>
#include <map>
#include <set>

namespace bastewright::sheets {
namespace {

class Calls {
public:
    Calls(const SheetContext& c, const Helper& who, const std::vector<Part>& parts)
        : c_{c}
        , who_{who}
        , parts_{parts} {}

    std::vector<Span> at(Call call) const {
        switch (call) {
        case Call::lay:
            return lay();
        case Call::clamp:
            return clamp();
        case Call::handsOff:
            return does(TaskKind::smooth)
                       ? plain(Text::tr("Your palm over it: no ripple? Is the hang right? If not, "
                                        "smooth again."))
                       : plain(others(TaskKind::smooth,
                                      Text::tr("Wait. %1 feels for ripples and looks at the hang."),
                                      Text::tr("Wait. %1 feel for ripples and look at the hang.")));
        case Call::cool:
        case Call::wait:
            return plain(Text::tr("Nobody touches it."));
        case Call::check:
            return does(TaskKind::checkUnderside)
                       ? plain(Text::tr("Look underneath: no pleat. Turn some up: is the back "
                                        "caught?"))
                       : plain(others(TaskKind::checkUnderside,
                                      Text::tr("Wait. %1 looks underneath."),
                                      Text::tr("Wait. %1 look underneath.")));
        case Call::move:
            return move();
        case Call::rollUp:
            return rollUp();
        default:
            break;
        }
        const WayStep* step = zoneStepAt(call);
        return step ? zones(*step) : std::vector<Span>{};
    }

private:
    static std::vector<Span> plain(const QString& words) { return {{words}}; }

    bool does(TaskKind kind) const {
        return std::ranges::any_of(parts_, [&](const Part& p) { return p.does(kind); });
    }

    /// Who else does it in this person's passes; empty where those are too many to name.
    std::vector<std::string> othersDoing(TaskKind kind) const {
        std::vector<std::string> people;
        for (const Task& t : c_.plan.tasks)
            for (const Part& part : parts_)
                if (t.kind == kind && t.job == int(part.quilt) && t.pass == part.pass->number)
                    for (const std::string& name : t.people)
                        if (name != who_.name && std::ranges::count(people, name) == 0)
                            people.push_back(name);
        return people.size() > 3 ? std::vector<std::string>{} : people;
    }

    QString doneBy(TaskKind kind) const {
        const auto people = othersDoing(kind);
        return people.empty() ? QString{} : names(people);
    }

    /// The sentence with whoever does it, for one and for several; without anybody, only waiting.
    QString others(TaskKind kind, const QString& one, const QString& several) const {
        const auto people = othersDoing(kind);
        return people.empty()       ? Text::tr("Wait.")
               : people.size() == 1 ? one.arg(names(people))
                                    : several.arg(names(people));
    }

    std::vector<Span> lay() const {
        const bool hands =
            does(TaskKind::layBacking) || does(TaskKind::layBatting) || does(TaskKind::layTop);
        const bool again = std::ranges::any_of(
            parts_, [](const Part& p) { return p.pass->number > 1 && !p.pass->pulled; });
        QStringList words;
        if (again)
            words << Text::tr("From pass 2 on, top and batting are folded back first.");
        words << (hands ? Text::tr("Smooth from the quilt's middle outward; never pull.")
                        : Text::tr("Wait until it lies."));
        if (std::ranges::any_of(parts_, restsBesideThem))
            words << (who_.seated ? Text::tr("What hangs at your side rests on chairs, not on you.")
                                  : Text::tr("Chairs under what hangs at your side."));
        return plain(words.join(QChar::Space));
    }

    /// Chairs carry what hangs where this person stands.
    static bool restsBesideThem(const Part& part) {
        return std::ranges::any_of(kSides, [&](Side side) {
            return part.pass->beyond[side] == Beyond::chairs && part.standsAt(side);
        });
    }

    std::vector<Span> clamp() const {
        if (std::ranges::all_of(parts_, [](const Part& p) { return p.holds.empty(); }))
            return plain(Text::tr("Nothing of yours to hold: wait."));
        const auto usual = usualHolds(parts_);
        const bool clamps = std::ranges::any_of(parts_, [](const Part& p) {
            return std::ranges::count(p.holds, Hold::Kind::clamp, &HoldPoint::kind) > 0;
        });
        std::vector<Span> out;
        if (usual)
            out = holdsWords(*usual);
        else
            out = {{Text::tr("Yours stand below, each when it is called.") + QChar::Space}};
        if (clamps) {
            out.push_back({Text::tr("First the backing; once all lie,") + QChar::Space});
            out.push_back({Text::tr("move the clamps to all three layers."), true});
        } else {
            out.push_back({Text::tr("Tape on the backing only.")});
        }
        return out;
    }

    std::vector<Span> holdsWords(const UsualHolds& usual) const {
        std::vector<Span> out;
        const auto add = [&](const QString& where, const std::vector<int>& rounds) {
            out.push_back({where + QChar::Space});
            out.push_back({numbers(rounds), true});
        };
        if (!usual.own.empty())
            add(Text::tr("Yours:"), usual.own);
        for (const auto& [side, rounds] : usual.beside)
            add(out.empty() ? Text::tr("Yours, where nobody stands (%1):").arg(sideName(side))
                            : Text::tr("; where nobody stands (%1):").arg(sideName(side)),
                rounds);
        if (out.empty())
            out.push_back({Text::tr("Yours: none")});
        if (usual.other)
            out.push_back(
                {Text::tr(" (%1: %2)")
                     .arg(c_.passName(usual.other->quilt, usual.other->pass->number),
                          usual.other->holds.empty() ? Text::tr("none")
                                                     : numbers(rounds(usual.other->holds)))});
        out.push_back({Text::tr(", each when it is called.") + QChar::Space});
        return out;
    }

    /// What is done at zones at one call.
    std::vector<Span> zones(const WayStep& step) const {
        const StepWords& words = *step.words;
        if (!does(step.kind))
            return plain(language::said(words.idle(doneBy(step.kind).toStdString())));
        std::vector<Span> out{{language::said(words.mine)}};
        if (!words.firmly.empty()) {
            out.front().text += QChar::Space;
            out.push_back({language::said(words.firmly), true});
        }
        return out;
    }

    std::vector<Span> move() const {
        std::vector<int> passes;
        std::vector<std::string> with;
        std::set<int> moved;
        for (const Part& part : parts_) {
            if (&part != &parts_.front())
                moved.insert(part.pass->number);
            const Task* lift = part.task(TaskKind::shift);
            if (!lift)
                continue;
            passes.push_back(part.pass->number);
            for (const std::string& name : lift->people)
                if (name != who_.name && std::ranges::count(with, name) == 0)
                    with.push_back(name);
        }
        const QString off = Text::tr("Take off your clamps.");
        if (passes.empty())
            return plain(who_.seated ? Text::tr("Stay seated, take your clamps off.")
                                     : Text::tr("%1 Step back.").arg(off));
        const QString lift =
            with.empty() ? Text::tr("Slide it on.")
            : passes.size() >= moved.size()
                ? Text::tr("Lift with %1 on the count, then back to your place.").arg(names(with))
                : Text::tr("Into pass %1 lift with %2 on the count, then back to your place.")
                      .arg(numbers(passes), names(with));
        return plain(Text::tr("%1 %2").arg(off, lift));
    }

    /// What the last pass ends with, in place of a move.
    std::vector<Span> rollUp() const {
        const QString people = doneBy(TaskKind::handOver);
        const QString words =
            does(TaskKind::handOver)
                ? (people.isEmpty()
                       ? Text::tr("Clamps off, then roll it up from both sides and clip it.")
                       : Text::tr("Clamps off, then roll it up from both sides with %1.")
                             .arg(people))
                : (people.isEmpty() ? Text::tr("Clamps off; it is rolled up.")
                                    : Text::tr("Clamps off. Rolling up: %1.").arg(people));
        const bool counts = std::ranges::any_of(
            parts_, [&](const Part& p) { return c_.pinsOf(who_.name, p.quilt, *p.pass) > 0; });
        std::vector<Span> out{{Text::tr("After the last Check:") + QChar::Space, true}, {words}};
        if (counts)
            out.push_back({QChar::Space + Text::tr("Left-over pins back into the box.")});
        return out;
    }

    const SheetContext& c_;
    const Helper& who_;
    const std::vector<Part>& parts_;
};

} // namespace

QString numbers(const std::vector<int>& all) {
    QStringList out;
    for (const int n : all)
        out << QString::number(n);
    return listed(out);
}

namespace {

/// Some of these rounds are called in a pass, but are another's.
bool leavesToOthers(const Part& part, const std::set<int>& own) {
    const std::vector<int> mine = rounds(part.holds);
    return std::ranges::any_of(holdOrder(*part.pass), [&](const HoldPoint& hold) {
        return own.contains(hold.number) && std::ranges::count(mine, hold.number) == 0;
    });
}

/// Everybody's rounds of these passes, where they are the same in all of them.
std::optional<UsualHolds> holdsOfAll(const std::vector<const Part*>& parts) {
    std::set<int> all, own;
    std::map<Side, std::set<int>> beside;
    for (const Part* part : parts)
        for (const HoldPoint& hold : part->holds) {
            all.insert(hold.number);
            (part->standsAt(hold.side) ? own : beside[hold.side]).insert(hold.number);
        }
    if (std::ranges::any_of(parts, [&](const Part* p) { return leavesToOthers(*p, all); }))
        return {};
    UsualHolds out{{own.begin(), own.end()}, {}, nullptr};
    for (const auto& [side, rounds] : beside)
        out.beside[side] = {rounds.begin(), rounds.end()};
    return out;
}

} // namespace

std::optional<UsualHolds> usualHolds(const std::vector<Part>& parts) {
    std::vector<const Part*> held;
    for (const Part& part : parts)
        if (!part.pass->holds.empty())
            held.push_back(&part);
    if (held.empty())
        return {};
    if (auto usual = holdsOfAll(held))
        return usual;
    for (std::size_t i = 0; held.size() > 2 && i < held.size(); ++i) {
        std::vector<const Part*> rest = held;
        rest.erase(rest.begin() + std::ptrdiff_t(i));
        if (auto usual = holdsOfAll(rest)) {
            usual->other = held[i];
            return usual;
        }
    }
    return {};
}

namespace {

/// The calls of all passes, each once, as they come; what a later pass has beside those before it
/// stands before what comes next in it.
std::vector<Call> callsInOrder(const SheetContext& c, const std::vector<Part>& parts) {
    std::vector<Call> out;
    for (const Part& part : parts) {
        const auto calls = callsOf(c.ways(part.quilt, part.pass->number));
        auto next = out.end();
        for (auto call = calls.rbegin(); call != calls.rend(); ++call) {
            const auto known = std::ranges::find(out, *call);
            next = known != out.end() ? known : out.insert(next, *call);
        }
    }
    return out;
}

/// Where a quilt is not basted alike in all its passes: in which passes of somebody's there is such
/// a call; empty where it is in all of them.
QString someOf(const SheetContext& c, const std::vector<Part>& parts, Call call) {
    std::vector<int> passes;
    bool all = true;
    for (const Part& part : parts) {
        const auto calls = callsOf(c.ways(part.quilt, part.pass->number));
        const bool has = std::ranges::count(calls, call) > 0;
        all = all && (has || !c.isMixed(part.quilt));
        if (has)
            passes.push_back(part.pass->number);
    }
    if (all || c.severalQuilts())
        return {};
    return passes.size() == 1 ? Text::tr("Pass %1:").arg(passes.front())
                              : Text::tr("Passes %1:").arg(numbers(passes));
}

} // namespace

std::vector<OwnCall> ownCalls(const SheetContext& c, const Helper& who,
                              const std::vector<Part>& parts) {
    const std::vector<Call> order = callsInOrder(c, parts);
    const Calls calls{c, who, parts};
    const bool moves = std::ranges::any_of(parts, [](const Part& p) { return p.pass->number > 1; });
    std::vector<OwnCall> out;
    for (const Call call : order)
        if (call != Call::move || moves)
            out.push_back({call, calls.at(call)});
    for (OwnCall& own : out)
        if (const QString where = someOf(c, parts, own.call); !where.isEmpty())
            own.words.insert(own.words.begin(), {where + QChar::Space, true});
    if (std::ranges::any_of(
            parts, [&](const Part& p) { return p.pass == &c.plan.quilts[p.quilt].passes.back(); }))
        out.push_back({Call::rollUp, calls.at(Call::rollUp)});
    return out;
}

QString careOf(const Helper& who, const std::vector<Part>& parts) {
    QStringList words{Text::tr("The times are about right; the call counts.")};
    const auto does = [&](TaskKind kind) {
        return std::ranges::any_of(parts, [&](const Part& p) { return p.does(kind); });
    };
    for (const Way& way : allWays())
        for (const WayStep& step : way.steps)
            if (step.words && !step.words->care.empty() && does(step.kind))
                words << language::said(step.words->care);
    if (does(TaskKind::shift))
        words << Text::tr("Too heavy? Say so and wait for more hands.");
    if (who.seated)
        words << Text::tr("You sit: nothing is carried over your head.");
    return words.join(QChar::Space);
}

} // namespace bastewright::sheets
