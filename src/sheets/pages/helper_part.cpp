#include "sheets/pages/helper_part.h"

#include "sheets/task_words.h"
#include "sheets/words.h"

#include <algorithm>
#include <set>

namespace bastewright::sheets {
namespace {

bool has(const Task& t, const std::string& person) {
    return std::ranges::count(t.people, person) > 0;
}

/// Places in order along the table, those of about the same middle taken together.
std::vector<StandingPlace> gathered(std::vector<StandingPlace> all) {
    constexpr Length kStep = Length::inches(12); // half of what one person takes up
    std::ranges::sort(all, {}, [](const StandingPlace& p) {
        return std::pair{p.side, p.along.middle()};
    });
    std::vector<StandingPlace> out;
    Length first; // middle of the first of the place being gathered
    for (const auto& p : all) {
        if (!out.empty() && out.back().side == p.side && p.along.middle() - first <= kStep) {
            out.back().along.lo = std::min(out.back().along.lo, p.along.lo);
            out.back().along.hi = std::max(out.back().along.hi, p.along.hi);
        } else {
            out.push_back(p);
            first = p.along.middle();
        }
    }
    return out;
}

} // namespace

std::vector<Stretch> stretches(const Plan& plan, const std::string& person) {
    std::vector<Stretch> out;
    std::set<std::pair<std::size_t, int>> seen;
    for (const auto& t : plan.tasks) {
        if (!has(t, person) || t.job < 0 || std::size_t(t.job) >= plan.quilts.size())
            continue;
        const auto quilt = std::size_t(t.job);
        if (out.empty() || out.back().quilt != quilt || out.back().pass != t.pass)
            out.push_back({quilt, t.pass, seen.insert({quilt, t.pass}).second, {}});
        out.back().tasks.push_back(&t);
    }
    return out;
}

int PassPart::placeNumber(const StandingPlace& place) const {
    // Of several that hold it, the one whose middle is nearest.
    int best = 0;
    Length distance;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const Length d = abs(places[i].along.middle() - place.along.middle());
        if (places[i].side == place.side && places[i].along.contains(place.along) &&
            (best == 0 || d < distance)) {
            best = int(i) + 1;
            distance = d;
        }
    }
    return best;
}

std::vector<Span> PassPart::placesInWords() const {
    std::vector<Span> words;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const bool newSide = i == 0 || places[i].side != places[i - 1].side;
        if (i > 0)
            words.push_back({newSide ? Text::tr("; ") : Text::tr(", ")});
        if (newSide)
            words.push_back({Text::tr("%1 side: ").arg(sideName(places[i].side))});
        words.push_back({QString::number(i + 1) + QChar{0x00A0}, true});
        words.push_back({placeEnd(places[i], pass->table)});
    }
    return words;
}

PassPart partOf(const SheetContext& c, const std::string& person, std::size_t quilt, int pass) {
    PassPart part;
    part.quilt = &c.plan.quilts[quilt];
    part.pass = findPass(*part.quilt, pass);
    part.seated = std::ranges::any_of(
        c.session.setting.helpers, [&](const Helper& h) { return h.name == person && h.seated; });
    for (const auto& t : c.plan.tasks) {
        if (t.job != int(quilt) || t.pass != pass || !has(t, person))
            continue;
        if (const auto* place = placeOf(t, person))
            part.places.push_back(*place);
        if (!t.zone.empty() && std::ranges::count(part.zones, t.zone) == 0)
            part.zones.push_back(t.zone);
    }
    part.places = gathered(std::move(part.places));
    return part;
}

const StandingPlace* placeOf(const Task& task, const std::string& person) {
    const auto at = std::size_t(std::ranges::find(task.people, person) - task.people.begin());
    return at < task.places.size() ? &task.places[at] : nullptr;
}

} // namespace bastewright::sheets
