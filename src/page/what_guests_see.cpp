#include "page/what_guests_see.h"

#include "page/words.h"
#include "session/pass_tiles.h"
#include "view/base/people_palette.h"
#include "view/base/words.h"

#include <QJsonArray>

#include <algorithm>

namespace bastewright::page {
namespace {

QString stageOf(const ZoneLive& zone) {
    switch (zone.state) {
    case ZoneState::waiting:
        return QStringLiteral("waiting");
    case ZoneState::dotted:
        return QStringLiteral("dotted");
    case ZoneState::open:
        return QStringLiteral("open");
    default:
        return QStringLiteral("closed");
    }
}

QJsonArray people(const LiveController& live) {
    QJsonArray out;
    const auto& rows = *live.people();
    const auto roles = rows.roleNames();
    for (int row = 0; row < rows.count(); ++row) {
        QJsonObject object;
        for (auto role = roles.begin(); role != roles.end(); ++role)
            object[QString::fromLatin1(role.value())] =
                QJsonValue::fromVariant(rows.data(rows.index(row), role.key()));
        out << object;
    }
    return out;
}

/// As parts of the whole top: left, upper, width, height.
QJsonArray partOf(const Rect& area, const Size& top) {
    return {area.x0.in() / top.width.in(), area.y0.in() / top.length.in(),
            area.width().in() / top.width.in(), area.length().in() / top.length.in()};
}

class Quilt {
public:
    Quilt(const LiveSession& live, const Turns& turns, int index)
        : live_{live}
        , turns_{turns}
        , index_{index}
        , pass_{live.state().currentPass[std::size_t(index)]}
        , letters_{::people::letters(live.session().setting.helpers)} {}

    /// `cloth` names what the top looks like, so that a phone asks for it once.
    QJsonObject asJson(const QString& cloth) const {
        const auto& plan = live_.plan().quilts[std::size_t(index_)];
        const auto tiles = tilesOf(plan, pass_, 0);
        QJsonArray zones, edges;
        for (const auto& tile : tiles.tiles)
            zones << zone(tile);
        for (const Side side : tiles.around)
            edges << (isAcross(side) ? words::side(side) : QString{});
        QJsonObject out{
            {QStringLiteral("name"),
             words::fromCore(live_.session().jobs[std::size_t(index_)].name)},
            {QStringLiteral("pass"), Words::tr("Pass %1 of %2").arg(pass_).arg(plan.passes.size())},
            {QStringLiteral("number"), pass_},
            {QStringLiteral("cloth"), cloth},
            {QStringLiteral("columns"), tiles.columns},
            {QStringLiteral("rows"), tiles.rows},
            {QStringLiteral("edges"), edges},
            {QStringLiteral("zones"), zones}};
        addStep(out);
        return out;
    }

private:
    QJsonObject zone(const PassTiles::Tile& tile) const {
        const Zone& zone = *tile.zone;
        const auto tick = live_.nextTick(index_, zone.id);
        const auto hands = turns_.whoseTurn(index_, zone.id);
        const auto& helpers = live_.session().setting.helpers;
        const auto at = hands.empty() ? helpers.end()
                                      : std::ranges::find(helpers, hands.front(), &Helper::name);
        QJsonArray names;
        for (const auto& hand : hands)
            names << words::fromCore(hand);
        QJsonArray crew;
        for (const auto& task : live_.plan().tasks)
            if (task.job == index_ && task.zone == zone.id)
                for (const auto& person : task.people)
                    if (const QString who = words::fromCore(person); !crew.contains(who))
                        crew << who;
        return {
            {QStringLiteral("zone"), words::fromCore(zone.id)},
            {QStringLiteral("column"), tile.column},
            {QStringLiteral("row"), tile.row},
            {QStringLiteral("area"),
             partOf(zone.area, live_.plan().quilts[std::size_t(index_)].layers.top)},
            {QStringLiteral("points"), int(zone.points.size())},
            {QStringLiteral("stage"), stageOf(live_.state().zones.at({index_, zone.id}))},
            {QStringLiteral("letter"),
             at == helpers.end() ? QString{} : letters_[at - helpers.begin()]},
            {QStringLiteral("verb"),
             tick ? words::tick(*tick, turns_.way(index_, zone.id)) : QString{}},
            {QStringLiteral("next"), tick ? words::fromCore(name(*tick)) : QString{}},
            {QStringLiteral("ready"), turns_.mayTick({.job = index_, .zone = zone.id}).counts()},
            {QStringLiteral("rows"), words::zoneRows(live_.plan().quilts[std::size_t(index_)], zone,
                                                     live_.session().jobs[std::size_t(index_)])},
            {QStringLiteral("hands"), names},
            {QStringLiteral("crew"), crew}};
    }

    void addStep(QJsonObject& out) const {
        const auto call = turns_.call(index_);
        out[QStringLiteral("call")] = call.toRelease  ? Words::tr("Pass %1 is finished").arg(pass_)
                                      : call.finished ? Words::tr("All is done")
                                                      : words::call(call.now);
        out[QStringLiteral("nextCall")] = call.next ? words::call(*call.next) : QString{};
        QString text, who, caution;
        if (const auto next = turns_.mainStep(index_); next && next->kind == NextStep::Kind::step) {
            const auto kind = live_.task(next->task)->kind;
            text = words::task(kind);
            who = ::people::atAGlance(next->people, live_.session().setting.helpers);
            caution = next->ready ? words::caution(kind) : words::fromCore(next->waits);
        }
        out[QStringLiteral("step")] = text;
        out[QStringLiteral("stepWho")] = who;
        out[QStringLiteral("caution")] = caution;
    }

    const LiveSession& live_;
    const Turns& turns_;
    int index_, pass_;
    QStringList letters_;
};

} // namespace

QJsonObject whatGuestsSee(const LiveController& controller) {
    const auto* live = controller.live();
    if (!live)
        return {{QStringLiteral("open"), false}};
    const Turns turns = live->turns();
    QJsonArray quilts;
    for (int i = 0; i < int(live->plan().quilts.size()); ++i)
        quilts << Quilt{*live, turns, i}.asJson(
            QStringLiteral("%1-%2").arg(controller.id()).arg(i));
    return {{QStringLiteral("open"), true},
            {QStringLiteral("ended"), controller.ended()},
            {QStringLiteral("paused"), controller.paused()},
            {QStringLiteral("title"), controller.title()},
            {QStringLiteral("progress"), controller.progressText()},
            {QStringLiteral("finish"), controller.finishText()},
            {QStringLiteral("people"), people(controller)},
            {QStringLiteral("quilts"), quilts}};
}

} // namespace bastewright::page
