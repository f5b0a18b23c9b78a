#include "sheets/pages/helper_pictures.h"

#include "sheets/columns.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

constexpr double kScale = 1.15; // points to the inch: a zone's id stays readable
constexpr double kBetweenPictures = 10;

/// A picture of the strip, its pass below it.
struct Captioned {
    PlacePicture picture;
    std::shared_ptr<TextBlock> caption;
    double width() const { return std::max(picture.width(), caption->naturalWidth()); }
};

Block rowOf(const std::vector<Captioned>& row) {
    double high = 0, below = 0;
    for (const auto& one : row) {
        high = std::max(high, one.picture.height());
        below = std::max(below, one.caption->height());
    }
    return {.height = high + below + 1, .before = 4, .draw = [=](QPainter& p, QRectF at) {
                double x = at.left();
                for (const auto& one : row) {
                    one.picture.draw(p, {x + (one.width() - one.picture.width()) / 2, at.top()});
                    one.caption->draw(
                        p, {x + (one.width() - one.caption->naturalWidth()) / 2, at.top() + high});
                    x += one.width() + kBetweenPictures;
                }
            }};
}

} // namespace

PlacePicture::PlacePicture(const PassPart& part, const ChecklistStyle& style)
    : quilt_{part.quilt}
    , pass_{part.pass}
    , show_{.near = true, .mine = part.zones} {
    for (const auto& place : part.places)
        show_.places.push_back({place, QString::number(part.placeNumber(place)), true});
    size_ = pictureSize(*quilt_, *pass_, show_, kScale, style.picture);
}

void PlacePicture::draw(QPainter& p, QPointF topLeft) const {
    drawTable(p, {topLeft, size_}, *quilt_, *pass_, show_);
}

Block PlacePicture::block() const {
    return {.height = size_.height(), .draw = [self = *this](QPainter& p, QRectF at) {
                self.draw(p, {at.right() - self.width(), at.top()});
            }};
}

bool hasPicture(const PassPart& part) {
    return part.pass && (!part.places.empty() || !part.zones.empty());
}

Flow pictureStrip(const SheetContext& c, const std::string& person, const std::vector<Stretch>& all,
                  const ChecklistStyle& style) {
    Flow flow;
    std::vector<Captioned> row;
    double x = 0;
    for (const auto& s : all) {
        const PassPart part = partOf(c, person, s.quilt, s.pass);
        if (!s.first || !hasPicture(part))
            continue;
        const PlacePicture picture{part, style};
        // In columns the table is left to the lists' headings.
        const QString name = style.columns && c.severalQuilts()
                                 ? Text::tr("%1, pass %2").arg(c.quiltName(s.quilt)).arg(s.pass)
                                 : c.passName(s.quilt, s.pass);
        Captioned one{picture, std::make_shared<TextBlock>(
                                   name, std::max(picture.width(), 118.0),
                                   TextStyle{.size = style.columns ? type::kSmall : type::kBody,
                                             .bold = true})};
        if (!row.empty() && x + one.width() > c.width) {
            flow.push_back(rowOf(std::move(row)));
            row.clear();
            x = 0;
        }
        x += one.width() + kBetweenPictures;
        row.push_back(std::move(one));
    }
    if (!row.empty())
        flow.push_back(rowOf(std::move(row)));
    return flow;
}

} // namespace bastewright::sheets
