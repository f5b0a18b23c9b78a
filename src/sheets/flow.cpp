#include "sheets/flow.h"

#include "sheets/two_columns.h"

#include <algorithm>

namespace bastewright::sheets {
namespace {

/// Index after the last block that has to stay with block `from`.
std::size_t chainEnd(const Flow& flow, std::size_t from) {
    while (from + 1 < flow.size() && flow[from].keepWithNext && !flow[from + 1].newPage)
        ++from;
    return from + 1;
}

constexpr double kLeastColumns = 90; // less is not worth beginning two columns for

double heightOf(const Flow& flow, std::size_t from, std::size_t to, bool atTop) {
    double h = 0;
    for (std::size_t i = from; i < to; ++i)
        h += (i == from && atTop ? 0 : flow[i].before) +
             (flow[i].columns ? kLeastColumns : flow[i].height);
    return h;
}

class Pages {
public:
    explicit Pages(double height)
        : height_{height} {}

    bool atTop() const { return pages_.empty() || pages_.back().empty(); }
    bool fits(double h) const { return y_ + h <= height_ + 1e-6; }

    void turn() {
        pages_.emplace_back();
        y_ = 0;
    }
    void place(const Block& block, bool again = false) {
        if (pages_.empty())
            turn();
        if (!atTop())
            y_ += block.before;
        pages_.back().push_back({block, y_, again});
        y_ += block.height;
    }
    void placeColumns(const Block& block) {
        for (Flow left = *block.columns; !left.empty();) {
            const double room = height_ - (atTop() ? 0 : y_ + block.before);
            ColumnCut cut = cutColumns(left, std::max(room, kLeastColumns));
            if (!atTop() &&
                (room < kLeastColumns || cut.block.height > room + 1e-6 || cut.parted)) {
                turn();
                continue;
            }
            cut.block.before = block.before;
            place(cut.block);
            left = std::move(cut.rest);
            if (!left.empty())
                turn();
        }
    }
    std::vector<PlacedPage> take() { return std::move(pages_); }

private:
    double height_, y_ = 0;
    std::vector<PlacedPage> pages_;
};

} // namespace

std::vector<PlacedPage> paginate(const Flow& flow, double height) {
    Pages pages{height};
    const auto overflow = [&](const Block& next) {
        pages.turn();
        if (next.repeat)
            pages.place(*next.repeat, true);
    };
    for (std::size_t i = 0; i < flow.size();) {
        const std::size_t end = chainEnd(flow, i);
        if (flow[i].newPage && !pages.atTop())
            pages.turn();
        if (!pages.atTop() && !pages.fits(heightOf(flow, i, end, false)))
            overflow(flow[i]);
        for (; i < end; ++i) {
            // Only a chain longer than a page breaks here.
            if (!pages.atTop() && !pages.fits(flow[i].before + flow[i].height))
                overflow(flow[i]);
            if (flow[i].columns)
                pages.placeColumns(flow[i]);
            else
                pages.place(flow[i]);
        }
    }
    return pages.take();
}

} // namespace bastewright::sheets
