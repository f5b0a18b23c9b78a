#include "layout.h"

#include "pdf_reader.h"

#include <QRegularExpression>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace bastewright {
namespace {

using pdf::TextLine;

constexpr double kMargin = 12 / 25.4 * 72;
constexpr int kDots = 72; // a dot is a point

/// Bold, and large or as small as the names of columns, with nothing plain beside it; rows that
/// begin with a time of day, marks in rings, names of zones and whole sentences are none.
bool isHeading(const TextLine& line, const std::vector<TextLine>& lines) {
    static const QRegularExpression other{
        QStringLiteral(R"(^(\d\d:\d\d|\d+$|[A-Z]+\d+( [A-Z]+\d+)*$|.*\.$))")};
    const bool sized = line.size >= 13.5 || std::abs(line.size - 10) < 0.6;
    if (!line.bold || !sized || line.text.size() < 2 || other.match(line.text).hasMatch())
        return false;
    return std::ranges::none_of(lines, [&](const TextLine& beside) {
        const double middle = beside.at.center().y();
        return beside.page == line.page && !beside.bold && beside.at.left() > line.at.left() &&
               middle > line.at.top() && middle < line.at.bottom();
    });
}

/// Something is drawn in the column below the line.
bool hasInkBelow(const QImage& page, const TextLine& line) {
    constexpr int kAfterRule = 6, kColumn = 60;
    const int left = int(line.at.left()), right = std::min(page.width(), left + kColumn);
    for (int y = int(line.at.bottom()) + kAfterRule; y < page.height() - int(kMargin); ++y)
        for (int x = left; x < right; ++x)
            if (qGray(page.pixel(x, y)) < 200)
                return true;
    return false;
}

std::string words(const TextLine& line) {
    return "page " + std::to_string(line.page + 1) + ": \"" + line.text.toStdString() + "\"";
}

double area(const QRectF& r) {
    return r.isValid() ? r.width() * r.height() : 0;
}

/// Where a line's small letters stand: its box has white above and below.
QRectF letters(const TextLine& line) {
    const double high = line.at.height();
    return line.at.adjusted(0, 0.3 * high, 0, -0.25 * high);
}

/// The boxes of letters from the right to the left come singly and reach into one another.
bool runsToTheLeft(const TextLine& line) {
    return std::ranges::any_of(line.text, [](QChar c) {
        return c.direction() == QChar::DirR || c.direction() == QChar::DirAL;
    });
}

void expectApart(std::vector<TextLine> lines) {
    constexpr double kShare = 0.05;
    std::erase_if(lines, runsToTheLeft);
    for (std::size_t i = 0; i < lines.size(); ++i)
        for (std::size_t j = i + 1; j < lines.size() && lines[j].page == lines[i].page; ++j) {
            const QRectF one = letters(lines[i]), other = letters(lines[j]);
            EXPECT_LE(area(one & other), kShare * std::min(area(one), area(other)))
                << words(lines[i]) << " over " << words(lines[j]);
        }
}

} // namespace

void expectWholePages(const QString& path) {
    const auto lines = pdf::textLines(path);
    const auto pages = pdf::pictures(path, kDots);
    EXPECT_FALSE(lines.empty());
    for (const auto& line : lines) {
        ASSERT_LT(std::size_t(line.page), pages.size());
        const QImage& page = pages[std::size_t(line.page)];
        const QRectF inside{kMargin, kMargin, page.width() - 2 * kMargin,
                            page.height() - 2 * kMargin};
        EXPECT_TRUE(inside.contains(letters(line))) << words(line);
        if (isHeading(line, lines)) {
            EXPECT_TRUE(hasInkBelow(page, line)) << "nothing follows on " << words(line);
        }
    }
    expectApart(lines);
}

} // namespace bastewright
