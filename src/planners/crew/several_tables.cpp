#include "planners/crew/earliest.h"
#include "planners/crew/worth.h"

#include <algorithm>
#include <cmath>

/// The bound for several tables.
namespace bastewright::crew {
int earliestOfSeveral(const Given& given, const std::vector<Hand>& hands,
                      const std::vector<QuiltTable>& tables, const std::vector<Block>& blocks,
                      const std::vector<PassPlan>& passes, int restAfter) {
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
    options.lastRest = double(given.situation.lastRest.count());
    options.told = given.told;
    options.restAfter = restAfter;
    return static_cast<int>(std::floor(Worth{hands, surfaces.size(), all, options}.prove()));
}

} // namespace bastewright::crew
