#include "job/job_json.h"
#include "view/edit/field_kinds.h"

using namespace bastewright;

namespace fields {

Fields ofBoxes(const Session& session, int quilt) {
    const Unit unit = session.jobs[std::size_t(quilt)].unit;
    const QString hand = tr("We have");
    const auto stash = [](auto member) {
        return [=](Session& s) { return &(s.setting.stash.*member); };
    };
    Fields out;
    out << count({"pins", hand, labelOf("stash/pins")}, stash(&Stash::pins))
        << count({"clamps", hand, labelOf("stash/clamps")}, stash(&Stash::clamps))
        << length({"tape", hand, labelOf("stash/tape")}, unit, stash(&Stash::tape));
    const auto& clips = session.setting.stash.clips;
    for (std::size_t i = 0; i < clips.size(); ++i) {
        const auto clip = [i](auto member) {
            return [=](Session& s) { return &(s.setting.stash.clips[i].*member); };
        };
        const QString key = QStringLiteral("clip%1/").arg(i);
        const QString group = tr("Roll clips, size %1").arg(i + 1);
        out << count({key + "count", group, labelOf("stash/clips/count")}, clip(&ClipStock::count))
            << length({key + "holds", group, labelOf("stash/clips/holds")}, unit,
                      clip(&ClipStock::holds))
            << removal({key + "remove", group, tr("Remove this size of clip")}, [i](Session& s) {
                   auto& all = s.setting.stash.clips;
                   all.erase(all.begin() + std::ptrdiff_t(i));
               });
    }
    out << action({"addclip", tr("More clips"), tr("Add a size of roll clip")}, [](Session& s) {
        s.setting.stash.clips.push_back({.holds = Length::inches(3), .count = 4});
    });
    out << text({"name", tr("Kept for other quilts"), labelOf("stash/name")}, stash(&Stash::name));
    return out;
}

} // namespace fields
