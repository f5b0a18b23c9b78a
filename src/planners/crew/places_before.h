#pragma once

#include "planners/crew/behind.h"

/// What people have already when the rest of a session is planned.
namespace bastewright::crew {

/// Letters and places of the passes that are begun, and the zones of those that are done. `crews`
/// are by quilt and pass, `letters` by surface.
void takePlacesBefore(const Given& given, std::vector<QuiltTable>& tables,
                      std::vector<std::vector<PassCrew>>& crews, std::map<int, Letters>& letters);

} // namespace bastewright::crew
