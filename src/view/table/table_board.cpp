#include "view/table/table_board.h"

#include "view/base/people_palette.h"
#include "view/base/words.h"

#include <algorithm>
#include <set>

using namespace bastewright;

namespace {

QString stateName(ZoneState state) {
    switch (state) {
    case ZoneState::waiting:
        return QStringLiteral("waiting");
    case ZoneState::dotted:
    case ZoneState::open:
        return QStringLiteral("open");
    case ZoneState::closed:
    case ZoneState::pressedBack:
        return QStringLiteral("closed");
    }
    return {};
}

int indexOf(const std::set<Length>& lines, Length at) {
    return int(std::distance(lines.begin(), lines.find(at)));
}

} // namespace

TableBoard::TableBoard(LiveController* live, QObject* parent)
    : QObject{parent}
    , live_{live}
    , zones_{{"zone", "column", "row", "points", "stage", "letter", "mark", "person", "verb",
              "ready"}} {
    connect(live_, &LiveController::changed, this, &TableBoard::refresh);
}

void TableBoard::setFollowing(bool on) {
    if (on == following_)
        return;
    following_ = on;
    refresh();
}

void TableBoard::setQuilt(int quilt) {
    if (quilt == quilt_ || quilt < 0)
        return;
    quilt_ = quilt;
    refresh();
}

int TableBoard::quarter() const {
    const auto* live = live_->live();
    const bool along = live && std::size_t(quilt_) < live->plan().quilts.size() &&
                       live->plan().quilts[std::size_t(quilt_)].surface.quiltLengthAlongLength;
    return (turn_ + (along ? 3 : 0)) % 4;
}

void TableBoard::setTurn(int turn) {
    turn = ((turn % 4) + 4) % 4;
    if (turn == turn_)
        return;
    turn_ = turn;
    refresh();
}

QStringList TableBoard::quilts() const {
    QStringList names;
    if (live_->live())
        for (const auto& job : live_->live()->session().jobs)
            names << words::fromCore(job.name);
    return names;
}

int TableBoard::pass() const {
    const auto* live = live_->live();
    if (!live || std::size_t(quilt_) >= live->state().currentPass.size())
        return 0;
    return live->state().currentPass[std::size_t(quilt_)];
}

QString TableBoard::passText() const {
    const auto* live = live_->live();
    if (!live || std::size_t(quilt_) >= live->plan().quilts.size())
        return {};
    return tr("Pass %1 of %2")
        .arg(pass())
        .arg(live->plan().quilts[std::size_t(quilt_)].passes.size());
}

Side TableBoard::sideAt(int place) const {
    // Clockwise from the top, before any turn.
    constexpr std::array around{Side::head, Side::right, Side::foot, Side::left};
    return around[std::size_t((place - quarter() + 4) % 4)];
}

QStringList TableBoard::edges() const {
    QStringList out;
    for (int place = 0; place < 4; ++place) {
        const Side side = sideAt(place);
        out << (isAcross(side) ? words::side(side) : QString{});
    }
    return out;
}

QList<bool> TableBoard::walls() const {
    QList<bool> out(4, false);
    const auto* live = live_->live();
    if (!live || std::size_t(quilt_) >= live->plan().quilts.size())
        return out;
    const auto& closed = live->plan().quilts[std::size_t(quilt_)].surface.closed;
    for (int place = 0; place < 4; ++place)
        out[place] = std::find(closed.begin(), closed.end(), sideAt(place)) != closed.end();
    return out;
}

void TableBoard::refresh() {
    if (!following_)
        return;
    if (live_->live() && std::size_t(quilt_) >= live_->live()->plan().quilts.size())
        quilt_ = 0;
    layTiles();
    findStep();
    emit changed();
}

