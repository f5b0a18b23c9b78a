#include "session/carried_json.h"

#include "job/job_json.h"
#include "plan/plan_json.h"

namespace bastewright {
namespace {

/// What is told of a file of ours that cannot be read.
Sentence whatIsWrong(const Findings& problems) {
    return problems.empty() ? core::says("it is empty.") : problems.front().text;
}

/// A file inside an event, as text again for its own reader.
std::optional<std::string> fileIn(const Json& event, const char* field) {
    const auto it = event.find(field);
    if (it == event.end())
        return {};
    return it->is_string() ? it->get<std::string>()
                           : it->dump(-1, ' ', false, Json::error_handler_t::replace);
}

struct Texts {
    std::optional<std::string> plan, session;
};

/// Of older libraries: a plan that stands alone, or both, each as a text.
Texts textsOf(const std::string& text) {
    // A plan that stands alone passes one of these limits and is left to its own reader.
    constexpr JsonLimits kWithin{.bytes = 100'000'000, .values = 10, .depth = 2, .fields = 4};
    Findings problems;
    const auto both = parseJson(text, kWithin, problems);
    const auto isText = [&](const char* key) {
        return both->contains(key) && both->at(key).is_string();
    };
    if (problems.empty() && both && both->is_object() && isText("session") && isText("plan"))
        return {both->at("plan").get<std::string>(), both->at("session").get<std::string>()};
    return {text, {}};
}

What unread(happened::Unread::Kind kind, const Json& event, Sentence why) {
    Json kept = Json::object();
    for (const char* field : {"plan", "session", "text"})
        if (const auto it = event.find(field); it != event.end())
            kept[field] = *it;
    return happened::Unread{kind, compactJson(kept), std::move(why)};
}

What readSetting(const Json& event) {
    const auto now = fileIn(event, "session");
    auto read = readSession(now ? *now : fileIn(event, "text").value_or(""));
    if (!read.session)
        return unread(
            happened::Unread::Kind::setting, event,
            core::says("The changed setting cannot be read: %1", whatIsWrong(read.problems)));
    return happened::NewSetting{std::make_shared<const Session>(std::move(*read.session))};
}

What readNewPlan(const Json& event) {
    Texts texts{fileIn(event, "plan"), fileIn(event, "session")};
    if (!texts.plan)
        texts = textsOf(fileIn(event, "text").value_or(""));
    constexpr auto kPlan = happened::Unread::Kind::plan;
    auto plan = readPlan(*texts.plan);
    if (!plan.plan)
        return unread(kPlan, event,
                      core::says("The new plan cannot be read: %1", whatIsWrong(plan.problems)));
    happened::NewPlan out;
    if (texts.session) {
        auto session = readSession(*texts.session);
        if (!session.session)
            return unread(kPlan, event, core::says("The session of the new plan cannot be read."));
        out.session = std::make_shared<const Session>(std::move(*session.session));
    }
    out.plan = std::make_shared<const Plan>(std::move(*plan.plan));
    return out;
}

/// As an object; where our own text would not be read back, as that text.
Json asObject(const std::string& text) {
    return parseOwnJson(text).value_or(Json(text));
}

} // namespace

void writeCarried(const What& what, Json& event) {
    if (const auto* setting = std::get_if<happened::NewSetting>(&what)) {
        event["session"] = asObject(writeSession(*setting->session));
    } else if (const auto* next = std::get_if<happened::NewPlan>(&what)) {
        if (next->session)
            event["session"] = asObject(writeSession(*next->session));
        event["plan"] = asObject(writePlan(*next->plan));
    } else if (const auto* unread = std::get_if<happened::Unread>(&what)) {
        const Json kept = asObject(unread->members);
        for (const auto& [field, value] : kept.items())
            event[field] = value;
    }
}

void readCarried(What& what, const Json& event) {
    if (std::holds_alternative<happened::NewSetting>(what))
        what = readSetting(event);
    else if (std::holds_alternative<happened::NewPlan>(what))
        what = readNewPlan(event);
}

} // namespace bastewright
