#include "view/edit/summaries.h"

#include "view/base/words.h"
#include "view/edit/field_kinds.h"
#include "view/edit/field_model.h"

#include <algorithm>

using namespace bastewright;

namespace summaries {

QString room(const Room& room, Unit unit) {
    QStringList parts;
    if (!room.name.empty())
        parts << words::fromCore(room.name);
    if (room.tables.empty())
        parts << FieldModel::tr("on the floor");
    for (const auto& table : room.tables)
        parts << QStringLiteral("%1 × %2")
                     .arg(table.count)
                     .arg(words::size({table.width, table.length}, unit));
    const auto walls = room.walls.size();
    if (walls > 0 && !room.tables.empty())
        parts << (walls == 1 ? FieldModel::tr("one wall") : FieldModel::tr("%1 walls").arg(walls));
    return parts.join(QStringLiteral(", "));
}

QString person(const Helper& helper, Unit unit) {
    QStringList parts{FieldModel::tr("reaches %1").arg(words::length(helper.reach, unit))};
    if (helper.seated)
        parts << FieldModel::tr("sits");
    if (!helper.lifts)
        parts << FieldModel::tr("does not lift");
    return parts.join(QStringLiteral(", "));
}

QString supplies(const Stash& stash) {
    int clips = 0;
    for (const auto& kind : stash.clips)
        clips += kind.count;
    QStringList parts;
    if (!stash.name.empty())
        parts << words::fromCore(stash.name);
    if (stash.pins > 0)
        parts << (stash.pins == 1 ? FieldModel::tr("1 pin")
                                  : FieldModel::tr("%1 pins").arg(stash.pins));
    if (stash.clamps > 0)
        parts << (stash.clamps == 1 ? FieldModel::tr("1 clamp")
                                    : FieldModel::tr("%1 clamps").arg(stash.clamps));
    if (clips > 0)
        parts << (clips == 1 ? FieldModel::tr("1 clip") : FieldModel::tr("%1 clips").arg(clips));
    if (stash.pins <= 0 && stash.clamps <= 0 && clips <= 0)
        parts << FieldModel::tr("nothing counted yet");
    return parts.join(QStringLiteral(", "));
}

QString newName(const Setting& setting) {
    for (int n = int(setting.helpers.size()) + 1;; ++n) {
        QString name = fields::tr("Helper %1").arg(n);
        if (std::ranges::none_of(setting.helpers,
                                 [&](const Helper& h) { return words::fromCore(h.name) == name; }))
            return name;
    }
}

bool isNumbered(const QString& name) {
    const QStringList around = fields::tr("Helper %1").split(QStringLiteral("%1"));
    if (around.size() != 2 || !name.startsWith(around[0]) || !name.endsWith(around[1]))
        return false;
    bool number = false;
    name.mid(around[0].size(), name.size() - around[0].size() - around[1].size()).toInt(&number);
    return number;
}

} // namespace summaries