void TableBoard::layTiles() {
    QList<QVariantList> out;
    columns_ = rows_ = 1;
    const auto* live = live_->live();
    if (live && std::size_t(quilt_) < live->plan().quilts.size()) {
        const auto& plan = live->plan().quilts[std::size_t(quilt_)];
        const auto& helpers = live->session().setting.helpers;
        const auto letters = people::letters(helpers);
        const bool pins =
            live->session().jobs[std::size_t(quilt_)].basting.with == Basting::With::pins;
        std::set<Length> xs, ys;
        for (const auto& zone : plan.zones)
            if (zone.pass == pass()) {
                xs.insert(zone.area.x0);
                ys.insert(zone.area.y0);
            }
        const int across = int(xs.size()), down = int(ys.size());
        const int turn = quarter();
        columns_ = std::max(1, turn % 2 == 0 ? across : down);
        rows_ = std::max(1, turn % 2 == 0 ? down : across);
        for (const auto& zone : plan.zones) {
            if (zone.pass != pass())
                continue;
            const int c = indexOf(xs, zone.area.x0), r = indexOf(ys, zone.area.y0);
            const int column = turn == 0   ? c
                               : turn == 1 ? down - 1 - r
                               : turn == 2 ? across - 1 - c
                                           : r;
            const int row = turn == 0   ? r
                            : turn == 1 ? c
                            : turn == 2 ? down - 1 - r
                                        : across - 1 - c;
            const auto found = live->state().zones.find({quilt_, zone.id});
            const auto state = found == live->state().zones.end() ? ZoneLive{} : found->second;
            const auto tick = live->nextTick(quilt_, zone.id);
            const auto who = live_->whoseTurn(quilt_, zone.id);
            const auto at = std::find_if(helpers.begin(), helpers.end(),
                                         [&](const Helper& h) { return h.name == who; });
            const int mark = at == helpers.end() ? -1 : int(at - helpers.begin());
            const QString verb =
                !tick                            ? QString{}
                : *tick == EventKind::zoneDotted ? tr("dots below")
                : *tick == EventKind::zoneOpened ? (pins ? tr("pins in") : tr("dots above"))
                : *tick == EventKind::zoneClosed ? (pins ? tr("close") : tr("press"))
                                                 : tr("press back");
            out.push_back({words::fromCore(zone.id), column, row, int(zone.points.size()),
                           stateName(state.state), mark < 0 ? QString{} : letters[mark], mark,
                           words::fromCore(who), verb, tick.has_value()});
        }
    }
    zones_.setRows(std::move(out));
}

void TableBoard::findStep() {
    step_.clear();
    stepText_.clear();
    stepWho_.clear();
    caution_.clear();
    stepReady_ = finished_ = false;
    const auto* live = live_->live();
    if (!live || std::size_t(quilt_) >= live->plan().quilts.size())
        return;
    const auto& state = live->state();
    if (state.ended) {
        finished_ = true;
        stepText_ = tr("The session has ended");
        return;
    }
    const auto lastPass = live->plan().quilts[std::size_t(quilt_)].passes.size();
    const bool released = state.released.contains({quilt_, pass()});
    const Task* next = nullptr;
    const auto open = openSteps(live->plan(), state, quilt_);
    for (const auto& task : open) {
        const bool last = task.kind == TaskKind::handOver || task.kind == TaskKind::turnOver;
        if (last ? released && pass() == int(lastPass) : task.pass <= pass()) {
            next = &task;
            break;
        }
    }
    if (!next && !released) {
        step_ = QStringLiteral("release");
        stepReady_ = live->releaseBlockedBy(quilt_, pass()).empty();
        stepText_ = pass() == int(lastPass) ? tr("The last pass is good")
                                            : tr("Pass %1 is good: next pass").arg(pass());
        caution_ = stepReady_ ? QString{} : tr("Zones are still to be done.");
        return;
    }
    if (!next) {
        finished_ = true;
        step_ = QStringLiteral("end");
        stepReady_ = true;
        stepText_ = tr("End the session");
        return;
    }
    step_ = words::fromCore(next->id);
    stepText_ = words::task(next->kind);
    caution_ = words::caution(next->kind);
    stepReady_ = mayStart(*next, state);
    if (!stepReady_) {
        const auto waits =
            std::count_if(next->after.begin(), next->after.end(),
                          [&](const auto& id) { return !state.doneTasks.contains(id); });
        caution_ =
            waits == 1 ? tr("Waits for one more tick.") : tr("Waits for %1 more ticks.").arg(waits);
    }
    stepWho_ = people::atAGlance(next->people, live->session().setting.helpers);
}

bool TableBoard::shiftNow() const {
    const auto* live = live_->live();
    return stepReady_ && step_ == QLatin1String("release") &&
           std::size_t(pass()) < live->plan().quilts[std::size_t(quilt_)].passes.size();
}

void TableBoard::doStep() {
    if (step_ == QLatin1String("release"))
        live_->release(quilt_, pass());
    else if (step_ == QLatin1String("end"))
        live_->end();
    else if (!step_.isEmpty())
        live_->stepDone(quilt_, step_);
}
