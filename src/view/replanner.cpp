#include "view/replanner.h"

#include <QMetaObject>

#include <utility>

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
            auto done = std::make_shared<Planned>(Planned{session, plan_(session, help, stop)});
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
