#include "page/ticks.h"

#include "job/json_text.h"
#include "page/http_request.h"
#include "page/words.h"
#include "view/base/words.h"

#include <QUuid>

#include <algorithm>
#include <optional>

namespace bastewright::page {
namespace {

TickAnswer badRequest(const char* field) {
    return {400, Words::tr("This page is out of date. Load it again."),
            QStringLiteral("a tick whose %1 is not right").arg(QLatin1String(field))};
}

bool isHelper(const LiveSession& live, const std::string& person) {
    const auto& helpers = live.session().setting.helpers;
    return std::ranges::find(helpers, person, &Helper::name) != helpers.end();
}

std::optional<Json> objectIn(std::string_view body) {
    Findings problems;
    auto in = parseJson(body, {.bytes = HttpReader::kMostBody}, problems);
    return in && in->is_object() && problems.empty() ? std::move(in) : std::nullopt;
}

constexpr std::size_t kLongestName = 200;

std::optional<std::string> text(const Json& from, const char* field) {
    const auto at = from.find(field);
    if (at == from.end() || !at->is_string())
        return {};
    auto value = at->get<std::string>();
    if (value.empty() || value.size() > kLongestName)
        return {};
    return value;
}

/// Why nothing from this person counts; `what` is for the log.
std::optional<TickAnswer> refusal(const LiveController& live, const std::string& person,
                                  const char* what) {
    if (!live.live())
        return TickAnswer{409, Words::tr("No session is running at the table."), {}};
    if (!isHelper(*live.live(), person))
        return TickAnswer{
            403, Words::tr("Choose who you are."),
            QStringLiteral("%1 by somebody who is no helper").arg(QLatin1String(what))};
    return {};
}

} // namespace

TickAnswer takeTick(LiveController& live, std::string_view body) {
    const auto in = objectIn(body);
    if (!in)
        return badRequest("body");
    const auto id = text(*in, "id"), zone = text(*in, "zone"), kindName = text(*in, "kind"),
               person = text(*in, "person");
    if (!id || QUuid::fromString(words::fromCore(*id)).isNull())
        return badRequest("id");
    const auto what = kindName ? whatNamed(*kindName) : std::nullopt;
    const auto* tick = what ? std::get_if<happened::ZoneTick>(&*what) : nullptr;
    if (!tick)
        return badRequest("kind");
    const auto quilt = in->find("quilt");
    if (quilt == in->end() || !quilt->is_number_unsigned() || quilt->get<std::uint64_t>() > 1000)
        return badRequest("quilt");
    if (!zone)
        return badRequest("zone");
    if (!person)
        return badRequest("person");
    if (const auto refused = refusal(live, *person, "a tick"))
        return *refused;
    const Tap tap{.job = quilt->get<int>(), .zone = *zone, .meant = tick->kind, .person = *person};
    const auto why = live.live()->turns().mayTick(tap).why;
    const QString told = live.tapFromElsewhere(tap, *id);
    if (told.isEmpty())
        return {};
    if (why == TapAnswer::Why::unknown)
        return {404, told, QStringLiteral("a tick of a zone that does not exist")};
    if (why == TapAnswer::Why::notTheirs)
        return {403, told, QStringLiteral("a tick of another's zone")};
    return {409, told, {}};
}

TickAnswer takeBack(LiveController& live, std::string_view body) {
    const auto in = objectIn(body);
    if (!in)
        return badRequest("body");
    const auto id = text(*in, "id"), person = text(*in, "person");
    if (!id || QUuid::fromString(words::fromCore(*id)).isNull())
        return badRequest("id");
    if (!person)
        return badRequest("person");
    if (const auto refused = refusal(live, *person, "a taking back"))
        return *refused;
    const QString told = live.takeBackOwn(*person, *id);
    return told.isEmpty() ? TickAnswer{} : TickAnswer{409, told, {}};
}

} // namespace bastewright::page
