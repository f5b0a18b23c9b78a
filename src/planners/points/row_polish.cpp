#include "planners/points/row_polish.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace bastewright::points {
namespace {

constexpr int kFarthest = 4; ///< raster steps of one shift
constexpr int kAny = std::numeric_limits<int>::max();

/// True where a number may be moved without coming nearer than `gap` to its neighbours or beyond an
/// end.
bool mayMove(const std::vector<int>& of, std::size_t i, int by, int gap, int last) {
    const int to = of[i] + by;
    return to >= 0 && to <= last && (i == 0 || to - of[i - 1] >= gap) &&
           (i + 1 == of.size() || of[i + 1] - to >= gap);
}

/// One of the two numbers beside a place.
std::size_t besides(const std::vector<int>& of, double at, bool above) {
    const auto it = std::lower_bound(of.begin(), of.end(), at);
    const auto i = std::min(std::size_t(it - of.begin()), of.size() - 1);
    return above || i == 0 ? i : i - 1;
}

void take(Field& part, Spot at) {
    part = {std::min(part.x0, at.x), std::min(part.y0, at.y), std::max(part.x1, at.x),
            std::max(part.y1, at.y)};
}

} // namespace

RowPolish::RowPolish(const Rules& rules, const RowFrame& frame, ClearPlaces& places)
    : rules_{rules}
    , frame_{frame}
    , fit_{rules, frame, places}
    , gap_{std::max(1, int(std::ceil(rules.gap / frame.fine() - 1e-9)))} {}

void RowPolish::takeBack() {
    for (auto c = changed_.rbegin(); c != changed_.rend(); ++c)
        fit_.exchange(c->row, c->before);
}

bool RowPolish::isBetter(const Field& moved) {
    const Field f = frame_.field(), grown = moved.grown(rules_.radius);
    const Field part{std::max(f.x0, grown.x0), std::max(f.y0, grown.y0), std::min(f.x1, grown.x1),
                     std::min(f.y1, grown.y1)};
    const auto before =
        std::ranges::count_if(bare_, [&](Spot s) { return part.contains(s, 1e-9); });
    const Spots after = fit_.bareIn(part, int(before));
    if (std::ssize(after) > before)
        return false;
    std::erase_if(bare_, [&](Spot s) { return part.contains(s, 1e-9); });
    bare_.insert(bare_.end(), after.begin(), after.end());
    return true;
}

bool RowPolish::layRowAt(const RowChoice& choice, std::size_t row, int at, Field& part) {
    FittedRow next;
    for (const int mark : choice.marksOf(row))
        next.push_back(fit_.placed(mark, at));
    std::ranges::stable_sort(next, {}, [](const FittedPin& p) { return p.at.x; });
    for (const FittedPin& p : fit_.rows()[row])
        take(part, p.at);
    changed_.push_back({row, std::move(next)});
    fit_.exchange(row, changed_.back().before);
    for (const FittedPin& p : fit_.rows()[row]) {
        take(part, p.at);
        if (fit_.tooNear(row, p.at, &p))
            return false;
    }
    return true;
}

bool RowPolish::layMarkAt(const RowChoice& choice, std::size_t row, int mark, int to, Field& part) {
    FittedRow next = fit_.rows()[row];
    auto pin = std::ranges::find(next, mark, &FittedPin::mark);
    if (pin == next.end())
        return false;
    take(part, pin->at);
    *pin = fit_.placed(to, choice.rows[row]);
    take(part, pin->at);
    const Spot at = pin->at;
    std::ranges::stable_sort(next, {}, [](const FittedPin& p) { return p.at.x; });
    changed_.push_back({row, std::move(next)});
    fit_.exchange(row, changed_.back().before);
    return !fit_.tooNear(row, at, &*std::ranges::find(fit_.rows()[row], to, &FittedPin::mark));
}

void RowPolish::shiftRow(RowChoice& choice, std::size_t row, int by) {
    if (!mayMove(choice.rows, row, by, gap_, int(frame_.down() / frame_.fine())))
        return;
    changed_.clear();
    Field part{1e9, 1e9, -1e9, -1e9};
    if (layRowAt(choice, row, choice.rows[row] + by, part) && isBetter(part))
        choice.rows[row] += by;
    else
        takeBack();
}

void RowPolish::shiftMark(RowChoice& choice, bool odd, std::size_t mark, int by) {
    auto& marks = odd ? choice.marks.odd : choice.marks.even;
    if (!mayMove(marks, mark, by, gap_, int(frame_.across() / frame_.fine())))
        return;
    changed_.clear();
    Field part{1e9, 1e9, -1e9, -1e9};
    bool good = true;
    for (std::size_t row = odd ? 0 : 1; good && row < choice.rows.size(); row += 2)
        good = layMarkAt(choice, row, marks[mark], marks[mark] + by, part);
    if (good && isBetter(part))
        marks[mark] += by;
    else
        takeBack();
}

int RowPolish::polish(RowChoice& choice, int shifts, Dice& dice, std::stop_token stop) {
    fit_.lay(choice, kAny);
    bare_ = fit_.bare();
    for (int i = 0; i < shifts && !bare_.empty() && !stop.stop_requested(); ++i) {
        const Spot bare = bare_[dice.below(bare_.size())];
        const double fine = frame_.fine();
        const int by = (int(dice.below(kFarthest)) + 1) * (dice.below(2) == 0 ? 1 : -1);
        const bool above = dice.below(2) == 0;
        if (dice.below(2) == 0) {
            shiftRow(choice, besides(choice.rows, bare.y / fine, above), by);
            continue;
        }
        const bool odd = dice.below(2) == 0;
        const auto& marks = odd ? choice.marks.odd : choice.marks.even;
        shiftMark(choice, odd, besides(marks, bare.x / fine, above), by);
    }
    return fit_.lay(choice, kAny);
}

} // namespace bastewright::points
