#include "session/checks.h"

#include <algorithm>
#include <array>
#include <utility>

namespace bastewright {
namespace {
constexpr std::array<std::pair<Check, std::string_view>, 4> kNames{{
    {Check::cautions, "cautions"},
    {Check::palmGlides, "palm-glides"},
    {Check::underside, "underside"},
    {Check::spare, "spare"},
}};
} // namespace

std::string_view name(Check check) {
    for (const auto& [c, n] : kNames)
        if (c == check)
            return n;
    return "";
}

std::optional<Check> checkNamed(std::string_view text) {
    for (const auto& [c, n] : kNames)
        if (n == text)
            return c;
    return {};
}

std::vector<Check> checksOf(TaskKind step) {
    if (step == TaskKind::setUp)
        return {Check::cautions};
    if (step == TaskKind::checkUnderside)
        return {Check::palmGlides, Check::underside, Check::spare};
    return {};
}

std::optional<bool> answerTo(const LiveState& state, const std::string& task, Check check) {
    const auto at = state.answers.find({task, std::string{name(check)}});
    return at == state.answers.end() ? std::nullopt : std::optional{at->second};
}

bool allAnsweredYes(const LiveState& state, const Task& task) {
    return std::ranges::all_of(
        checksOf(task.kind), [&](Check c) { return answerTo(state, task.id, c).value_or(false); });
}

} // namespace bastewright
