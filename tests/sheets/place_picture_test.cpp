#include "sheets/pictures/place_picture.h"

#include <QImage>
#include <QPainter>
#include <gtest/gtest.h>

namespace bastewright {
namespace {

using namespace literals;

/// What is drawn dark in the middle of the picture: a row of stitches across the quilt.
QRect rowOfStitches(Side bottom) {
    QuiltPlan quilt;
    quilt.layers.top = {40_in, 40_in};
    Pass pass;
    pass.number = 1;
    pass.table = {0_in, 0_in, 40_in, 40_in};
    pass.fresh.parts = {pass.table};
    quilt.passes = {pass};
    Zone zone;
    zone.id = "A1";
    zone.pass = 1;
    zone.area = pass.table;
    for (int inch = 12; inch <= 28; inch += 4)
        zone.points.push_back({{Length::inches(inch), 20_in}, 0});
    quilt.zones = {zone};
    sheets::PlacePicture show;
    show.quilt = &quilt;
    show.pass = &quilt.passes.front();
    show.bottom = bottom;
    show.shape = WayPoint::Shape::stitch;
    show.mine = "Ada";
    sheets::AtTable& ada = show.people.emplace_back();
    ada.stretch.person = "Ada";
    ada.zones = {&quilt.zones.front()};

    constexpr int kBox = 400, kScale = 4;
    QImage image{kBox * kScale, kBox * kScale, QImage::Format_Grayscale8};
    image.fill(Qt::white);
    QPainter painter{&image};
    painter.scale(kScale, kScale);
    sheets::drawPlaces(painter, {0, 0, kBox, kBox}, show);
    painter.end();
    QRect dark;
    for (int y = image.height() / 4; y < image.height() * 3 / 4; ++y)
        for (int x = image.width() / 4; x < image.width() * 3 / 4; ++x)
            if (qGray(image.pixel(x, y)) < 60)
                dark |= QRect{x, y, 1, 1};
    return QRect{dark.topLeft() / kScale, dark.size() / kScale};
}

TEST(PlacePicture, StitchesLieAlongTheirRowWhicheverSideIsAtTheBottom) {
    for (const Side bottom : {Side::foot, Side::head}) {
        const QRect row = rowOfStitches(bottom);
        EXPECT_GT(row.width(), 60);
        EXPECT_LT(row.height(), 3);
    }
    for (const Side bottom : {Side::left, Side::right}) {
        const QRect row = rowOfStitches(bottom);
        EXPECT_GT(row.height(), 60);
        EXPECT_LT(row.width(), 3);
    }
}

} // namespace
} // namespace bastewright
