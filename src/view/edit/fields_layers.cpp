#include "job/job_json.h"
#include "planners/batting/pack_size.h"
#include "view/base/words.h"
#include "view/edit/field_kinds.h"

#include <algorithm>
#include <array>
#include <cmath>

using namespace bastewright;
using batting::kPackSizes;
using batting::PackSize;

namespace fields {
namespace {
/// Pack names as sold (common practice); elsewhere packs are known by their size.
QString packName(const PackSize& pack, Unit unit) {
    const QString size = words::size(pack.size, unit);
    if (unit != Unit::inch)
        return tr("Pack of %1").arg(size);
    constexpr std::array kNames{
        QT_TRANSLATE_NOOP("fields", "Craft, %1"), QT_TRANSLATE_NOOP("fields", "Crib, %1"),
        QT_TRANSLATE_NOOP("fields", "Throw, %1"), QT_TRANSLATE_NOOP("fields", "Twin, %1"),
        QT_TRANSLATE_NOOP("fields", "Full, %1"),  QT_TRANSLATE_NOOP("fields", "Queen, %1"),
        QT_TRANSLATE_NOOP("fields", "King, %1")};
    static_assert(kNames.size() == kPackSizes.size());
    return tr(kNames[std::size_t(&pack - kPackSizes.data())]).arg(size);
}

/// Whatever takes the fewest joins, a pack, or a roll.
Field sourceChoice(const Batting& batting, std::size_t q, Unit unit) {
    QStringList choices{tr("Fewest joins")};
    for (const PackSize& pack : kPackSizes)
        choices << packName(pack, unit);
    std::vector<Length> rolls = batting.rolls;
    if (batting.roll && std::ranges::find(rolls, *batting.roll) == rolls.end())
        rolls.push_back(*batting.roll);
    for (const Length width : rolls)
        choices << tr("Off a roll, %1 wide").arg(words::length(width, unit));
    const auto packs = std::ssize(kPackSizes);
    const bool own = batting.pack && std::ranges::find(kPackSizes, std::string_view{*batting.pack},
                                                       &PackSize::name) == kPackSizes.end();
    if (own)
        choices << words::fromCore(*batting.pack);
    const int last = int(choices.size()) - 1;
    return fields::choice(
        {"pack", tr("Batting"), labelOf("batting/pack")}, choices,
        [q, rolls, packs, own, last](const Session& s) {
            const Batting& b = s.jobs[q].batting;
            if (b.pack)
                return own ? last
                           : int(std::ranges::find(kPackSizes, std::string_view{*b.pack},
                                                   &PackSize::name) -
                                 kPackSizes.begin()) +
                                 1;
            if (b.roll)
                return int(packs + 1 + (std::ranges::find(rolls, *b.roll) - rolls.begin()));
            return 0;
        },
        [q, rolls, packs, own, last](Session& s, int i) {
            Batting& b = s.jobs[q].batting;
            if (own && i == last)
                return;
            b.pack.reset();
            b.roll.reset();
            if (i >= 1 && i <= packs)
                b.pack.emplace(kPackSizes[std::size_t(i - 1)].name);
            else if (i > packs)
                b.roll = rolls[std::size_t(i - packs - 1)];
        });
}

/// A pack of any size, typed as it stands on it.
Field ownPack(std::size_t q, Unit unit) {
    Field field;
    field.key = QStringLiteral("ownpack");
    field.group = tr("Batting");
    field.label = tr("Pack of another size");
    field.kind = Field::Kind::text;
    field.optional = true;
    field.shown = [q, unit](const Session& s) {
        const auto& pack = s.jobs[q].batting.pack;
        const auto known = pack ? batting::packNamed(*pack, unit) : std::nullopt;
        return known ? words::size(known->size, unit) : QString{};
    };
    field.take = [q, unit](Session& s, const QString& typed) {
        Batting& b = s.jobs[q].batting;
        const QString text = typed.trimmed();
        if (text.isEmpty()) {
            b.pack.reset();
            return QString{};
        }
        if (!batting::packNamed(words::toCore(text), unit))
            return tr("Pack of another size: enter its width and length, such as %1.")
                .arg(words::size(kPackSizes[5].size, unit));
        b.roll.reset();
        b.pack = words::toCore(text);
        return QString{};
    };
    return field;
}

/// "Fabric 2": the first such name that no other fabric has.
std::string newClothName(const Backing& backing) {
    for (int n = int(backing.fabrics.size()) + 1;; ++n) {
        std::string name = words::toCore(fields::tr("Fabric %1").arg(n));
        if (std::ranges::find(backing.fabrics, name, &Fabric::name) == backing.fabrics.end())
            return name;
    }
}

/// Both or none: one alone says nothing.
void addPieceDiagonals(Fields& out, const BattingPiece& piece, std::size_t i, std::size_t q,
                       Unit unit) {
    const QString key = QStringLiteral("piece%1/").arg(i);
    const QString group = tr("Leftover %1").arg(i + 1);
    if (piece.diagonals.size() != 2) {
        out << fields::action(
            {key + "crooked", group, tr("Not square? Measure its diagonals")}, [q, i](Session& s) {
                BattingPiece& p = s.jobs[q].batting.pieces[i];
                const Length across =
                    Length::nearestInches(std::hypot(p.width.in(), p.length.in()));
                p.diagonals = {across, across};
            });
        return;
    }
    for (const std::size_t d : {0, 1})
        out << fields::length(
            {key + QStringLiteral("diagonal%1").arg(d), group,
             d == 0 ? tr("One diagonal") : tr("The other diagonal")},
            unit, [q, i, d](Session& s) { return &s.jobs[q].batting.pieces[i].diagonals[d]; });
}

void addPieces(Fields& out, const Batting& batting, std::size_t q, Unit unit) {
    for (std::size_t i = 0; i < batting.pieces.size(); ++i) {
        const auto piece = [=](auto member) {
            return [=](Session& s) { return &(s.jobs[q].batting.pieces[i].*member); };
        };
        const QString key = QStringLiteral("piece%1/").arg(i);
        const QString group = tr("Leftover piece %1").arg(i + 1);
        out << fields::text({key + "name", group, labelOf("batting/pieces/name")},
                            piece(&BattingPiece::name))
            << fields::length({key + "width", group, labelOf("batting/pieces/width")}, unit,
                              piece(&BattingPiece::width))
            << fields::length({key + "length", group, labelOf("batting/pieces/length")}, unit,
                              piece(&BattingPiece::length))
            << fields::count({key + "count", group, labelOf("batting/pieces/count")},
                             piece(&BattingPiece::count));
        addPieceDiagonals(out, batting.pieces[i], i, q, unit);
        out << fields::removal({key + "remove", group, tr("Remove this piece")},
                               [q, i](Session& s) {
                                   auto& all = s.jobs[q].batting.pieces;
                                   all.erase(all.begin() + std::ptrdiff_t(i));
                               });
    }
    if (batting.pieces.size() < limits::kPieces)
        out << fields::action(
            {"addpiece", tr("Leftovers"), tr("Add a leftover piece of batting")}, [q](Session& s) {
                auto& all = s.jobs[q].batting.pieces;
                std::size_t n = all.size() + 1;
                while (std::ranges::find(all, std::to_string(n), &BattingPiece::name) != all.end())
                    ++n;
                all.push_back({.name = std::to_string(n),
                               .width = Length::inches(36),
                               .length = Length::inches(60)});
            });
}

void addFabrics(Fields& out, const Backing& backing, std::size_t q, Unit unit) {
    for (std::size_t i = 0; i < backing.fabrics.size(); ++i) {
        const auto fabric = [=](auto member) {
            return [=](Session& s) { return &(s.jobs[q].backing.fabrics[i].*member); };
        };
        const QString key = QStringLiteral("fabric%1/").arg(i);
        const QString group = tr("Backing fabric %1").arg(i + 1);
        out << fields::text({key + "name", group, labelOf("backing/fabrics/name")},
                            fabric(&Fabric::name))
            << fields::length({key + "usable", group, labelOf("backing/fabrics/usable_width")},
                              unit, fabric(&Fabric::usableWidth))
            << fields::cloth(
                   {key + "hand", group,
                    unit == Unit::inch ? tr("We have, in yards") : tr("We have, in meters")},
                   unit, fabric(&Fabric::onHand))
            << fields::toggle({key + "buy", group, labelOf("backing/fabrics/buyable")},
                              fabric(&Fabric::buyable))
            << fields::number({key + "price", group,
                               unit == Unit::inch ? tr("Price of a yard (0: not known)")
                                                  : tr("Price of a meter (0: not known)")},
                              fabric(&Fabric::price))
            << fields::removal({key + "remove", group, tr("Remove this fabric")},
                               [q, i](Session& s) {
                                   auto& all = s.jobs[q].backing.fabrics;
                                   all.erase(all.begin() + std::ptrdiff_t(i));
                               });
    }
    if (backing.fabrics.size() < limits::kFabrics)
        out << fields::action({"addfabric", tr("Backing fabrics"), tr("Add a backing fabric")},
                              [q](Session& s) {
                                  Backing& b = s.jobs[q].backing;
                                  b.fabrics.push_back({.name = newClothName(b)});
                              });
}

} // namespace

Fields ofLayers(const Session& session, int quilt) {
    const auto q = std::size_t(quilt);
    const Job& job = session.jobs[q];
    const Unit unit = job.unit;
    const auto batting = [q](auto member) {
        return [=](Session& s) { return &(s.jobs[q].batting.*member); };
    };
    const auto backing = [q](auto member) {
        return [=](Session& s) { return &(s.jobs[q].backing.*member); };
    };
    const QString over = tr("Batting"), under = tr("Backing");
    Fields out;
    out << length({"batover", over, labelOf("batting/overage")}, unit, batting(&Batting::overage))
        << length({"thick", over, labelOf("batting/thickness")}, Unit::millimetre,
                  batting(&Batting::thickness))
        << toggle({"melt", over, labelOf("batting/meltable")}, batting(&Batting::meltable));
    out << sourceChoice(job.batting, q, unit) << ownPack(q, unit)
        << optionalLength({"ownroll", over, labelOf("batting/roll")}, unit,
                          [q](Session& s) { return &s.jobs[q].batting.roll; })
        << toggle({"strip", over, labelOf("batting/piece_strip")}, batting(&Batting::pieceStrip))
        << number({"batshrink", over, labelOf("batting/shrink_percent")},
                  batting(&Batting::shrinkPercent))
        << length({"overlap", over, labelOf("batting/overlap")}, unit, batting(&Batting::overlap));
    if (!job.batting.pieces.empty())
        out << toggle({"turn", over, labelOf("batting/may_turn")}, batting(&Batting::mayTurn))
            << length({"trim", over, labelOf("batting/trim")}, unit, batting(&Batting::trim));
    out << optionalLength({"batwidth", over, labelOf("batting/width")}, unit,
                          [q](Session& s) { return &s.jobs[q].batting.width; })
        << optionalLength({"batlength", over, labelOf("batting/length")}, unit,
                          [q](Session& s) { return &s.jobs[q].batting.length; });
    addPieces(out, job.batting, q, unit);
    out << length({"backover", under, labelOf("backing/overage")}, unit, backing(&Backing::overage))
        << length({"seam", under, labelOf("backing/seam")}, unit, backing(&Backing::seam))
        << length({"squaring", under, labelOf("backing/squaring")}, unit,
                  backing(&Backing::squaring))
        << length({"seamworth", under, labelOf("backing/seam_worth")}, unit,
                  backing(&Backing::seamWorth))
        << length({"leastpiece", under, labelOf("backing/least_piece")}, unit,
                  backing(&Backing::leastPiece))
        << number({"shrink", under, labelOf("backing/shrink_percent")},
                  backing(&Backing::shrinkPercent))
        << toggle({"oneway", under, labelOf("backing/one_way")}, backing(&Backing::oneWay))
        << toggle({"column", under, labelOf("backing/column")}, backing(&Backing::column))
        << toggle({"centre", under, labelOf("backing/centre_seam")}, backing(&Backing::centreSeam))
        << optionalLength({"backwidth", under, labelOf("backing/width")}, unit,
                          [q](Session& s) { return &s.jobs[q].backing.width; })
        << optionalLength({"backlength", under, labelOf("backing/length")}, unit,
                          [q](Session& s) { return &s.jobs[q].backing.length; });
    if (job.backing.width || job.backing.length)
        out << toggle({"washed", under, labelOf("backing/washed")}, backing(&Backing::washed));
    addFabrics(out, job.backing, q, unit);
    out << optionalLength({"throat", tr("Sewing machine"), labelOf("machine/throat")}, unit,
                          [q](Session& s) { return &s.jobs[q].machine.throat; });
    return out;
}

} // namespace fields
