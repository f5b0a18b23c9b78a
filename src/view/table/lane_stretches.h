#pragma once

#include "plan/call.h"
#include "view/table/lanes_board.h"

#include <QString>

#include <vector>

/// What one person does at one call of a pass, without anything else between, or in all of a pass:
/// one stretch of their lane, however many pieces it is of.
struct LaneStretch {
    std::vector<const LanesBoard::Block*> pieces;      ///< by their start, at least one
    bastewright::Call call = bastewright::Call::setUp; ///< of its first piece
    bool wholePass = false;                            ///< whatever the calls

    int lane() const { return pieces.front()->lane; }
    bastewright::Seconds start() const { return pieces.front()->task->start; }
    bastewright::Seconds end() const;
    /// "A1", "A1–A6", "A2, B1"; empty for steps of the whole pass.
    QString zones() const;
};

enum class LaneGrain { calls, passes };

/// All blocks in stretches, lane by lane; `blocks` must outlive them. Setting up and rolling up are
/// of no pass.
std::vector<LaneStretch> stretchesOf(const std::vector<LanesBoard::Block>& blocks, LaneGrain grain);
