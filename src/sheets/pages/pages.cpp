#include "sheets/pages/pages.h"

#include "sheets/printable.h"
#include "sheets/words.h"

#include <algorithm>

namespace bastewright::sheets {

const Job& SheetContext::job(std::size_t quilt) const {
    static const Job blank;
    return quilt < session.jobs.size() ? session.jobs[quilt] : blank;
}

QString SheetContext::quiltName(std::size_t quilt) const {
    const std::string& name = quilt < plan.quilts.size() && !plan.quilts[quilt].name.empty()
                                  ? plan.quilts[quilt].name
                                  : job(quilt).name;
    if (!name.empty())
        return isolated(name);
    return severalQuilts() ? Text::tr("Quilt %1").arg(quilt + 1) : Text::tr("Quilt");
}

QString SheetContext::sessionName() const {
    if (!severalQuilts())
        return quiltName(0);
    QStringList names;
    for (std::size_t q = 0; q < plan.quilts.size(); ++q)
        names << quiltName(q);
    return names.size() <= 3 ? listed(names)
                             : Text::tr("%1 and %2 more").arg(names[0]).arg(names.size() - 1);
}

bool SheetContext::severalTables() const {
    return std::ranges::any_of(plan.quilts,
                               [](const QuiltPlan& q) { return q.surface.number != 1; });
}

QString SheetContext::passName(std::size_t quilt, int pass) const {
    if (!severalQuilts())
        return Text::tr("Pass %1").arg(pass);
    if (!severalTables())
        return Text::tr("%1, pass %2").arg(quiltName(quilt)).arg(pass);
    return Text::tr("%1, pass %2, table %3")
        .arg(quiltName(quilt))
        .arg(pass)
        .arg(plan.quilts[quilt].surface.number);
}

std::optional<PassTimes> passTimes(const Plan& plan, std::size_t quilt, int pass) {
    std::optional<PassTimes> times;
    for (const auto& t : plan.tasks) {
        if (t.job != int(quilt) || t.pass != pass)
            continue;
        if (!times)
            times = PassTimes{t.start, t.end};
        times->start = std::min(times->start, t.start);
        times->end = std::max(times->end, t.end);
    }
    return times;
}

std::vector<Section> sectionsFor(const SheetContext& c, const SheetOptions& options) {
    std::vector<Section> out;
    if (options.lead) {
        Flow flow;
        flow += sessionPage(c);
        flow += bringPage(c);
        for (std::size_t q = 0; q < c.plan.quilts.size(); ++q) {
            flow += clothPage(c, q);
            flow += battingPage(c, q);
            flow += rowsPage(c, q);
            flow += passPages(c, q);
            flow += countsPage(c, q);
            flow += machinePage(c, q);
        }
        flow += cautionsPage(c);
        out.push_back({Text::tr("Lead"), std::move(flow)});
    }
    if (options.helpers)
        for (const auto& h : c.session.setting.helpers)
            if (options.people.empty() || std::ranges::count(options.people, h.name) > 0)
                out.push_back({Text::tr("%1 %2").arg(c.crew.letter(h.name), isolated(h.name)),
                               helperPages(c, h)});
    if (options.ribbons) {
        Flow flow;
        for (std::size_t q = 0; q < c.plan.quilts.size(); ++q)
            flow += ribbonsPages(c, q);
        if (!flow.empty())
            out.push_back({Text::tr("Ribbons"), std::move(flow)});
    }
    if (options.cards) {
        Flow flow;
        for (std::size_t q = 0; q < c.plan.quilts.size(); ++q)
            flow += cardPages(c, q);
        if (!flow.empty())
            out.push_back({Text::tr("Cards"), std::move(flow)});
    }
    return out;
}

} // namespace bastewright::sheets
