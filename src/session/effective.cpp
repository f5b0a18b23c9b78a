#include "session/effective.h"

#include <string_view>
#include <unordered_map>

namespace bastewright {
namespace {

constexpr std::size_t kNone = static_cast<std::size_t>(-1);

// Keeps, for every event, how many takings back that are in effect point at it.
class Ledger {
public:
    explicit Ledger(std::size_t size)
        : against_(size, 0)
        , target_(size, kNone) {}

    bool inEffect(std::size_t i) const { return against_[i] == 0; }

    void takeBack(std::size_t by, std::size_t target) {
        target_[by] = target;
        weigh(target, +1);
    }

private:
    // One more or one fewer against an event. Where that puts a taking back out of effect or in
    // again, its own target loses or gains one; targets lie ever earlier, so this ends.
    void weigh(std::size_t i, int change) {
        for (std::size_t at = i; at != kNone; at = target_[at]) {
            const bool before = inEffect(at);
            against_[at] += change;
            if (inEffect(at) == before)
                return;
            change = inEffect(at) ? +1 : -1;
        }
    }

    std::vector<int> against_;
    std::vector<std::size_t> target_;
};

} // namespace

Effective effective(std::span<const Event> events) {
    Effective out{.inEffect = std::vector<bool>(events.size(), false),
                  .reasons = Sentences(events.size())};
    std::unordered_map<std::string_view, std::size_t> place;
    Ledger ledger{events.size()};

    for (std::size_t i = 0; i < events.size(); ++i) {
        const Event& e = events[i];
        if (!place.emplace(e.id, i).second) {
            out.reasons[i] = core::says("Event %1 is stored already.", e.id);
            continue;
        }
        const auto* undone = std::get_if<happened::Undone>(&e.what);
        if (!undone)
            continue;
        const auto found = place.find(undone->target);
        if (found == place.end() || found->second == i)
            out.reasons[i] = core::says("There is no event %1 to take back.", undone->target);
        else if (events[found->second].is<happened::Started>())
            out.reasons[i] =
                core::says("The start of a session cannot be taken back; end the session instead.");
        else if (!out.reasons[found->second].empty())
            out.reasons[i] =
                core::says("Event %1 had no effect that could be taken back.", undone->target);
        else if (!ledger.inEffect(found->second))
            out.reasons[i] = core::says("Event %1 is taken back already.", undone->target);
        else
            ledger.takeBack(i, found->second);
    }
    for (std::size_t i = 0; i < events.size(); ++i)
        out.inEffect[i] = out.reasons[i].empty() && ledger.inEffect(i);
    return out;
}

} // namespace bastewright
