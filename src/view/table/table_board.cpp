#include "view/table/table_board.h"

#include "session/pass_tiles.h"
#include "session/pins.h"
#include "session/ticks.h"
#include "view/base/people_palette.h"
#include "view/base/words.h"
#include "view/paint/quilt_drawing.h"

#include <algorithm>

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

} // namespace

TableBoard::TableBoard(LiveController* live, QObject* parent)
    : QObject{parent}
    , live_{live}
    , zones_{{"zone", "column", "row", "points", "stage", "letter", "mark", "person", "verb",
              "ready", "area", "places"}}
    , callsAhead_{{"call", "name"}} {
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

const QuiltPlan* TableBoard::plan() const {
    const auto* live = live_->live();
    return live && std::size_t(quilt_) < live->plan().quilts.size()
               ? &live->plan().quilts[std::size_t(quilt_)]
               : nullptr;
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

QStringList TableBoard::edges() const {
    QStringList out;
    for (const Side side : around_)
        out << (isAcross(side) ? words::side(side) : QString{});
    return out;
}

int TableBoard::quarter() const {
    switch (around_[0]) {
    case Side::head:
        return 0;
    case Side::left:
        return 1;
    case Side::foot:
        return 2;
    case Side::right:
        return 3;
    }
    return 0;
}

QList<bool> TableBoard::walls() const {
    QList<bool> out(4, false);
    if (const auto* quilt = plan())
        for (int place = 0; place < 4; ++place)
            out[place] = std::ranges::find(quilt->surface.closed, around_[std::size_t(place)]) !=
                         quilt->surface.closed.end();
    return out;
}

void TableBoard::refresh() {
    if (!following_)
        return;
    if (live_->live() && !plan())
        quilt_ = 0;
    columns_ = rows_ = 1;
    step_.clear();
    stepText_.clear();
    stepWho_.clear();
    caution_.clear();
    call_.clear();
    nextCall_.clear();
    stepReady_ = stepHeld_ = stepAsksAgain_ = finished_ = false;
    if (plan()) {
        const Turns turns = live_->live()->turns();
        layTiles(turns);
        findStep(turns);
        findCall(turns);
    } else {
        zones_.setRows({});
        callsAhead_.setRows({});
    }
    emit changed();
}

const QVariantList& TableBoard::placesOf(const Zone& zone) {
    const QString key = QStringLiteral("%1 %2").arg(quilt_).arg(words::fromCore(zone.id));
    const auto known = places_.constFind(key);
    if (known != places_.cend())
        return *known;
    QVariantList out;
    for (const auto& point : zone.points)
        out << QPointF{point.at.x.in(), point.at.y.in()};
    return *places_.insert(key, out);
}

void TableBoard::layTiles(const Turns& turns) {
    const auto& live = *live_->live();
    const auto& helpers = live.session().setting.helpers;
    const auto letters = people::letters(helpers);
    const auto tiles = tilesOf(*plan(), pass(), turn_);
    columns_ = tiles.columns;
    rows_ = tiles.rows;
    around_ = tiles.around;
    if (const Top& top = live.session().jobs[std::size_t(quilt_)].top;
        !face_.top() || *face_.top() != top)
        face_ = QuiltFace{top};
    if (placed_ != live_->planned()) {
        placed_ = live_->planned();
        places_.clear();
    }
    QList<QVariantList> out;
    for (const auto& tile : tiles.tiles) {
        const Zone& zone = *tile.zone;
        const auto found = live.state().zones.find({quilt_, zone.id});
        const auto state = found == live.state().zones.end() ? ZoneLive{} : found->second;
        const auto answer = turns.mayTick({.job = quilt_, .zone = zone.id});
        const auto tick = live.nextTick(quilt_, zone.id);
        const auto hands = turns.whoseTurn(quilt_, zone.id);
        const auto at = hands.empty() ? helpers.end()
                                      : std::ranges::find(helpers, hands.front(), &Helper::name);
        const int mark = at == helpers.end() ? -1 : int(at - helpers.begin());
        out.push_back({words::fromCore(zone.id), tile.column, tile.row, int(zone.points.size()),
                       stateName(state.state), mark < 0 ? QString{} : letters[mark], mark,
                       hands.empty() ? QString{} : words::fromCore(hands.front()),
                       tick ? words::tick(*tick, turns.way(quilt_, zone.id)) : QString{},
                       answer.counts(), drawing::inches(zone.area), placesOf(zone)});
    }
    zones_.setRows(std::move(out));
}

bool TableBoard::pinsToCount() const {
    if (!finished_ || !plan())
        return false;
    const auto& live = *live_->live();
    const PinCount pins = countPins(live.plan(), live.session().setting, live.state());
    return pins.out > 0 || pins.back > 0;
}

void TableBoard::findStep(const Turns& turns) {
    const auto& live = *live_->live();
    if (live.state().ended) {
        finished_ = true;
        stepText_ = tr("The session has ended");
        return;
    }
    const auto next = turns.mainStep(quilt_);
    if (!next)
        return;
    stepReady_ = next->ready;
    stepAsksAgain_ = next->asksAgain;
    switch (next->kind) {
    case NextStep::Kind::release:
        step_ = QStringLiteral("release");
        stepHeld_ = true;
        stepText_ =
            std::size_t(next->pass) == plan()->passes.size()
                ? tr("The last pass is finished")
                : tr("Pass %1 is finished: start pass %2").arg(next->pass).arg(next->pass + 1);
        break;
    case NextStep::Kind::end:
        step_ = QStringLiteral("end");
        stepHeld_ = finished_ = true;
        stepText_ = tr("End the session");
        break;
    default:
        step_ = words::fromCore(next->task);
        if (const Task* task = live.task(next->task)) {
            stepText_ = words::task(task->kind);
            caution_ = words::caution(task->kind);
        }
        stepWho_ = people::atAGlance(next->people, live.session().setting.helpers);
    }
    if (!stepReady_)
        caution_ = words::fromCore(next->waits);
}

void TableBoard::findCall(const Turns& turns) {
    const auto now = turns.call(quilt_);
    QList<QVariantList> ahead;
    if (!live_->ended()) {
        call_ = now.toRelease  ? tr("Pass %1 is finished").arg(now.pass)
                : now.finished ? tr("All is done")
                               : words::call(now.now);
        if (now.next)
            nextCall_ = words::call(*now.next);
        std::vector<Call> listed;
        for (const auto& what : turns.upTo(quilt_, Call::check)) {
            const auto* tick = std::get_if<happened::ZoneTick>(&what);
            const Call call =
                tick ? callAt(tick->kind, turns.way(quilt_, tick->zone))
                     : callOf(live_->live()->task(std::get<happened::Step>(what).task)->kind);
            if (std::ranges::find(listed, call) == listed.end())
                listed.push_back(call);
        }
        std::ranges::stable_sort(listed, {}, orderOf);
        for (const Call call : listed)
            ahead.push_back({int(call), words::call(call)});
    }
    callsAhead_.setRows(std::move(ahead));
}

bool TableBoard::shiftNow() const {
    return stepReady_ && step_ == QLatin1String("release") &&
           std::size_t(pass()) < plan()->passes.size();
}

void TableBoard::doStep() {
    if (step_ == QLatin1String("release"))
        live_->release(quilt_, pass());
    else if (step_ == QLatin1String("end"))
        live_->end();
    else if (!step_.isEmpty())
        live_->stepDone(quilt_, step_);
}
