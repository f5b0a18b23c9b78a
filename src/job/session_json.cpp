#include "job/fields/field_writer.h"
#include "job/fields/quilt_fields.h"
#include "job/fields/setting_fields.h"

#include <algorithm>
#include <cstdint>
#include <filesystem>
#include <fstream>

namespace bastewright {
namespace {

constexpr std::string_view kJobFormat = "bastewright-job", kSessionFormat = "bastewright-session";
constexpr int kVersion = 1;
constexpr std::array<std::string_view, 6> kSettingFields{"room",           "helpers", "breaks",
                                                         "propose_breaks", "start",   "stash"};

Finding stopFinding(Sentence text) {
    return {Finding::Kind::input, Finding::Level::stop, "", std::move(text), ""};
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
    quilt_fields::ofQuilt(reader, job);
    reader.keepUnknownIn(session.unknown);
    setting_fields::ofSetting(reader, session.setting);
    reader.keepUnknownIn(job.unknown);
}

/// A quilt of a session file may be a whole job file; its own setting gives way to the shared one.
void readQuilt(FieldReader& reader, Job& job) {
    constexpr std::array kFormats{Word{kJobFormat, 0}};
    int format = 0;
    reader.word("format", format, kFormats);
    readVersion(reader);
    reader.keepUnknownIn(job.unknown);
    quilt_fields::ofQuilt(reader, job);
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
    setting_fields::ofSetting(reader, session.setting);
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
        problems.add(stopFinding(core::says(
            "The file is %1; a basting plan as an object in {} is accepted.", quoted(*root))));
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
        return refused(core::says("There is no file %1; give the path of a basting plan.", path));
    if (fs::is_directory(status))
        return refused(core::says("%1 is a folder; give the path of a basting plan.", path));
    if (!fs::is_regular_file(status))
        return refused(
            core::says("%1 is not an ordinary file; give the path of a basting plan.", path));
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
                    [](FieldWriter& w, const Job& job) { quilt_fields::ofQuilt(w, job); });
    } else {
        quilt_fields::ofQuilt(writer, session.jobs.front());
    }
    setting_fields::ofSetting(writer, session.setting);
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
