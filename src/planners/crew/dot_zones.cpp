#include "planners/crew/dot_zones.h"

#include <algorithm>
#include <charconv>
#include <map>

namespace bastewright {
namespace {

/// From the middle of a zone to the nearest edge of the top.
Length fromEdge(const Zone& zone, Size top) {
    const Point m = zone.area.middle();
    return std::min({m.x, top.width - m.x, m.y, top.length - m.y});
}

std::int64_t points(const Zone& zone) {
    return static_cast<std::int64_t>(zone.points.size());
}

} // namespace

std::vector<std::string> zonesForDots(std::span<const Zone> zones, Size top, std::int64_t missing) {
    std::vector<const Zone*> order;
    for (const Zone& z : zones)
        if (!z.points.empty())
            order.push_back(&z);
    std::ranges::stable_sort(order, {}, [&](const Zone* z) { return fromEdge(*z, top); });
    std::vector<const Zone*> taken;
    std::int64_t sum = 0;
    for (const Zone* z : order) {
        if (sum >= missing)
            break;
        taken.push_back(z);
        sum += points(*z);
    }
    if (sum < missing)
        return {};
    // The innermost first: what it saves may be more than is missing.
    for (auto i = taken.size(); i-- > 0;)
        if (sum - points(*taken[i]) >= missing) {
            sum -= points(*taken[i]);
            taken.erase(taken.begin() + static_cast<std::ptrdiff_t>(i));
        }
    std::vector<std::string> out;
    for (const Zone& z : zones)
        if (std::ranges::find(taken, &z) != taken.end())
            out.push_back(z.id);
    return out;
}

namespace {

/// Names of one pass, runs of turns at a place together.
Sentence namesOf(std::span<const std::string> ids) {
    std::map<std::pair<std::size_t, std::string>, std::vector<int>> columns; // A…Z before AA
    for (const std::string& full : ids) {
        const std::string id{zoneName(full)};
        const std::size_t digits = std::min(id.find_first_of("0123456789"), id.size());
        int row = 0;
        std::from_chars(id.data() + digits, id.data() + id.size(), row);
        columns[{digits, id.substr(0, digits)}].push_back(row);
    }
    Sentences out;
    for (auto& [column, rows] : columns) {
        std::ranges::sort(rows);
        for (std::size_t i = 0; i < rows.size();) {
            std::size_t end = i;
            while (end + 1 < rows.size() && rows[end + 1] == rows[end] + 1)
                ++end;
            const std::string first = column.second + std::to_string(rows[i]);
            const std::string last = column.second + std::to_string(rows[end]);
            if (end > i + 1)
                out.push_back(core::says("%1 to %2", first, last));
            else
                out.insert(out.end(), {first, last});
            if (end == i)
                out.pop_back();
            i = end + 1;
        }
    }
    return core::commaList(out);
}

} // namespace

Sentence zoneList(std::span<const std::string> ids) {
    // Ids without a pass belong to one another all the same.
    std::map<std::string, std::vector<std::string>> passes;
    std::vector<std::string> order;
    for (const std::string& id : ids) {
        const auto dot = id.find('.');
        const std::string pass =
            dot == std::string::npos || id.front() != 'p' ? "" : id.substr(1, dot - 1);
        auto& list = passes[pass];
        if (list.empty())
            order.push_back(pass);
        list.push_back(id);
    }
    if (order.size() <= 1)
        return namesOf(ids);
    Sentences out;
    for (const std::string& pass : order)
        out.push_back(core::says("%1 of pass %2", namesOf(passes[pass]), pass));
    return core::commaList(out);
}

} // namespace bastewright
