#include "sheets/pictures/place_picture.h"

#include "plan/find.h"
#include "sheets/ink.h"
#include "sheets/pictures/point_mark.h"
#include "sheets/pictures/stitches.h"
#include "sheets/pictures/table_picture.h"
#include "sheets/pictures/top_photo.h"
#include "sheets/pictures/turned_mapping.h"
#include "sheets/text_block.h"
#include "sheets/type.h"
#include "sheets/words.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace bastewright::sheets {
namespace {

constexpr double kHold = 13;             // a square with the number of a hold
constexpr double kBadge = 20;            // somebody's letter
constexpr double kRowStrip = 12;         // the numbers of one's own rows
constexpr double kWord = 13;             // HEAD and FOOT
const Length kRound = Length::inches(3); // shown round the table

bool standsAt(const AtTable& who, Side side) {
    return std::ranges::any_of(who.stretch.edges,
                               [&](const StandingPlace& e) { return e.side == side; });
}

bool anybodyAt(const PlacePicture& show, Side side) {
    return std::ranges::any_of(show.people, [&](const AtTable& a) { return standsAt(a, side); });
}

const AtTable* mineOf(const PlacePicture& show) {
    const auto found = std::ranges::find_if(show.people, [&](const AtTable& a) {
        return !show.mine.empty() && a.stretch.person == show.mine;
    });
    return found == show.people.end() ? nullptr : &*found;
}

/// True where rows run up to this side, so that their numbers can stand along it.
bool rowsMeet(const PlacePicture& show, Side side) {
    const auto& rows = show.quilt->rows;
    return rows && (rows->along == PinRows::Along::width) != isAcross(side);
}

bool hasRowStrip(const PlacePicture& show, Side side) {
    const AtTable* mine = mineOf(show);
    return mine && standsAt(*mine, side) && rowsMeet(show, side) && !mine->zones.empty();
}

/// Room outside a side of the table.
double rimOf(const PlacePicture& show, Side side) {
    double rim = kHold / 2 + 2;
    if (hasRowStrip(show, side))
        rim += kRowStrip;
    if (anybodyAt(show, side))
        rim += kBadge + 3;
    if (isAcross(side))
        rim += kWord;
    return rim;
}

Side sideFacing(Side bottom, QPointF direction) {
    const TurnedMapping turn{
        {Length{}, Length{}, Length::inches(1), Length::inches(1)}, QRectF{0, 0, 1, 1}, bottom};
    for (const Side s : kSides)
        if (turn.outward(s) == direction)
            return s;
    return bottom;
}

QMarginsF rims(const PlacePicture& show) {
    const auto rim = [&](QPointF towards) { return rimOf(show, sideFacing(show.bottom, towards)); };
    return {rim({-1, 0}), rim({0, -1}), rim({1, 0}), rim({0, 1})};
}

class Places {
public:
    Places(QPainter& p, QRectF box, const PlacePicture& show)
        : p_{p}
        , show_{show}
        , quilt_{*show.quilt}
        , pass_{*show.pass}
        , top_{Length{}, Length{}, quilt_.layers.top.width, quilt_.layers.top.length}
        , map_{pass_.table.grown(kRound), box.marginsRemoved(rims(show)), show.bottom}
        , box_{box} {}

    void draw() {
        cloth();
        areas();
        table();
        ends();
        for (const AtTable& who : show_.people)
            if (!who.stretch.edges.empty())
                person(who);
        holds();
    }

private:
    bool isMine(const AtTable& who) const {
        return !show_.mine.empty() && who.stretch.person == show_.mine;
    }

    void cloth() {
        const QRectF table = map_(pass_.table);
        p_.setPen(Qt::NoPen);
        p_.setBrush(ink::kTable);
        if (!quilt_.surface.floor)
            p_.drawRect(table);
        const Rect round = pass_.table.grown(kRound);
        const Rect cloth = intersection(top_, round);
        p_.setPen(QPen{ink::kDark, ink::kHair});
        p_.setBrush(ink::kPaper);
        if (!cloth.empty()) {
            p_.drawRect(map_(cloth));
            drawTopPhoto(p_, show_.photo, top_, map_.fromInches(), map_(cloth));
        }
        for (const Pass& before : quilt_.passes)
            if (before.number < pass_.number)
                for (const Rect& part : before.fresh.parts)
                    if (const Rect seen = intersection(part, round); !seen.empty())
                        stitch(p_, map_(seen), stitchesLevel());
    }

