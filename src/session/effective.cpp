#include "session/effective.h"

#include <string_view>
#include <unordered_map>

namespace bastewright {
namespace {
constexpr std::size_t kNone = static_cast<std::size_t>(-1);
} // namespace

Effective effective(std::span<const Event> events) {
    Effective out{.inEffect = std::vector<bool>(events.size(), false),
                  .reasons = std::vector<std::string>(events.size())};
    std::unordered_map<std::string_view, std::size_t> place;
    std::vector<std::size_t> target(events.size(), kNone); // of each taking back that was accepted

    for (std::size_t i = 0; i < events.size(); ++i) {
        const Event& e = events[i];
        if (!place.emplace(e.id, i).second) {
            out.reasons[i] = "Event " + e.id + " is stored already.";
            continue;
        }
        if (e.kind != EventKind::undone) {
            out.inEffect[i] = true;
            continue;
        }
        const auto found = place.find(e.target);
        if (found == place.end() || found->second == i)
            out.reasons[i] = "There is no event " + e.target + " to take back.";
        else if (events[found->second].kind == EventKind::sessionStarted)
            out.reasons[i] =
                "The start of a session cannot be taken back; end the session instead.";
        else if (!out.inEffect[found->second])
            out.reasons[i] = "Event " + e.target + " is taken back already.";
        else {
            out.inEffect[i] = true;
            target[i] = found->second;
            // Walking down a chain of takings back, each changes sides: the target goes out of
            // effect, what it had taken back comes in again, and so on. Nobody else can have
            // touched them meanwhile, because only an event in effect can be taken back.
            bool in = false;
            for (std::size_t at = target[i]; at != kNone; at = target[at], in = !in)
                out.inEffect[at] = in;
        }
    }
    return out;
}

} // namespace bastewright
