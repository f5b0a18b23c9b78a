#include "job/job_json.h"
#include "view/edit/field_kinds.h"
#include "view/edit/summaries.h"

using namespace bastewright;

namespace fields {
namespace {
constexpr std::chrono::minutes kFirstBreak{90}, kBreak{15}; // common practice: by 45 to 90 minutes

ClockTime later(ClockTime from, std::chrono::minutes by) {
    constexpr std::chrono::minutes kDay{24 * 60};
    return {std::min(from.sinceMidnight + by, kDay - std::chrono::minutes{1})};
}

/// When somebody has a break: nothing is planned for them then.
void ofBreaks(Fields& out, const Helper& helper, std::size_t i, const QString& key,
              const QString& group) {
    for (std::size_t k = 0; k < helper.breaks.size(); ++k) {
        const auto rest = [i, k](auto member) {
            return [=](Session& s) { return &(s.setting.helpers[i].breaks[k].*member); };
        };
        const QString own = key + QStringLiteral("break%1/").arg(k);
        out << fields::time({own + "from", group, labelOf("helpers/breaks/from")},
                            rest(&Break::from))
            << fields::time({own + "until", group, labelOf("helpers/breaks/until")},
                            rest(&Break::until))
            << fields::removal({own + "remove", group, tr("Remove break")}, [i, k](Session& s) {
                   auto& all = s.setting.helpers[i].breaks;
                   all.erase(all.begin() + std::ptrdiff_t(k));
               });
    }
    if (helper.breaks.size() < limits::kBreaks)
        out << fields::action({key + "addBreak", group, tr("Add a break")}, [i](Session& s) {
            auto& h = s.setting.helpers[i];
            const auto from =
                later(h.breaks.empty() ? h.from.value_or(s.setting.start) : h.breaks.back().until,
                      kFirstBreak);
            h.breaks.push_back({from, later(from, kBreak)});
        });
}

/// The side of the tables somebody keeps to.
Field sideOf(std::size_t i, const QString& key, const QString& group) {
    return fields::choice(
        {key + "side", group, labelOf("helpers/side")},
        {tr("Wherever there is work"), tr("The upper side of the drawing"),
         tr("The lower side of the drawing"), tr("The left end"), tr("The right end")},
        [i](const Session& s) {
            const auto& side = s.setting.helpers[i].side;
            return side ? int(*side) + 1 : 0;
        },
        [i](Session& s, int choice) {
            auto& side = s.setting.helpers[i].side;
            if (choice == 0)
                side.reset();
            else
                side = kSides[std::size_t(choice - 1)];
        });
}

} // namespace

Fields ofPeople(const Session& session, int quilt) {
    const Unit unit = session.jobs[std::size_t(quilt)].unit;
    const auto& helpers = session.setting.helpers;
    Fields out;
    for (std::size_t i = 0; i < helpers.size(); ++i) {
        const auto helper = [i](auto member) {
            return [=](Session& s) { return &(s.setting.helpers[i].*member); };
        };
        const QString key = QStringLiteral("helper%1/").arg(i);
        const QString group = words::fromCore(helpers[i].name);
        out << text({key + "name", group, labelOf("helpers/name")}, helper(&Helper::name))
            << length({key + "reach", group, labelOf("helpers/reach")}, unit,
                      helper(&Helper::reach))
            << length({key + "lean", group, labelOf("helpers/lean")}, unit, helper(&Helper::lean))
            << number({key + "pace", group, labelOf("helpers/pace")}, helper(&Helper::pace))
            << optionalTime({key + "from", group, labelOf("helpers/from")}, helper(&Helper::from))
            << optionalTime({key + "until", group, labelOf("helpers/until")},
                            helper(&Helper::until))
            << toggle({key + "lifts", group, labelOf("helpers/lifts")}, helper(&Helper::lifts))
            << toggle({key + "closes", group, labelOf("helpers/closes")}, helper(&Helper::closes))
            << toggle({key + "pins", group, labelOf("helpers/pins")}, helper(&Helper::pins))
            << toggle({key + "bends", group, labelOf("helpers/bends")}, helper(&Helper::bends))
            << toggle({key + "irons", group, labelOf("helpers/irons")}, helper(&Helper::irons))
            << toggle({key + "seated", group, labelOf("helpers/seated")}, helper(&Helper::seated))
            << toggle({key + "trouble_breathing", group, labelOf("helpers/trouble_breathing")},
                      helper(&Helper::troubleBreathing));
        if (!session.setting.room.tables.empty())
            out << sideOf(i, key, group);
        ofBreaks(out, helpers[i], i, key, group);
        if (helpers.size() > 1)
            out << removal({key + "remove", group, tr("Remove %1").arg(group)}, [i](Session& s) {
                auto& all = s.setting.helpers;
                all.erase(all.begin() + std::ptrdiff_t(i));
            });
    }
    if (helpers.size() < limits::kHelpers)
        out << action({"add", tr("Somebody else"), tr("Add a person")}, [](Session& s) {
            Helper helper;
            helper.name = words::toCore(summaries::newName(s.setting));
            s.setting.helpers.push_back(helper);
        });
    return out;
}

} // namespace fields
