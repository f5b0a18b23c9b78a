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
                       : plain(others(TaskKind::smooth, Text::tr("Wait. %1 feels for ripples and "
                                                                 "looks at the hang.")));
        case Call::cool:
            return plain(Text::tr("Nobody touches it."));
        case Call::check:
            return does(TaskKind::checkUnderside)
                       ? plain(Text::tr("Look underneath: no pleat. Turn some up: is the back "
                                        "caught?"))
                       : plain(others(TaskKind::checkUnderside,
                                      Text::tr("Wait. %1 looks underneath.")));
        case Call::move:
            return move();
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

    /// Who does it in this person's passes; empty where that is nobody, or too many to name.
    QString doneBy(TaskKind kind) const {
        std::vector<std::string> people;
        for (const Task& t : c_.plan.tasks)
            for (const Part& part : parts_)
                if (t.kind == kind && t.job == int(part.quilt) && t.pass == part.pass->number)
                    for (const std::string& name : t.people)
                        if (name != who_.name && std::ranges::count(people, name) == 0)
                            people.push_back(name);
        return people.empty() || people.size() > 3 ? QString{} : names(people);
    }

    /// The sentence with whoever does it; without anybody, only waiting.
    QString others(TaskKind kind, const QString& sentence) const {
        const QString people = doneBy(kind);
        return people.isEmpty() ? Text::tr("Wait.") : sentence.arg(people);
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
        return plain(words.join(QChar::Space));
    }

    std::vector<Span> clamp() const {
        if (std::ranges::all_of(parts_, [](const Part& p) { return p.holds.empty(); }))
            return plain(Text::tr("Nothing of yours to hold: wait."));
        const auto usual = usualHolds(parts_);
        const bool clamps = std::ranges::any_of(parts_, [](const Part& p) {
            return std::ranges::count(p.holds, Hold::Kind::clamp, &HoldPoint::kind) > 0;
        });
        std::vector<Span> out;
        if (usual) {
            out = {{Text::tr("Yours:") + QChar::Space},
                   {usual->rounds.empty() ? Text::tr("none") : numbers(usual->rounds), true}};
            if (usual->other)
                out.push_back(
                    {Text::tr(" (pass %1: %2)")
                         .arg(usual->other->pass->number)
                         .arg(usual->other->holds.empty() ? Text::tr("none")
                                                          : numbers(rounds(usual->other->holds)))});
            out.push_back({Text::tr(", each when it is called.") + QChar::Space});
        } else {
            out = {{Text::tr("Yours stand below, each when it is called.") + QChar::Space}};
        }
        if (clamps) {
            out.push_back({Text::tr("First the backing; once all lie,") + QChar::Space});
            out.push_back({Text::tr("move the clamps to all three layers."), true});
        } else {
            out.push_back({Text::tr("Tape on the backing only.")});
        }
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

std::optional<UsualHolds> usualHolds(const std::vector<Part>& parts) {
    std::map<std::vector<int>, std::vector<const Part*>> sets;
    for (const Part& part : parts)
        sets[rounds(part.holds)].push_back(&part);
    if (sets.empty() || sets.size() > 2)
        return {};
    const auto usual =
        std::ranges::max_element(sets, {}, [](const auto& set) { return set.second.size(); });
    UsualHolds out{usual->first};
    for (const auto& [numbers, whose] : sets)
        if (numbers != usual->first) {
            if (whose.size() > 1 || usual->second.size() == 1)
                return {};
            out.other = whose.front();
        }
    return out;
}

std::vector<OwnCall> ownCalls(const SheetContext& c, const Helper& who,
                              const std::vector<Part>& parts) {
    std::set<Basting::With> ways;
    for (const Part& part : parts)
        ways.insert(c.with(part.quilt));
    std::vector<Call> order;
    for (const Basting::With with : ways)
        for (const Call call : wayOf(with).calls)
            if (std::ranges::count(order, call) == 0)
                order.push_back(call);
    std::ranges::sort(order);
    const Calls calls{c, who, parts};
    const bool moves = std::ranges::any_of(parts, [](const Part& p) { return p.pass->number > 1; });
    std::vector<OwnCall> out;
    for (const Call call : order)
        if (call != Call::move || moves)
            out.push_back({call, calls.at(call)});
    return out;
}

} // namespace bastewright::sheets
