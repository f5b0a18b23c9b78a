#include "checker/view.h"

#include "checker/ways/seen_way.h"

#include <algorithm>
#include <charconv>
#include <cstdlib>
#include <functional>

namespace bastewright::check {

std::string QuiltView::label() const {
    return quilt.name.empty() ? "quilt " + std::to_string(index + 1) : quilt.name;
}

std::vector<const Task*> QuiltView::tasks() const {
    std::vector<const Task*> out;
    for (const Task& t : plan.tasks)
        if (t.job == index)
            out.push_back(&t);
    return out;
}

std::vector<const Task*> QuiltView::tasks(TaskKind kind, int number) const {
    std::vector<const Task*> out;
    for (const Task& t : plan.tasks)
        if (t.job == index && t.kind == kind && t.pass == number)
            out.push_back(&t);
    return out;
}

const Pass* QuiltView::pass(int number) const {
    for (const Pass& p : quilt.passes)
        if (p.number == number)
            return &p;
    return nullptr;
}

const Zone* QuiltView::zone(std::string_view id) const {
    for (const Zone& z : quilt.zones)
        if (z.id == id)
            return &z;
    return nullptr;
}

const Finding* QuiltView::tells(Finding::Kind kind, std::string_view subject,
                                Finding::Level atLeast) const {
    const auto at = std::ranges::find_if(plan.findings, [&](const Finding& f) {
        return f.kind == kind && f.level >= atLeast && (f.quilt < 0 || f.quilt == index) &&
               f.subject == subject;
    });
    return at == plan.findings.end() ? nullptr : &*at;
}

bool QuiltView::stopped() const {
    return std::ranges::any_of(plan.findings, [&](const Finding& f) {
        // Where one quilt has no surface nobody is planned at any.
        return f.level == Finding::Level::stop &&
               (f.quilt < 0 || f.quilt == index || f.kind == Finding::Kind::noSurface);
    });
}

PlanView::PlanView(const Session& s, const Plan& p)
    : PlanView{s, p, p} {}

PlanView::PlanView(const Session& s, const Plan& part, const Plan& whole)
    : session{s}
    , plan{part}
    , written{whole} {
    const std::size_t n = std::min(s.jobs.size(), part.quilts.size());
    for (std::size_t i = 0; i < n; ++i)
        quilts.push_back({s, part, whole, static_cast<int>(i), s.jobs[i], part.quilts[i],
                          topRect(s.jobs[i].top)});
}

const QuiltView* PlanView::quilt(int index) const {
    return index >= 0 && index < std::ssize(quilts) ? &quilts[static_cast<std::size_t>(index)]
                                                    : nullptr;
}

const Helper* PlanView::helper(std::string_view name) const {
    for (const Helper& h : session.setting.helpers)
        if (h.name == name)
            return &h;
    return nullptr;
}

bool PlanView::stopped() const {
    return anyStop(plan.findings);
}

Rect workBox(const Zone& zone) {
    if (zone.points.empty())
        return zone.area;
    const Point first = zone.points.front().at;
    Rect out{first.x, first.y, first.x, first.y};
    for (const PlacedPoint& p : zone.points) {
        out.x0 = std::min(out.x0, p.at.x);
        out.y0 = std::min(out.y0, p.at.y);
        out.x1 = std::max(out.x1, p.at.x);
        out.y1 = std::max(out.y1, p.at.y);
    }
    return out;
}

bool isPressedTwice(const QuiltView& v, const Zone& zone) {
    const auto& from = seenWay(v.job, zone).turnedFrom;
    return from && !zone.points.empty() && v.job.batting.thickness > *from;
}

bool isPressedTwice(const QuiltView& v) {
    return std::ranges::any_of(v.quilt.zones, [&](const Zone& z) { return isPressedTwice(v, z); });
}

std::string figure(double number) {
    char text[40];
    const auto end = std::to_chars(text, text + sizeof text, number, std::chars_format::fixed, 3);
    std::string out(text, end.ptr);
    while (out.back() == '0')
        out.pop_back();
    if (out.back() == '.')
        out.pop_back();
    return out == "-0" ? "0" : out;
}

std::string label(const QuiltView& v, const Pass& pass) {
    return v.label() + ", pass " + std::to_string(pass.number);
}

std::string label(const QuiltView& v, const Pass& pass, Side side) {
    return label(v, pass) + ", " + std::string{name(side)};
}

std::string label(const Task& task) {
    return "Task '" + task.id + "'";
}

namespace {

/// An element of the file: itself where all of the plan is looked at, else one that is called as it
/// is.
template <class T, class Name>
Pointer element(const Pointer& of, std::string_view key, const std::vector<T>& written,
                const T& one, bool isWhole, Name name) {
    if (isWhole)
        return of.in(key, written, one);
    const auto same = std::ranges::find(written, std::invoke(name, one), name);
    return same == written.end() ? of / key : of.in(key, written, *same);
}

} // namespace

Pointer where(const QuiltView& v) {
    return v.written.quilts.size() == 1 ? Pointer{} : Pointer{} / "quilts" / v.index;
}

Pointer where(const QuiltView& v, const Pass& pass) {
    return element(where(v), "passes", v.written.quilts[std::size_t(v.index)].passes, pass,
                   &v.plan == &v.written, &Pass::number);
}

Pointer where(const QuiltView& v, const Pass& pass, const Stretch& stretch) {
    const auto& all = v.written.quilts[std::size_t(v.index)].passes;
    const auto of = std::ranges::find(all, pass.number, &Pass::number);
    const bool isWhole = &v.plan == &v.written || of == all.end();
    return element(where(v, pass), "stretches", isWhole ? pass.stretches : of->stretches, stretch,
                   isWhole, &Stretch::person);
}

Pointer where(const QuiltView& v, const Zone& zone) {
    return where(v).in("zones", v.quilt.zones, zone);
}

Pointer where(const QuiltView& v, const Zone& zone, const PlacedPoint& point) {
    return where(v, zone).in("points", zone.points, point);
}

Pointer where(const QuiltView& v, const Task& task) {
    return element({}, "tasks", v.written.tasks, task, &v.plan == &v.written, &Task::id);
}

Pointer where(const PlanView& v, const Task& task) {
    return element({}, "tasks", v.written.tasks, task, &v.plan == &v.written, &Task::id);
}

Pointer where(const PlanView& v, const Finding& said) {
    return Pointer{}.in("findings", v.plan.findings, said);
}

Pointer whereOfAll(const PlanView& v, std::string_view keys) {
    return v.written.quilts.size() == 1 ? Pointer{} / keys : Pointer{} / "quilts";
}

Length washed(Length cloth, double shrinkPercent) {
    return Length::nearestInches(cloth.in() * (1 - shrinkPercent / 100));
}

std::string figure(Length l, Unit unit) {
    return figure(inUnit(l, unit)) + " " + std::string{symbol(unit)};
}

std::string place(Point p, Unit unit) {
    return figure(inUnit(p.x, unit)) + ", " + figure(p.y, unit);
}

std::string box(const Rect& r, Unit unit) {
    return figure(inUnit(r.x0, unit)) + "–" + figure(inUnit(r.x1, unit)) + " by " +
           figure(inUnit(r.y0, unit)) + "–" + figure(r.y1, unit);
}

std::string clock(Seconds s) {
    std::string out;
    const auto twoDigits = [&](std::int64_t n) {
        out += ':';
        out += static_cast<char>('0' + n / 10);
        out += static_cast<char>('0' + n % 10);
    };
    const std::int64_t n = std::abs(s.count());
    if (s < Seconds{})
        out += '-';
    out += std::to_string(n / 3600);
    twoDigits(n / 60 % 60);
    twoDigits(n % 60);
    return out;
}

} // namespace bastewright::check
