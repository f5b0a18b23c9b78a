#include "planners/whole/sharing.h"

#include "planners/surface/helper_order.h"

#include <numeric>
#include <tuple>

namespace bastewright {
namespace {

/// Tables dealt out to `shares` surfaces, larger tables first, of equal ones the longer, so that
/// the shares are as equal as whole tables allow, whatever their order in the file.
std::vector<std::vector<Table>> dealt(const std::vector<Table>& tables, int shares) {
    std::vector<Table> single;
    for (const Table& t : tables)
        for (int i = 0; i < t.count; ++i)
            single.push_back({t.length, t.width, 1, t.group});
    std::ranges::stable_sort(single, std::greater<>{}, [](const Table& t) {
        return std::tuple{areaSquareInches({{}, {}, t.length, t.width}), t.length, t.width,
                          t.group};
    });
    std::vector<std::vector<Table>> out(static_cast<std::size_t>(shares));
    for (std::size_t i = 0; i < single.size(); ++i) {
        auto& share = out[i % out.size()];
        const auto same = std::ranges::find_if(share, [&](const Table& t) {
            return t.length == single[i].length && t.width == single[i].width &&
                   t.group == single[i].group;
        });
        if (same == share.end())
            share.push_back(single[i]);
        else
            ++same->count;
    }
    return out;
}

/// The helpers dealt out, quickest first, for a share's predicted time.
std::vector<Helper> everyNth(const std::vector<Helper>& all, int n) {
    const std::vector<Helper> helpers = inOneOrder(all);
    std::vector<Helper> out;
    for (std::size_t i = 0; i < helpers.size(); i += static_cast<std::size_t>(n))
        out.push_back(helpers[i]);
    return out;
}

bool sameTables(const Arrangement& a, const Arrangement& b) {
    return a.length == b.length && a.width == b.width && a.floor == b.floor;
}

const PassChoice* quickest(const Shared& quilt, const Arrangement& tables) {
    const auto found = std::ranges::find_if(quilt.choices, [&](const PassChoice& c) {
        return c.summary.workable && c.asked == quilt.choices.front().asked &&
               sameTables(c.surface, tables);
    });
    return found == quilt.choices.end() ? nullptr : &*found;
}

/// Quilts that follow one another on a surface leave the tables as they are: the arrangement with
/// the least time for all of them comes first in each one's choices.
void leaveTables(std::vector<Shared*> quilts) {
    if (quilts.size() < 2)
        return;
    const Arrangement* best = nullptr;
    Seconds least{};
    for (const PassChoice& c : quilts.front()->choices) {
        Seconds sum{};
        const bool all = std::ranges::all_of(quilts, [&](const Shared* q) {
            const PassChoice* choice = quickest(*q, c.surface);
            if (choice)
                sum += choice->summary.predicted;
            return choice != nullptr;
        });
        if (all && (!best || sum < least)) {
            best = &c.surface;
            least = sum;
        }
    }
    if (!best)
        return;
    const Arrangement chosen = *best;
    for (Shared* q : quilts)
        std::ranges::stable_partition(q->choices, [&](const PassChoice& c) {
            return c.summary.workable && c.asked == q->choices.front().asked &&
                   sameTables(c.surface, chosen);
        });
}

struct Attempt {
    std::vector<Shared> quilts;
    bool workable = true;
    Seconds finish{};
};

Attempt attempt(const Session& session, const std::vector<LayerSizes>& layers,
                const std::vector<PointsPlan>& points, std::vector<LayoutMemory>& memories,
                int surfaces, const std::stop_token& stop) {
    const bool floor = session.setting.room.tables.empty();
    const auto shares = dealt(session.setting.room.tables, surfaces);
    Setting setting = session.setting;
    setting.helpers = everyNth(session.setting.helpers, surfaces);
    std::vector<Seconds> busyUntil(static_cast<std::size_t>(surfaces), Seconds{});
    Attempt out;
    for (std::size_t job = 0; job < session.jobs.size(); ++job) {
        const auto next = std::ranges::min_element(busyUntil);
        const auto surface = static_cast<std::size_t>(next - busyUntil.begin());
        const PassRequest request{.job = session.jobs[job],
                                  .setting = setting,
                                  .layers = layers[job],
                                  .points = points[job].points,
                                  .alone = session.jobs.size() == 1,
                                  .memory = &memories[job],
                                  .stop = stop};
        const std::vector<Arrangement> ways =
            floor ? std::vector{floorArrangement(layers[job].backing)}
                  : arrangements(shares[surface]);
        Shared s{job, static_cast<int>(surface) + 1, passChoices(request, ways)};
        if (s.choices.empty() || !s.choices.front().summary.workable)
            out.workable = false;
        else
            *next += s.choices.front().summary.predicted;
        out.quilts.push_back(std::move(s));
    }
    if (!floor)
        for (int surface = 1; surface <= surfaces; ++surface) {
            std::vector<Shared*> quilts;
            for (Shared& q : out.quilts)
                if (q.surface == surface)
                    quilts.push_back(&q);
            leaveTables(quilts);
        }
    out.finish = *std::ranges::max_element(busyUntil);
    return out;
}

} // namespace

std::vector<Shared> shareRoom(const Session& session, const std::vector<LayerSizes>& layers,
                              const std::vector<PointsPlan>& points,
                              std::vector<LayoutMemory>& memories, std::stop_token stop) {
    memories.resize(session.jobs.size());
    const auto& tables = session.setting.room.tables;
    const int quilts = static_cast<int>(session.jobs.size());
    const int onHand = std::accumulate(tables.begin(), tables.end(), 0,
                                       [](int n, const Table& t) { return n + t.count; });
    // Fewer than two people at a surface cannot lay a layer.
    const int pairs = std::max(1, static_cast<int>(session.setting.helpers.size()) / 2);
    int most = std::min({quilts, pairs, tables.empty() ? quilts : onHand});
    int least = 1;
    if (session.setting.room.surfaces > 0)
        least = most =
            std::min({session.setting.room.surfaces, quilts, tables.empty() ? quilts : onHand});
    Attempt best = attempt(session, layers, points, memories, least, stop);
    for (int n = least + 1; n <= most && !stop.stop_requested(); ++n) {
        Attempt a = attempt(session, layers, points, memories, n, stop);
        if (a.workable && (!best.workable || a.finish < best.finish))
            best = std::move(a);
    }
    return std::move(best.quilts);
}

} // namespace bastewright
