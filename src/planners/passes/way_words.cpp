#include "planners/passes/way_words.h"

#include "planners/passes/deep.h"
#include "planners/surface/reachable.h"

#include <algorithm>

namespace bastewright {
namespace {

/// How far the middle of the table lies beyond what the longest arms reach without leaning.
Length leantFor(const PassRequest& request, const PassChoice& choice) {
    const Length comfortable = easyReach(request.setting.helpers);
    const Rect middle =
        outOfReach({{}, {}, choice.lie.x.size, choice.lie.y.size}, choice.lie.closed, comfortable);
    return choice.summary.reach > comfortable ? std::min(middle.width(), middle.length())
                                              : Length{};
}

/// "4 in to the left and 2 in towards the foot": where the quilt's middle lies beside the table's.
Sentence beside(Vec off, Unit unit) {
    const Sentence dx = core::length(abs(off.dx), unit), dy = core::length(abs(off.dy), unit);
    const Sentence across =
        off.dx < Length{} ? core::says("%1 to the right", dx) : core::says("%1 to the left", dx);
    const Sentence along = off.dy < Length{} ? core::says("%1 toward the foot", dy)
                                             : core::says("%1 toward the head", dy);
    if (off.dx != Length{} && off.dy != Length{})
        return core::says("%1 and %2", across, along);
    return off.dx == Length{} ? along : across;
}

} // namespace

Sentence unworkable(const PassRequest& request, const PassChoice& choice) {
    const Unit unit = request.job.unit;
    const Rect table{{}, {}, choice.lie.x.size, choice.lie.y.size};
    if (choice.lie.closed.size() == kSides.size())
        return core::says("no side of it is open");
    if (!tooDeep(choice.lie).empty() ||
        outOfReach(table, choice.lie.closed, choice.lie.reach) == table)
        return core::says("only the part within a reach of %1 can be worked, too little to shift "
                          "the quilt along in %2 passes",
                          core::length(choice.lie.reach, unit), kMostPasses);
    return core::says("too little of it is inside the rim to shift the quilt along in %1 passes",
                      kMostPasses);
}

Sentence remarks(const PassRequest& request, const PassChoice& choice) {
    const Unit unit = request.job.unit;
    Sentences all;
    const Alternative& a = choice.summary;
    if (a.passes > 1 && choice.start == Basting::Start::besideMiddle && a.offCentre != Vec{})
        all.push_back(
            core::says("first lay the quilt's middle %1 of the table's middle, seen from the foot",
                       beside(a.offCentre, unit)));
    if (a.passes > 1 && choice.start == Basting::Start::oneEnd)
        all.push_back(core::says("from one end: the layers are rolled on boards or tubes and "
                                 "unrolled as the work goes; good for small tables and for people "
                                 "who sit, but all the slack is smoothed to one end"));
    if (!tooDeep(choice.lie).empty())
        all.push_back(
            core::says("nobody reaches the middle of the table: each pass bastes along its "
                       "sides only, until all of the quilt has been there"));
    else if (a.pulls > 0)
        all.push_back(
            core::says("what nobody reaches is basted after the quilt has been pulled across the "
                       "table as it is held"));
    if (const Length leant = leantFor(request, choice); leant > Length{} && a.pulls == 0)
        all.push_back(core::says("the middle %1 of the table is far to reach: lean over",
                                 core::length(leant, unit)));
    if (all.empty())
        return {};
    Sentence out = all.front();
    for (std::size_t i = 1; i < all.size(); ++i)
        out = core::says("%1; %2", out, all[i]);
    return out;
}

} // namespace bastewright