    bool stitchesLevel() const {
        const bool across = !quilt_.rows || quilt_.rows->along == PinRows::Along::width;
        return across == isAcross(show_.bottom);
    }

    QPainterPath areaOf(const AtTable& who) const {
        QPainterPath path;
        for (const Zone* zone : who.zones)
            path.addRect(map_(zone->area));
        return path.simplified();
    }

    void areas() {
        for (const AtTable& who : show_.people) {
            const bool mine = isMine(who);
            p_.setPen(QPen{ink::kDark, mine ? ink::kLine : ink::kHair});
            const QColor own = show_.photo.isNull() ? ink::kNow : ink::kNowOnPhoto;
            p_.setBrush(mine ? QBrush{own} : Qt::NoBrush);
            p_.drawPath(areaOf(who));
        }
        for (const AtTable& who : show_.people)
            for (const Zone* zone : who.zones)
                for (const PlacedPoint& point : zone->points)
                    drawPoint(p_, map_(point.at),
                              zone->with ? wayOf(*zone->with).point.shape : show_.shape,
                              (point.angle == 0) == isAcross(show_.bottom), isMine(who));
    }

    void table() {
        if (quilt_.surface.floor)
            return;
        p_.setBrush(Qt::NoBrush);
        p_.setPen(QPen{ink::kRule, ink::kHair});
        for (const Rect& t : sheets::tablesUnder(quilt_.surface, pass_.table))
            p_.drawRect(map_(t));
        p_.setPen(QPen{ink::kDark, ink::kBold, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin});
        p_.drawRect(map_(pass_.table));
        for (const Side wall : quilt_.surface.closed) {
            const QRectF edge = map_(pass_.table);
            const QPointF out = map_.outward(wall);
            const QRectF band =
                map_.isLevel(wall)
                    ? QRectF{edge.left(), out.y() < 0 ? edge.top() - 8 : edge.bottom() + 3,
                             edge.width(), 5}
                    : QRectF{out.x() < 0 ? edge.left() - 8 : edge.right() + 3, edge.top(), 5,
                             edge.height()};
            hatch(p_, band, 3);
        }
    }

    QPointF onEdge(Side side, Length along, double out) const {
        const Rect& t = pass_.table;
        const Point at{isAcross(side)       ? along
                       : side == Side::left ? t.x0
                                            : t.x1,
                       !isAcross(side)      ? along
                       : side == Side::head ? t.y0
                                            : t.y1};
        return map_(at) + map_.outward(side) * out;
    }

    bool isFree(QRectF box) const {
        return std::ranges::none_of(taken_,
                                    [&](const QRectF& other) { return other.intersects(box); });
    }

    /// In front of this side of the table, not past its corners.
    bool isBeside(QPointF at, Side side) const {
        const QRectF table = map_(pass_.table);
        return map_.isLevel(side) ? at.x() >= table.left() && at.x() <= table.right()
                                  : at.y() >= table.top() && at.y() <= table.bottom();
    }

    /// The nearest place along a side for a square that covers no other, and takes it; where the
    /// side is full, further in over its half of the table; nothing where that is full, too.
    std::optional<QPointF> clear(QPointF at, double size, Side side) {
        constexpr double kStep = 3;
        constexpr int kMost = 60;
        const QRectF table = map_(pass_.table);
        const bool level = map_.isLevel(side);
        const double half = (level ? table.height() : table.width()) / 2;
        const QPointF along = level ? QPointF{kStep, 0} : QPointF{0, kStep};
        const auto box = [&](QPointF middle) {
            return QRectF{middle - QPointF{size / 2, size / 2}, QSizeF{size, size}};
        };
        for (double in = 0; in == 0 || in <= half; in += size + 1)
            for (int i = 0; i <= kMost; ++i)
                for (const int way : {1, -1})
                    if (const QPointF middle = at + along * (i * way) - map_.outward(side) * in;
                        isFree(box(middle)) && (i == 0 || isBeside(middle, side))) {
                        taken_.push_back(box(middle));
                        return middle;
                    }
        return {};
    }

