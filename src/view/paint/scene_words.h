#pragma once

#include "session/table_scene.h"
#include "view/base/planned.h"

#include <QString>

namespace words {

/// What goes on at one moment, in one or two sentences: "Ada closes C4; Bo and Cai slide the quilt
/// 24 in towards the head."
QString moment(const Planned& planned, int quilt, const bastewright::TableScene& scene,
               bastewright::Seconds at);

/// Who does what, without a time: "Ada closes C4".
QString deed(const Planned& planned, const bastewright::Task& task);

} // namespace words
