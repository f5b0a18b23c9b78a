#pragma once

#include "view/table/table_board.h"

#include <QJsonObject>

#include <memory>
#include <vector>

namespace bastewright::page {

/// The session as guests see it: the same words, tiles and order as on the tablet, as JSON. Each
/// zone also says which rows it has ("rows"), what its next tick is ("next", the event's name) and
/// whose it is ("hands").
class WhatGuestsSee {
public:
    explicit WhatGuestsSee(LiveController* live);

    QJsonObject now();
    /// What is laid out for looking is put away until somebody looks again.
    void forget() { boards_.clear(); }

private:
    QJsonObject quilt(int index);

    LiveController* live_;
    std::vector<std::unique_ptr<TableBoard>> boards_; ///< one for each quilt
};

/// Who does the zone's next piece of work and has not ticked it; nobody where the plan names
/// nobody.
struct Hand {
    std::string person, task;
};
std::vector<Hand> handsAt(const LiveSession& live, int quilt, const std::string& zone);

} // namespace bastewright::page
