#include "job/job_json.h"
#include "view/edit/field_kinds.h"

using namespace bastewright;

namespace fields {
namespace {
QString wallLabel(Side side) {
    switch (side) {
    case Side::head:
        return tr("Wall along the upper side of the drawing");
    case Side::foot:
        return tr("Wall along the lower side of the drawing");
    case Side::left:
        return tr("Wall at the left end");
    case Side::right:
        return tr("Wall at the right end");
    }
    return {};
}

Field wall(Side side) {
    fields::Label label{QStringLiteral("wall-") + words::fromCore(name(side)), tr("Walls"),
                        wallLabel(side)};
    const auto has = [side](const Session& s) {
        const auto& walls = s.setting.room.walls;
        return std::find(walls.begin(), walls.end(), side) != walls.end();
    };
    auto field = fields::choice(
        label, {tr("No"), tr("Yes")}, [has](const Session& s) { return int(has(s)); },
        [side](Session& s, int yes) {
            auto& walls = s.setting.room.walls;
            std::erase(walls, side);
            if (yes)
                walls.push_back(side);
            std::sort(walls.begin(), walls.end());
        });
    field.kind = Field::Kind::toggle;
    return field;
}

/// Groups that tables may stand in: the one without a name, those there are, and a new one.
std::vector<std::string> groupsOf(const Room& room) {
    std::vector<std::string> out{{}};
    const auto has = [&](const std::string& name) {
        return std::ranges::find(out, name) != out.end();
    };
    for (const Table& t : room.tables)
        if (!has(t.group))
            out.push_back(t.group);
    for (char letter = 'B'; letter <= 'Z'; ++letter)
        if (const std::string name{letter}; !has(name)) {
            out.push_back(name);
            break;
        }
    return out;
}

/// Which tables belong together: those of different groups are not pushed together.
Field groupOf(const Room& room, std::size_t i, const QString& key, const QString& heading) {
    const std::vector<std::string> groups = groupsOf(room);
    QStringList choices{tr("With the others")};
    for (std::size_t k = 1; k < groups.size(); ++k)
        choices << tr("Apart, in group %1").arg(words::fromCore(groups[k]));
    return fields::choice(
        {key + "group", heading, labelOf("room/tables/group")}, choices,
        [i, groups](const Session& s) {
            return int(std::ranges::find(groups, s.setting.room.tables[i].group) - groups.begin());
        },
        [i, groups](Session& s, int choice) {
            s.setting.room.tables[i].group = groups[std::size_t(choice)];
        });
}

} // namespace

Fields ofRoom(const Session& session, int quilt) {
    const Unit unit = session.jobs[std::size_t(quilt)].unit;
    const Room& room = session.setting.room;
    Fields out;
    out << text({"name", tr("Kept for other quilts"), labelOf("room/name")},
                [](Session& s) { return &s.setting.room.name; });
    for (std::size_t i = 0; i < room.tables.size(); ++i) {
        const auto table = [i](auto member) {
            return [=](Session& s) { return &(s.setting.room.tables[i].*member); };
        };
        const QString key = QStringLiteral("table%1/").arg(i);
        const QString group =
            room.tables.size() == 1 ? tr("Tables") : tr("Tables, kind %1").arg(i + 1);
        out << count({key + "count", group, labelOf("room/tables/count")}, table(&Table::count))
            << length({key + "length", group, labelOf("room/tables/length")}, unit,
                      table(&Table::length))
            << length({key + "width", group, labelOf("room/tables/width")}, unit,
                      table(&Table::width));
        // Tables of one kind stand in one group.
        if (room.tables.size() > 1)
            out << groupOf(room, i, key, group);
        out << removal({key + "remove", group,
                        room.tables.size() == 1 ? tr("No table: work on the floor")
                                                : tr("Remove this kind of table")},
                       [i](Session& s) {
                           auto& all = s.setting.room.tables;
                           all.erase(all.begin() + std::ptrdiff_t(i));
                       });
    }
    out << action({"addtable", room.tables.empty() ? tr("On the floor") : tr("More tables"),
                   room.tables.empty() ? tr("Add tables") : tr("Add another kind of table")},
                  [](Session& s) { s.setting.room.tables.emplace_back(); });
    if (!room.tables.empty())
        for (const Side side : kSides)
            out << wall(side);
    out << fields::count({"irons", labelOf("room/irons"), labelOf("room/irons")},
                         [](Session& s) { return &s.setting.room.irons; });
    out << toggle({"ventilated", tr("Air"), labelOf("room/ventilated")},
                  [](Session& s) { return &s.setting.room.ventilated; });
    if (session.jobs.size() > 1)
        out << fields::count({"surfaces", tr("Surfaces"), labelOf("room/surfaces")},
                             [](Session& s) { return &s.setting.room.surfaces; });
    return out;
}

} // namespace fields
