#include "app/plan_text.h"
#include "language/said.h"
#include "ways/point_words.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <sstream>

namespace bastewright::app {
namespace {

constexpr std::size_t kColumns = 80;
constexpr std::size_t kMostPasses = 9; // of more only how many there are

/// How many columns a terminal gives a text: one each for every character but the continuation
/// bytes.
std::size_t columnsOf(std::string_view text) {
    return static_cast<std::size_t>(std::ranges::count_if(
        text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

/// A paragraph broken at spaces so that no line is longer than a terminal's; the lines after the
/// first stand as far in as `indent`.
void wrapped(std::ostream& out, const std::string& text, std::size_t indent) {
    std::string line;
    // Numbers stay with their units.
    std::istringstream words{language::figure(QString::fromStdString(text)).toStdString()};
    // Spaces at the beginning are an indent of the first line.
    line.assign(std::min(text.find_first_not_of(' '), text.size()), ' ');
    bool first = true;
    for (std::string word; words >> word;) {
        if (!first && columnsOf(line) + 1 + columnsOf(word) > kColumns) {
            out << line << '\n';
            line.assign(indent, ' ');
            first = true;
        }
        line += (first ? "" : " ") + word;
        first = false;
    }
    out << line << '\n';
}

std::string at(const Session& session, Seconds t) {
    return format(after(session.setting.start, t));
}

/// First and last second of a pass, or of all of a quilt (0), without setting up and rolling up.
std::pair<Seconds, Seconds> timesOf(const Plan& plan, std::size_t quilt, int pass) {
    std::optional<Seconds> from, until;
    for (const Task& t : plan.tasks)
        if (t.job == int(quilt) && (pass == 0 || t.pass == pass) && t.kind != TaskKind::setUp &&
            t.kind != TaskKind::handOver) {
            from = std::min(from.value_or(t.start), t.start);
            until = std::max(until.value_or(t.end), t.end);
        }
    return {from.value_or(Seconds{}), until.value_or(Seconds{})};
}

/// To the half inch or the centimetre, as it is measured by hand.
std::string halves(Length l, Unit unit, bool withUnit = true) {
    const Length step = unit == Unit::inch ? Length::inch64ths(32) : Length::millimetres(10);
    return format(step * ((2 * l.nm() + step.nm()) / (2 * step.nm())), unit, withUnit);
}

std::string quiltName(const Plan& plan, std::size_t i) {
    const std::string& name = plan.quilts[i].name;
    return name.empty() ? "Quilt " + std::to_string(i + 1) : name;
}

std::string moveOf(const QuiltPlan& q, const Pass& p, Unit unit) {
    if (&p == &q.passes.front())
        return "laid";
    std::string way;
    if (p.shift.dx != Length{})
        way += halves(abs(p.shift.dx), unit) + (p.shift.dx > Length{} ? " right" : " left");
    if (p.shift.dy != Length{})
        way += (way.empty() ? "" : ", ") + halves(abs(p.shift.dy), unit) +
               (p.shift.dy > Length{} ? " to the foot" : " to the head");
    return (p.pulled ? "pulled across " : "moved ") + way;
}

std::string hangOf(const Pass& p, Unit unit) {
    std::string out;
    for (const Side s : kSides)
        if (p.backingOverhang[s] > Length{})
            out += (out.empty() ? "" : ", ") + std::string{name(s)} + ' ' +
                   halves(p.backingOverhang[s], unit, false);
    return out.empty() ? out : "; backing hangs " + out;
}

/// The passes of all quilts and the breaks, in order of time.
void passLines(std::ostream& out, const Session& session, const Plan& plan) {
    struct Line {
        Seconds at;
        std::string text;
    };
    std::vector<Line> lines;
    for (std::size_t i = 0; i < plan.quilts.size() && i < session.jobs.size(); ++i) {
        const QuiltPlan& q = plan.quilts[i];
        for (const Pass& p : q.passes) {
            const Seconds begins = timesOf(plan, i, p.number).first;
            lines.push_back(
                {begins, "  " + at(session, begins) + "  " +
                             (plan.quilts.size() > 1 ? quiltName(plan, i) + ", " : "") + "pass " +
                             std::to_string(p.number) + ": " + moveOf(q, p, plan.unit) + "; " +
                             countsSentence(session.jobs[i], q.zones, p.number).english() +
                             hangOf(p, plan.unit)});
        }
    }
    for (const PlannedBreak& b : plan.breaks)
        lines.push_back(
            {b.start, "  " + at(session, b.start) + "  break, " + formatSpan(b.end - b.start)});
    std::ranges::stable_sort(lines, {}, &Line::at);
    for (const Line& line : lines)
        wrapped(out, line.text, 9);
}

std::size_t passCount(const Plan& plan) {
    std::size_t n = 0;
    for (const QuiltPlan& q : plan.quilts)
        n += q.passes.size();
    return n;
}

std::string quiltLine(const Session& session, const Plan& plan, std::size_t i) {
    const QuiltPlan& q = plan.quilts[i];
    const auto times = timesOf(plan, i, 0);
    std::string out = "  " + quiltName(plan, i) + ": " +
                      format(q.layers.top.width, plan.unit, false) + " × " +
                      format(q.layers.top.length, plan.unit);
    if (q.passes.empty())
        return out + ", no plan";
    const auto passes = std::ranges::count(q.passes, false, &Pass::pulled);
    out += ", " + q.surface.name.english();
    if (plan.quilts.size() > 1)
        out += ", table " + std::to_string(q.surface.number);
    out += "; " + countsSentence(session.jobs[i], q.zones).english() + " in " +
           std::to_string(passes) + (passes == 1 ? " pass" : " passes") + ", " +
           at(session, times.first) + " to " + at(session, times.second);
    return out;
}

std::string amount(const Supply& s, double n, Unit unit) {
    std::string out = supplyFigure(s, n, unit);
    if (!s.unit.empty() && s.kind != Supply::Kind::pins)
        out += ' ' + s.unit.english();
    return out + ' ' + s.item.english();
}

std::string supplies(const Plan& plan, bool buy) {
    std::string out;
    for (const Supply& s : plan.supplies)
        if (const double n = buy ? s.buy : s.need; n > 0)
            out += (out.empty() ? "" : "; ") + amount(s, n, plan.unit);
    return out;
}

} // namespace

std::string planSummary(const Session& session, const Plan& plan) {
    std::ostringstream out;
    for (const Finding& f : plan.findings)
        if (f.level == Finding::Level::stop)
            wrapped(out, findingText(f), 6);
    for (std::size_t i = 0; i < plan.quilts.size() && i < session.jobs.size(); ++i)
        wrapped(out, quiltLine(session, plan, i), 4);
    if (!plan.tasks.empty()) {
        const bool known = plan.range.middle > Seconds{};
        std::string finish = "Begins " + format(session.setting.start) + ", finishes about " +
                             at(session, known ? plan.range.middle : plan.finish);
        if (known)
            finish +=
                " (" + at(session, plan.range.early) + " to " + at(session, plan.range.late) + ")";
        wrapped(out, finish + ".", 0);
    }
    if (plan.quilts.size() == 1 && plan.quilts.front().rows && !session.jobs.empty())
        wrapped(out, rowsSentence(*plan.quilts.front().rows, session.jobs.front()).english(), 0);
    if (plan.quilts.size() == 1 && plan.quilts.front().blocks && !session.jobs.empty())
        wrapped(out, blocksSentence(*plan.quilts.front().blocks, session.jobs.front()).english(),
                0);
    if (passCount(plan) <= kMostPasses)
        passLines(out, session, plan);
    if (!plan.supplies.empty()) {
        wrapped(out, "Bring: " + supplies(plan, false) + ".", 2);
        const std::string buy = supplies(plan, true);
        wrapped(out, "Still to get: " + (buy.empty() ? "nothing" : buy) + ".", 2);
    }
    std::size_t notes = 0;
    for (const Finding& f : plan.findings) {
        if (f.level == Finding::Level::warn)
            wrapped(out,
                    "Check first: " + f.text.english() +
                        (f.cure.empty() ? "" : ' ' + f.cure.english()),
                    2);
        notes += f.level == Finding::Level::note ? 1 : 0;
    }
    out << (notes == 0   ? "Everything"
            : notes == 1 ? "1 tip, and everything else"
                         : std::to_string(notes) + " tips, and everything else")
        << ": bastewright plan JOB --all\n";
    return out.str();
}

} // namespace bastewright::app