    /// The hold of this number at this place is somebody's whose sheet this is.
    bool isOwn(const HoldPoint& hold) const {
        const AtTable* mine = mineOf(show_);
        return mine && std::ranges::count(mine->holds, hold) > 0;
    }

    /// Two holds of one side lie nearer than their squares are wide.
    bool isCrowded() const {
        const auto all = holdOrder(pass_);
        for (const HoldPoint& one : all)
            for (const HoldPoint& other : all)
                if (one.side == other.side && one.at < other.at &&
                    map_(other.at - one.at) < kHold + 1)
                    return true;
        return false;
    }

    void holds() {
        // In a small picture on somebody's own sheet the others' are only seen to be there.
        const bool ownAlone = mineOf(show_) != nullptr && isCrowded();
        for (const HoldPoint& hold : holdOrder(pass_)) {
            const bool clamp = hold.kind == Hold::Kind::clamp, own = isOwn(hold);
            const double in =
                clamp ? 0 : std::min(0.0, map_(pass_.backingOverhang[hold.side])) - kHold * 0.2;
            // A square of tape is drawn a little wider than a clamp's.
            std::optional<QPointF> free;
            if (own || !ownAlone)
                free = clear(onEdge(hold.side, hold.at, in), kHold + (clamp ? 1 : 3), hold.side);
            if (!free) {
                constexpr double kSmall = 5;
                p_.setPen(QPen{ink::kDark, ink::kThin});
                p_.setBrush(ink::kPaper);
                p_.drawRect(QRectF{onEdge(hold.side, hold.at, 0) - QPointF{kSmall / 2, kSmall / 2},
                                   QSizeF{kSmall, kSmall}});
                continue;
            }
            const QPointF at = *free;
            const QRectF box{at - QPointF{kHold / 2, kHold / 2}, QSizeF{kHold, kHold}};
            p_.setPen(QPen{ink::kDark, ink::kLine});
            p_.setBrush(own ? ink::kDark : ink::kPaper);
            if (clamp)
                p_.drawRoundedRect(box, 3.5, 3.5);
            else
                p_.drawRect(box.adjusted(-1.5, 1, 1.5, -1));
            label(p_, at, QString::number(hold.number), type::kLeast, kHold + 2, true,
                  own ? ink::kPaper : ink::kDark);
        }
    }

    /// The edge somebody stands at most of.
    static const StandingPlace& mainEdge(const AtTable& who) {
        return *std::ranges::max_element(who.stretch.edges, {},
                                         [](const StandingPlace& e) { return e.along.size(); });
    }

    void person(const AtTable& who) {
        const StandingPlace& edge = mainEdge(who);
        const bool mine = isMine(who);
        if (mine && hasRowStrip(show_, edge.side))
            rowNumbers(who, edge.side);
        // Marks on one side stand in one line, whether or not there are numbers of rows.
        const double strip = hasRowStrip(show_, edge.side) ? kRowStrip : 0;
        const double out = kHold / 2 + 2 + strip + kBadge / 2;
        const auto free = clear(onEdge(edge.side, edge.along.middle(), out), kBadge + 2, edge.side);
        if (!free) // no room for all: the list of names says who is here
            return;
        const QPointF at = *free;
        badge(p_, at, mine ? kBadge + 2 : kBadge, who.letter, mine);
        if (!map_.isLevel(edge.side))
            return;
        const QString name = mine && !show_.you.isEmpty() ? show_.you : who.name;
        const QString words = who.seated ? Text::tr("%1 (sits)").arg(name) : name;
        const int size = mine ? type::kCheck : type::kSmall;
        const double room = map_(edge.along.size()) / 2 - kBadge / 2 - 6;
        if (textWidth(words, {size, mine}) > room)
            return;
        const double width = textWidth(words, {size, mine});
        const QRectF beside{at.x() + kBadge / 2 + 3, at.y() - kBadge / 2, width + 4, kBadge};
        if (!box_.contains(beside) || !isFree(beside))
            return;
        taken_.push_back(beside);
        label(p_, at + QPointF{kBadge / 2 + 4 + width / 2, 0}, words, size, width + 2, mine);
    }

