#pragma once

#include "checker/report.h"
#include "checker/underway.h"
#include "checker/view.h"

#include <span>
#include <string_view>

namespace bastewright::check {

/// A plan for the rest of a session with all that a rule of the rest may look at.
struct RestView {
    const PlanView& plan;   ///< all of it, what is done too
    const PlanView& before; ///< the plan in force until now, by the same session
    const PlanView& open;   ///< of `plan` the tasks that are not done, with who is there for them
    const Underway& facts;

    bool isDone(const Task& t) const { return facts.done.contains(t.id); }
    /// Something of the pass is done: it lies, or lay, on its table.
    bool isBegun(int quilt, int pass) const;
    /// The quilt is pulled across for it after a pass that is begun, as in the plan in force.
    bool isPulledWithBegun(int quilt, int pass) const;
    /// It may have been begun: in the plan in force it waits for nothing, and the same people have
    /// it.
    bool isInHand(const Task& t) const;
    /// A zone whose pins are still in the box: nothing of it is done, and it is not left out.
    bool waits(int quilt, const Zone& zone) const;
    /// Pins that the zones which wait take out of the box.
    std::int64_t pinsToPlace() const;
    /// No zone of the pass is begun, left out or may be being worked at.
    bool mayBeBastedOtherwise(int quilt, int pass) const;
    /// The points of what is left are told of by other rows than before.
    bool hasNewRows(int quilt) const;
    bool hasNewRows() const; ///< of any quilt
    /// The plan says that some zones are left for another day, because pins are short.
    bool endsWithPins() const;
};

using RestRule = void (*)(const RestView&, Report&);

/// A rule of its own for plans that take over in the middle of a session.
struct RuleOfRest {
    std::string_view name;
    std::string_view inWords; ///< as `Rule::inWords`
    RestRule check;
};
std::span<const RuleOfRest> rulesOfRest();

// rest_pins.cpp
void restPins(const RestView&, Report&);
void restWith(const RestView&, Report&);

} // namespace bastewright::check
