#pragma once

#include "checker/pointer.h"
#include "plan/plan.h"

#include <string>
#include <string_view>
#include <vector>

namespace bastewright::check {

/// One quilt of a plan with all a rule may look at.
struct QuiltView {
    const Session& session;
    const Plan& plan;
    const Plan& written; ///< the plan as it stands in its file, of which `plan` may be a part
    int index;
    const Job& job;
    const QuiltPlan& quilt;
    Rect top;

    std::string label() const; ///< "Harbour Lights", or "quilt 2" where it has no name
    /// This quilt's tasks, in the plan's order.
    std::vector<const Task*> tasks() const;
    std::vector<const Task*> tasks(TaskKind kind, int pass) const;
    const Pass* pass(int number) const; ///< nothing where the plan has no such pass
    const Zone* zone(std::string_view id) const;
    /// The plan's finding of this kind about this quilt, or about all, of at least this level;
    /// nothing where it has none.
    const Finding* tells(Finding::Kind kind, std::string_view subject = {},
                         Finding::Level atLeast = Finding::Level::note) const;
    /// True where the plan itself says that there is no good plan for this quilt.
    bool stopped() const;
};

struct PlanView {
    const Session& session;
    const Plan& plan;
    const Plan& written;           ///< as in `QuiltView`
    std::vector<QuiltView> quilts; ///< those that have a job and a plan

    PlanView(const Session& s, const Plan& p);
    /// Of a part of a plan: some of its tasks, passes and people's places.
    PlanView(const Session& s, const Plan& part, const Plan& whole);
    const QuiltView* quilt(int index) const;
    const Helper* helper(std::string_view name) const;
    bool stopped() const; ///< true where any finding of the plan is a stop
};

/// Bounding box of a zone's points, its area where it has none: what somebody must reach.
Rect workBox(const Zone& zone);

/// Where the way of some zone asks for it, a quilt with thick batting is turned once, and such
/// zones are finished from the back too.
bool isPressedTwice(const QuiltView& v);
bool isPressedTwice(const QuiltView& v, const Zone& zone);

// What a sentence is about: "Harbour Lights, pass 2", "Harbour Lights, pass 2, head", "Task 't1'".
std::string label(const QuiltView& v, const Pass& pass);
std::string label(const QuiltView& v, const Pass& pass, Side side);
std::string label(const Task& task);

// Where it stands in the plan's file; the list it is of where it is not there.
Pointer where(const QuiltView& v);
Pointer where(const QuiltView& v, const Pass& pass);
Pointer where(const QuiltView& v, const Pass& pass, const Stretch& stretch);
Pointer where(const QuiltView& v, const Zone& zone);
Pointer where(const QuiltView& v, const Zone& zone, const PlacedPoint& point);
Pointer where(const QuiltView& v, const Task& task);
Pointer where(const PlanView& v, const Task& task);
Pointer where(const PlanView& v, const Finding& said);
/// What stands there in every quilt: the quilts, or there in the only one.
Pointer whereOfAll(const PlanView& v, std::string_view keys);

Length washed(Length cloth, double shrinkPercent);

// Figures for people, exact enough to show a small violation: "2.953 in".
std::string figure(Length l, Unit unit);
std::string figure(double number);
std::string place(Point p, Unit unit);
std::string box(const Rect& r, Unit unit);
std::string clock(Seconds s); ///< "1:05:30" from the session's start

} // namespace bastewright::check
