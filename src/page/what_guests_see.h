#pragma once

#include "view/table/live_controller.h"

#include <QJsonObject>

namespace bastewright::page {

/// The session as guests see it, as JSON: the session's own answers (`Turns`) in the words of the
/// screen. Each zone says what its next tick is ("next", the event's name), whether its call has
/// come ("ready") and whose it is ("hands").
QJsonObject whatGuestsSee(const LiveController& live);

} // namespace bastewright::page
