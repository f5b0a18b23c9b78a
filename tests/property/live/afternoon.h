#pragma once

#include "session/change.h"
#include "session/live_session.h"
#include "unit/crew/made_session.h"

#include <cstdint>
#include <optional>

namespace bastewright::testing {

/// A made session played by its plan with ticks and changes, the same for the same seed.
class Afternoon {
public:
    Afternoon(std::uint64_t seed, Session session, Plan plan);

    /// Some ticks, each of something that may be done next.
    void tick(int times);
    /// Anything that may happen now.
    Change anyChange();
    /// Any change of this kind; nothing where it cannot be thought of now.
    std::optional<Change> anyOf(Change::Kind kind);
    Proposal proposed(const Change& change) const;
    /// Stores what has happened, and the plan.
    void take(const Proposal& proposal);
    void keepOldPlan(const Proposal& proposal);

    const LiveSession& live() const { return live_; }
    std::int64_t nowMs() const { return nowMs_; }
    Seconds now() const;
    int upTo(int n); ///< 0 … n - 1

private:
    Sentence store(What what);
    std::string anyHelper(bool present);

    LiveSession live_;
    made::Dice dice_;
    std::int64_t nowMs_ = 1'800'000'000'000;
    int events_ = 0;
};

} // namespace bastewright::testing
