#include "session/event.h"

#include <array>
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
} // namespace

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
