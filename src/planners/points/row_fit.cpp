#include "planners/points/row_fit.h"

#include "planners/points/holes.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace bastewright::points {
namespace {

/// Rows on each side whose pins may reach as far as those of a row.
constexpr std::size_t kRowsNear = 2;

FittedRow::const_iterator firstFrom(const FittedRow& row, double x) {
    return std::lower_bound(row.begin(), row.end(), x,
                            [](const FittedPin& p, double v) { return p.at.x < v; });
}

} // namespace

RowFit::RowFit(const Rules& rules, const RowFrame& frame, ClearPlaces& places)
    : rules_{rules}
    , frame_{frame}
    , places_{places}
    , field_{frame.field()} {}

bool RowFit::tooNear(std::size_t row, Spot at, const FittedPin* own) const {
    const double gap2 = squared(rules_.gap - 1e-7);
    const std::size_t last = std::min(rows_.size(), row + kRowsNear + 1);
    for (std::size_t r = row - std::min(row, kRowsNear); r < last; ++r)
        for (auto p = firstFrom(rows_[r], at.x - rules_.gap);
             p != rows_[r].end() && p->at.x < at.x + rules_.gap; ++p)
            if (&*p != own && distanceSquared(p->at, at) < gap2)
                return true;
    return false;
}

FittedPin RowFit::placed(int mark, int row) const {
    const bool across = frame_.along() == PinRows::Along::width;
    const auto found = across ? places_.nearest(mark, row) : places_.nearest(row, mark);
    return {mark, frame_.fromTop(found.at), found.clear};
}

void RowFit::layRow(const RowChoice& choice, std::size_t row) {
    FittedRow& pins = rows_[row];
    pins.clear();
    for (const int mark : choice.marksOf(row)) {
        const FittedPin pin = placed(mark, choice.rows[row]);
        if (!rules_.pin.seamless() && tooNear(row, pin.at, nullptr))
            continue;
        // Nearly always at the end.
        auto at = pins.end();
        while (at != pins.begin() && std::prev(at)->at.x > pin.at.x)
            --at;
        pins.insert(at, pin);
    }
}

void RowFit::gather(std::size_t row, Spot at) {
    near_.clear();
    const double reach = 2 * rules_.radius;
    const std::size_t last = std::min(rows_.size(), row + kRowsNear + 1);
    for (std::size_t r = row - std::min(row, kRowsNear); r < last; ++r)
        for (auto p = firstFrom(rows_[r], at.x - reach);
             p != rows_[r].end() && p->at.x <= at.x + reach; ++p)
            if (distanceSquared(p->at, at) <= reach * reach)
                near_.push_back(&*p);
}

void RowFit::corner(const Field& part, Spot at, const FittedPin* other) {
    if (!part.contains(at, 1e-9))
        return;
    const double r2 = squared(rules_.radius - kCoverSlack);
    for (const FittedPin* q : near_)
        if (q != other && distanceSquared(q->at, at) <= r2)
            return;
    found_.push_back(at);
}

void RowFit::look(const Field& part, std::size_t row, int most) {
    const double r = rules_.radius;
    const Field around = part.grown(r);
    const FittedRow& pins = rows_[row];
    for (auto p = firstFrom(pins, around.x0); p != pins.end() && p->at.x <= around.x1; ++p) {
        if (!around.contains(p->at))
            continue;
        gather(row, p->at);
        std::erase(near_, &*p);
        for (const FittedPin* q : near_) {
            if (q->at.y < p->at.y || (q->at.y == p->at.y && q->at.x < p->at.x))
                continue; // its own turn
            const Spot d = q->at - p->at;
            const double d2 = dot(d, d);
            if (d2 <= 0)
                continue;
            const double h = std::sqrt(std::max(0.0, r * r / d2 - 0.25));
            const Spot middle = 0.5 * (p->at + q->at);
            corner(part, {middle.x - d.y * h, middle.y + d.x * h}, q);
            corner(part, {middle.x + d.y * h, middle.y - d.x * h}, q);
        }
        for (const double x : {field_.x0, field_.x1})
            if (const double h2 = r * r - squared(x - p->at.x); h2 >= 0)
                for (const double h : {std::sqrt(h2), -std::sqrt(h2)})
                    corner(part, {x, p->at.y + h}, nullptr);
        for (const double y : {field_.y0, field_.y1})
            if (const double h2 = r * r - squared(y - p->at.y); h2 >= 0)
                for (const double h : {std::sqrt(h2), -std::sqrt(h2)})
                    corner(part, {p->at.x + h, y}, nullptr);
        if (std::ssize(found_) > most)
            return;
    }
}

void RowFit::lookAtCorners(const Field& part) {
    for (const double x : {field_.x0, field_.x1})
        for (const double y : {field_.y0, field_.y1})
            if (part.contains({x, y})) {
                gather(y == field_.y0 ? 0 : rows_.size() - 1, {x, y});
                corner(part, {x, y}, nullptr);
            }
}

int RowFit::lay(const RowChoice& choice, int most) {
    found_.clear();
    rows_.resize(choice.rows.size());
    for (FittedRow& row : rows_)
        row.clear();
    for (std::size_t i = 0; i < choice.rows.size() + kRowsNear && std::ssize(found_) <= most; ++i) {
        if (i < choice.rows.size())
            layRow(choice, i);
        if (i >= kRowsNear) // what is beyond is laid by now
            look(field_, i - kRowsNear, most);
    }
    lookAtCorners(field_);
    bare_ = found_;
    return int(bare_.size());
}

Spots RowFit::bareIn(const Field& part, int most) {
    found_.clear();
    lookAtCorners(part);
    // A pin lies beside its row by less than a spacing.
    const Field around = part.grown(rules_.radius + rules_.spacing);
    for (std::size_t row = 0; row < rows_.size() && std::ssize(found_) <= most; ++row)
        if (!rows_[row].empty() && rows_[row].front().at.y > around.y0 &&
            rows_[row].front().at.y < around.y1)
            look(part, row, most);
    return found_;
}

std::size_t RowFit::pins() const {
    std::size_t n = 0;
    for (const FittedRow& row : rows_)
        n += row.size();
    return n;
}

} // namespace bastewright::points
