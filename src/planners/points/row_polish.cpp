#include "planners/points/row_polish.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {
namespace {

constexpr int kFarthest = 4; ///< raster steps of one shift
constexpr double kHot = 0.8; ///< share of the shifts in which there is heat

/// True where a number may be moved without coming nearer than `gap` to its neighbours or beyond
/// the first or last.
bool mayMove(const std::vector<int>& of, std::size_t i, int by, int gap, int first, int last) {
    const int to = of[i] + by;
    return to >= first && to <= last && (i == 0 || to - of[i - 1] >= gap) &&
           (i + 1 == of.size() || of[i + 1] - to >= gap);
}

/// One of the two numbers beside a place.
std::size_t besides(const std::vector<int>& of, double at, bool above) {
    const auto it = std::lower_bound(of.begin(), of.end(), at);
    const auto i = std::min(std::size_t(it - of.begin()), of.size() - 1);
    return above || i == 0 ? i : i - 1;
}

/// They nearly are.
void putInOrder(FittedRow& row) {
    for (std::size_t i = 1; i < row.size(); ++i)
        for (std::size_t k = i; k > 0 && row[k].at.x < row[k - 1].at.x; --k)
            std::swap(row[k], row[k - 1]);
}

/// A number of the exponential distribution with mean 1, by comparisons alone, so that no library's
/// logarithm decides (von Neumann, NBS Applied Mathematics Series 12, 1951).
double exponential(Dice& dice) {
    const auto even = [&] { return double(dice.roll() >> 11) * 0x1p-53; };
    for (int whole = 0;; ++whole) {
        const double first = even();
        double last = first;
        for (int falling = 1;; ++falling) {
            const double next = even();
            if (next < last) {
                last = next;
                continue;
            }
            if (falling % 2 == 1)
                return whole + first;
            break;
        }
    }
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
    , gap_{std::max(1, int(std::ceil(rules.gap / frame.fine() - 1e-9)))}
    , first_{int(std::ceil(rules.pin.edge() / frame.fine() - 1e-6))} {}

int RowPolish::last(double size) const {
    return int(std::floor((size - rules_.pin.edge()) / frame_.fine() + 1e-6));
}

void RowPolish::takeBack() {
    for (auto c = changed_.rbegin(); c != changed_.rend(); ++c)
        fit_.exchange(c->row, c->before);
}

bool RowPolish::isGood(const Field& moved) {
    const Field f = frame_.field(), grown = moved.grown(rules_.radius);
    const Field part{std::max(f.x0, grown.x0), std::max(f.y0, grown.y0), std::min(f.x1, grown.x1),
                     std::min(f.y1, grown.y1)};
    const auto inside = [&](const BareCorner& b) { return part.contains(b.at, 1e-9); };
    double before = 0, now = 0;
    for (const BareCorner& b : bare_)
        before += inside(b) ? b.cost : 0;
    const double most = before + worse_ + 1e-9;
    const std::vector<BareCorner>& after = fit_.bareIn(part, most);
    for (const BareCorner& b : after)
        now += b.cost;
    if (now > most)
        return false;
    std::erase_if(bare_, inside);
    bare_.insert(bare_.end(), after.begin(), after.end());
    return true;
}

bool RowPolish::layRowAt(const RowChoice& choice, std::size_t row, int at, Field& part) {
    FittedRow next;
    for (const int mark : choice.marksOf(row))
        next.push_back(fit_.placed(mark, at));
    putInOrder(next);
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
    putInOrder(next);
    changed_.push_back({row, std::move(next)});
    fit_.exchange(row, changed_.back().before);
    return !fit_.tooNear(row, at, &*std::ranges::find(fit_.rows()[row], to, &FittedPin::mark));
}

void RowPolish::shiftRow(RowChoice& choice, std::size_t row, int by) {
    if (!mayMove(choice.rows, row, by, gap_, first_, last(frame_.down())))
        return;
    changed_.clear();
    Field part{1e9, 1e9, -1e9, -1e9};
    if (layRowAt(choice, row, choice.rows[row] + by, part) && isGood(part))
        choice.rows[row] += by;
    else
        takeBack();
}

void RowPolish::shiftMark(RowChoice& choice, bool odd, std::size_t mark, int by) {
    auto& marks = odd ? choice.marks.odd : choice.marks.even;
    if (!mayMove(marks, mark, by, gap_, first_, last(frame_.across())))
        return;
    changed_.clear();
    Field part{1e9, 1e9, -1e9, -1e9};
    bool good = true;
    for (std::size_t row = odd ? 0 : 1; good && row < choice.rows.size(); row += 2)
        good = layMarkAt(choice, row, marks[mark], marks[mark] + by, part);
    if (good && isGood(part))
        marks[mark] += by;
    else
        takeBack();
}

int RowPolish::polish(RowChoice& choice, Effort effort, Dice& dice, std::stop_token stop) {
    fit_.lay(choice);
    bare_ = fit_.bare();
    const double fine = frame_.fine();
    for (int i = 0; i < effort.shifts && !bare_.empty() && !stop.stop_requested(); ++i) {
        const double heat = effort.heat * (1 - i / (kHot * effort.shifts));
        worse_ = heat > 0 ? heat * exponential(dice) : 0;
        const Spot bare = bare_[dice.below(bare_.size())].at;
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
    return fit_.lay(choice);
}

} // namespace bastewright::points
