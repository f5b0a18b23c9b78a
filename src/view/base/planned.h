#pragma once

#include "plan/plan.h"

#include <QMetaType>
#include <QtQmlIntegration>

#include <functional>
#include <memory>
#include <stop_token>
#include <vector>

/// A session together with the plan that was made for it.
struct Planned {
    bastewright::Session session;
    bastewright::Plan plan;
    /// By quilt: every way to piece its backing laid out, in the order of the plan's alternatives.
    std::vector<std::vector<bastewright::BackingPlan>> backingWays{};
};
using PlannedPtr = std::shared_ptr<const Planned>;

/// Makes a plan and checks it, with or without ranking what would help most; called on another
/// thread than the screen's.
using PlanFunction =
    std::function<bastewright::Plan(const bastewright::Session&, bool help, std::stop_token)>;

/// One quilt of a planned session, as screens hand it to the items that draw it.
class PlannedQuilt {
    Q_GADGET
    QML_VALUE_TYPE(plannedQuilt)

public:
    PlannedQuilt() = default;
    PlannedQuilt(PlannedPtr planned, int index)
        : planned_{std::move(planned)}
        , index_{index} {}

    bool operator==(const PlannedQuilt&) const = default;

    /// Nothing where there is no plan, or the plan has no such quilt.
    const bastewright::QuiltPlan* plan() const {
        return planned_ && index_ >= 0 && std::size_t(index_) < planned_->plan.quilts.size()
                   ? &planned_->plan.quilts[std::size_t(index_)]
                   : nullptr;
    }
    const bastewright::Job* job() const {
        return planned_ && index_ >= 0 && std::size_t(index_) < planned_->session.jobs.size()
                   ? &planned_->session.jobs[std::size_t(index_)]
                   : nullptr;
    }
    const PlannedPtr& planned() const { return planned_; }
    int index() const { return index_; }

private:
    PlannedPtr planned_;
    int index_ = 0;
};
