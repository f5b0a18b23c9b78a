#include "sheets/pages/pages.h"

#include "sheets/parts.h"
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

QString SheetContext::mark(const std::string& person, std::size_t quilt) const {
    const std::string place = placeOf(plan.quilts[quilt], person);
    return place.empty() ? crew.letter(person) : QString::fromStdString(place);
}

bool SheetContext::isAny(const Way& way) const {
    for (std::size_t q = 0; q < plan.quilts.size(); ++q)
        if (std::ranges::count(ways(q), &way) > 0)
            return true;
    return false;
}

bool SheetContext::isMixed(std::size_t quilt) const {
    return std::ranges::any_of(plan.quilts[quilt].zones,
                               [](const Zone& z) { return z.with.has_value(); });
}

int SheetContext::pinsOf(const std::string& person, std::size_t quilt, const Pass& pass) const {
    int n = 0;
    if (const auto own = parts.find(person); own != parts.end())
        for (const Part& part : own->second)
            for (const Zone* zone : part.zones)
                if (part.quilt == quilt && part.pass->number == pass.number &&
                    wayOf(job(quilt), *zone).fromBox)
                    n += int(zone->points.size());
    return n;
}

int SheetContext::pointsOf(const std::string& person, std::size_t quilt, const Pass& pass) const {
    const auto own = parts.find(person);
    if (own == parts.end())
        return 0;
    const auto part = std::ranges::find_if(own->second, [&](const Part& p) {
        return p.quilt == quilt && p.pass->number == pass.number;
    });
    return part == own->second.end() ? 0 : part->points;
}

namespace {

/// The pages of all quilts, one after another.
template <class Page>
Flow ofAll(const SheetContext& c, Page page) {
    Flow flow;
    for (std::size_t q = 0; q < c.plan.quilts.size(); ++q)
        flow += page(c, q);
    return flow;
}

} // namespace

std::vector<Section> sectionsFor(const SheetContext& c, const SheetOptions& options) {
    std::vector<Section> out;
    const auto add = [&](bool wanted, const QString& name, auto&& flow) {
        if (!wanted)
            return;
        if (Flow pages = flow(); !pages.empty())
            out.push_back({name, std::move(pages)});
    };
    add(options.lead, Text::tr("Lead"), [&] { return ofAll(c, leadPage); });
    add(options.bring, Text::tr("Bring"), [&] { return bringPage(c); });
    if (options.helpers)
        for (const auto& h : c.session.setting.helpers)
            if (options.people.empty() || std::ranges::count(options.people, h.name) > 0)
                out.push_back({isolated(h.name), helperPages(c, h)});
    add(options.passes, Text::tr("Passes"), [&] { return ofAll(c, passPages); });
    add(options.ribbons, Text::tr("Ribbons"), [&] {
        return ofAll(c, [](const SheetContext& of, std::size_t q) {
            Flow flow = rowsPage(of, q);
            flow += ribbonsPages(of, q);
            return flow;
        });
    });
    add(options.labels, Text::tr("Labels"), [&] { return labelsPage(c); });
    add(options.record, Text::tr("Record"), [&] {
        return ofAll(c, [](const SheetContext& of, std::size_t q) {
            Flow flow = countsPage(of, q);
            flow += machinePage(of, q);
            return flow;
        });
    });
    add(options.why, Text::tr("Why"), [&] { return whyPage(c); });
    add(options.cards, Text::tr("Cards"), [&] { return ofAll(c, cardPages); });
    return out;
}

} // namespace bastewright::sheets
