#include "page/ticks.h"

#include "page/what_guests_see.h"
#include "view/base/words.h"

#include <QCoreApplication>
#include <QUuid>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace bastewright::page {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Guests)
};

TickAnswer badRequest(const char* field) {
    return {400, Words::tr("This page is out of date. Load it again."),
            QStringLiteral("a tick whose %1 is not right").arg(QLatin1String(field))};
}

bool isZoneTick(EventKind kind) {
    return kind == EventKind::zoneDotted || kind == EventKind::zoneOpened ||
           kind == EventKind::zoneClosed || kind == EventKind::zonePressed;
}

constexpr std::size_t kLongestName = 200;

std::optional<std::string> text(const nlohmann::json& from, const char* field) {
    const auto at = from.find(field);
    if (at == from.end() || !at->is_string())
        return {};
    auto value = at->get<std::string>();
    if (value.empty() || value.size() > kLongestName)
        return {};
    return value;
}

} // namespace

TickAnswer takeTick(LiveController& live, std::string_view body) {
    const auto in = nlohmann::json::parse(body, nullptr, false);
    if (!in.is_object())
        return badRequest("body");
    const auto id = text(in, "id"), zone = text(in, "zone"), kindName = text(in, "kind"),
               person = text(in, "person");
    if (!id || QUuid::fromString(words::fromCore(*id)).isNull())
        return badRequest("id");
    const auto kind = kindName ? eventKind(*kindName) : std::nullopt;
    if (!kind || !isZoneTick(*kind))
        return badRequest("kind");
    const auto quilt = in.find("quilt");
    if (quilt == in.end() || !quilt->is_number_unsigned() || quilt->get<std::uint64_t>() > 1000)
        return badRequest("quilt");
    if (!zone)
        return badRequest("zone");
    if (!person)
        return badRequest("person");
    if (!live.live())
        return {409, Words::tr("No session is running at the table."), {}};

    Event tick;
    tick.id = *id;
    tick.kind = *kind;
    tick.job = quilt->get<int>();
    tick.zone = *zone;
    tick.person = *person;
    if (!live.live()->state().zones.contains({tick.job, tick.zone}))
        return {404, Words::tr("There is no zone %1.").arg(words::zone(*zone)),
                QStringLiteral("a tick of a zone that does not exist")};
    const auto& helpers = live.live()->session().setting.helpers;
    if (std::ranges::find(helpers, *person, &Helper::name) == helpers.end())
        return {403, Words::tr("Choose who you are."),
                QStringLiteral("a tick by somebody who is no helper")};
    if (!live.live()->find(tick.id)) {
        if (live.live()->nextTick(tick.job, tick.zone) != *kind)
            return {
                409,
                Words::tr("%1 is ticked already, or not on the table now.").arg(words::zone(*zone)),
                {}};
        const auto hands = handsAt(*live.live(), tick.job, tick.zone);
        const auto own = std::ranges::find(hands, *person, &Hand::person);
        if (!hands.empty() && own == hands.end())
            return {403,
                    Words::tr("%1 is the work of %2. Tick it at the table.")
                        .arg(words::zone(tick.zone), words::fromCore(hands.front().person)),
                    QStringLiteral("a tick of another's zone")};
    }
    const QString why = live.tickFromElsewhere(tick);
    return {why.isEmpty() ? 200 : 409, why, {}};
}

} // namespace bastewright::page
