#include "app/plan_text.h"

#include "plan/supply.h"
#include "planners/surface/reachable.h"
#include "ways/point_words.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <sstream>

namespace bastewright::app {
namespace {

std::string sizeText(Size s, Unit unit) {
    return format(s.width, unit, false) + " × " + format(s.length, unit);
}

std::string number(double n) {
    char buffer[32];
    std::snprintf(buffer, sizeof buffer, "%.4g", n);
    return buffer;
}

/// How many columns a terminal gives a text: one each for every character but the continuation
/// bytes.
std::size_t columns(const std::string& text) {
    return static_cast<std::size_t>(std::ranges::count_if(
        text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

std::string padded(std::string text, std::size_t width) {
    for (std::size_t n = columns(text); n < width; ++n)
        text += ' ';
    return text;
}

std::string counted(std::size_t n, const std::string& one, const std::string& many) {
    return std::to_string(n) + ' ' + (n == 1 ? one : many);
}

std::string counted(std::size_t n, const std::string& one) {
    return counted(n, one, one + 's');
}

std::string startText(Basting::Start s) {
    return s == Basting::Start::centred        ? "centered"
           : s == Basting::Start::besideMiddle ? "beside the middle"
                                               : "from one end";
}

std::string shiftText(Vec shift, bool pulled, Unit unit) {
    std::string out;
    if (shift.dx != Length{})
        out +=
            format(abs(shift.dx), unit) + (shift.dx > Length{} ? " to the right" : " to the left");
    if (shift.dy != Length{})
        out += std::string{out.empty() ? "" : " and "} + format(abs(shift.dy), unit) +
               (shift.dy > Length{} ? " toward the foot" : " toward the head");
    return out.empty() ? "the quilt is laid" : (pulled ? "pull across " : "shift ") + out;
}

/// "7 a side, about 17 in apart": how often each side is held.
std::string holdText(const Hold& h, Unit unit) {
    std::string out = std::string{name(h.side)} + ' ' + std::to_string(h.count) +
                      (h.kind == Hold::Kind::clamp ? " clamps" : " tapes");
    if (h.apart > Length{})
        out += " about " + format(h.apart, unit) + " apart";
    return out;
}

std::string beyondText(Beyond b) {
    switch (b) {
    case Beyond::nothing:
        break;
    case Beyond::hangs:
        return "hangs";
    case Beyond::chairs:
        return "rests on chairs";
    case Beyond::spareTable:
        return "rests on the spare table";
    case Beyond::rolled:
        return "is rolled";
    case Beyond::onTable:
        return "lies rolled on the table";
    }
    return "ends on the table";
}

void passes(std::ostream& out, const QuiltPlan& q, const Job& job, Unit unit) {
    out << "\n  Passes\n";
    const auto how = std::ranges::find_if(q.alternatives, &Alternative::chosen);
    if (how != q.alternatives.end() && how->shifted > Length{}) {
        out << "    shifts together " << format(how->shifted, unit);
        out << '\n';
    }
    for (const Pass& p : q.passes) {
        out << "    " << p.number << "  " << shiftText(p.shift, p.pulled, unit);
        if (p.liftPeople > 1)
            out << ", " << p.liftPeople << " people";
        out << "; baste " << format(p.fresh.bounds().width(), unit, false) << " × "
            << format(p.fresh.bounds().length(), unit) << ", " << p.zones.size() << " zones, "
            << countsSentence(job, q.zones, p.number).english();
        for (const Hold& h : p.holds)
            out << (&h == p.holds.data() ? "\n       hold: " : ", ") << holdText(h, unit);
        for (const Side s : kSides)
            out << (s == Side::head ? "\n       quilt: " : ", ") << name(s) << ' '
                << beyondText(p.beyond[s]);
        std::string hanging; // elsewhere the backing ends on the table
        for (const Side s : kSides)
            if (p.backingOverhang[s] > Length{})
                hanging += (hanging.empty() ? "\n       backing hangs: " : ", ") +
                           std::string{name(s)} + ' ' + format(p.backingOverhang[s], unit);
        out << hanging << '\n';
        for (const Roll& r : p.rolls)
            out << "       " << name(r.side) << ": " << (r.folded ? "fold " : "roll ")
                << format(r.rolled, unit)
                << (r.folded
                        ? std::string{" on a support"}
                        : ", about " + format(r.diameter, unit) + " thick, " +
                              std::to_string(r.clips) + " clips of " + format(r.clipHolds, unit))
                << '\n';
    }
}

std::string liftText(const Alternative& a, Unit unit) {
    if (a.passes + a.pulls < 2)
        return "nothing to lift";
    const int lifts = a.passes + a.pulls - 1;
    return std::to_string(lifts) + (lifts == 1 ? " lift of " : " lifts of ") +
           formatWeight(a.liftKilograms, unit) + " by " + std::to_string(a.liftPeople);
}

/// How deep it goes, and how many of the helpers get there.
std::string reachText(const Alternative& a, const std::vector<Helper>& helpers, Unit unit) {
    if (a.reach == Length{})
        return "";
    std::string out = format(a.reach, unit) + " deep";
    if (helpers.empty())
        return out;
    const auto n =
        std::ranges::count_if(helpers, [&](const Helper& h) { return leaningReach(h) >= a.reach; });
    return out + ", " + std::to_string(n) + " of " + std::to_string(helpers.size()) + " reach it";
}

void alternatives(std::ostream& out, const Session& session, const QuiltPlan& q, Unit unit) {
    out << "\n  Ways compared, before the work is shared out\n";
    for (const Alternative& a : q.alternatives) {
        out << "    " << (a.chosen ? "> " : "  ") << a.surface << ", "
            << (a.quiltLengthAlongLength ? "length along" : "length across") << ", "
            << startText(a.start);
        if (a.workable) {
            const std::string reach = reachText(a, session.setting.helpers, unit);
            out << ": " << counted(std::size_t(a.passes), "pass", "passes") << ", about "
                << formatSpan(a.predicted) << "\n        " << liftText(a, unit)
                << (reach.empty() ? "" : "; ") << reach << "; " << a.why << '\n';
        } else {
            out << "\n        " << a.why << '\n';
        }
    }
}

void layers(std::ostream& out, const QuiltPlan& q, Unit unit) {
    if (q.backing) {
        out << "\n  Backing: " << counted(q.backing->panels.size(), "panel") << ", fabric "
            << (q.backing->along ? "along" : "across") << " the quilt";
        const auto chosen =
            std::ranges::find_if(q.backing->alternatives, &BackingAlternative::chosen);
        if (chosen != q.backing->alternatives.end())
            out << ": " << chosen->text;
        out << '\n';
        for (const Sentence& thing : q.backing->toBring)
            out << "    bring: " << thing << '\n';
        for (const auto& [what, text] : {std::pair{"least to buy: ", q.backing->leastBought},
                                         std::pair{"next best: ", q.backing->runnerUp},
                                         std::pair{"with less to spare: ", q.backing->nearestMiss}})
            if (!text.empty())
                out << "    " << what << text << '\n';
    }
    if (q.batting) {
        out << "  Batting: " << sizeText(q.layers.batting, unit);
        if (q.batting->buy.empty())
            out << ", " << counted(q.batting->pieces.size(), "leftover");
        out << '\n';
        for (const Sentence& thing : q.batting->toBring)
            out << "    bring: " << thing << '\n';
        if (!q.batting->joinCost.empty())
            out << "    " << q.batting->joinCost << '\n';
        for (const BattingAlternative& a : q.batting->alternatives)
            if (!a.chosen)
                out << "    or: " << a.text << '\n';
    }
}

void people(std::ostream& out, const Session& session, const Plan& plan) {
    out << "\nPeople\n";
    std::vector<std::string> names;
    for (const Helper& h : session.setting.helpers)
        names.push_back(h.name);
    if (names.empty())
        for (const Task& t : plan.tasks)
            for (const std::string& n : t.people)
                if (std::ranges::find(names, n) == names.end())
                    names.push_back(n);
    for (const std::string& n : names) {
        Seconds busy{}, last{};
        std::size_t tasks = 0;
        for (const Task& t : plan.tasks)
            if (std::ranges::find(t.people, n) != t.people.end()) {
                busy += t.end - t.start;
                last = std::max(last, t.end);
                ++tasks;
            }
        out << "  " << padded(n, 24) << padded(counted(tasks, "task"), 12) << "busy "
            << padded(formatSpan(busy), 14) << "done at "
            << format(after(session.setting.start, last)) << '\n';
    }
}

} // namespace

std::string findingText(const Finding& f) {
    std::string out = std::string{name(f.level)} + ": " + (f.field.empty() ? "" : f.field + ": ") +
                      f.text.english();
    if (!f.cure.empty())
        out += "\n      " + f.cure.english();
    return out;
}

namespace {

/// How the points are placed, and the marks of both ribbons.
void placing(std::ostringstream& out, const QuiltPlan& q, const Job& job) {
    if (!q.rows && !q.blocks)
        return;
    out << "    " << (q.rows ? rowsSentence(*q.rows, job) : blocksSentence(*q.blocks, job)) << '\n';
    for (const Sentence& s : q.rows ? rowsDetails(*q.rows, job) : blocksDetails(*q.blocks, job))
        out << "    " << s << '\n';
    if (!q.rows)
        return;
    const bool across = q.rows->along == PinRows::Along::width;
    const auto marks = [&](const std::string& name, const std::vector<Length>& of, bool fromLeft) {
        out << "    " << name << (fromLeft ? " from the left edge:" : " from the head:");
        for (const Length& at : of)
            out << ' ' << format(at, job.unit, false) << (&at == &of.back() ? "\n" : ",");
    };
    const auto &odd = q.rows->ribbons.odd, &even = q.rows->ribbons.even;
    marks(odd == even ? "Marks of all rows" : "Marks of odd rows", odd, across);
    if (odd != even && !even.empty())
        marks("Marks of even rows", even, across);
    marks("Rows", q.rows->ribbons.side, !across);
}

} // namespace

std::string supplyFigure(const Supply& supply, double n, Unit unit) {
    return isSaidInEighths(supply.kind, unit) ? inEighths(n) : number(n);
}

std::string planText(const Session& session, const Plan& plan) {
    std::ostringstream out;
    const Unit unit = plan.unit;
    for (std::size_t i = 0; i < plan.quilts.size(); ++i) {
        const QuiltPlan& q = plan.quilts[i];
        const Job& job = session.jobs.at(i);
        out << (q.name.empty() ? "Quilt" : q.name) << " — " << sizeText(q.layers.top, unit) << '\n';
        out << "  Layers: batting " << sizeText(q.layers.batting, unit) << ", backing "
            << sizeText(q.layers.backing, unit) << '\n';
        if (!q.passes.empty()) {
            out << "  Surface: " << q.surface.name << ", " << format(q.surface.length, unit, false)
                << " × " << format(q.surface.width, unit) << "; the quilt's "
                << (q.surface.quiltLengthAlongLength ? "length" : "width") << " lies along it\n";
            out << "  Passes: " << q.passes.size() << " (none could do with fewer than "
                << q.bounds.passes << ")\n";
            out << "  " << countsSentence(job, q.zones).english() << "; no fewer than "
                << q.bounds.points << " could cover it\n";
            placing(out, q, job);
            passes(out, q, job, unit);
        }
        alternatives(out, session, q, unit);
        layers(out, q, unit);
        out << '\n';
    }
    if (!plan.tasks.empty()) {
        out << "Finish at " << format(after(session.setting.start, plan.finish)) << ", after "
            << formatSpan(wholeMinutes(plan.finish)) << "; no plan of these tasks could end before "
            << format(after(session.setting.start, plan.finishBound)) << '\n';
        people(out, session, plan);
    }
    if (!plan.help.empty())
        out << "\nWhat would help most\n";
    for (const Help& h : plan.help)
        out << "  " << padded(h.change.english(), 44) << "saves " << formatSpan(h.saved) << '\n';
    out << "\nBring\n";
    for (const Supply& s : plan.supplies) {
        // The unit of pins is how long they are, which no number should stand before.
        const bool pins = s.kind == Supply::Kind::pins && !s.unit.empty();
        const std::string item = s.item.english() + (pins ? ", " + s.unit.english() : "");
        out << "  " << padded(item, 44) << "need " << padded(supplyFigure(s, s.need, plan.unit), 8)
            << "have " << padded(supplyFigure(s, s.have, plan.unit), 8) << "buy "
            << supplyFigure(s, s.buy, plan.unit)
            << (pins || s.unit.empty() ? "" : ' ' + s.unit.english()) << '\n';
        if (!s.note.empty())
            out << "    " << s.note << '\n';
    }
    if (!plan.findings.empty())
        out << "\nFindings\n";
    for (const Finding& f : plan.findings)
        out << "  " << findingText(f) << '\n';
    return out.str();
}

} // namespace bastewright::app
