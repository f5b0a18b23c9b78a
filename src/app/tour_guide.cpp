#include "app/tour.h"

#include <QQuickItem>

namespace bastewright::app {

void Tour::press(const char* name) {
    if (auto* item = find(room_.window->contentItem(), QLatin1String(name)))
        QMetaObject::invokeMethod(item, "clicked");
}

/// A first quilt by questions, a room and people kept on the way; afterwards all is as it was.
void Tour::guide(const AtStop& atStop) {
    auto& room = *room_.workroom;
    room.beginQuilt();
    auto& guide = *room.guide();
    stop(QStringLiteral("guide-size"), atStop);
    press("field-width0");
    stop(QStringLiteral("guide-pad"), atStop);
    press("closeEditor");
    guide.choose(2);
    const char* const names[] = {"guide-quilted", "guide-closely", "guide-tables", "guide-people",
                                 "guide-supplies"};
    for (int page = GuideDesk::Quilted; page <= GuideDesk::Supplies; ++page) {
        guide.setPage(GuideDesk::Page(page));
        if (page == GuideDesk::People) {
            room.crew()->add(QStringLiteral("Ada, Bo"));
            room.crew()->flip(1, QStringLiteral("lifts"));
            room.kept()->keepEverybody();
        } else {
            guide.choose(page == GuideDesk::Tables ? 1 : 0);
        }
        if (page == GuideDesk::Tables)
            guide.take(QStringLiteral("name"), QStringLiteral("Saltmarsh Hall"));
        stop(QLatin1String(names[page - 1]), atStop);
    }
    room.leaveGuide();
    overlay("keptSheet", QStringLiteral("shelf-kept"), atStop);
    room.shelf()->remove(room.shelf()->index(0).data(ShelfModel::JobRole).toLongLong());
    room.shelf()->forgetRemoved();
    for (const auto& name : {"Ada", "Bo", "Me"})
        room.kept()->forget(KeptDesk::Person, QLatin1String(name));
    room.kept()->forget(KeptDesk::Room, QStringLiteral("Saltmarsh Hall"));
}

} // namespace bastewright::app
