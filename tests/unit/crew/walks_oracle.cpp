#include "unit/crew/walks_oracle.h"

#include "plan/call.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <sstream>

namespace bastewright::made {
namespace {

constexpr double kStep = 24;

double roundOf(const Rect& t) {
    return 2 * (t.width() + t.length()).in();
}

/// Inches from the table's head-left corner on the way a clock goes.
double onTheWay(const Rect& t, Side side, Length at) {
    const double w = t.width().in(), l = t.length().in();
    switch (side) {
    case Side::head:
        return (at - t.x0).in();
    case Side::right:
        return w + (at - t.y0).in();
    case Side::foot:
        return w + l + (t.x1 - at).in();
    case Side::left:
        break;
    }
    return 2 * w + l + (t.y1 - at).in();
}

struct Arc {
    double from = 0, size = 0; ///< clockwise
};

Arc arcOf(const Rect& t, const StandingPlace& p) {
    const double a = onTheWay(t, p.side, p.along.lo), b = onTheWay(t, p.side, p.along.hi);
    return {std::min(a, b), std::abs(b - a)};
}

double ahead(double from, double to, double round) {
    return std::fmod(to - from + 2 * round, round);
}

/// The shortest arc round all of them.
Arc hull(const std::vector<Arc>& arcs, double round) {
    Arc best{0, round};
    for (const Arc& first : arcs) {
        double size = 0;
        for (const Arc& a : arcs)
            size = std::max(size, ahead(first.from, a.from, round) + a.size);
        if (size < best.size)
            best = {first.from, size};
    }
    return best;
}

const Pass* passOf(const QuiltPlan& quilt, int number) {
    const auto at = std::ranges::find(quilt.passes, number, &Pass::number);
    return at == quilt.passes.end() ? nullptr : &*at;
}

/// Where somebody stands for the zones of one call, in the order they do them.
struct Round {
    int job = 0, pass = 0;
    double round = 0;
    std::vector<double> at;
};

double between(double a, double b, double round) {
    const double d = std::abs(a - b);
    return std::min(d, round - d);
}

std::map<std::string, std::vector<Round>> roundsOf(const std::vector<QuiltPlan>& quilts,
                                                   const CrewPlan& plan) {
    std::map<std::string, std::vector<Round>> out;
    std::map<std::string, std::tuple<int, int, TaskKind, bool>> last;
    for (const Task& t : plan.tasks) { // by start
        if (t.zone.empty() || t.places.size() != 1 || t.people.size() != 1)
            continue;
        const Pass* pass = passOf(quilts[std::size_t(t.job)], t.pass);
        const std::string& who = t.people.front();
        const std::tuple now{t.job, t.pass, t.kind, t.id.ends_with(".back")};
        auto& rounds = out[who];
        if (rounds.empty() || last[who] != now)
            rounds.push_back({t.job, t.pass, roundOf(pass->table), {}});
        last[who] = now;
        rounds.back().at.push_back(
            onTheWay(pass->table, t.places.front().side, t.places.front().along.middle()));
    }
    return out;
}

/// The least walk through these rounds: each from one end of its stretch to the other, and from
/// where it ends to where the next begins, which is the next one's end nearer to the quilt's middle
/// and nobody's choice.
double least(const std::vector<Round>& rounds) {
    double out = 0;
    const Round* before = nullptr;
    for (const Round& r : rounds) {
        std::vector<Arc> arcs;
        for (const double a : r.at)
            arcs.push_back({a, 0});
        out += hull(arcs, r.round).size;
        if (before && before->job == r.job)
            out += between(before->at.back(), r.at.front(), r.round);
        before = &r;
    }
    return out;
}

double walked(const std::vector<Round>& rounds) {
    double out = 0;
    const Round* before = nullptr;
    for (const Round& r : rounds) {
        if (before && before->job == r.job)
            out += between(before->at.back(), r.at.front(), r.round);
        for (std::size_t k = 1; k < r.at.size(); ++k)
            out += between(r.at[k - 1], r.at[k], r.round);
        before = &r;
    }
    return out;
}

template <class... T>
std::string text(const T&... parts) {
    std::ostringstream out;
    (out << ... << parts);
    return out.str();
}

void connected(const QuiltPlan& quilt, std::vector<std::string>& out) {
    for (const Pass& p : quilt.passes) {
        const double round = roundOf(p.table);
        for (const Stretch& s : p.stretches) {
            std::vector<Arc> arcs;
            for (const StandingPlace& e : s.edges)
                arcs.push_back(arcOf(p.table, e));
            const Arc all = hull(arcs, round);
            for (const Stretch& o : p.stretches)
                for (const StandingPlace& e : o.edges)
                    if (&o != &s &&
                        ahead(all.from, arcOf(p.table, e).from + arcOf(p.table, e).size / 2,
                              round) < all.size - 1e-6)
                        out.push_back(text("pass ", p.number, ": ", o.person,
                                           " stands between the parts of ", s.person));
        }
    }
}

void rested(const Session& session, const CrewPlan& plan, std::vector<std::string>& out) {
    if (!session.setting.proposeBreaks)
        return;
    constexpr Seconds kMost{2 * 60 * 60}, kRest{5 * 60};
    std::map<std::string, std::pair<Seconds, Seconds>> spans; // since when, until when
    for (const Task& t : plan.tasks)
        for (const std::string& who : t.people) {
            auto& span = spans.try_emplace(who, t.start, t.start).first->second;
            if (t.start - span.second >= kRest)
                span.first = t.start;
            span.second = std::max(span.second, t.end);
            if (span.second - span.first > kMost) {
                out.push_back(text(who, " works from ", span.first.count(), " to ",
                                   span.second.count(), " without a break"));
                span.first = span.second;
            }
        }
}

} // namespace

std::vector<std::string> longLists(const CrewPlan& plan) {
    std::vector<std::string> out;
    // Where a pass has dots and pins, both have their own.
    std::map<std::tuple<std::string, int, int, bool>, std::set<Call>> lines;
    for (const Task& t : plan.tasks)
        if (!t.zone.empty() && !t.people.empty() && !t.id.ends_with(".back")) {
            const bool dots = t.kind == TaskKind::dotLower || t.kind == TaskKind::dotUpper ||
                              t.kind == TaskKind::press;
            lines[{t.people.front(), t.job, t.pass, dots}].insert(callOf(t.kind));
        }
    for (const auto& [key, calls] : lines)
        if (calls.size() > 3)
            out.push_back(
                text(std::get<0>(key), " has ", calls.size(), " lines in pass ", std::get<2>(key)));
    return out;
}

std::vector<Walk> walks(const Session&, const std::vector<QuiltPlan>& quilts,
                        const CrewPlan& plan) {
    std::vector<Walk> out;
    for (const auto& [who, rounds] : roundsOf(quilts, plan))
        out.push_back({who, walked(rounds), least(rounds)});
    return out;
}

std::vector<std::string> brokenWalks(const Session& session, const std::vector<QuiltPlan>& quilts,
                                     const CrewPlan& plan) {
    std::vector<std::string> out;
    for (const QuiltPlan& q : quilts)
        connected(q, out);
    for (const Walk& w : walks(session, quilts, plan))
        if (w.inches > 1.2 * w.least + kStep)
            out.push_back(text(w.person, " walks ", w.inches, " in, the least is ", w.least));
    rested(session, plan, out);
    return out;
}

} // namespace bastewright::made
