#include "job/job_json.h"
#include "view/field_kinds.h"

#include <QCoreApplication>

using namespace bastewright;

namespace {
QString tr(const char* text) {
    return QCoreApplication::translate("fields", text);
}

/// A name nobody at the table has yet.
std::string newName(const Session& session) {
    const auto& helpers = session.setting.helpers;
    for (int n = int(helpers.size()) + 1;; ++n) {
        auto name = words::toCore(tr("Helper %1").arg(n));
        if (std::none_of(helpers.begin(), helpers.end(),
                         [&](const Helper& h) { return h.name == name; }))
            return name;
    }
}

} // namespace

Fields fields::ofPeople(const Session& session, int quilt) {
    const Unit unit = session.jobs[std::size_t(quilt)].unit;
    const auto& helpers = session.setting.helpers;
    Fields out;
    for (std::size_t i = 0; i < helpers.size(); ++i) {
        const auto helper = [i](auto member) {
            return [=](Session& s) { return &(s.setting.helpers[i].*member); };
        };
        const QString key = QStringLiteral("helper%1/").arg(i);
        const QString group = words::fromCore(helpers[i].name);
        out << text({key + "name", group, tr("Name")}, helper(&Helper::name))
            << length({key + "reach", group, tr("Reach")}, unit, helper(&Helper::reach))
            << number({key + "pace", group, tr("Pace (1 is usual)")}, helper(&Helper::pace))
            << optionalTime({key + "from", group, tr("Comes at")}, helper(&Helper::from))
            << optionalTime({key + "until", group, tr("Leaves at")}, helper(&Helper::until))
            << toggle({key + "lifts", group, tr("Lifts")}, helper(&Helper::lifts))
            << toggle({key + "closes", group, tr("Closes pins")}, helper(&Helper::closes))
            << toggle({key + "irons", group, tr("Irons")}, helper(&Helper::irons))
            << toggle({key + "seated", group, tr("Seated")}, helper(&Helper::seated));
        if (helpers.size() > 1)
            out << removal({key + "remove", group, tr("%1 is not coming").arg(group)},
                           [i](Session& s) {
                               auto& all = s.setting.helpers;
                               all.erase(all.begin() + std::ptrdiff_t(i));
                           });
    }
    if (helpers.size() < limits::kHelpers)
        out << action({"add", tr("Somebody else"), tr("Add a person")}, [](Session& s) {
            Helper helper;
            helper.name = newName(s);
            s.setting.helpers.push_back(helper);
        });
    return out;
}
