#include "session/event.h"

#include "plan/plan.h"

#include <algorithm>
#include <array>
#include <utility>

namespace bastewright {
namespace {

/// Where a word stands twice, the first is what it is read as.
const auto& words() {
    static const auto all = std::to_array<std::pair<std::string_view, What>>({
        {"session-started", happened::Started{}},
        {"step-done", happened::Step{}},
        {"check-answered", happened::Answer{}},
        {"zone-dotted", happened::ZoneTick{Tick::dotted}},
        {"zone-opened", happened::ZoneTick{Tick::opened}},
        {"zone-closed", happened::ZoneTick{Tick::closed}},
        {"zone-pressed", happened::ZoneTick{Tick::pressed}},
        {"zone-again", happened::ZoneAgain{}},
        {"undone", happened::Undone{}},
        {"pass-abandoned", happened::LeftOut{}},
        {"pass-released", happened::Released{}},
        {"person-in", happened::Presence{happened::Presence::Kind::in}},
        {"person-out", happened::Presence{happened::Presence::Kind::out}},
        {"pins-found", happened::Pins{happened::Pins::Kind::found}},
        {"pins-back", happened::Pins{happened::Pins::Kind::back}},
        {"pins-in-box", happened::Pins{happened::Pins::Kind::inBox}},
        {"pins-counted", happened::PinsCounted{}},
        {"note", happened::Note{}},
        {"paused", happened::Paused{}},
        {"resumed", happened::Resumed{}},
        {"setting-changed", happened::NewSetting{}},
        {"replanned", happened::NewPlan{}},
        {"setting-changed", happened::Unread{happened::Unread::Kind::setting}},
        {"replanned", happened::Unread{happened::Unread::Kind::plan}},
        {"session-ended", happened::Ended{}},
    });
    return all;
}

bool isOfOneKind(const What& a, const What& b) {
    return a.index() == b.index() && std::visit(
                                         [&b]<class T>(const T& own) {
                                             if constexpr (requires { own.kind; })
                                                 return own.kind == std::get<T>(b).kind;
                                             else
                                                 return true;
                                         },
                                         a);
}

template <class T>
bool same(const std::shared_ptr<const T>& a, const std::shared_ptr<const T>& b) {
    return a == b || (a && b && *a == *b);
}
} // namespace

bool happened::NewSetting::operator==(const NewSetting& other) const {
    return same(session, other.session);
}

bool happened::NewPlan::operator==(const NewPlan& other) const {
    return same(plan, other.plan) && same(session, other.session);
}

std::string_view name(const What& what) {
    return std::ranges::find_if(
               words(), [&what](const auto& word) { return isOfOneKind(word.second, what); })
        ->first;
}

std::string_view name(Tick tick) {
    return name(happened::ZoneTick{tick});
}

std::optional<What> whatNamed(std::string_view text) {
    for (const auto& [word, what] : words())
        if (word == text)
            return what;
    return {};
}

} // namespace bastewright
