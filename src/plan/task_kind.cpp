#include "plan/plan.h"

#include <array>
#include <utility>

namespace bastewright {
namespace {
constexpr std::array<std::pair<TaskKind, std::string_view>, 22> kNames{{
    {TaskKind::setUp, "set-up"},
    {TaskKind::layBacking, "lay-backing"},
    {TaskKind::clamp, "clamp"},
    {TaskKind::layBatting, "lay-batting"},
    {TaskKind::layTop, "lay-top"},
    {TaskKind::reclamp, "reclamp"},
    {TaskKind::placeOpen, "place-open"},
    {TaskKind::smooth, "smooth"},
    {TaskKind::closePins, "close-pins"},
    {TaskKind::checkUnderside, "check-underside"},
    {TaskKind::shift, "shift"},
    {TaskKind::foldBack, "fold-back"},
    {TaskKind::dotLower, "dot-lower"},
    {TaskKind::foldForward, "fold-forward"},
    {TaskKind::dotUpper, "dot-upper"},
    {TaskKind::press, "press"},
    {TaskKind::cool, "cool"},
    {TaskKind::stitch, "stitch"},
    {TaskKind::spray, "spray"},
    {TaskKind::settle, "settle"},
    {TaskKind::turnOver, "turn-over"},
    {TaskKind::handOver, "hand-over"},
}};
} // namespace

std::string_view name(TaskKind kind) {
    for (const auto& [k, n] : kNames)
        if (k == kind)
            return n;
    return "";
}

std::optional<TaskKind> taskKind(std::string_view text) {
    for (const auto& [k, n] : kNames)
        if (n == text)
            return k;
    return {};
}

} // namespace bastewright
