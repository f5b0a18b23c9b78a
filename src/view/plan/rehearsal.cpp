#include "view/plan/rehearsal.h"

#include "view/base/words.h"
#include "view/paint/scene_words.h"

#include <algorithm>
#include <cmath>
#include <utility>

using namespace bastewright;

namespace {
constexpr qreal kPlaySeconds = 60; // for the whole session, however long
constexpr int kFrameMs = 40;

Seconds whole(qreal seconds) {
    return Seconds{std::int64_t(std::floor(seconds))};
}
} // namespace

Rehearsal::Rehearsal(PlanPresenter* plan, QObject* parent)
    : QObject{parent}
    , plan_{plan} {
    timer_.setInterval(kFrameMs);
    connect(&timer_, &QTimer::timeout, this, &Rehearsal::tick);
    connect(plan_, &PlanPresenter::changed, this, &Rehearsal::refresh);
}

void Rehearsal::refresh() {
    if (plan_->planned() != shown_) {
        const PlannedPtr before = std::exchange(shown_, plan_->planned());
        // What would help most comes a little later than the plan: it changes nothing here.
        const bool same = before && shown_ && before->plan.tasks == shown_->plan.tasks &&
                          before->plan.quilts == shown_->plan.quilts;
        scenes_.reset();
        if (shown_)
            scenes_.emplace(shown_->plan, shown_->session.setting.helpers,
                            shown_->session.setting.start);
        if (!same)
            timer_.stop();
        moment_ = std::clamp(moment_, 0.0, span());
    }
    emit changed();
    emit moved();
}

qreal Rehearsal::span() const {
    return shown_ ? qreal(shown_->plan.finish.count()) : 0;
}

void Rehearsal::setMoment(qreal seconds) {
    seconds = std::clamp(seconds, 0.0, span());
    if (seconds == moment_)
        return;
    moment_ = seconds;
    emit moved();
}

void Rehearsal::setPlaying(bool playing) {
    if (playing == timer_.isActive() || (playing && span() <= 0))
        return;
    if (playing) {
        if (moment_ >= span())
            setMoment(0);
        since_.start();
        timer_.start();
    } else {
        timer_.stop();
    }
    emit changed();
}

void Rehearsal::tick() {
    setMoment(moment_ + qreal(since_.restart()) / 1000 * span() / kPlaySeconds);
    if (moment_ >= span())
        setPlaying(false);
}

QString Rehearsal::clock() const {
    return shown_ ? words::clock(shown_->session.setting.start, whole(moment_)) : QString{};
}

QString Rehearsal::passText() const {
    const auto* quilt = plan_->quilt().plan();
    if (!quilt || !scenes_)
        return {};
    const auto scene = scenes_->at(plan_->quiltIndex(), whole(moment_));
    return tr("Pass %1 of %2").arg(scene.pass).arg(quilt->passes.size());
}

QString Rehearsal::caption() const {
    if (!scenes_ || !plan_->quilt().plan())
        return {};
    return words::moment(*shown_, plan_->quiltIndex(),
                         scenes_->at(plan_->quiltIndex(), whole(moment_)), whole(moment_));
}

QList<qreal> Rehearsal::passes() const {
    QList<qreal> out;
    if (scenes_ && plan_->quilt().plan())
        for (const Seconds s : scenes_->passBegins(plan_->quiltIndex()))
            out << qreal(s.count());
    return out;
}

void Rehearsal::step(int by) {
    if (!shown_)
        return;
    std::vector<qreal> begins{0, span()};
    for (const auto& t : shown_->plan.tasks)
        begins.push_back(qreal(t.start.count()));
    std::sort(begins.begin(), begins.end());
    if (by > 0) {
        const auto at = std::upper_bound(begins.begin(), begins.end(), moment_);
        setMoment(at == begins.end() ? span() : *at);
    } else {
        const auto at = std::lower_bound(begins.begin(), begins.end(), moment_);
        setMoment(at == begins.begin() ? 0 : *std::prev(at));
    }
}