    /// The numbers of somebody's rows along their edge: odd ones black, even ones white, as on the
    /// ribbons; where they would touch, every second, third … alone.
    void rowNumbers(const AtTable& who, Side side) {
        const PinRows& rows = *quilt_.rows;
        std::map<int, Length> own;
        const RowMarks marks{rows};
        for (const Zone* zone : who.zones)
            for (const PlacedPoint& point : zone->points)
                if (const auto at = marks.of(point.at))
                    own[at->row] = rows.lines[std::size_t(at->row - 1)].at;
        if (own.empty())
            return;
        const double apart = std::max(map_(rows.gap), 1e-3);
        const int every = std::max(1, int(std::ceil((kRowStrip + 1) / apart)));
        const double w = std::min(kRowStrip + 2, every * apart - 0.5);
        for (const auto& [row, at] : own) {
            if ((row - own.begin()->first) % every != 0)
                continue;
            const bool odd = row % 2 == 1 && every == 1;
            const QPointF middle = onEdge(side, at, kHold / 2 + 2 + kRowStrip / 2);
            const QSizeF size =
                map_.isLevel(side) ? QSizeF{w, kRowStrip - 1} : QSizeF{w + 2, kRowStrip - 1};
            const QRectF box{middle - QPointF{size.width() / 2, size.height() / 2}, size};
            p_.setPen(QPen{ink::kDark, ink::kHair});
            p_.setBrush(odd ? ink::kDark : ink::kPaper);
            p_.drawRect(box);
            label(p_, middle, QString::number(row), type::kLeast, size.width(), false,
                  odd ? ink::kPaper : ink::kDark);
        }
    }

    void ends() {
        for (const Side side : {Side::head, Side::foot}) {
            const Length middle = pass_.table.x().middle();
            const QPointF at = onEdge(side, middle, rimOf(show_, side) - kWord / 2);
            const QString word = side == Side::head ? Text::tr("HEAD") : Text::tr("FOOT");
            QSizeF size{textWidth(word, {type::kHead, true}) + 2, kWord};
            if (!map_.isLevel(side))
                size.transpose();
            taken_.push_back({at - QPointF{size.width() / 2, size.height() / 2}, size});
            p_.save();
            p_.translate(at);
            if (!map_.isLevel(side))
                p_.rotate(-90);
            label(p_, {}, word, type::kHead, 90, true);
            p_.restore();
        }
    }

    QPainter& p_;
    const PlacePicture& show_;
    const QuiltPlan& quilt_;
    const Pass& pass_;
    Rect top_;
    TurnedMapping map_;
    QRectF box_;                ///< of the whole picture
    std::vector<QRectF> taken_; ///< squares and names that nothing else may cover
};

} // namespace

double placesHeight(const PlacePicture& picture, double width, double limit) {
    const QMarginsF rim = rims(picture);
    const double across = rim.left() + rim.right(), down = rim.top() + rim.bottom();
    const Rect world = picture.pass->table.grown(kRound);
    const bool level = isAcross(picture.bottom);
    const double w = (level ? world.width() : world.length()).in(),
                 h = (level ? world.length() : world.width()).in();
    return std::min(limit, (width - across) * h / std::max(w, 1e-6) + down);
}

void drawPlaces(QPainter& p, QRectF box, const PlacePicture& picture) {
    p.save();
    Places{p, box, picture}.draw();
    p.restore();
}

} // namespace bastewright::sheets
