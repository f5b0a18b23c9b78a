#include "job/job_json.h"
#include "planners/batting/pack_size.h"
#include "view/field_kinds.h"
#include "view/words.h"

#include <algorithm>
#include <array>

using namespace bastewright;
using batting::kPackSizes;
using batting::PackSize;

namespace fields {
namespace {
/// Pack names as sold (common practice).
QString packName(const PackSize& pack, Unit unit) {
    constexpr std::array kNames{
        QT_TRANSLATE_NOOP("fields", "Craft, %1"), QT_TRANSLATE_NOOP("fields", "Crib, %1"),
        QT_TRANSLATE_NOOP("fields", "Throw, %1"), QT_TRANSLATE_NOOP("fields", "Twin, %1"),
        QT_TRANSLATE_NOOP("fields", "Full, %1"),  QT_TRANSLATE_NOOP("fields", "Queen, %1"),
        QT_TRANSLATE_NOOP("fields", "King, %1")};
    static_assert(kNames.size() == kPackSizes.size());
    return tr(kNames[std::size_t(&pack - kPackSizes.data())]).arg(words::size(pack.size, unit));
}

Field packChoice(std::size_t q, Unit unit) {
    QStringList choices{tr("Smallest that fits")};
    for (const PackSize& pack : kPackSizes)
        choices << packName(pack, unit);
    return fields::choice(
        {"pack", tr("Batting"), tr("Pack")}, choices,
        [q](const Session& s) {
            const auto& pack = s.jobs[q].batting.pack;
            const auto at =
                pack ? std::ranges::find(kPackSizes, std::string_view{*pack}, &PackSize::name)
                     : kPackSizes.end();
            return at == kPackSizes.end() ? 0 : int(at - kPackSizes.begin()) + 1;
        },
        [q](Session& s, int i) {
            auto& pack = s.jobs[q].batting.pack;
            if (i == 0)
                pack.reset();
            else
                pack.emplace(kPackSizes[std::size_t(i - 1)].name);
        });
}

/// "Cloth 2": the first such name that no other cloth has.
std::string newClothName(const Backing& backing) {
    for (int n = int(backing.fabrics.size()) + 1;; ++n) {
        std::string name = words::toCore(fields::tr("Cloth %1").arg(n));
        if (std::ranges::find(backing.fabrics, name, &Fabric::name) == backing.fabrics.end())
            return name;
    }
}

void addPieces(Fields& out, const Batting& batting, std::size_t q, Unit unit) {
    for (std::size_t i = 0; i < batting.pieces.size(); ++i) {
        const auto piece = [=](auto member) {
            return [=](Session& s) { return &(s.jobs[q].batting.pieces[i].*member); };
        };
        const QString key = QStringLiteral("piece%1/").arg(i);
        const QString group = tr("Leftover piece %1").arg(i + 1);
        out << fields::text({key + "name", group, tr("Called")}, piece(&BattingPiece::name))
            << fields::length({key + "width", group, tr("Width")}, unit,
                              piece(&BattingPiece::width))
            << fields::length({key + "length", group, tr("Length")}, unit,
                              piece(&BattingPiece::length))
            << fields::count({key + "count", group, tr("How many")}, piece(&BattingPiece::count), 1,
                             limits::kPieces)
            << fields::removal({key + "remove", group, tr("Remove this piece")},
                               [q, i](Session& s) {
                                   auto& all = s.jobs[q].batting.pieces;
                                   all.erase(all.begin() + std::ptrdiff_t(i));
                               });
    }
    if (batting.pieces.size() < limits::kPieces)
        out << fields::action({"addpiece", tr("Leftovers"), tr("Add a leftover piece of batting")},
                              [q](Session& s) {
                                  auto& all = s.jobs[q].batting.pieces;
                                  const char letter = char('A' + all.size() % 26);
                                  all.push_back({.name = std::string(1, letter),
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
        out << fields::text({key + "name", group, tr("Called")}, fabric(&Fabric::name))
            << fields::length({key + "usable", group, tr("Usable width")}, unit,
                              fabric(&Fabric::usableWidth))
            << fields::length({key + "hand", group, tr("Length on hand")}, unit,
                              fabric(&Fabric::onHand))
            << fields::toggle({key + "buy", group, tr("More can be bought")},
                              fabric(&Fabric::buyable))
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
    out << length({"batover", over, tr("Over on each side")}, unit, batting(&Batting::overage))
        << length({"thick", over, tr("Thickness")}, Unit::millimetre, batting(&Batting::thickness))
        << toggle({"melt", over, tr("Melts under an iron")}, batting(&Batting::meltable));
    if (job.batting.pieces.empty())
        out << packChoice(q, unit);
    else
        out << toggle({"turn", over, tr("Pieces may be turned")}, batting(&Batting::mayTurn))
            << length({"trim", over, tr("Cut off raw edges")}, unit, batting(&Batting::trim))
            << length({"overlap", over, tr("Eaten by each join")}, unit,
                      batting(&Batting::overlap));
    out << optionalLength({"batwidth", over, tr("Width as measured")}, unit,
                          [q](Session& s) { return &s.jobs[q].batting.width; })
        << optionalLength({"batlength", over, tr("Length as measured")}, unit,
                          [q](Session& s) { return &s.jobs[q].batting.length; });
    addPieces(out, job.batting, q, unit);
    out << length({"backover", under, tr("Over on each side")}, unit, backing(&Backing::overage))
        << length({"seam", under, tr("Seam allowance")}, unit, backing(&Backing::seam))
        << number({"shrink", under, tr("Shrinks by, percent")}, backing(&Backing::shrinkPercent))
        << toggle({"oneway", under, tr("Print runs one way")}, backing(&Backing::oneWay))
        << toggle({"column", under, tr("Pieced panels allowed")}, backing(&Backing::column))
        << toggle({"centre", under, tr("Seam down the middle allowed")},
                  backing(&Backing::centreSeam))
        << optionalLength({"backwidth", under, tr("Width as measured")}, unit,
                          [q](Session& s) { return &s.jobs[q].backing.width; })
        << optionalLength({"backlength", under, tr("Length as measured")}, unit,
                          [q](Session& s) { return &s.jobs[q].backing.length; });
    if (job.backing.width || job.backing.length)
        out << toggle({"washed", under, tr("Measured after washing")}, backing(&Backing::washed));
    addFabrics(out, job.backing, q, unit);
    out << optionalLength({"throat", tr("Sewing machine"), tr("Throat")}, unit,
                          [q](Session& s) { return &s.jobs[q].machine.throat; });
    return out;
}

} // namespace fields
