#include "sheets/exchange/calendar.h"

#include <algorithm>
#include <cstdint>
#include <cstdio>

namespace bastewright {
namespace {

using std::chrono::days;
using std::chrono::floor;
using std::chrono::sys_seconds;

std::string stamp(sys_seconds t, bool utc) {
    const auto day = floor<days>(t);
    const std::chrono::year_month_day date{day};
    const std::chrono::hh_mm_ss time{t - day};
    char text[48];
    std::snprintf(text, sizeof text, "%04d%02u%02uT%02d%02d%02d%s", int(date.year()),
                  unsigned(date.month()), unsigned(date.day()), int(time.hours().count()),
                  int(time.minutes().count()), int(time.seconds().count()), utc ? "Z" : "");
    return text;
}

/// RFC 5545, 3.3.11.
std::string escaped(const std::string& text) {
    std::string out;
    for (const char c : text) {
        if (c == '\n') {
            out += "\\n";
            continue;
        }
        if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f)
            continue;
        if (c == '\\' || c == ';' || c == ',')
            out += '\\';
        out += c;
    }
    return out;
}

bool continuesCharacter(char c) {
    return (static_cast<unsigned char>(c) & 0xC0) == 0x80;
}

/// Folded after at most 75 octets, never inside a character; a folded line begins with a space.
void line(std::string& out, const std::string& text) {
    constexpr std::size_t kOctets = 75;
    std::size_t from = 0;
    while (from < text.size()) {
        const std::size_t room = from == 0 ? kOctets : kOctets - 1;
        std::size_t to = std::min(text.size(), from + room);
        while (to < text.size() && to > from + 1 && continuesCharacter(text[to]))
            --to;
        if (from > 0)
            out += ' ';
        out.append(text, from, to - from).append("\r\n");
        from = to;
    }
}

/// FNV-1a, 64 bits: an identifier that depends on the words alone.
std::string identifier(const std::string& words) {
    std::uint64_t h = 14695981039346656037ULL;
    for (const char c : words)
        h = (h ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
    char text[40];
    std::snprintf(text, sizeof text, "%016llx@bastewright", static_cast<unsigned long long>(h));
    return text;
}

struct Event {
    std::string key, summary, description;
    sys_seconds from, to;
};

void write(std::string& out, const Event& e, sys_seconds now) {
    line(out, "BEGIN:VEVENT");
    line(out, "UID:" + identifier(e.key));
    line(out, "DTSTAMP:" + stamp(now, true));
    line(out, "DTSTART:" + stamp(e.from, false));
    line(out, "DTEND:" + stamp(e.to, false));
    line(out, "SUMMARY:" + escaped(e.summary));
    if (!e.description.empty())
        line(out, "DESCRIPTION:" + escaped(e.description));
    line(out, "END:VEVENT");
}

/// The names of quilts or helpers as a list; those without a name are left out.
template <class Named>
std::string namesOf(const std::vector<Named>& all) {
    std::string names;
    for (const auto& one : all) {
        if (!names.empty() && !one.name.empty())
            names += ", ";
        names += one.name;
    }
    return names;
}

} // namespace

std::string calendar(const Session& session, const Plan& plan, std::chrono::year_month_day day,
                     sys_seconds now) {
    const Setting& setting = session.setting;
    const sys_seconds midnight = std::chrono::sys_days{day};
    const sys_seconds start = midnight + setting.start.sinceMidnight, end = start + plan.finish;
    const std::string date = stamp(midnight, false);
    std::string names = namesOf(plan.quilts);
    if (names.empty())
        names = plan.quilts.size() > 1 ? "quilts" : "a quilt";

    std::string out;
    line(out, "BEGIN:VCALENDAR");
    line(out, "VERSION:2.0");
    line(out, "PRODID:-//Bastewright//Bastewright//EN");
    write(out, {date + names, "Basting: " + names, namesOf(setting.helpers), start, end}, now);
    for (const auto& h : setting.helpers) {
        // Hours are those of the session's day; what lies outside the session is left off.
        const sys_seconds from = std::max(start, h.from ? midnight + h.from->sinceMidnight : start);
        const sys_seconds to = std::min(end, h.until ? midnight + h.until->sinceMidnight : end);
        if (from < to)
            write(out, {date + names + '\n' + h.name, h.name + ": basting " + names, "", from, to},
                  now);
    }
    for (const PlannedBreak& b : plan.breaks) {
        std::string who;
        for (const std::string& name : b.people)
            who += (who.empty() ? "" : ", ") + name;
        write(out,
              {date + names + "\nbreak " + std::to_string(b.start.count()), "Break: " + names, who,
               start + b.start, start + b.end},
              now);
    }
    line(out, "END:VCALENDAR");
    return out;
}

} // namespace bastewright
