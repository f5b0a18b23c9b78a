#include "planners/batting/leftovers.h"

#include <algorithm>

namespace bastewright::batting {
namespace {

/// Smaller offcuts are not worth a line on the sheet.
constexpr Length kWorthKeeping = Length::inches(12);

Sentence sizeText(Size s, Unit unit) {
    return core::size(s.width, s.length, unit);
}

double areaOf(const Blank& b) {
    return areaSquareInches(b.usable);
}

/// The part of a blank that a finished area takes, with what the joins round it eat.
Rect takenFrom(const Blank& blank, const JoinLayout::Piece& piece, Size needed, Overlap overlap) {
    Rect a = piece.area;
    if (a.x0 > Length{})
        a.x0 -= overlap.after;
    if (a.y0 > Length{})
        a.y0 -= overlap.after;
    if (a.x1 < needed.width)
        a.x1 += overlap.before;
    if (a.y1 < needed.length)
        a.y1 += overlap.before;
    const Length w = piece.turned ? a.length() : a.width();
    const Length l = piece.turned ? a.width() : a.length();
    return {blank.usable.x0, blank.usable.y0, blank.usable.x0 + w, blank.usable.y0 + l};
}

} // namespace

Pool poolOf(const Batting& batting, Size needed, Unit unit, std::size_t most, Findings& findings) {
    Pool pool{{}, needed, batting.overlap, batting.trim, batting.mayTurn};
    for (std::size_t i = 0; i < batting.pieces.size(); ++i) {
        const BattingPiece& p = batting.pieces[i];
        const Rect usable = squared(p).grown(-batting.trim);
        if (usable.width() <= batting.overlap || usable.length() <= batting.overlap) {
            findings.push_back({Finding::Kind::pieceTooSmall, Finding::Level::warn,
                                "/batting/pieces/" + std::to_string(i),
                                core::says("Piece %1 of %2 is used up by trimming and one "
                                           "overlap, so it is left out.",
                                           p.name, sizeText({p.width, p.length}, unit)),
                                "", p.name});
            continue;
        }
        pool.blanks.insert(pool.blanks.end(), std::size_t(std::max(p.count, 0)),
                           Blank{p.name, {p.width, p.length}, usable, false});
    }
    std::ranges::stable_sort(pool.blanks, std::ranges::greater{}, areaOf);
    if (pool.blanks.size() > most) {
        findings.push_back({Finding::Kind::piecesUnused, Finding::Level::note, "/batting/pieces",
                            core::says("Only the %1 largest of %2 pieces are looked at.", most,
                                       pool.blanks.size()),
                            ""});
        pool.blanks.resize(most);
    }
    return pool;
}

JoinProblem problemOf(const Pool& pool) {
    JoinProblem out;
    out.target = {pool.needed.width - pool.overlap, pool.needed.length - pool.overlap};
    out.mayTurn = pool.mayTurn;
    for (const Blank& b : pool.blanks)
        out.items.push_back({b.usable.width() - pool.overlap, b.usable.length() - pool.overlap});
    return out;
}

BattingPlan planOf(const Pool& pool, const JoinLayout& layout, Unit unit) {
    BattingPlan plan;
    std::vector<bool> used(pool.blanks.size());
    Sentences offcuts;
    for (const JoinLayout::Piece& p : layout.pieces) {
        const auto i = std::size_t(p.item);
        used[i] = true;
        const Blank& b = pool.blanks[i];
        const Rect taken = takenFrom(b, p, pool.needed, Overlap{pool.overlap});
        plan.pieces.push_back({b.name, p.area, p.turned && taken.width() != taken.length(), taken});
        const Length aside = b.usable.x1 - taken.x1, below = b.usable.y1 - taken.y1;
        const Size right{aside, b.usable.length()}, under{b.usable.width(), below};
        const Size larger = areaSquareInches({{}, {}, right.width, right.length}) >=
                                    areaSquareInches({{}, {}, under.width, under.length})
                                ? right
                                : under;
        if (std::min(larger.width, larger.length) >= kWorthKeeping)
            offcuts.push_back(core::says("offcut of %1, %2", b.name, sizeText(larger, unit)));
    }
    // From the head-left corner, row by row, as they lie.
    std::ranges::stable_sort(plan.pieces, [](const auto& a, const auto& b) {
        return std::tie(a.area.y0, a.area.x0) < std::tie(b.area.y0, b.area.x0);
    });
    plan.joins = layout.joins;
    plan.strip = layout.joined;
    for (std::size_t i = 0; i < pool.blanks.size(); ++i)
        if (!used[i])
            plan.leftOver.push_back(core::says(
                "%1, %2", pool.blanks[i].name,
                sizeText(pool.blanks[i].part
                             ? Size{pool.blanks[i].usable.width(), pool.blanks[i].usable.length()}
                             : pool.blanks[i].listed,
                         unit)));
    plan.leftOver.insert(plan.leftOver.end(), offcuts.begin(), offcuts.end());
    return plan;
}

} // namespace bastewright::batting
