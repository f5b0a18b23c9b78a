#include "property/plan_changes/nearness.h"

#include <algorithm>
#include <array>
#include <set>
#include <vector>

namespace bastewright::testing {
namespace {

/// The parts of the file that are not of a quilt, where a plan has one quilt.
const std::set<std::string> kOfAll{"tasks",  "supplies",     "help",     "breaks",
                                   "finish", "finish_range", "findings", "sentences"};

constexpr std::string_view kText =
    "it reads as another; '/sentences' has one that nothing says any more";
constexpr std::string_view kLeftOut = "its texts are said no more; '/sentences' still has them";
constexpr std::string_view kStretch =
    "a stretch and the places of its tasks say the same; the stretch is named";

constexpr std::array kAfar{
    Afar{"/surface/name", Near::quilt, "tables of that size are called otherwise among the ways"},
    Afar{"/surface/number", Near::elsewhere,
         "as that of another quilt: that one, tasks and supplies are named"},
    Afar{"/surface/quilt_length_along", Near::quilt,
         "of a square table or the floor: the chosen way is named"},
    Afar{"/alternatives", Near::elsewhere, kLeftOut},
    Afar{"/alternatives/*/surface", Near::list,
         "tables of that size are called otherwise in another way"},
    Afar{"/alternatives/*/start", Near::quilt,
         "of the chosen way: where its first pass lies is named"},
    Afar{"/alternatives/*/predicted", Near::list, "in groups by their time: another is named"},
    Afar{"/alternatives/*/workable", Near::list, "those that work come first: the next is named"},
    Afar{"/alternatives/*/why", Near::elsewhere, kText},
    Afar{"/backing/alternatives", Near::elsewhere, kLeftOut},
    Afar{"/backing/alternatives/*/text", Near::elsewhere, kText},
    Afar{"/backing/alternatives/*/wanted", Near::elsewhere, kText},
    Afar{"/backing/least_bought", Near::elsewhere, kText},
    Afar{"/backing/runner_up", Near::elsewhere, kText},
    Afar{"/backing/nearest_miss", Near::elsewhere, kText},
    Afar{"/backing/to_bring/*", Near::elsewhere, "a row of supplies has the same sentence"},
    Afar{"/batting/alternatives", Near::elsewhere, kLeftOut},
    Afar{"/batting/alternatives/*/text", Near::elsewhere, kText},
    Afar{"/batting/left_over", Near::elsewhere, kLeftOut},
    Afar{"/batting/left_over/*", Near::elsewhere, kText},
    Afar{"/batting/join_cost", Near::elsewhere, kText},
    Afar{"/batting/to_bring/*", Near::elsewhere, "a row of supplies has the same sentence"},
    Afar{"/findings", Near::elsewhere, kLeftOut},
    Afar{"/findings/*/text", Near::elsewhere, kText},
    Afar{"/findings/*/cure", Near::elsewhere, kText},
    Afar{"/help", Near::elsewhere, kLeftOut},
    Afar{"/help/*/kind", Near::list, "the second of a kind is named"},
    Afar{"/help/*/saved", Near::list, "ranked: the next is named"},
    Afar{"/help/*/change", Near::elsewhere, kText},
    Afar{"/supplies/*/item", Near::elsewhere, kText},
    Afar{"/supplies/*/note", Near::list, "the second that has that sentence is named"},
    Afar{"/supplies/*/unit", Near::elsewhere, kText},
    Afar{"/tasks/*/kind", Near::list,
         "in a plan that says it cannot be carried out: the tasks that wait for it are named"},
    Afar{"/tasks/*/id", Near::list,
         "a task that waits for it, or the second that is called so, is named"},
    Afar{"/tasks/*/zone", Near::list, "who stands there as well is named"},
    Afar{"/tasks/*/start", Near::list,
         "of a step whose time is shared: the step beside it is named"},
    Afar{"/tasks/*/end", Near::list, "of a step whose time is shared: the step beside it is named"},
    Afar{"/tasks/*/places", Near::list, "who stands there as well is named"},
    Afar{"/tasks/*/places/*/side", Near::elsewhere, kStretch},
    Afar{"/tasks/*/places/*/from", Near::elsewhere, kStretch},
    Afar{"/tasks/*/places/*/to", Near::elsewhere, kStretch},
    Afar{"/sentences", Near::elsewhere, "a text that it makes is named"},
    Afar{"/zones/*/points", Near::quilt, "rows or blocks that tell of the same points are named"},
    Afar{"/zones/*/id", Near::list, "the second that is called so is named"},
    Afar{"/zones", Near::quilt, "a pass lists its zones in their order; the pass is named"},
};

/// A pointer, taken apart.
struct Parts {
    std::string quilt;              ///< its index; empty where the plan has one
    std::vector<std::string> steps; ///< from the quilt, or from the file
};

Parts partsOf(const std::string& pointer) {
    Parts out;
    for (std::size_t at = 1; at <= pointer.size();) {
        const auto end = std::min(pointer.find('/', at), pointer.size());
        out.steps.push_back(pointer.substr(at, end - at));
        at = end + 1;
    }
    if (out.steps.size() >= 2 && out.steps[0] == "quilts") {
        out.quilt = out.steps[1];
        out.steps.erase(out.steps.begin(), out.steps.begin() + 2);
    }
    return out;
}

bool isIndex(const std::string& step) {
    return !step.empty() && std::ranges::all_of(step, [](char c) { return c >= '0' && c <= '9'; });
}

} // namespace

std::string_view name(Near near) {
    constexpr std::array<std::string_view, kNear> kNames{
        "on its path", "in its element", "in its list", "in its quilt", "elsewhere"};
    return kNames.at(static_cast<std::size_t>(near));
}

Near nearness(const std::string& field, const std::string& place) {
    const Parts a = partsOf(field), b = partsOf(place);
    const bool allQuilts = b.steps == std::vector<std::string>{"quilts"};
    if (a.quilt != b.quilt || a.steps.empty() || b.steps.empty())
        return !a.quilt.empty() && (a.quilt == b.quilt || allQuilts) ? Near::quilt
                                                                     : Near::elsewhere;
    const auto shared = std::size_t(std::ranges::mismatch(a.steps, b.steps).in1 - a.steps.begin());
    if (shared == std::min(a.steps.size(), b.steps.size()))
        return Near::onPath;
    if (shared > 0)
        return shared == 1 && isIndex(a.steps[1]) && isIndex(b.steps[1]) ? Near::list
                                                                         : Near::element;
    return kOfAll.contains(a.steps.front()) == kOfAll.contains(b.steps.front()) &&
                   !kOfAll.contains(a.steps.front())
               ? Near::quilt
               : Near::elsewhere;
}

std::span<const Afar> namedAfar() {
    return kAfar;
}

bool mayBeNamed(std::string_view path, Near near) {
    const auto at = std::ranges::find(kAfar, path, &Afar::path);
    return near <= (at == kAfar.end() ? Near::element : at->near);
}

} // namespace bastewright::testing
