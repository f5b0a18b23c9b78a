#include "sheets/exchange/csv.h"

#include "plan/find.h"

#include <algorithm>
#include <cstdio>

namespace bastewright {
namespace {

std::string number(double n) {
    char text[40];
    std::snprintf(text, sizeof text, "%.10g", n);
    std::ranges::replace(text, ',', '.'); // whatever the locale of the process
    return text;
}

std::string yesNo(bool b) {
    return b ? "yes" : "no";
}

std::string clockOrNothing(const std::optional<ClockTime>& t) {
    return t ? format(*t) : "";
}

void line(std::string& out, const std::vector<std::string>& fields) {
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (i > 0)
            out += ',';
        out += csvField(fields[i]);
    }
    out += "\r\n";
}

std::string pointsIn(const QuiltPlan& quilt, const Task& task) {
    const Zone* zone = findZone(quilt, task.zone);
    return zone ? std::to_string(zone->points.size()) : "";
}

} // namespace

std::string csvText(std::string_view text) {
    constexpr std::string_view kBegins = "=+-@\t\r";
    const bool formula = !text.empty() && kBegins.find(text.front()) != kBegins.npos;
    return formula ? "'" + std::string{text} : std::string{text};
}

std::string csvField(std::string_view text) {
    if (text.find_first_of(",\"\r\n") == std::string_view::npos)
        return std::string{text};
    std::string out{'"'};
    for (const char c : text) {
        if (c == '"')
            out += '"';
        out += c;
    }
    return out + '"';
}

std::string bringCsv(const Plan& plan) {
    std::string out;
    line(out, {"item", "need", "have", "buy", "unit"});
    for (const auto& s : plan.supplies)
        line(out, {csvText(s.item.english()), number(s.need), number(s.have), number(s.buy),
                   csvText(s.unit.english())});
    return out;
}

std::string crewCsv(const Session& session, Unit unit) {
    std::string out;
    line(out, {"name", "from", "until", "reach", "unit", "pace", "closes", "irons", "lifts",
               "seated", "trouble_breathing"});
    for (const auto& h : session.setting.helpers)
        line(out, {csvText(h.name), clockOrNothing(h.from), clockOrNothing(h.until),
                   number(inUnit(h.reach, unit)), std::string{symbol(unit)}, number(h.pace),
                   yesNo(h.closes), yesNo(h.irons), yesNo(h.lifts), yesNo(h.seated),
                   yesNo(h.troubleBreathing)});
    return out;
}

std::string tasksCsv(const Session& session, const Plan& plan) {
    std::string out;
    line(out, {"person", "start", "end", "quilt", "pass", "task", "zone", "points"});
    auto rest = plan.breaks.begin();
    const auto breaksUntil = [&](Seconds time) {
        for (; rest != plan.breaks.end() && rest->start <= time; ++rest)
            for (const auto& h : session.setting.helpers)
                if (rest->people.empty() || std::ranges::count(rest->people, h.name) > 0)
                    line(out, {csvText(h.name), format(after(session.setting.start, rest->start)),
                               format(after(session.setting.start, rest->end)), "", "", "break", "",
                               ""});
    };
    for (const auto& t : plan.tasks) {
        breaksUntil(t.start);
        if (t.job < 0 || std::size_t(t.job) >= plan.quilts.size())
            continue;
        const QuiltPlan& quilt = plan.quilts[std::size_t(t.job)];
        for (const auto& person : t.people)
            line(out, {csvText(person), format(after(session.setting.start, t.start)),
                       format(after(session.setting.start, t.end)), csvText(quilt.name),
                       std::to_string(t.pass), std::string{name(t.kind)}, csvText(zoneName(t.zone)),
                       pointsIn(quilt, t)});
    }
    breaksUntil(Seconds::max());
    return out;
}

} // namespace bastewright
