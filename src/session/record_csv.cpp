#include "session/record.h"

#include <array>
#include <cstdio>

namespace bastewright {
namespace {

std::string isoTime(std::int64_t ms) {
    const std::chrono::sys_time<std::chrono::milliseconds> at{std::chrono::milliseconds{ms}};
    const auto day = std::chrono::floor<std::chrono::days>(at);
    const std::chrono::year_month_day date{day};
    const std::chrono::hh_mm_ss time{std::chrono::floor<std::chrono::seconds>(at - day)};
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02uT%02d:%02d:%02dZ", int(date.year()),
                  unsigned(date.month()), unsigned(date.day()), int(time.hours().count()),
                  int(time.minutes().count()), int(time.seconds().count()));
    return text.data();
}

// RFC 4180. A spreadsheet would take a name such as "=1+1" for a formula: it is set apart by an
// apostrophe.
std::string field(const std::string& text) {
    std::string out;
    if (!text.empty() && std::string_view{"=+-@\t\r"}.find(text.front()) != std::string_view::npos)
        out += '\'';
    out += text;
    if (out.find_first_of(",\"\r\n") == std::string::npos)
        return out;
    std::string quoted = "\"";
    for (const char c : out)
        quoted += c == '"' ? std::string{"\"\""} : std::string(1, c);
    return quoted + "\"";
}

std::string callName(Call call) {
    switch (call) {
    case Call::setUp:
        return "set-up";
    case Call::lay:
        return "lay";
    case Call::clamp:
        return "clamp";
    case Call::pin:
        return "pin";
    case Call::handsOff:
        return "hands-off";
    case Call::close:
        return "close";
    case Call::stitch:
        return "stitch";
    case Call::spray:
        return "spray";
    case Call::dotBelow:
        return "dot-below";
    case Call::dotAbove:
        return "dot-above";
    case Call::press:
        return "press";
    case Call::cool:
        return "cool";
    case Call::wait:
        return "wait";
    case Call::check:
        return "check";
    case Call::move:
        return "move";
    case Call::rollUp:
        break;
    }
    return "roll-up";
}

/// Columns that not every kind of event fills.
struct Told {
    std::string zone{}, person{}, text{};
    std::int64_t count = 0; ///< of pins, of points of a zone, or 1 for yes
};

Told toldBy(const RecordLine& line) {
    Told out{.count = line.points};
    std::visit(
        [&out](const auto& what) {
            if constexpr (requires { what.zone; })
                out.zone = what.zone;
            if constexpr (requires { what.person; })
                out.person = what.person;
            if constexpr (requires { what.text; })
                out.text = what.text;
            if constexpr (requires { what.check; })
                out.text = what.check;
            if constexpr (requires { what.count; })
                out.count = what.count;
            if constexpr (requires { what.yes; })
                out.count = what.yes;
        },
        line.what);
    return out;
}

} // namespace

std::string recordCsv(const Record& record, const Session& session) {
    std::string out = "time,minute,quilt,pass,call,what,zone,person,seconds,count,text\r\n";
    for (const auto& line : record.lines) {
        const bool ofQuilt =
            line.job >= 0 && static_cast<std::size_t>(line.job) < session.jobs.size();
        const std::string what{line.step ? name(*line.step) : name(line.what)};
        const Told told = toldBy(line);
        const std::array<std::string, 11> fields{
            isoTime(line.atMs),
            std::to_string(line.since.count() / 60),
            ofQuilt ? session.jobs[static_cast<std::size_t>(line.job)].name : "",
            line.pass > 0 ? std::to_string(line.pass) : "",
            line.call ? callName(*line.call) : "",
            what,
            std::string{zoneName(told.zone)},
            told.person,
            line.took ? std::to_string(line.took->count()) : "",
            told.count != 0 ? std::to_string(told.count) : "",
            told.text};
        for (std::size_t i = 0; i < fields.size(); ++i)
            out += (i > 0 ? "," : "") + (i == 9 ? fields[i] : field(fields[i]));
        out += "\r\n";
    }
    return out;
}

} // namespace bastewright
