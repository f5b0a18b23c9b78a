#include "layout.h"
#include "written.h"

#include <QPainter>
#include <QPdfWriter>
#include <gtest/gtest-spi.h>

#include <functional>

namespace bastewright {
namespace {

/// How many failures the check of layout reports of an A4 page, drawn in points.
int failuresOf(const std::function<void(QPainter&)>& draw) {
    const QTemporaryDir dir;
    const QString path = dir.filePath("p.pdf");
    {
        QPdfWriter writer{path};
        writer.setResolution(72);
        writer.setPageMargins({});
        QPainter painter{&writer};
        draw(painter);
    }
    testing::TestPartResultArray results;
    const testing::ScopedFakeTestPartResultReporter reporter{
        testing::ScopedFakeTestPartResultReporter::INTERCEPT_ALL_THREADS, &results};
    expectWholePages(path);
    return results.size();
}

void put(QPainter& p, double x, double y, const QString& words, int size = 12, bool bold = false) {
    QFont font{QStringLiteral("DejaVu Sans")};
    font.setPixelSize(size);
    font.setBold(bold);
    p.setFont(font);
    p.drawText(QPointF{x, y}, words);
}

// What it is there to find must be found, or its silence on the sheets would prove nothing.
TEST(Layout, headingsLeftAloneTextsOverTextsAndInTheMarginAreSeen) {
    SKIP_WITHOUT_POPPLER();
    const auto good = [](QPainter& p) {
        put(p, 60, 100, "Pass 2", 17, true);
        put(p, 60, 125, "13:00 shift the quilt");
    };
    EXPECT_EQ(failuresOf(good), 0);
    EXPECT_GT(failuresOf([&](QPainter& p) {
                  good(p);
                  put(p, 60, 780, "Pass 3", 17, true);
              }),
              0)
        << "a heading at the foot of the page";
    EXPECT_GT(failuresOf([&](QPainter& p) {
                  good(p);
                  put(p, 320, 780, "Zones", 10, true);
              }),
              0)
        << "names of columns without a row";
    EXPECT_GT(failuresOf([&](QPainter& p) {
                  good(p);
                  put(p, 75, 128, "lift with Bo");
              }),
              0)
        << "words over words";
    EXPECT_GT(failuresOf([&](QPainter& p) {
                  good(p);
                  put(p, 60, 838, "cut");
              }),
              0)
        << "words in the margin";
}

} // namespace
} // namespace bastewright
