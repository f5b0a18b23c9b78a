#include "session/event_json.h"

#include "job/json_text.h"
#include "session/carried_json.h"

#include <limits>

namespace bastewright {
namespace {

// A new plan and its session stand in it, in older libraries as texts quoted twice over; each has
// its own reader with its own limits.
constexpr JsonLimits kWithin{
    .bytes = 200'000'000, .values = 4'000'000, .depth = 40, .fields = 1000};

// Reads members one by one and remembers the first that is wrong.
class Members {
public:
    explicit Members(const Json& object)
        : object_{object} {}

    void read(const char* field, std::string& to) {
        const auto it = object_.find(field);
        if (it == object_.end())
            return;
        if (it->is_string())
            to = it->get<std::string>();
        else
            refuse(field, *it, "text");
    }

    template <class Whole>
    void read(const char* field, Whole& to) {
        const auto it = object_.find(field);
        if (it == object_.end())
            return;
        // An unsigned number above the signed range would wrap silently in get().
        const bool fits =
            it->is_number_integer() &&
            (!it->is_number_unsigned() ||
             it->get<std::uint64_t>() <= std::uint64_t(std::numeric_limits<Whole>::max())) &&
            it->get<std::int64_t>() >= std::int64_t(std::numeric_limits<Whole>::min());
        if (fits)
            to = it->get<Whole>();
        else
            refuse(field, *it, "a whole number");
    }

    const std::string& problem() const { return problem_; }

private:
    void refuse(const char* field, const Json& value, const char* accepted) {
        if (problem_.empty())
            problem_ = std::string{"The event's "} + field + " is " + quoted(value) +
                       "; it must be " + accepted + ".";
    }

    const Json& object_;
    std::string problem_;
};

} // namespace

std::string writeEvent(const Event& e) {
    const Event plain;
    Json out;
    out["id"] = e.id;
    out["kind"] = name(e.kind);
    const auto put = [&out](const char* field, const auto& value, const auto& usual) {
        if (value != usual)
            out[field] = value;
    };
    put("at", e.atMs, plain.atMs);
    put("job", e.job, plain.job);
    put("pass", e.pass, plain.pass);
    put("zone", e.zone, plain.zone);
    put("person", e.person, plain.person);
    put("task", e.task, plain.task);
    put("target", e.target, plain.target);
    put("text", e.text, plain.text);
    put("count", e.count, plain.count);
    writeCarried(e.carried, out);
    return out.dump(-1, ' ', false, Json::error_handler_t::replace);
}

tl::expected<Event, std::string> readEvent(std::string_view text) {
    Findings problems;
    const auto in = parseJson(text, kWithin, problems);
    if (!problems.empty())
        return tl::unexpected("The event is not a JSON object that is accepted: " +
                              problems.front().text.english());
    if (!in || !in->is_object())
        return tl::unexpected(std::string{"The event is not a JSON object."});
    Event e;
    std::string kind;
    Members members{*in};
    members.read("id", e.id);
    members.read("kind", kind);
    members.read("at", e.atMs);
    members.read("job", e.job);
    members.read("pass", e.pass);
    members.read("zone", e.zone);
    members.read("person", e.person);
    members.read("task", e.task);
    members.read("target", e.target);
    const auto known = eventKind(kind);
    const bool plain = !known || !carries(*known);
    if (plain)
        members.read("text", e.text);
    members.read("count", e.count);
    if (!members.problem().empty())
        return tl::unexpected(members.problem());
    if (e.id.empty())
        return tl::unexpected(std::string{"The event has no id; every event carries its own."});
    if (!known)
        return tl::unexpected("The event's kind is " + quoted(Json(kind)) +
                              "; it must be a known one such as \"zone-opened\".");
    e.kind = *known;
    e.carried = readCarried(e.kind, *in);
    return e;
}

} // namespace bastewright
