#include "job/fields/field_reports.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace bastewright {

bool isPrintable(std::string_view text) {
    return std::ranges::none_of(text, [](char c) { return (c >= 0 && c < ' ') || c == '\x7f'; });
}

std::string plainNumber(double value) {
    const bool whole = value == std::floor(value);
    return (whole ? Json(static_cast<std::int64_t>(value)) : Json(value)).dump();
}

bool isBlank(std::string_view text) {
    return text.find_first_not_of(' ') == std::string_view::npos;
}

bool FieldReports::atMost(std::string_view key, std::size_t entries, std::size_t most) {
    if (entries > most)
        stop(key, core::says("has %1 entries; up to %2 are accepted.", entries, most));
    return entries <= most;
}

void FieldReports::expectNoneOrBoth(std::string_view key, std::size_t diagonals) {
    if (diagonals == 1)
        stop(key, core::says("has %1 reading; none or both are accepted.", diagonals));
}

void FieldReports::expectNoneOr(std::string_view key, std::size_t entries, std::size_t fewest) {
    if (entries > 0 && entries < fewest)
        stop(key, core::says("has %1 entry; none, or %2 and more, are accepted.", entries, fewest));
}

void Problems::add(Finding finding) {
    if (finding.level == Finding::Level::stop)
        ++stops_;
    if (findings_.size() < kMost)
        findings_.push_back(std::move(finding));
    else
        ++further_;
}

Findings Problems::inOrder(const Json& root) && {
    sortByPlace(findings_, root);
    if (further_ > 0)
        findings_.push_back(
            {Finding::Kind::input, Finding::Level::stop, "",
             core::says("There are %1 further problems; fix those above first.", further_), ""});
    return std::move(findings_);
}

} // namespace bastewright
