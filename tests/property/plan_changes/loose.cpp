#include "property/plan_changes/loose.h"

#include <algorithm>
#include <array>

namespace bastewright::testing {
namespace {

using enum Loose::How;

constexpr std::string_view kOther = "of a way not taken, whose passes are not in the plan";

constexpr std::array kLoose{
    // Ways not taken: passes.listed holds their figures to each other, to the room and the weight.
    Loose{"/alternatives/*/largest_shift", estimate, "more less much", kOther},
    Loose{"/alternatives/*/shifted", estimate, "more less much", kOther},
    Loose{"/alternatives/*/off_centre/dx", estimate, "more less much", kOther},
    Loose{"/alternatives/*/off_centre/dy", estimate, "more less much", kOther},
    Loose{"/alternatives/*/passes", estimate, "more less much", kOther},
    Loose{"/alternatives/*/pulls", estimate, "more less much", kOther},
    Loose{"/alternatives/*/predicted", estimate, "more less much", kOther},
    Loose{"/alternatives/*/reach", estimate, "more less much", kOther},
    Loose{"/alternatives/*/start", estimate, "other", kOther},
    Loose{"/alternatives/*/quilt_length_along", estimate, "other", kOther},
    Loose{"/alternatives/*/workable", estimate, "other", kOther},
    Loose{"/backing/alternatives/*/direction", estimate, "other", "of a layout not taken"},
    Loose{"/backing/alternatives/*/seams", estimate, "more less much", "of a layout not taken"},
    Loose{"/backing/alternatives/*/waste", estimate, "more less much",
          "of a layout not taken: not below nothing"},
    Loose{"/batting/alternatives/*/joins", estimate, "more much",
          "of a way not taken: just where it has a strip"},
    Loose{"/batting/alternatives/*/strip", estimate, "more less much",
          "of a way not taken: no longer than its joins can be"},
    Loose{"/batting/alternatives/*/piece_strip", estimate, "other", "of a way not taken"},
    Loose{"/batting/alternatives/*/pack", estimate, "other",
          "of a way not taken: one that is sold"},
    // Forecasts and bounds.
    Loose{"/bounds/finish", estimate, "more less much",
          "more than nothing, no later than the finish"},
    Loose{"/bounds/passes", estimate, "more less", "one at least, no more than the passes"},
    Loose{"/finish_range/early", estimate, "more less", "crew.range"},
    Loose{"/finish_range/middle", estimate, "more less", "crew.range"},
    Loose{"/finish_range/late", estimate, "more less", "crew.range"},
    Loose{"/help/*/saved", estimate, "more less much", "ranked; a minute to the finish"},
    Loose{"/help/*/passes_saved", estimate, "more less much", "fewer than all"},
    Loose{"/help/*/kind", estimate, "other", "one that the session leaves room for, each once"},
    Loose{"/rows/gap", estimate, "more less", "where rows had to move: one that is there often"},
    Loose{"/rows/step", estimate, "more less", "where points had to move: one that is there often"},
    // Who does what from where: any that keep every rule serve as well.
    Loose{"/tasks/*/places", estimate, "twice without",
          "in a plan that says it cannot be carried out: places are not held", true},
    Loose{"/tasks/*/people/*", estimate, "other", "somebody who may, is there and reaches"},
    Loose{"/tasks/*/people", estimate, "without moved",
          "of a team, in no order: as many as the rules ask for"},
    Loose{"/tasks/*/places/*/from", estimate, "more less much",
          "of work at somebody else's zone: in reach, in nobody's way, wide enough"},
    Loose{"/tasks/*/places/*/to", estimate, "more less much",
          "of work at somebody else's zone: in reach, in nobody's way, wide enough"},
    Loose{"/tasks/*/places/*/side", estimate, "other",
          "of work at somebody else's zone: in reach, in nobody's way, wide enough"},
    Loose{"/tasks/*/start", estimate, "more", "of a step whose time is shared, before a break"},
    Loose{"/tasks/*/end", estimate, "more less", "of a step whose time is shared, before a break"},
    Loose{"/passes/*/stretches/*/person", estimate, "other", "two who share a place's zones"},
    Loose{"/breaks/*/people/*", estimate, "other", "somebody who has nothing to do then"},
    Loose{"/breaks/*/people", estimate, "moved without", "whose it is, in no order"},
    Loose{"/batting/pieces/*/name", estimate, "other",
          "another leftover that it can be cut from, as often as that is there"},
    Loose{"/batting/splits/*/at", estimate, "more less", "between the parts that are cut"},
    // Texts: each is made by a sentence of the file, goes with its kind and is said once.
    Loose{"/alternatives/*/why", estimate, "other", "a reason that another way has too"},
    Loose{"/backing/alternatives/*/wanted", estimate, "other", "what another way wants"},
    Loose{"/batting/alternatives/*/text", estimate, "other", "a sentence of another quilt, too"},
    Loose{"/batting/join_cost", estimate, "other", "that of another quilt"},
    Loose{"/supplies/*/note", estimate, "other", "the sentence of another that is bought"},
    Loose{"/findings/*/quilt", estimate, "less", "another quilt that it is true of as well"},
    Loose{"/findings/*/cure", estimate, "other", "the cure of another finding"},
    Loose{"/backing/least_bought", estimate, "other", "that of another quilt"},
    Loose{"/backing/runner_up", estimate, "other", "that of another quilt"},
    Loose{"/backing/nearest_miss", estimate, "other", "that of another quilt"},
    Loose{"/backing/alternatives/*/text", estimate, "other", "a sentence of another quilt, too"},
    Loose{"/findings/*/kind", estimate, "other", "another of its form that is true as well"},
    Loose{"/findings/*/figures/*", estimate, "more less much",
          "how many clips would do instead of folding"},
    Loose{"/batting/to_bring/*", estimate, "other", "another thing to bring"},
    Loose{"/backing/to_bring/*", estimate, "other", "another thing to bring"},
    Loose{"/sentences", estimate, "without", "one that reads as another does"},
    // Lists in no order.
    Loose{"/alternatives", order, "moved without", "ways that are as long"},
    Loose{"/backing/alternatives", order, "moved", "what people would sew comes first"},
    Loose{"/backing/panels", order, "moved", "numbers appear in turn"},
    Loose{"/backing/to_bring", order, "moved", "one for each fabric"},
    Loose{"/batting/to_bring", order, "moved", "one for each thing"},
    Loose{"/batting/alternatives", order, "moved without",
          "the chosen one comes first; another quilt has one that reads the same"},
    Loose{"/batting/pieces", order, "moved", "leftovers are named by the job"},
    Loose{"/batting/joins", order, "moved", "of joins that do not need each other"},
    Loose{"/batting/splits", order, "moved", "of different leftovers"},
    Loose{"/findings", order, "moved without",
          "graver ones come first; a note that reads as another quilt's"},
    Loose{"/findings/*/figures", order, "moved", "equal ones"},
    Loose{"/help", order, "moved", "equal ones"},
    Loose{"/breaks", order, "moved without", "at one time; one that comes sooner than it has to"},
    Loose{"/supplies", order, "moved", "of one kind and size"},
    Loose{"/passes/*/rolls", order, "moved", "one a side"},
    Loose{"/passes/*/fresh", order, "moved", "parts of one area"},
    Loose{"/passes/*/stretches/*/edges", order, "moved", "one a side"},
    Loose{"/tasks/*/after", order, "moved", "all of the call before"},
    Loose{"/blocks/in_block", order, "moved", "a figure"},
    Loose{"/blocks/edges", order, "moved", "one a side, or more"},
    Loose{"/blocks/edges/*/places", order, "moved", "points of a line"},
    Loose{"/blocks/left_out", order, "moved", "places"},
    Loose{"/blocks/singles", order, "moved", "places"},
    // Not held.
    Loose{"/findings/*/field", free, "other added",
          "where a screen leads; findings are told apart by kind, quilt and subject"},
    Loose{"/batting/left_over", free, "without twice moved",
          "names and sizes for people; kept as it is"},
    Loose{"/batting/left_over/*", free, "other", "names and sizes for people; kept as it is"},
    Loose{"/tasks/*/id", free, "added", "a name; held where another task waits for it"},
};

} // namespace

std::span<const Loose> looseFields() {
    return kLoose;
}

bool mayPass(std::string_view path, Change change, bool stopped) {
    return std::ranges::any_of(kLoose, [&](const Loose& l) {
        return l.path == path && (stopped || !l.onlyStopped) &&
               l.changes.find(name(change)) != std::string_view::npos;
    });
}

} // namespace bastewright::testing
