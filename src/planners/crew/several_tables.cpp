#include "planners/crew/earliest.h"
#include "planners/crew/worth.h"

#include <algorithm>
#include <cmath>

/// The bound for several tables.
namespace bastewright::crew {
namespace {

/// Breaks are left out of the moments looked at: whoever comes later comes by so much sooner.
double breaksBefore(const Given& given, int t) {
    const auto now = double(given.situation.now.count());
    double out = 0;
    if (given.session.setting.proposeBreaks && given.told.empty() && t > now)
        out = kBreakLasts * std::floor((t - now) / (60.0 * 60));
    for (const PlannedBreak& b : given.told)
        if (b.start.count() < t)
            out += double((b.end - b.start).count());
    return out;
}

} // namespace

int earliestOfSeveral(const Given& given, const std::vector<Hand>& hands,
                      const std::vector<QuiltTable>& tables, const std::vector<Block>& blocks,
                      const std::vector<PassPlan>& passes) {
    std::map<int, std::size_t> surfaces;
    std::vector<PassAt> all;
    for (std::size_t k = 0; k < blocks.size(); ++k) {
        const Block& b = blocks[k];
        const std::size_t table = surfaces.try_emplace(b.surface, surfaces.size()).first->second;
        all.push_back({passWork(given, tables[static_cast<std::size_t>(b.job)], b,
                                opensTheTable(given, b), &passes[k]),
                       table});
    }
    WorthOptions options;
    options.now = double(given.situation.now.count());
    for (const Hand& h : hands)
        options.free.push_back(
            std::max(options.now, h.from < kAlways ? h.from - breaksBefore(given, h.from) : 0));
    return static_cast<int>(std::floor(Worth{hands, surfaces.size(), all, options}.prove()));
}

} // namespace bastewright::crew
