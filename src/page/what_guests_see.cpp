#include "page/what_guests_see.h"

#include "view/base/words.h"

#include <QJsonArray>

#include <algorithm>

namespace bastewright::page {
namespace {

QJsonArray asJson(const TableRows& rows) {
    const auto roles = rows.roleNames();
    QJsonArray out;
    for (int row = 0; row < rows.count(); ++row) {
        QJsonObject object;
        for (auto role = roles.begin(); role != roles.end(); ++role)
            object[QString::fromLatin1(role.value())] =
                QJsonValue::fromVariant(rows.data(rows.index(row), role.key()));
        out << object;
    }
    return out;
}

} // namespace

std::vector<Hand> handsAt(const LiveSession& live, int quilt, const std::string& zone) {
    std::vector<Hand> out;
    const auto tick = live.nextTick(quilt, zone);
    if (!tick)
        return out;
    for (const Task* task : live.tasksOfTick(quilt, zone, *tick))
        if (!live.state().doneTasks.contains(task->id))
            for (const auto& person : task->people)
                out.push_back({person, task->id});
    return out;
}

WhatGuestsSee::WhatGuestsSee(LiveController* live)
    : live_{live} {}

QJsonObject WhatGuestsSee::quilt(int index) {
    auto& board = *boards_[std::size_t(index)];
    const QuiltPlan& plan = live_->live()->plan().quilts[std::size_t(index)];
    const Job& job = live_->live()->session().jobs[std::size_t(index)];
    QJsonArray zones = asJson(*board.zones());
    for (auto&& value : zones) {
        auto zone = value.toObject();
        const auto id = words::toCore(zone[QStringLiteral("zone")].toString());
        const auto tick = live_->live()->nextTick(index, id);
        QJsonArray hands;
        for (const auto& hand : handsAt(*live_->live(), index, id))
            hands << words::fromCore(hand.person);
        zone[QStringLiteral("next")] = tick ? words::fromCore(name(*tick)) : QString{};
        zone[QStringLiteral("hands")] = hands;
        if (const auto at = std::ranges::find(plan.zones, id, &Zone::id); at != plan.zones.end())
            zone[QStringLiteral("rows")] = words::zoneRows(plan, *at, job);
        value = zone;
    }
    return {{QStringLiteral("name"), board.quilts().value(index)},
            {QStringLiteral("pass"), board.passText()},
            {QStringLiteral("columns"), board.columns()},
            {QStringLiteral("rows"), board.rowsOfTiles()},
            {QStringLiteral("edges"), QJsonArray::fromStringList(board.edges())},
            {QStringLiteral("step"), board.stepText()},
            {QStringLiteral("stepWho"), board.stepWho()},
            {QStringLiteral("stepReady"), board.stepReady()},
            {QStringLiteral("caution"), board.caution()},
            {QStringLiteral("zones"), zones}};
}

QJsonObject WhatGuestsSee::now() {
    if (!live_->live()) {
        boards_.clear();
        return {{QStringLiteral("open"), false}};
    }
    const auto count = live_->live()->plan().quilts.size();
    while (boards_.size() > count)
        boards_.pop_back();
    while (boards_.size() < count) {
        boards_.push_back(std::make_unique<TableBoard>(live_));
        boards_.back()->setQuilt(int(boards_.size()) - 1);
    }
    QJsonArray quilts;
    for (int i = 0; i < int(count); ++i) {
        boards_[std::size_t(i)]->refresh();
        quilts << quilt(i);
    }
    return {{QStringLiteral("open"), true},
            {QStringLiteral("ended"), live_->ended()},
            {QStringLiteral("paused"), live_->paused()},
            {QStringLiteral("title"), live_->title()},
            {QStringLiteral("progress"), live_->progressText()},
            {QStringLiteral("finish"), live_->finishText()},
            {QStringLiteral("people"), asJson(*live_->people())},
            {QStringLiteral("quilts"), quilts}};
}

} // namespace bastewright::page
