#pragma once

#include "plan/plan.h"
#include "sheets/hold_order.h"
#include "ways/way.h"

#include <QImage>
#include <QRectF>
#include <QString>

#include <string>
#include <vector>

class QPainter;

/// The table with everybody at their place: what the lead's sheet and each helper's are built
/// round, and the same table small, pass by pass.
namespace bastewright::sheets {

/// Somebody at the table, with what they do there.
struct AtTable {
    Stretch stretch;
    QString letter, name;
    std::vector<const Zone*> zones;
    std::vector<HoldPoint> holds;
    bool seated = false;
};

struct PlacePicture {
    const QuiltPlan* quilt = nullptr;
    const Pass* pass = nullptr;
    std::vector<AtTable> people;
    /// Whose sheet it is: their area is gray, their holds are black; empty: nobody's.
    std::string mine{};
    Side bottom = Side::foot;                     ///< this side of the quilt lies at the bottom
    QString you{};                                ///< beside one's own mark; empty: the name
    WayPoint::Shape shape = WayPoint::Shape::pin; ///< of zones that are basted as the quilt is
    QImage photo{}; ///< of the top, as it lies quietly on paper; null: none
};

/// Every clamp and tape with its number, everybody's place, rows and pins; the quilt's head and
/// foot are named. No text is smaller than `type::kLeast`.
void drawPlaces(QPainter& p, QRectF box, const PlacePicture& picture);

/// Height of the picture in a box so wide, at most `limit`.
double placesHeight(const PlacePicture& picture, double width, double limit);

/// A pass in small: the table stands still, the quilt lies where it does in this pass; what is
/// basted is stitched, what is basted now is gray.
struct PassThumb {
    const QuiltPlan* quilt = nullptr;
    const Pass* pass = nullptr;
    Side bottom = Side::foot;
    std::vector<const Zone*> mine{}; ///< gray are these alone, with their pins; empty: all of it
    bool hang = false;               ///< how far the backing hangs, in figures
};
void drawThumb(QPainter& p, QRectF box, const PassThumb& thumb, Unit unit);

/// Width against height of what the thumbs of a quilt show.
double thumbShape(const QuiltPlan& quilt, Side bottom);

} // namespace bastewright::sheets
