#include "planners/points/row_fit.h"

#include "planners/points/holes.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {
namespace {

/// Rows on each side whose pins may reach as far as those of a row.
constexpr std::size_t kRowsNear = 2;
constexpr std::size_t kNobody = std::numeric_limits<std::size_t>::max();
constexpr double kAnyCost = std::numeric_limits<double>::max();
/// Inches; see `BareCorner`.
constexpr double kCornerCost = 0.5, kMostOut = 1;
/// Bare corners lie about evenly: after a share of the rows, so much of them is looked for.
constexpr double kEarly = 0.2, kSteep = 1.1;

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

void RowFit::gatherFrom(std::size_t row, double x) {
    ahead_.clear();
    const auto add = [&](std::size_t r) {
        ahead_.push_back({firstFrom(rows_[r], x - 2 * rules_.radius), rows_[r].cend()});
    };
    // Those that hold most corners first.
    add(row);
    for (std::size_t away = 1; away <= kRowsNear; ++away) {
        if (row >= away)
            add(row - away);
        if (row + away < rows_.size())
            add(row + away);
    }
}

/// Places must follow each other from left to right.
void RowFit::gather(Spot at, const FittedPin* own) {
    near_.clear();
    const double reach = 2 * rules_.radius, reach2 = squared(reach);
    for (auto& [from, end] : ahead_) {
        while (from != end && from->at.x < at.x - reach)
            ++from;
        for (auto p = from; p != end && p->at.x <= at.x + reach; ++p)
            if (&*p != own && distanceSquared(p->at, at) <= reach2)
                near_.push_back(p->at);
    }
}

void RowFit::corner(const Field& part, Spot at, std::size_t other) {
    if (!part.contains(at, 1e-9))
        return;
    const double r2 = squared(rules_.radius - kCoverSlack);
    if (holder_ < near_.size() && holder_ != other && distanceSquared(near_[holder_], at) <= r2)
        return;
    double nearest2 = squared(rules_.radius + kMostOut);
    for (std::size_t i = 0; i < near_.size(); ++i) {
        if (i == other)
            continue;
        const double d2 = distanceSquared(near_[i], at);
        if (d2 <= r2) {
            holder_ = i;
            return;
        }
        nearest2 = std::min(nearest2, d2);
    }
    found_.push_back({at, kCornerCost + std::sqrt(nearest2) - rules_.radius});
    cost_ += found_.back().cost;
}

void RowFit::look(const Field& part, std::size_t row, double most) {
    const double r = rules_.radius;
    const Field around = part.grown(r);
    const FittedRow& pins = rows_[row];
    gatherFrom(row, around.x0);
    for (auto p = firstFrom(pins, around.x0); p != pins.end() && p->at.x <= around.x1; ++p) {
        const Spot own = p->at;
        if (!around.contains(own))
            continue;
        gather(own, &*p);
        for (std::size_t i = 0; i < near_.size(); ++i) {
            const Spot q = near_[i];
            if (q.y < own.y || (q.y == own.y && q.x < own.x))
                continue; // its own turn
            const Spot d = q - own;
            const double h = std::sqrt(std::max(0.0, r * r / dot(d, d) - 0.25));
            const Spot middle = 0.5 * (own + q);
            corner(part, {middle.x - d.y * h, middle.y + d.x * h}, i);
            corner(part, {middle.x + d.y * h, middle.y - d.x * h}, i);
        }
        for (const double x : {field_.x0, field_.x1})
            if (const double h2 = r * r - squared(x - own.x); h2 >= 0)
                for (const double h : {std::sqrt(h2), -std::sqrt(h2)})
                    corner(part, {x, own.y + h}, kNobody);
        for (const double y : {field_.y0, field_.y1})
            if (const double h2 = r * r - squared(y - own.y); h2 >= 0)
                for (const double h : {std::sqrt(h2), -std::sqrt(h2)})
                    corner(part, {own.x + h, y}, kNobody);
        if (cost_ > most)
            return;
    }
}

void RowFit::lookAtCorners(const Field& part) {
    for (const double x : {field_.x0, field_.x1})
        for (const double y : {field_.y0, field_.y1})
            if (part.contains({x, y})) {
                gatherFrom(y == field_.y0 ? 0 : rows_.size() - 1, x);
                gather({x, y}, nullptr);
                corner(part, {x, y}, kNobody);
            }
}

int RowFit::lay(const RowChoice& choice, int most) {
    found_.clear();
    cost_ = 0;
    const std::size_t count = choice.rows.size();
    rows_.resize(count);
    for (FittedRow& row : rows_)
        row.clear();
    for (std::size_t i = 0; i < count + kRowsNear; ++i) {
        const double share = std::min(1.0, kEarly + kSteep * double(i) / double(count));
        if (double(found_.size()) > share * most)
            return kTooMany;
        if (i < count)
            layRow(choice, i);
        if (i >= kRowsNear) // what is beyond is laid by now
            look(field_, i - kRowsNear, kAnyCost);
    }
    lookAtCorners(field_);
    bare_ = found_;
    return int(bare_.size());
}

const std::vector<BareCorner>& RowFit::bareIn(const Field& part, double most) {
    found_.clear();
    cost_ = 0;
    lookAtCorners(part);
    // A pin lies beside its row by less than a spacing.
    const Field around = part.grown(rules_.radius + rules_.spacing);
    for (std::size_t row = 0; row < rows_.size() && cost_ <= most; ++row)
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
