#include "view/plan/replanner.h"

#include "planners/whole/quilt.h"

#include <QMetaObject>

#include <algorithm>
#include <utility>

using namespace bastewright;

Planned withBackingWays(Planned planned) {
    const std::size_t quilts = std::min(planned.session.jobs.size(), planned.plan.quilts.size());
    planned.backingWays.assign(quilts, {});
    for (std::size_t i = 0; i < quilts; ++i) {
        const QuiltPlan& quilt = planned.plan.quilts[i];
        if (!quilt.backing)
            continue;
        BackingOutcome all = pieceBacking(planned.session.jobs[i], quilt, true);
        if (all.ways.size() == quilt.backing->alternatives.size())
            planned.backingWays[i] = std::move(all.ways);
    }
    return planned;
}

Replanner::Replanner(PlanFunction plan, QObject* parent)
    : QObject{parent}
    , plan_{std::move(plan)} {}

Replanner::~Replanner() {
    worker_.request_stop();
    if (worker_.joinable())
        worker_.join();
}

void Replanner::request(bastewright::Session session) {
    if (busy_) {
        next_ = std::move(session);
        worker_.request_stop();
        return;
    }
    busy_ = true;
    start(std::move(session));
}

void Replanner::start(bastewright::Session session) {
    worker_ = std::jthread{[this, session = std::move(session)](std::stop_token stop) {
        for (const bool help : {false, true}) {
            auto done =
                std::make_shared<Planned>(withBackingWays({session, plan_(session, help, stop)}));
            if (stop.stop_requested())
                break;
            QMetaObject::invokeMethod(
                this, [this, done] { arrived(done); }, Qt::QueuedConnection);
        }
        QMetaObject::invokeMethod(
            this, [this] { finished(); }, Qt::QueuedConnection);
    }};
}

void Replanner::arrived(const PlannedPtr& result) {
    if (!next_)
        emit planned(result);
}

void Replanner::finished() {
    busy_ = false;
    if (next_)
        request(*std::exchange(next_, {}));
}
