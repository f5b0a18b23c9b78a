#pragma once

#include "sheets/pages/helper_rows.h"
#include "sheets/pictures/table_picture.h"

namespace bastewright::sheets {

/// The picture of the table in one pass with a person's zones and places.
class PlacePicture {
public:
    PlacePicture(const PassPart& part, const ChecklistStyle& style);
    double width() const { return size_.width(); }
    double height() const { return size_.height(); }
    void draw(QPainter& p, QPointF topLeft) const;
    /// Drawn at the right edge of its place.
    Block block() const;

private:
    const QuiltPlan* quilt_;
    const Pass* pass_;
    TablePicture show_;
    QSizeF size_;
};

/// True where there is something of this person's to show.
bool hasPicture(const PassPart& part);

inline PlacePicture placePicture(const PassPart& part, const ChecklistStyle& style) {
    return {part, style};
}

/// All of a person's pictures in rows, each with its pass below it.
Flow pictureStrip(const SheetContext& c, const std::string& person, const std::vector<Stretch>& all,
                  const ChecklistStyle& style);

} // namespace bastewright::sheets
