#pragma once

#include <QRectF>
#include <QString>

#include <functional>
#include <memory>
#include <vector>

class QPainter;

namespace bastewright::sheets {

/// A piece of a page that is never cut: measured when it is made, drawn when its place is known.
struct Block {
    double height = 0;
    double before = 0;                     ///< white above it; left out at the top of a page
    bool keepWithNext = false;             ///< headings: never the last thing on a page
    bool newPage = false;                  ///< begins a page
    std::shared_ptr<const Block> repeat{}; ///< drawn first where this block begins a page that it
                                           ///< did not ask for (a table's headings)
    std::function<void(QPainter&, QRectF)> draw{};
    QString bookmark{}; ///< listed in the document's outline; empty: not
    /// Set in two columns that may run over pages (`two_columns.h`); the block has then neither
    /// height nor drawing of its own.
    std::shared_ptr<const std::vector<Block>> columns{};
};

using Flow = std::vector<Block>;

/// A block in its place: `y` from the top of the page's frame.
struct Placed {
    Block block;
    double y = 0;
    bool again = false; ///< a repeated heading, not one of the flow's own blocks
};
using PlacedPage = std::vector<Placed>;

/// Divides the flow into pages of the given height. Guarantees: order is kept, nothing is left out;
/// a block stays with the next where it asks and the chain fits one page; nothing reaches below
/// `height` unless a single block is taller than a page (an error of whoever made it).
std::vector<PlacedPage> paginate(const Flow& flow, double height);

/// What is laid out by the first of the settings, the most generous first, that takes one page of
/// this height; else by that which takes fewest.
template <class Settings, class LayOut>
Flow fewestPages(const Settings& settings, double height, LayOut layOut) {
    Flow best;
    std::size_t least = 0;
    for (const auto& setting : settings) {
        Flow flow = layOut(setting);
        const std::size_t pages = paginate(flow, height).size();
        if (least == 0 || pages < least) {
            best = std::move(flow);
            least = pages;
        }
        if (least == 1)
            break;
    }
    return best;
}

/// Height of all blocks one below the other.
inline double heightOf(const Flow& flow) {
    double h = 0;
    for (const Block& b : flow)
        h += b.before + b.height;
    return h;
}

/// Appends.
inline void operator+=(Flow& flow, Flow more) {
    flow.insert(flow.end(), std::make_move_iterator(more.begin()),
                std::make_move_iterator(more.end()));
}

} // namespace bastewright::sheets
