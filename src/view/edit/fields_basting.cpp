#include "job/spacings.h"
#include "view/edit/field_kinds.h"
#include "ways/way.h"

using namespace bastewright;

namespace fields {

Fields ofBasting(const Session& session, int quilt) {
    const auto q = std::size_t(quilt);
    const Unit unit = session.jobs[q].unit;
    const Way& basted = wayOf(session.jobs[q]);
    QStringList names;
    for (const Way& each : allWays())
        names << words::fromCore(each.words.name);
    const QString with = tr("Basted with"), way = tr("Way of working");
    const auto basting = [q](auto member) {
        return [=](Session& s) { return &(s.jobs[q].basting.*member); };
    };
    Fields out;
    out << choice(
        {"with", with, labelOf("basting/with")}, names,
        [q](const Session& s) { return int(s.jobs[q].basting.with); },
        [q](Session& s, int i) {
            s.jobs[q].basting = bastedWith(s.jobs[q].basting, Basting::With(i));
        });
    out << length({"spacing", with,
                   basted.point.isPatch() ? tr("Depth of a band") : labelOf("basting/spacing")},
                  unit, basting(&Basting::spacing));
    if (basted.point.shape == WayPoint::Shape::pin)
        out << length({"pin", with, labelOf("basting/pin_length")}, unit,
                      basting(&Basting::pinLength));
    if (basted.point.clearOfSeams)
        out << length({"clear", with, labelOf("basting/clear")}, unit, basting(&Basting::clear));
    if (!basted.point.isPatch())
        out << length({"edge", with, labelOf("basting/edge")}, unit, basting(&Basting::edge));
    if (basted.fromBox && basted.instead)
        out << choice(
            {"where_short", with, labelOf("basting/where_short")},
            {tr("Bring more"), words::fromCore(wayOf(*basted.instead).words.name)},
            [q](const Session& s) {
                const Basting& of = s.jobs[q].basting;
                return of.whereShort == of.with ? 0 : 1;
            },
            [q](Session& s, int i) {
                Basting& of = s.jobs[q].basting;
                of.whereShort = i == 0 ? of.with : *wayOf(of.with).instead;
            });
    out << choice(
        {"start", way, labelOf("basting/start")},
        {words::start(Basting::Start::centred), words::start(Basting::Start::besideMiddle),
         words::start(Basting::Start::best), words::start(Basting::Start::oneEnd)},
        [q](const Session& s) { return int(s.jobs[q].basting.start); },
        [q](Session& s, int i) { s.jobs[q].basting.start = Basting::Start(i); });
    if (!session.setting.room.tables.empty())
        out << choice(
            {"along", way, labelOf("basting/quilt_length_along")},
            {tr("As is fastest"), tr("Along the tables"), tr("Across the tables")},
            [q](const Session& s) { return int(s.jobs[q].basting.along); },
            [q](Session& s, int i) { s.jobs[q].basting.along = Basting::Along(i); });
    if (!basted.point.alongRow && !basted.point.isPatch())
        out << choice(
            {"layout", way, words::fromCore(basted.words.where)},
            {tr("The easier one"), tr("In rows, by ribbons"), tr("The same in every block"),
             tr("As few as can be")},
            [q](const Session& s) {
                const auto& layout = s.jobs[q].basting.layout;
                return layout ? int(*layout) + 1 : 0;
            },
            [q](Session& s, int i) {
                auto& layout = s.jobs[q].basting.layout;
                layout = i == 0 ? std::nullopt : std::optional{Basting::Layout(i - 1)};
            });
    out << length({"inset", way, labelOf("room/inset")}, unit,
                  [](Session& s) { return &s.setting.room.inset; });
    if (!session.setting.room.walls.empty())
        out << length({"wall_gap", way, labelOf("room/wall_gap")}, unit,
                      [](Session& s) { return &s.setting.room.wallGap; });
    const bool begins = true;
    out << time(
        {"from", way, labelOf("start")}, [](Session& s) { return &s.setting.start; }, begins);
    return out;
}

} // namespace fields
