#pragma once

#include "job/job.h"
#include "plan/pin_blocks.h"
#include "plan/pin_rows.h"

#include <QRectF>

#include <optional>

class QPainter;

/// Pictures of how pins stand in rows.
namespace bastewright::sheets {

/// The ribbon laid along a row: odd rows' marks above the line, even rows' below where they differ,
/// numbered, each with its distance from the beginning where there is room.
void drawMarksRibbon(QPainter& p, QRectF box, const PinRows& rows, Unit unit);

/// The ribbon down the side, drawn lying: where each row is. `row` (from 0) is set off.
void drawSideRibbon(QPainter& p, QRectF box, const PinRows& rows, Unit unit,
                    std::optional<std::size_t> row = {});

/// The whole top with its seams and every pin, rows numbered at both ends.
void drawRows(QPainter& p, QRectF box, const Rect& top, const std::vector<Segment>& seams,
              const PinRows& rows);

/// One block with its inner seams, half of the sashing round it, and its pins. `pin` is the length
/// pins are drawn with; zero: dots.
void drawBlock(QPainter& p, QRectF box, const PinBlocks& blocks, const Top& top, Length pin);

} // namespace bastewright::sheets
