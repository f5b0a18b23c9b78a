#include "view/plan/room_board.h"

#include "view/base/people_palette.h"
#include "view/base/words.h"

#include <algorithm>
#include <cmath>
#include <numeric>

using namespace bastewright;

namespace {

constexpr qreal kAisle = 24;   // inches between those pushed together and the others
constexpr qreal kNear = 12;    // nearer than that a table is pushed to the others
constexpr qreal kMost = 1000;  // wider than any table
constexpr qreal kBetween = 10; // inches between tables that stand apart

QRectF inches(const Rect& r) {
    return {r.x0.in(), r.y0.in(), r.width().in(), r.length().in()};
}

/// The quilt as it lies on the drawn surface: with its length along it the head is at the left.
QRectF lying(const QuiltPlan& plan) {
    if (plan.passes.empty() || plan.surface.floor)
        return {};
    const Rect& table = plan.passes.front().table;
    const double w = plan.layers.top.width.in(), l = plan.layers.top.length.in();
    const double x = table.x0.in(), y = table.y0.in();
    if (!plan.surface.quiltLengthAlongLength)
        return {-x, -y, w, l};
    return {-y, table.width().in() + x - w, l, w};
}

/// How many tables of each size, whichever row of the list they come from.
std::vector<int> bySize(const std::vector<Table>& tables, const std::vector<int>& kinds) {
    std::vector<int> out(tables.size(), 0);
    for (std::size_t i = 0; i < tables.size(); ++i) {
        const auto first = std::ranges::find_if(tables, [&](const Table& t) {
            return t.length == tables[i].length && t.width == tables[i].width;
        });
        out[std::size_t(first - tables.begin())] += kinds[i];
    }
    return out;
}

/// Moved flush against the rectangle on the side it lies nearest to.
QRectF flush(QRectF table, const QRectF& others) {
    const qreal right = std::abs(table.left() - others.right());
    const qreal left = std::abs(table.right() - others.left());
    const qreal below = std::abs(table.top() - others.bottom());
    const qreal above = std::abs(table.bottom() - others.top());
    const qreal least = std::min({right, left, below, above});
    if (least == right || least == left) {
        table.moveTop(others.top());
        least == right ? table.moveLeft(others.right()) : table.moveRight(others.left());
    } else {
        table.moveLeft(others.left());
        least == below ? table.moveTop(others.bottom()) : table.moveBottom(others.top());
    }
    return table;
}

qreal gap(const QRectF& a, const QRectF& b) {
    const qreal x = std::max({0.0, b.left() - a.right(), a.left() - b.right()});
    const qreal y = std::max({0.0, b.top() - a.bottom(), a.top() - b.bottom()});
    return std::hypot(x, y);
}

} // namespace

RoomBoard::RoomBoard(JobEditor* editor, PlanPresenter* plan, QObject* parent)
    : QObject{parent}
    , editor_{editor}
    , plan_{plan}
    , rows_{{"atX", "atY", "wide", "deep", "apart", "size"}}
    , people_{{"letter", "mark", "name", "side", "order", "beside"}} {
    const auto anew = [this] {
        problem_.clear();
        refresh();
    };
    connect(editor_, &JobEditor::changed, this, anew);
    connect(plan_, &PlanPresenter::changed, this, &RoomBoard::refresh);
    refresh();
}

const Arrangement* RoomBoard::standing() const {
    const auto of = [&](Length length, Length width) -> const Arrangement* {
        const auto at = std::ranges::find_if(
            all_, [&](const Arrangement& a) { return a.length == length && a.width == width; });
        return at == all_.end() ? nullptr : &*at;
    };
    // What was asked for, as long as it can be worked at; else what is planned.
    const QuiltPlan* plan = plan_->quilt().plan();
    const bool current = plan && !plan_->busy() && !plan->passes.empty() && !plan->surface.floor;
    if (const auto& asked = room().together; asked && !current)
        if (const auto* found = of(asked->length, asked->width))
            return found;
    // What was planned for other tables says nothing of these.
    const bool these =
        plan_->isPlanned() && plan_->planned()->session.setting.room.tables == room().tables;
    if (plan && these && !plan->surface.floor)
        if (const auto* found = of(plan->surface.length, plan->surface.width))
            return found;
    // Until there is a plan: as many as can be, as square as they go.
    const auto best = std::ranges::max_element(all_, {}, [](const Arrangement& a) {
        return std::pair{a.length.in() * a.width.in(), a.width};
    });
    return best == all_.end() ? nullptr : &*best;
}

