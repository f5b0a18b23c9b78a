#include "checker/rules/packs.h"
#include "checker/rules/rules.h"
#include "checker/tolerances.h"

#include <algorithm>
#include <set>

namespace bastewright::check {
namespace {

Length joinsOf(const BattingPlan& plan) {
    Length out{};
    for (const Segment& s : plan.joins)
        out += abs(s.to.x - s.from.x) + abs(s.to.y - s.from.y);
    return out;
}

/// What is wrong with a way to buy that is listed; nothing where its figures go together.
std::string faultOf(const QuiltView& v, const BattingAlternative& a) {
    const Size layer = v.quilt.layers.batting;
    const Length step = soldBy(v);
    const bool roll = a.roll != Length{};
    if (roll == !a.pack.empty() || (roll && !isRollSold(v, a.roll)) ||
        (!roll && !packSize(a.pack, v.job.unit)))
        return "is of a pack '" + a.pack + "' and a roll " + figure(a.roll, v.plan.unit) + " wide";
    if (roll ? a.bought <= Length{} || a.bought.nm() % step.nm() != 0 : a.bought != Length{})
        return "buys " + figure(a.bought, v.plan.unit) + " off the roll";
    if (a.pieceStrip && !roll)
        return "has a turned strip of a pack";
    if (a.joins < 0 || a.joins > 24 || (a.joins > 0) != (a.strip > Length{}) ||
        a.strip > std::max(layer.width, layer.length) * a.joins)
        return "has " + std::to_string(a.joins) + " joins of " + figure(a.strip, v.plan.unit);
    // What is bought holds the batting.
    if (roll && double(a.bought.in()) * a.roll.in() < layer.width.in() * layer.length.in() - 1e-6)
        return "buys less than the batting";
    return {};
}

/// The first piece of new batting that is not called 1, 2, 3 in its turn, those of one length of it
/// 2a, 2b, or as its pack where that is joined with leftovers; nothing where all are.
std::string pieceOutOfTurn(const BattingPlan& plan) {
    std::vector<std::string> names;
    for (const BattingPiecePlaced& p : plan.pieces)
        if (p.bought >= 0 && (std::size_t(p.bought) >= plan.buy.size() ||
                              p.name != plan.buy[std::size_t(p.bought)].pack))
            names.push_back(p.name);
    std::size_t at = 0;
    for (int number = 1; at < names.size(); ++number) {
        const std::string own = std::to_string(number);
        if (names[at] == own) {
            ++at;
            continue;
        }
        std::size_t same = 0;
        while (at + same < names.size() && names[at + same] == own + char('a' + int(same)))
            ++same;
        if (same < 2)
            return names[at];
        at += same;
    }
    return {};
}

bool isSquare(const BattingPiecePlaced& p) {
    return p.onPiece.width() == p.onPiece.length();
}

/// A square is not turned, unless it is of a strip of new batting that lies turned: 2b as 2a.
bool liesTurned(const BattingPlan& plan, const BattingPiecePlaced& square) {
    const auto strip = [](const std::string& name) {
        return name.substr(0, name.find_last_not_of("abcdefghijklmnopqrstuvwxyz") + 1);
    };
    return square.bought >= 0 && std::ranges::any_of(plan.pieces, [&](const BattingPiecePlaced& p) {
               return p.bought >= 0 && p.turned && !isSquare(p) &&
                      strip(p.name) == strip(square.name);
           });
}

/// How many of these share a place at most.
std::ptrdiff_t mostAtOnePlace(const std::vector<Interval>& all) {
    std::ptrdiff_t most = 0;
    for (const Interval& at : all)
        most = std::max(most, std::ranges::count_if(all, [&](const Interval& other) {
                            return other.lo <= at.lo + kHalving && other.hi > at.lo + kHalving;
                        }));
    return most;
}

/// What is wrong with a leftover that is cut in two: the cut runs between its parts. Where there
/// are several of its kind, parts across the cut are of those that are not cut.
std::string faultOf(const QuiltView& v, const BattingPlan& plan, const BattingSplit& split) {
    const auto& all = v.job.batting.pieces;
    const auto piece = std::ranges::find(all, split.name, &BattingPiece::name);
    if (piece == all.end())
        return "but the job lists none";
    if (split.at <= Length{} || split.at >= (split.acrossWidth ? piece->width : piece->length))
        return "beside it";
    if (std::ranges::count(plan.splits, split) > piece->count)
        return "more often than there are of it";
    bool joined = false;
    std::vector<Interval> across; // along the cut
    for (const BattingPiecePlaced& p : plan.pieces) {
        if (p.bought >= 0 || p.name != split.name)
            continue;
        const Interval lies = split.acrossWidth ? p.onPiece.x() : p.onPiece.y();
        if (lies.lo < split.at - kHalving && lies.hi > split.at + kHalving)
            across.push_back(split.acrossWidth ? p.onPiece.y() : p.onPiece.x());
        else
            joined = true;
    }
    if (mostAtOnePlace(across) >
        piece->count - std::ranges::count(plan.splits, split.name, &BattingSplit::name))
        return "through a part of it";
    return joined ? std::string{} : "and no part of it is joined";
}

} // namespace

// There is a batting, its packs and pieces are called as the list to bring calls them, and the
// chosen way to buy it is the plan's in every figure.
void battingListed(const QuiltView& v, Report& report) {
    const auto& made = v.quilt.batting;
    const bool measured = v.job.batting.width && v.job.batting.length;
    if (!made || made->pieces.empty()) {
        const bool said = v.tells(Finding::Kind::battingShort) || v.tells(Finding::Kind::input) ||
                          v.tells(Finding::Kind::unknownPack);
        if (!measured && !said && !v.quilt.passes.empty())
            report.add(where(v) / "batting", v.label() + ": no batting is planned.");
        return;
    }
    const std::string first = made->buy.empty() ? std::string{} : made->buy.front().pack;
    if (made->pack != first)
        report.add(where(v) / "batting/pack",
                   v.label() + ": the batting is said to be of a pack '" + made->pack +
                       "'; what is bought first is '" + first + "'.");
    if (const std::string fault = pieceOutOfTurn(*made); !fault.empty())
        report.add(where(v) / "batting/pieces",
                   v.label() + ": batting piece '" + fault + "' is called out of turn.");
    std::set<std::pair<std::string, Length>> things;
    for (const BattingPurchase& b : made->buy)
        things.insert({b.pack, b.width});
    if (made->toBring.size() != things.size())
        report.add(where(v) / "batting/to_bring",
                   v.label() + ": " + std::to_string(things.size()) + " things are bought, and " +
                       std::to_string(made->toBring.size()) + " are on the list to bring.");
    for (const BattingPiecePlaced& p : made->pieces)
        if (isSquare(p) && p.turned != liesTurned(*made, p))
            report.add(where(v).in("batting/pieces", made->pieces, p) / "turned",
                       v.label() + ": batting piece '" + p.name + "' is square, and " +
                           (p.turned ? "turned." : "its strip is turned."));
    std::set<int> cut;
    for (const BattingPiecePlaced& p : made->pieces)
        cut.insert(p.bought);
    for (int i = 0; i < std::ssize(made->buy); ++i)
        if (!cut.contains(i))
            report.add(where(v) / "batting/buy" / i, v.label() + ": nothing is cut from no. " +
                                                         std::to_string(i + 1) +
                                                         " of the batting that is bought.");
    for (const BattingSplit& split : made->splits)
        if (const std::string fault = faultOf(v, *made, split); !fault.empty())
            report.add(where(v).in("batting/splits", made->splits, split),
                       v.label() + ": the leftover '" + split.name + "' is cut in two " + fault +
                           ".");
    const auto& all = made->alternatives;
    if (all.empty()) {
        if (!made->buy.empty() &&
            std::ranges::none_of(made->pieces, [](const auto& p) { return p.bought < 0; }))
            report.add(where(v) / "batting/alternatives",
                       v.label() + ": no way to buy the batting is listed.");
        return;
    }
    if (std::ranges::count(all, true, &BattingAlternative::chosen) != 1) {
        report.add(where(v) / "batting/alternatives",
                   v.label() + ": not just one way to buy the batting is the chosen one.");
        return;
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
        const BattingAlternative& a = all[i];
        const std::string what =
            v.label() + ": way no. " + std::to_string(i + 1) + " to buy the batting ";
        const Pointer there = where(v) / "batting/alternatives" / i;
        if (const std::string fault = faultOf(v, a); !fault.empty())
            report.add(there, what + fault + ".");
        for (std::size_t k = 0; k < i; ++k)
            if (a == all[k])
                report.add(there, what + "is listed twice.");
        if (!a.chosen)
            continue;
        if (i > 0)
            report.add(there / "chosen", what + "is the chosen one, and not the first.");
        Length off{};
        for (const BattingPurchase& b : made->buy)
            off += b.pack.empty() ? b.length : Length{};
        const Length roll =
            made->buy.empty() || !first.empty() ? Length{} : made->buy.front().width;
        if (a.pack != made->pack || a.roll != roll || a.bought != off ||
            a.joins != std::ssize(made->joins) || abs(a.strip - joinsOf(*made)) > kHalving)
            report.add(there, what + "is not what the plan buys and joins.");
        const bool turned = std::ranges::any_of(made->pieces, [&](const BattingPiecePlaced& p) {
            return p.turned != made->pieces.front().turned;
        });
        if (a.pieceStrip != turned)
            report.add(there / "piece_strip",
                       what + (turned ? "has no" : "has a") + " strip that is turned.");
    }
}

} // namespace bastewright::check
