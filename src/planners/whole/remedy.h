#pragma once

#include "plan/plan.h"

#include <functional>
#include <optional>
#include <vector>

namespace bastewright {

/// A change of a session that is offered to somebody: what it is called, as on a button, and the
/// change itself. What cures a finding and what would help most are made of the same.
struct Remedy {
    Sentence words;
    std::function<void(Session&)> edit;

    Session applied(Session session) const {
        edit(session);
        return session;
    }
};

/// What this kind of help changes; nothing where it does not apply to the session. `fewestPoints`
/// has no words: they tell numbers that only a plan has (help.cpp).
std::optional<Remedy> remedyOf(Help::Kind kind, const Session& session);

/// Changes that cure a finding of the session's plan, the smallest first; each gives another
/// session. Empty where only a person can help.
std::vector<Remedy> remediesFor(const Finding& finding, const Session& session, const Plan& plan);

} // namespace bastewright
