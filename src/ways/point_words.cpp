#include "ways/point_words.h"

#include "plan/zone_words.h"
#include "ways/way.h"

#include <algorithm>

namespace bastewright {
namespace {

constexpr std::size_t kAllPlaces = 1000;

Sentence placesOf(const std::vector<Point>& of, Unit unit) {
    Sentences out;
    for (const Point& p : of)
        out.push_back(core::says("%1 from the left and %2 from the head", core::length(p.x, unit),
                                 core::length(p.y, unit)));
    return core::listed(out, kAllPlaces);
}

Sentence singles(const std::vector<Point>& of, const Job& job) {
    return wayOf(job).words.singles(std::ssize(of), placesOf(of, job.unit));
}

/// A plain figure: the person's own measure where the spacing is given by one, else a length.
Sentence figure(Length l, const Job& job) {
    const auto& own = job.basting.measure;
    if (!own || own->length <= Length{})
        return core::length(l, job.unit);
    const auto quarters = (4 * l.nm() + own->length.nm() / 2) / own->length.nm();
    if (abs(quarters * own->length / 4 - l) > Length::inch64ths(2) || quarters < 1)
        return core::length(l, job.unit);
    static constexpr const char* kQuarters[] = {"", "1/4", "1/2", "3/4"};
    std::string text = quarters >= 4 ? std::to_string(quarters / 4) : std::string{};
    if (quarters % 4 != 0)
        text += (text.empty() ? "" : " ") + std::string{kQuarters[quarters % 4]};
    return core::says("%1 × %2 (%3)", core::figure(text), own->name, core::length(l, job.unit));
}

} // namespace

Sentence rowsSentence(const PinRows& rows, const Job& job) {
    const Sentence gap = figure(rows.gap, job), step = figure(rows.step, job);
    return wayOf(job).words.rows(rows.along == PinRows::Along::width, gap, step);
}

Sentence zoneRowsWords(const Zone& zone, const PinRows& rows, const Job& job) {
    Sentences out = rowsPartsWords(zone, rows);
    const auto single = std::ranges::count_if(zone.points, [&](const PlacedPoint& p) {
        return std::ranges::find(rows.singles, p.at) != rows.singles.end();
    });
    if (single > 0)
        out.push_back(wayOf(job, zone).words.single(single));
    return core::commaList(out);
}

Sentence countsSentence(const Job& job, std::span<const Zone> zones, std::optional<int> pass) {
    Sentences out;
    const auto ways = waysOf(job, zones, pass);
    for (auto way = ways.rbegin(); way != ways.rend(); ++way)
        out.push_back((*way)->words.count(pointsOf(job, zones, **way, pass)));
    return core::listed(out);
}

Sentences rowsDetails(const PinRows& rows, const Job& job) {
    Sentences out;
    std::size_t aside = 0, leftOut = 0;
    for (std::size_t i = 0; i < rows.lines.size(); ++i) {
        aside += rows.lines[i].aside.size();
        leftOut += marksOf(rows, i).size() -
                   std::min(marksOf(rows, i).size(), rows.lines[i].places.size());
    }
    if (aside > 0)
        out.push_back(
            core::says("Where a pin at its mark would be nearer than %1 to a seam, it goes to the "
                       "nearest place where all of the pin is that far from seams.",
                       core::length(job.basting.clear, job.unit)));
    if (leftOut > 0)
        out.push_back(
            core::says("A mark is left out where its pin would come nearer than %1 to another.",
                       core::length(job.basting.spacing / 2, job.unit)));
    if (!rows.singles.empty())
        out.push_back(singles(rows.singles, job));
    if (rows.slack >= Length::inch64ths(4) && !wayOf(job).point.isPatch())
        out.push_back(
            core::says("A hand may be off by %1 before a place is too far from the nearest.",
                       core::length(rows.slack, job.unit)));
    return out;
}

namespace {

/// The block's figure in a few words, where there are some.
Sentence figureOf(const PinBlocks& blocks, Unit unit) {
    const auto& all = blocks.inBlock;
    const Point middle{blocks.block / 2, blocks.block / 2};
    const auto has = [&](Length dx, Length dy) {
        return std::ranges::find(all, Point{middle.x + dx, middle.y + dy}) != all.end();
    };
    const bool centre = has({}, {});
    Length cross{}, diagonal{};
    int eights = 0, crosses = 0, diagonals = 0;
    for (const Point& p : all) {
        const Length dx = p.x - middle.x, dy = p.y - middle.y;
        if (dx <= Length{} || dy < Length{})
            continue;
        if (dy == Length{})
            cross = dx, ++crosses;
        else if (dx == dy)
            diagonal = dx, ++diagonals;
        else if (dx > dy)
            ++eights;
    }
    const auto length = [&](Length l) { return core::length(l, unit); };
    if (all.size() == 1)
        return core::says("One in the middle of every block");
    if (eights == 0 && diagonals == 1 && crosses == 0 && !centre)
        return core::says("Four in every block, two by two, %1 apart", length(2 * diagonal));
    if (eights == 0 && diagonals == 0 && crosses == 1 && !centre)
        return core::says("Four in every block, one toward each side, %1 from the middle",
                          length(cross));
    if (eights == 0 && diagonals == 1 && crosses == 0)
        return core::says("Five in every block, as on a die, the four %1 from the middle each way",
                          length(diagonal));
    if (eights == 0 && diagonals == 0 && crosses == 1)
        return core::says("Five in every block, a cross with its arms %1 long", length(cross));
    if (eights == 0 && diagonals == 1 && crosses == 1 && centre && cross == diagonal)
        return core::says("Nine in every block, three by three, %1 apart", length(cross));
    if (eights == 0 && diagonals == 1 && crosses == 1)
        return centre
                   ? core::says(
                         "Nine in every block: the middle, four on the cross %1 from it, four "
                         "toward the corners %2 each way",
                         length(cross), length(diagonal))
                   : core::says("Eight in every block: four on the cross %1 from the middle, four "
                                "toward the corners %2 each way",
                                length(cross), length(diagonal));
    return core::says("%1 in every block, the same from every side (see the drawing)", all.size());
}

} // namespace

Sentence blocksSentence(const PinBlocks& blocks, const Job& job) {
    const Sentence figure = figureOf(blocks, job.unit);
    const Sentence strips = blocks.perStrip == 0 ? Sentence{}
                            : blocks.perStrip == 1
                                ? core::says("one in every sashing strip")
                                : core::says("%1 in every sashing strip, evenly", blocks.perStrip);
    if (blocks.perStrip > 0 && blocks.posts)
        return core::says("%1; %2, one where strips meet.", figure, strips);
    if (blocks.posts)
        return core::says("%1; one where sashing strips meet.", figure);
    return blocks.perStrip > 0 ? core::says("%1; %2.", figure, strips) : core::says("%1.", figure);
}

Sentences blocksDetails(const PinBlocks& blocks, const Job& job) {
    Sentences out;
    for (const EdgeLine& line : blocks.edges) {
        if (line.places.empty())
            continue;
        const Length step = line.places.size() > 1 ? line.places[1] - line.places[0] : Length{};
        out.push_back(core::says("Along the %1, %2 in: one every %3, the first at %4.",
                                 core::side(line.side), core::length(line.in, job.unit),
                                 core::length(step, job.unit),
                                 core::length(line.places.front(), job.unit)));
    }
    if (!blocks.leftOut.empty())
        out.push_back(core::says("Left out, because a seam leaves no room there: %1.",
                                 placesOf(blocks.leftOut, job.unit)));
    if (!blocks.singles.empty())
        out.push_back(singles(blocks.singles, job));
    return out;
}

} // namespace bastewright
