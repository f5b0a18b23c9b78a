#include "session/event.h"

#include "plan/plan.h"

#include <array>
#include <tuple>
#include <utility>

namespace bastewright {
namespace {
constexpr std::array<std::pair<EventKind, std::string_view>, 23> kNames{{
    {EventKind::sessionStarted, "session-started"},
    {EventKind::stepDone, "step-done"},
    {EventKind::checkAnswered, "check-answered"},
    {EventKind::zoneDotted, "zone-dotted"},
    {EventKind::zoneOpened, "zone-opened"},
    {EventKind::zoneClosed, "zone-closed"},
    {EventKind::zonePressed, "zone-pressed"},
    {EventKind::zoneAgain, "zone-again"},
    {EventKind::undone, "undone"},
    {EventKind::passAbandoned, "pass-abandoned"},
    {EventKind::passReleased, "pass-released"},
    {EventKind::personIn, "person-in"},
    {EventKind::personOut, "person-out"},
    {EventKind::pinsFound, "pins-found"},
    {EventKind::pinsBack, "pins-back"},
    {EventKind::pinsInBox, "pins-in-box"},
    {EventKind::pinsCounted, "pins-counted"},
    {EventKind::note, "note"},
    {EventKind::paused, "paused"},
    {EventKind::resumed, "resumed"},
    {EventKind::settingChanged, "setting-changed"},
    {EventKind::replanned, "replanned"},
    {EventKind::sessionEnded, "session-ended"},
}};

template <class T>
bool same(const std::shared_ptr<const T>& a, const std::shared_ptr<const T>& b) {
    return a == b || (a && b && *a == *b);
}

bool same(const Carried& a, const Carried& b) {
    if (a.index() != b.index())
        return false;
    if (const auto* session = std::get_if<std::shared_ptr<const Session>>(&a))
        return same(*session, std::get<std::shared_ptr<const Session>>(b));
    if (const auto* next = std::get_if<NewPlan>(&a)) {
        const auto& other = std::get<NewPlan>(b);
        return same(next->plan, other.plan) && same(next->session, other.session);
    }
    if (const auto* unread = std::get_if<UnreadPlan>(&a))
        return unread->members == std::get<UnreadPlan>(b).members;
    return true;
}
} // namespace

bool Event::operator==(const Event& o) const {
    const auto plain = [](const Event& e) {
        return std::tie(e.id, e.kind, e.atMs, e.job, e.pass, e.zone, e.person, e.task, e.target,
                        e.text, e.count);
    };
    return plain(*this) == plain(o) && same(carried, o.carried);
}

std::string_view name(EventKind kind) {
    for (const auto& [k, n] : kNames)
        if (k == kind)
            return n;
    return "";
}

std::optional<EventKind> eventKind(std::string_view text) {
    for (const auto& [k, n] : kNames)
        if (n == text)
            return k;
    return {};
}

} // namespace bastewright
