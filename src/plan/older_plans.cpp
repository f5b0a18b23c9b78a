#include "plan/finding_fields.h"

#include <algorithm>
#include <charconv>
#include <string_view>

namespace bastewright {

void inferKind(Finding& finding) {
    using enum Finding::Kind;
    using Row = std::pair<std::string_view, Finding::Kind>;
    constexpr std::array<Row, 12> kByField{{{"/helpers", hoursShort},
                                            {"/handed", handedElsewhere},
                                            {"/room/irons", noIron},
                                            {"/stash/pins", pinsShort},
                                            {"/stash/clips", noClip},
                                            {"/basting/start", otherStart},
                                            {"/basting/quilt_length_along", otherLie},
                                            {"/room/together", otherTables},
                                            {"/batting/width", layerShort},
                                            {"/batting/length", layerShort},
                                            {"/backing/width", layerShort},
                                            {"/backing/length", layerShort}}};
    constexpr std::string_view kJobs = "/jobs/";
    std::string_view field = finding.field;
    if (field.starts_with(kJobs)) {
        field.remove_prefix(kJobs.size());
        std::from_chars(field.data(), field.data() + field.size(), finding.quilt);
        finding.quilt = std::clamp(finding.quilt, -1, limits::kQuilts - 1);
        field.remove_prefix(std::min(field.find('/'), field.size()));
    }
    const auto at = std::ranges::find(kByField, field, &Row::first);
    finding.kind = at == kByField.end() ? other : at->second;
    if (finding.kind == layerShort)
        finding.subject = field.substr(1, field.rfind('/') - 1);
}

void inferKind(Supply& supply) {
    using enum Supply::Kind;
    constexpr std::array<std::pair<std::string_view, Supply::Kind>, 14> kByName{
        {{"pins", pins},
         {"fuse squares", fuseSquares},
         {"irons", irons},
         {"heat-safe pads", heatSafePads},
         {"clips", clips},
         {"clamps", clamps},
         {"centre marks", centreMarks},
         {"tape", tape},
         {"closing tools", closingTools},
         {"backing: ", fabric},
         {"batting: ", battingPack},
         {"batting off the roll", battingRoll},
         {"leftover", leftovers},
         {"joining strip", joiningStrip}}};
    const std::string item = supply.item.english();
    for (const auto& [name, kind] : kByName)
        if (item.starts_with(name))
            supply.kind = kind;
}

} // namespace bastewright
