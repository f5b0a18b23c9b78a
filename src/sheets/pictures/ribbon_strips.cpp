#include "sheets/pictures/ribbon_strips.h"

#include "sheets/ink.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace bastewright::sheets {
namespace {

constexpr double kWide = 42, kBar = 4, kTick = 9;
const QColor kGray{0xd0, 0xd0, 0xd0};

Length endOf(const PinRows& rows, const Top& top, bool side) {
    const Rect all = topRect(top);
    return (rows.along == PinRows::Along::width) != side ? all.width() : all.length();
}

/// Border and sashing along an axis of the top.
std::vector<Interval> bars(const Top& top, bool horizontal) {
    std::vector<Interval> out;
    if (!top.grid)
        return out;
    const BlockGrid& g = *top.grid;
    const Rect all = topRect(top);
    const Point first = g.firstBlock(all);
    const Length block = horizontal ? g.block : g.blockHeight(),
                 from = horizontal ? first.x : first.y;
    const Length end = horizontal ? all.width() : all.length();
    const int count = horizontal ? g.columns : g.rows;
    if (from > Length{})
        out.push_back({{}, from});
    for (int i = 0; i < count; ++i) {
        const Length after = from + (i + 1) * block + i * g.sashing;
        out.push_back({after, i + 1 < count ? after + g.sashing : end});
    }
    std::erase_if(out, [](const Interval& i) { return i.size() <= Length{}; });
    return out;
}

class StripDrawing {
public:
    StripDrawing(QPainter& p, QRectF box, const PinRows& rows, const Top& top, const Strips& strips)
        : p_{p}
        , box_{box}
        , rows_{rows}
        , top_{top}
        , strips_{strips} {}

    void strip(int number, double x) {
        from_ = number * strips_.each;
        frame_ = {x, box_.top(), kWide, strips_.each.in() * kPointsPerInch};
        p_.setPen(QPen{ink::kDark, ink::kHair});
        p_.setBrush(Qt::NoBrush);
        p_.drawRect(frame_);
        const bool across = rows_.along == PinRows::Along::width;
        for (const bool side : {true, false})
            for (const Interval& bar : bars(top_, across != side))
                grayBar(bar, side);
        label(p_, {frame_.center().x(), frame_.top() + frame_.height() * 0.52},
              QString::number(number + 1), 22, kWide, true, kGray);
        for (std::size_t i = 0; i < rows_.ribbons.side.size(); ++i)
            if (const auto y = at(rows_.ribbons.side[i]))
                row(*y, int(i) + 1);
        for (const bool odd : {true, false}) {
            const auto& marks = odd ? rows_.ribbons.odd : rows_.ribbons.even;
            for (std::size_t i = 0; i < marks.size(); ++i)
                if (const auto y = at(marks[i]))
                    mark(*y, int(i) + 1, odd);
        }
        for (const bool side : {true, false})
            if (const auto y = at(endOf(rows_, top_, side))) {
                const double end = side ? frame_.left() : frame_.right() - 14;
                p_.setPen(QPen{ink::kDark, ink::kBold});
                p_.drawLine(QPointF{end, *y}, QPointF{end + 14, *y});
            }
    }

private:
    std::optional<double> at(Length place) const {
        const Length within = place - from_;
        if (within < Length{} || within >= strips_.each)
            return {};
        return frame_.top() + within.in() * kPointsPerInch;
    }
    void grayBar(const Interval& bar, bool left) {
        const Interval here = intersection(bar, {from_, from_ + strips_.each});
        if (here.size() <= Length{})
            return;
        const double x = left ? frame_.left() : frame_.right() - kBar;
        p_.fillRect(QRectF{x, frame_.top() + (here.lo - from_).in() * kPointsPerInch, kBar,
                           here.size().in() * kPointsPerInch},
                    kGray);
    }
    void row(double y, int number) {
        const QRectF box{frame_.left() + 5, y - 5.5, 15, 11};
        const bool odd = number % 2 == 1;
        p_.setPen(QPen{ink::kDark, ink::kLine});
        p_.drawLine(QPointF{frame_.left(), y}, QPointF{box.left(), y});
        p_.setBrush(odd ? ink::kDark : ink::kPaper);
        p_.drawRect(box);
        label(p_, box.center(), QString::number(number), 9, 15, true,
              odd ? ink::kPaper : ink::kDark);
    }
    void mark(double y, int number, bool odd) {
        const double x = frame_.right();
        QPolygonF tip;
        tip << QPointF{x, y} << QPointF{x - kTick, y - 4} << QPointF{x - kTick, y + 4};
        p_.setPen(QPen{ink::kDark, ink::kThin});
        p_.setBrush(odd ? ink::kDark : ink::kPaper);
        p_.drawPolygon(tip);
        label(p_, {x - kTick - 7, y}, QString::number(number), 9, 15, true);
    }

    QPainter& p_;
    QRectF box_, frame_;
    const PinRows& rows_;
    const Top& top_;
    const Strips& strips_;
    Length from_{};
};

} // namespace

Strips stripsFor(const PinRows& rows, const Top& top, double height) {
    Strips out;
    out.each = Length::inch64ths(32) *
               std::int64_t(std::floor(height / kPointsPerInch * 2)); // whole half inches
    const Length longest = std::max(endOf(rows, top, true), endOf(rows, top, false));
    out.count = int(ceilDiv(longest + Length::nanometres(1), out.each));
    return out;
}

int stripsBeside(double width) {
    return std::max(1, int(std::floor(width / kWide)));
}

int drawStrips(QPainter& p, QRectF box, const PinRows& rows, const Top& top, const Strips& strips,
               int first) {
    p.save();
    StripDrawing drawing{p, box, rows, top, strips};
    const int last = std::min(strips.count, first + stripsBeside(box.width()));
    for (int i = first; i < last; ++i)
        drawing.strip(i, box.left() + (i - first) * kWide);
    p.restore();
    return last;
}

} // namespace bastewright::sheets
