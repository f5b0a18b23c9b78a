#include "job/job_json.h"
#include "view/edit/field_kinds.h"

using namespace bastewright;

namespace fields {

Fields ofBoxes(const Session& session, int quilt) {
    const Unit unit = session.jobs[std::size_t(quilt)].unit;
    const QString hand = tr("On hand");
    const auto stash = [](auto member) {
        return [=](Session& s) { return &(s.setting.stash.*member); };
    };
    Fields out;
    out << count({"pins", hand, tr("Pins")}, stash(&Stash::pins), 0, limits::kOnHand)
        << count({"clamps", hand, tr("Clamps")}, stash(&Stash::clamps), 0, limits::kOnHand)
        << length({"tape", hand, tr("Tape")}, unit, stash(&Stash::tape));
    const auto& clips = session.setting.stash.clips;
    for (std::size_t i = 0; i < clips.size(); ++i) {
        const auto clip = [i](auto member) {
            return [=](Session& s) { return &(s.setting.stash.clips[i].*member); };
        };
        const QString key = QStringLiteral("clip%1/").arg(i);
        const QString group = tr("Roll clips, size %1").arg(i + 1);
        out << count({key + "count", group, tr("How many")}, clip(&ClipStock::count), 0,
                     limits::kOnHand)
            << length({key + "holds", group, tr("Hold a roll of")}, unit, clip(&ClipStock::holds))
            << removal({key + "remove", group, tr("Remove this size of clip")}, [i](Session& s) {
                   auto& all = s.setting.stash.clips;
                   all.erase(all.begin() + std::ptrdiff_t(i));
               });
    }
    out << action({"addclip", tr("More clips"), tr("Add a size of roll clip")}, [](Session& s) {
        s.setting.stash.clips.push_back({.holds = Length::inches(3), .count = 4});
    });
    return out;
}

} // namespace fields