void RoomBoard::refresh() {
    if (all_.empty() || seen_.tables != room().tables) {
        seen_ = room();
        all_ = arrangements(seen_.tables);
    }
    standing_.clear();
    surface_ = quilt_ = {};
    title_ = onFloor() ? tr("On the floor") : QString{};
    if (const Arrangement* chosen = standing())
        layOut(*chosen);
    const Unit unit = editor_->unit();
    QList<QVariantList> rows;
    extent_ = surface_.united(quilt_);
    narrowest_ = standing_.empty() ? 1 : kMost;
    for (const Standing& s : standing_) {
        extent_ = extent_.united(s.place);
        narrowest_ =
            std::min({narrowest_, s.place.width(), s.place.height(), s.apart ? kAisle : kMost});
        const Table& t = room().tables[s.kind];
        rows.push_back({s.place.x(), s.place.y(), s.place.width(), s.place.height(), s.apart,
                        words::size({t.length, t.width}, unit)});
    }
    rows_.setRows(std::move(rows));
    showPeople();
    emit changed();
}

void RoomBoard::layOut(const Arrangement& chosen) {
    const Unit unit = editor_->unit();
    title_ = tr("%1, %2").arg(words::fromCore(chosen.name),
                              words::size({chosen.length, chosen.width}, unit));
    surface_ = {0, 0, chosen.length.in(), chosen.width.in()};
    const QuiltPlan* plan = plan_->quilt().plan();
    if (plan && plan->surface.length == chosen.length && plan->surface.width == chosen.width)
        quilt_ = lying(*plan);
    auto left = chosen.used;
    for (const Rect& r : chosen.tables)
        for (std::size_t k = 0; k < room().tables.size(); ++k) {
            const Table& t = room().tables[k];
            const bool fits = std::minmax(t.length, t.width) == std::minmax(r.width(), r.length());
            if (fits && left[k] > 0) {
                --left[k];
                standing_.push_back({inches(r), k, false});
                break;
            }
        }
    qreal x = 0, y = surface_.united(quilt_).bottom() + kAisle, deepest = 0;
    const qreal end = std::max(surface_.united(quilt_).right(), 150.0);
    for (std::size_t k = 0; k < room().tables.size(); ++k)
        for (int n = room().tables[k].count - chosen.used[k]; n > 0; --n) {
            const Table& t = room().tables[k];
            if (x > 0 && x + t.length.in() > end) {
                x = 0;
                y += deepest + kBetween;
                deepest = 0;
            }
            standing_.push_back({{x, y, t.length.in(), t.width.in()}, k, true});
            x += t.length.in() + kBetween;
            deepest = std::max(deepest, t.width.in());
        }
}

void RoomBoard::showPeople() {
    const auto& helpers = editor_->session().setting.helpers;
    const auto names = people::names(helpers), letters = people::letters(helpers);
    QList<QVariantList> rows;
    for (auto h = helpers.begin(); h != helpers.end(); ++h) {
        const auto i = h - helpers.begin();
        const auto same = [&](const Helper& other) { return other.side == h->side; };
        rows.push_back({letters[i], int(i), names[i], h->side ? int(*h->side) : -1,
                        int(std::count_if(helpers.begin(), h, same)),
                        int(std::ranges::count_if(helpers, same))});
    }
    people_.setRows(std::move(rows));
}

void RoomBoard::drop(int table, qreal x, qreal y) {
    if (table < 0 || std::size_t(table) >= standing_.size())
        return;
    const Standing moved = standing_[std::size_t(table)];
    const QRectF here{{x, y}, moved.place.size()};
    QRectF others;
    std::vector<int> kinds(room().tables.size(), 0);
    for (std::size_t i = 0; i < standing_.size(); ++i)
        if (i != std::size_t(table) && !standing_[i].apart) {
            others = others.united(standing_[i].place);
            ++kinds[standing_[i].kind];
        }
    if (others.isEmpty()) { // the only one of the surface: it goes to the nearest of the others
        const Standing* nearest = nullptr;
        for (std::size_t i = 0; i < standing_.size(); ++i)
            if (i != std::size_t(table) &&
                (!nearest || gap(here, standing_[i].place) < gap(here, nearest->place)))
                nearest = &standing_[i];
        if (!nearest || gap(here, nearest->place) > kNear)
            return refresh();
        others = nearest->place;
        ++kinds[nearest->kind];
    }
    const bool joins = gap(here, others) <= kNear;
    if (joins)
        ++kinds[moved.kind];
    else if (moved.apart)
        return refresh();
    pushTogether(kinds, (joins ? others.united(flush(here, others)) : others).size());
}

void RoomBoard::pushTogether(const std::vector<int>& kinds, QSizeF wanted) {
    const auto target = bySize(room().tables, kinds);
    const auto [shorter, longer] = std::minmax({wanted.width(), wanted.height()});
    const Arrangement* best = nullptr;
    qreal least = 0;
    for (const Arrangement& a : all_) {
        if (bySize(room().tables, a.used) != target)
            continue;
        const qreal off = std::abs(a.length.in() - longer) + std::abs(a.width.in() - shorter);
        if (!best || off < least) {
            best = &a;
            least = off;
        }
    }
    if (!best) {
        const int count = std::accumulate(kinds.begin(), kinds.end(), 0);
        return say(
            count > kMostTablesTogether
                ? tr("At most %1 tables can be kept in line by hand.").arg(kMostTablesTogether)
                : tr("These tables make no rectangle together, so there would be gaps."));
    }
    if (best == standing()) // put back where it stood
        return refresh();
    Session next = editor_->session();
    next.setting.room.together = {best->length, best->width};
    apply(tr("where the tables stand"), std::move(next));
}

