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

/// Each member by its name in files, in their order.
template <class OneOf, class Each>
void eachMember(OneOf& what, const Each& each) {
    std::visit(
        [&each](auto& w) {
            if constexpr (requires { w.job; })
                each("job", w.job);
            if constexpr (requires { w.pass; })
                each("pass", w.pass);
            if constexpr (requires { w.zone; })
                each("zone", w.zone);
            if constexpr (requires { w.person; })
                each("person", w.person);
            if constexpr (requires { w.task; })
                each("task", w.task);
            if constexpr (requires { w.target; })
                each("target", w.target);
            if constexpr (requires { w.check; })
                each("text", w.check);
            if constexpr (requires { w.text; })
                each("text", w.text);
            if constexpr (requires { w.yes; })
                each("count", w.yes);
            if constexpr (requires { w.count; })
                each("count", w.count);
            if constexpr (requires { w.secondsAgo; })
                each("count", w.secondsAgo);
        },
        what);
}

} // namespace

std::string writeEvent(const Event& e) {
    Json out;
    out["id"] = e.id;
    out["kind"] = name(e.what);
    const auto put = [&out]<class T>(const char* field, const T& value) {
        if (value != T{})
            out[field] = value;
    };
    put("at", e.atMs);
    eachMember(e.what, put);
    writeCarried(e.what, out);
    return compactJson(out);
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
    auto what = whatNamed(kind);
    if (what)
        eachMember(*what, [&members](const char* field, auto& to) { members.read(field, to); });
    if (!members.problem().empty())
        return tl::unexpected(members.problem());
    if (e.id.empty())
        return tl::unexpected(std::string{"The event has no id; every event carries its own."});
    if (!what)
        return tl::unexpected("The event's kind is " + quoted(Json(kind)) +
                              "; it must be a known one such as \"zone-opened\".");
    readCarried(*what, *in);
    e.what = std::move(*what);
    return e;
}

} // namespace bastewright
