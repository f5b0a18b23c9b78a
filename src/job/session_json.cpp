#include "job/job_fields.h"

#include <algorithm>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <set>

namespace bastewright {
namespace {

constexpr std::string_view kJobFormat = "bastewright-job", kSessionFormat = "bastewright-session";
constexpr int kVersion = 1;
constexpr std::array<std::string_view, 6> kSettingFields{"room",           "helpers", "breaks",
                                                         "propose_breaks", "start",   "stash"};

Finding stopFinding(Sentence text) {
    return {Finding::Kind::input, Finding::Level::stop, "", std::move(text), ""};
}

template <class Fields, class R>
void roomFields(Fields& f, R& room) {
    [[maybe_unused]] int tables = 0;
    f.list("tables", room.tables, limits::kTables, [&](Fields& t, auto& table) {
        t.length("length", table.length, {12_in, 240_in});
        t.length("width", table.width, {12_in, 120_in});
        t.count("count", table.count, {0, limits::kTables});
        t.text("group", table.group);
        tables += table.count;
    });
    if constexpr (Fields::kReads)
        if (tables > limits::kTables)
            f.stop("tables",
                   core::says("are %1 in all; up to %2 are accepted.", tables, limits::kTables));
    f.words("walls", room.walls, kSideWords);
    f.length("inset", room.inset, {Length{}, 12_in});
    f.length("wall_gap", room.wallGap, {Length{}, 240_in});
    f.count("irons", room.irons, {0, limits::kIrons});
    f.count("surfaces", room.surfaces, {0, limits::kTables});
    f.object("together", room.together, [](Fields& t, auto& together) {
        constexpr Within<Length> kSide{12_in, 1440_in};
        t.require({"length", "width"});
        t.length("length", together.length, kSide);
        t.length("width", together.width, kSide);
        if constexpr (Fields::kReads)
            if (t.sound() && together.length < together.width)
                t.stop("width",
                       core::says("is %1 while length is %2; up to the length is accepted.",
                                  core::length(together.width, t.unit()),
                                  core::length(together.length, t.unit())));
    });
}

Sentence untilTooEarly(ClockTime until, ClockTime from) {
    return core::says("is %1 while from is %2; a later time of the same day is accepted.", until,
                      from);
}

void checkHelper(FieldReader& f, const Helper& helper, ClockTime start,
                 std::set<std::string>& names) {
    if (f.has("name") && helper.name.find_first_not_of(' ') == std::string::npos)
        f.stop("name", core::says("is blank; a name is accepted."));
    else if (f.has("name") && !names.insert(helper.name).second)
        f.stop("name",
               core::says("is \"%1\" again; a different name each is accepted.", helper.name));
    if (helper.until && helper.from && *helper.until <= *helper.from)
        f.stop("until", untilTooEarly(*helper.until, *helper.from));
    else if (helper.until && *helper.until <= start)
        f.warn("until", core::says("is %1 while the work starts at %2; %3 is never there.",
                                   *helper.until, start, helper.name));
}

void checkBreak(FieldReader& f, const Break& rest) {
    if (f.sound() && f.has("from") && f.has("until") && rest.until <= rest.from)
        f.stop("until", untilTooEarly(rest.until, rest.from));
}

template <class Fields>
void breakFields(Fields& b, auto& rest) {
    b.require({"from", "until"});
    b.clock("from", rest.from);
    b.clock("until", rest.until);
    if constexpr (Fields::kReads)
        checkBreak(b, rest);
}

template <class Fields, class S>
void settingFields(Fields& f, S& setting) {
    f.object("room", [&](Fields& r) { roomFields(r, setting.room); });
    f.clock("start", setting.start);
    [[maybe_unused]] std::set<std::string> names;
    f.list("helpers", setting.helpers, limits::kHelpers, [&](Fields& h, auto& helper) {
        h.require({"name"});
        h.text("name", helper.name);
        h.length("reach", helper.reach, {6_in, 60_in});
        h.length("lean", helper.lean, {Length{}, 24_in});
        h.number("pace", helper.pace, {limits::kSlowestPace, limits::kFastestPace});
        h.clock("from", helper.from);
        h.clock("until", helper.until);
        h.list("breaks", helper.breaks, limits::kBreaks,
               [](Fields& b, auto& rest) { breakFields(b, rest); });
        h.flag("irons", helper.irons);
        h.flag("lifts", helper.lifts);
        h.flag("closes", helper.closes);
        h.flag("pins", helper.pins);
        h.flag("bends", helper.bends);
        h.flag("seated", helper.seated);
        h.word("side", helper.side, kSideWords);
        if constexpr (Fields::kReads)
            checkHelper(h, helper, setting.start, names);
    });
    f.list("breaks", setting.breaks, limits::kBreaks,
           [](Fields& b, auto& rest) { breakFields(b, rest); });
    f.flag("propose_breaks", setting.proposeBreaks);
    f.object("stash", [&](Fields& s) {
        constexpr Within<int> kCount{0, limits::kOnHand};
        s.count("pins", setting.stash.pins, kCount);
        s.count("clamps", setting.stash.clamps, kCount);
        s.list("clips", setting.stash.clips, 20, [&](Fields& c, auto& clip) {
            c.require({"holds"});
            c.length("holds", clip.holds, {Length::inch64ths(16), 24_in});
            c.count("count", clip.count, kCount);
        });
        s.length("tape", setting.stash.tape, {Length{}, 1000_yd});
    });
}

/// Which of the two a file is: what it says, else what it holds.
bool isSessionFile(FieldReader& reader, const Json& root) {
    const auto format = root.find("format");
    if (format != root.end()) {
        constexpr std::array kFormats{Word{kJobFormat, false}, Word{kSessionFormat, true}};
        bool session = root.contains("jobs");
        reader.word("format", session, kFormats);
        return session;
    }
    return root.contains("jobs") && !root.contains("top");
}

void readVersion(FieldReader& reader) {
    int version = kVersion;
    reader.count("version", version, {kVersion, kVersion});
}

void readJobFile(FieldReader& reader, Session& session) {
    Job& job = session.jobs.emplace_back();
    reader.keepUnknownIn(job.unknown);
    readJob(reader, job);
    reader.keepUnknownIn(session.unknown);
    readSetting(reader, session.setting);
    reader.keepUnknownIn(job.unknown);
}

/// A quilt of a session file may be a whole job file; its own setting gives way to the shared one.
void readQuilt(FieldReader& reader, Job& job) {
    constexpr std::array kFormats{Word{kJobFormat, 0}};
    int format = 0;
    reader.word("format", format, kFormats);
    readVersion(reader);
    reader.keepUnknownIn(job.unknown);
    readJob(reader, job);
    for (const auto key : kSettingFields)
        reader.setAside(key, core::says("is set aside: a session has one %1 for all its quilts, "
                                        "beside \"jobs\"; it is kept but has no effect.",
                                        key));
}

void readSessionFields(FieldReader& reader, const Json& root, Session& session) {
    reader.keepUnknownIn(session.unknown);
    reader.require({"jobs"});
    Unit unit = Unit::inch;
    reader.unit("unit", unit);
    reader.list("jobs", session.jobs, limits::kQuilts,
                [](FieldReader& r, Job& job) { readQuilt(r, job); });
    if (root.contains("jobs") && root["jobs"].is_array() && root["jobs"].empty())
        reader.stop("jobs",
                    core::says("is an empty list; 1 to %1 quilts are accepted.", limits::kQuilts));
    // A file without a unit of its own is in that of its first quilt.
    if (!reader.has("unit") && !session.jobs.empty())
        reader.setUnit(session.jobs.front().unit);
    readSetting(reader, session.setting);
}

SessionRead read(std::string_view text) {
    SessionRead out;
    const JsonLimits within{.bytes = limits::kFileBytes};
    const auto root = parseJson(text, within, out.problems);
    if (!root)
        return out;
    Problems problems;
    for (auto& f : out.problems)
        problems.add(std::move(f));
    out.problems.clear();
    Session session;
    if (!root->is_object()) {
        problems.add(
            stopFinding(core::says("The file is %1; a job or a session as an object in {} is "
                                   "accepted.",
                                   quoted(*root))));
    } else {
        FieldReader reader{*root, "", problems};
        session.severalQuilts = isSessionFile(reader, *root);
        readVersion(reader);
        // Another kind of file has nothing that is worth a finding each.
        if (reader.sound()) {
            if (session.severalQuilts)
                readSessionFields(reader, *root, session);
            else
                readJobFile(reader, session);
            reader.finish();
        }
        // Nobody named: one person with the trade's usual reach.
        if (!root->contains("helpers"))
            session.setting.helpers.emplace_back().name = "You";
    }
    out.problems = std::move(problems).inOrder(*root);
    if (!anyStop(out.problems))
        out.session = std::move(session);
    return out;
}

SessionRead refused(Sentence text) {
    return {{}, {stopFinding(std::move(text))}};
}

} // namespace

void readSetting(FieldReader& reader, Setting& setting) {
    settingFields(reader, setting);
}

void writeSetting(FieldWriter& writer, const Setting& setting) {
    settingFields(writer, setting);
}

SessionRead readSession(std::string_view text) {
    try {
        return read(text);
    } catch (const std::exception& error) { // memory; the readers themselves do not throw
        return refused(core::says("The file could not be read: %1.", error.what()));
    }
}

SessionRead readSessionFile(const std::string& path) {
    namespace fs = std::filesystem;
    std::error_code error;
    const auto status = fs::status(path, error);
    if (!fs::exists(status))
        return refused(core::says("There is no file %1; the path of a job or session file is "
                                  "accepted.",
                                  path));
    if (fs::is_directory(status))
        return refused(
            core::says("%1 is a folder; the path of a job or session file is accepted.", path));
    if (!fs::is_regular_file(status))
        return refused(
            core::says("%1 is not an ordinary file; a job or session file is accepted.", path));
    const auto bytes = fs::file_size(path, error);
    if (!error && bytes > limits::kFileBytes)
        return refused(core::says("%1 has %2 bytes; up to %3 bytes are accepted.", path, bytes,
                                  limits::kFileBytes));
    std::ifstream in{path, std::ios::binary};
    // One byte more than accepted, so that a file that grew meanwhile is still refused.
    std::string text(limits::kFileBytes + 1, '\0');
    if (in)
        in.read(text.data(), static_cast<std::streamsize>(text.size()));
    if (!in && !in.eof())
        return refused(core::says("%1 cannot be read; check that you may open it.", path));
    text.resize(static_cast<std::size_t>(in.gcount()));
    return readSession(text);
}

std::string writeSession(const Session& session) {
    Json root = Json::object();
    FieldWriter writer{root, LengthStyle::textWhereInexact};
    const bool several = session.severalQuilts || session.jobs.size() != 1;
    root["format"] = several ? kSessionFormat : kJobFormat;
    root["version"] = kVersion;
    if (several) {
        writer.unit("unit", session.jobs.empty() ? Unit::inch : session.jobs.front().unit);
        writer.list("jobs", session.jobs, limits::kQuilts,
                    [](FieldWriter& w, const Job& job) { writeJob(w, job); });
    } else {
        writeJob(writer, session.jobs.front());
    }
    writeSetting(writer, session.setting);
    for (std::size_t i = 0; i < session.jobs.size(); ++i) {
        const auto base = several ? "/jobs/" + std::to_string(i) : std::string{};
        for (const auto& [pointer, text] : session.jobs[i].unknown)
            putBack(root, base + pointer, text);
    }
    for (const auto& [pointer, text] : session.unknown)
        putBack(root, pointer, text);
    return printJson(root);
}

} // namespace bastewright
