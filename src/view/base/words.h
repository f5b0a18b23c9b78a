#pragma once

#include "plan/call.h"
#include "plan/plan.h"
#include "session/event.h"
#include "ways/way.h"

#include <QString>

#include <concepts>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

/// The screen's words for the core's values, in the person's language.
namespace words {

/// A sentence of this namespace in the person's language.
QString tr(const char* text);

/// A name, as it is.
template <std::convertible_to<std::string_view> Name>
QString fromCore(const Name& name) {
    const std::string_view text{name};
    return QString::fromUtf8(text.data(), qsizetype(text.size()));
}
/// What the core says, in the person's language.
QString fromCore(const bastewright::Sentence& sentence);
std::string toCore(const QString& text);

/// "12½ in"
QString length(bastewright::Length l, bastewright::Unit unit);
/// "88 × 112 in"
QString size(bastewright::Size s, bastewright::Unit unit);
QString span(bastewright::Seconds s);
QString about(bastewright::Seconds s); ///< "about 1 h 05 min": an estimate
QString clock(bastewright::ClockTime start, bastewright::Seconds s);
QString clock(bastewright::ClockTime time);
QString weight(double kilograms, bastewright::Unit unit); ///< "7 lb", "3.2 kg"
QString yardsUp(bastewright::Length l);                   ///< "5½ yd": up to the next eighth
/// As shops sell it: "5⅜ yd", "4.90 m".
QString lengthToBuy(bastewright::Length l, bastewright::Unit unit);
QString timeOfDay(std::int64_t ms); ///< where the device is, of milliseconds since 1970
/// The time of day there, without the seconds.
bastewright::ClockTime clockOf(std::int64_t ms);
/// A count without needless decimals.
QString amount(double number);
/// So many of a supply, without its unit: "12⅜" yards, "544" pins, "3.25" metres.
QString amount(const bastewright::Supply& supply, double number, bastewright::Unit unit);

QString side(bastewright::Side side);
/// What people call a zone within its pass: "A2", whatever its id.
QString zone(const std::string& id);
/// Which rows and marks a zone has, as a line of its own: "Rows 1–8 as far as mark 11"; empty where
/// points do not stand in rows.
QString zoneRows(const bastewright::QuiltPlan& quilt, const bastewright::Zone& zone,
                 const bastewright::Job& job);
QString method(bastewright::Quilting::Method method);
QString start(bastewright::Basting::Start start);
QString points(const bastewright::Job& job, qsizetype count); ///< "612 pins", "80 dots"
/// Of zones, of one pass or of all: "412 pins and 96 dots" where they are basted in two ways.
QString points(const bastewright::Job& job, std::span<const bastewright::Zone> zones,
               std::optional<int> pass = {});
/// What to do, as a short command: "Lay the backing".
QString task(bastewright::TaskKind kind);
/// The same in two or three words, for somebody who knows it.
QString shortTask(bastewright::TaskKind kind);
/// The same for one person at one zone: "pins in".
QString zoneTask(bastewright::TaskKind kind);
/// What the lead calls: "Hands off".
QString call(bastewright::Call call);
/// The work that such a tick of a zone is about: "pins in".
QString tick(bastewright::Tick kind, const bastewright::Way& way);
/// The caution that belongs to a step; empty for most.
QString caution(bastewright::TaskKind kind);

} // namespace words