std::vector<const Arrangement*> RoomBoard::sameTables() const {
    std::vector<const Arrangement*> out;
    if (const Arrangement* now = standing())
        for (const Arrangement& a : all_)
            if (bySize(room().tables, a.used) == bySize(room().tables, now->used))
                out.push_back(&a);
    return out;
}

void RoomBoard::turnTables() {
    const auto same = sameTables();
    if (same.size() < 2)
        return;
    const auto at = std::ranges::find(same, standing());
    const auto* chosen = at + 1 == same.end() ? same.front() : *(at + 1);
    Session next = editor_->session();
    next.setting.room.together = {chosen->length, chosen->width};
    apply(tr("where the tables stand"), std::move(next));
}

void RoomBoard::turnQuilt() {
    const QuiltPlan* plan = plan_->quilt().plan();
    Session next = editor_->session();
    auto& along = next.jobs[std::size_t(editor_->quilt())].basting.along;
    const bool now = along == Basting::Along::either ? plan && plan->surface.quiltLengthAlongLength
                                                     : along == Basting::Along::tableLength;
    along = now ? Basting::Along::tableWidth : Basting::Along::tableLength;
    apply(tr("how the quilt lies"), std::move(next));
}

bool RoomBoard::asked() const {
    return room().together || editor_->job().basting.along != Basting::Along::either;
}

void RoomBoard::asIsQuickest() {
    Session next = editor_->session();
    next.setting.room.together.reset();
    for (Job& job : next.jobs)
        job.basting.along = Basting::Along::either;
    apply(tr("the tables as is quickest"), std::move(next));
}

int RoomBoard::walls() const {
    int bits = 0;
    for (const auto side : room().walls)
        bits |= 1 << int(side);
    return bits;
}

void RoomBoard::toggleWall(int side) {
    const auto which = bastewright::Side(side);
    Session next = editor_->session();
    auto& walls = next.setting.room.walls;
    if (std::erase(walls, which) == 0)
        walls.push_back(which);
    std::ranges::sort(walls);
    apply(tr("the wall at the %1").arg(sideName(side)), std::move(next));
}

void RoomBoard::addTable() {
    Session next = editor_->session();
    auto& tables = next.setting.room.tables;
    if (tables.empty())
        tables.emplace_back();
    else
        ++tables.front().count;
    apply(tr("one more table"), std::move(next));
}

void RoomBoard::addLike(int table) {
    if (table < 0 || std::size_t(table) >= standing_.size())
        return;
    Session next = editor_->session();
    ++next.setting.room.tables[standing_[std::size_t(table)].kind].count;
    apply(tr("one more table"), std::move(next));
}

void RoomBoard::pullApart(int table) {
    drop(table, extent_.right() + kMost, extent_.bottom() + kMost);
}

void RoomBoard::pushTo(int table) {
    drop(table, surface_.right(), surface_.top());
}

void RoomBoard::removeTable(int table) {
    if (table < 0 || std::size_t(table) >= standing_.size())
        return;
    Session next = editor_->session();
    auto& here = next.setting.room;
    const auto kind = here.tables.begin() + std::ptrdiff_t(standing_[std::size_t(table)].kind);
    if (--kind->count <= 0)
        here.tables.erase(kind);
    // What was asked for may not be possible with what is left.
    const auto left = arrangements(here.tables);
    if (here.together && std::ranges::none_of(left, [&](const Arrangement& a) {
            return *here.together == PushedTogether{a.length, a.width};
        }))
        here.together.reset();
    apply(tr("one table fewer"), std::move(next));
}

void RoomBoard::keepTo(int person, int side) {
    Session next = editor_->session();
    auto& helpers = next.setting.helpers;
    if (person < 0 || std::size_t(person) >= helpers.size())
        return;
    if (side >= 0 && (walls() >> side) % 2 == 1)
        return say(tr("Nobody can stand at the %1: it is a wall.").arg(sideName(side)));
    Helper& helper = helpers[std::size_t(person)];
    if (side < 0)
        helper.side.reset();
    else
        helper.side = bastewright::Side(side);
    apply(tr("where %1 works").arg(words::fromCore(helper.name)), std::move(next));
}

QString RoomBoard::sideName(int side) const {
    switch (bastewright::Side(side)) {
    case bastewright::Side::head:
        return tr("upper side of the drawing");
    case bastewright::Side::foot:
        return tr("lower side of the drawing");
    case bastewright::Side::left:
        return tr("left end");
    case bastewright::Side::right:
        return tr("right end");
    }
    return {};
}

void RoomBoard::apply(const QString& what, Session next) {
    const QString problem = editor_->apply(what, std::move(next));
    if (!problem.isEmpty())
        say(problem);
    else
        refresh();
}

void RoomBoard::say(const QString& problem) {
    problem_ = problem;
    refresh();
}
