#include "view/table/lanes_item.h"

#include "view/base/people_palette.h"
#include "view/base/words.h"
#include "view/table/lane_stretches.h"
#include "ways/way.h"

#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>

using namespace bastewright;

namespace {
/// Below so many widths of type to a minute calls have no room for their names.
constexpr qreal kFar = 0.8;
constexpr qreal kBesideMark = 10; // pixels left of, between and right of a mark and its name
} // namespace

LanesItem::LanesItem(QQuickItem* parent)
    : QQuickPaintedItem{parent} {
    connect(this, &LanesItem::lookChanged, this, [this] { update(); });
}

void LanesItem::setBoard(LanesBoard* board) {
    if (board == board_)
        return;
    if (board_)
        board_->disconnect(this);
    board_ = board;
    if (board_) {
        connect(board_, &LanesBoard::changed, this, [this] { update(); });
        connect(board_, &LanesBoard::chosenChanged, this, [this] { update(); });
    }
    update();
    emit boardChanged();
}

QRectF LanesItem::rectOf(const LanesBoard::Block& block) const {
    const qreal x0 = xAt(qreal(block.task->start.count())),
                x1 = xAt(qreal(block.task->end.count()));
    const qreal gap = lane_ * 0.08;
    return {x0, yAt(block.lane) + gap, std::max(3.0, x1 - x0 - 1), lane_ - 2 * gap};
}

QString LanesItem::taskAt(qreal x, qreal y) const {
    if (!board_ || x < headWidth_ || y < headHeight_)
        return {};
    // A short piece of work is found by a finger beside it, the nearest one first.
    const qreal reach = textSize_ * 0.8;
    QString found;
    qreal nearest = reach;
    for (const auto& block : board_->blocks()) {
        const QRectF r = rectOf(block);
        if (y < r.top() || y > r.bottom())
            continue;
        const qreal away = std::max({0.0, r.left() - x, x - r.right()});
        if (away < nearest || (away == 0 && found.isEmpty())) {
            nearest = away;
            found = words::fromCore(block.task->id);
        }
    }
    return found;
}

QRectF LanesItem::placeOf(const QString& task) const {
    if (board_)
        for (const auto& block : board_->blocks())
            if (words::fromCore(block.task->id) == task)
                return rectOf(block);
    return {};
}

QFont LanesItem::font(qreal size, bool bold) const {
    QFont f{family_};
    f.setPixelSize(std::max(8, int(size)));
    f.setBold(bold);
    return f;
}

void LanesItem::paint(QPainter* painter) {
    auto& p = *painter;
    p.setRenderHint(QPainter::Antialiasing);
    if (!board_)
        return;
    p.save();
    p.setClipRect(QRectF{headWidth_, headHeight_, width() - headWidth_, height() - headHeight_});
    for (int lane = 0; lane < board_->lanes(); ++lane)
        paintLane(p, lane);
    // From afar a pass is one thing; closer, each of its calls.
    const bool far = minute_ < textSize_ * kFar;
    for (const auto& stretch :
         stretchesOf(board_->blocks(), far ? LaneGrain::passes : LaneGrain::calls))
        paintStretch(p, stretch);
    if (!far)
        paintLinks(p);
    p.restore();
    paintTimes(p);
    paintNow(p);
    paintNames(p);
}

void LanesItem::paintLane(QPainter& p, int lane) const {
    const QRectF row{headWidth_, yAt(lane), width() - headWidth_, lane_};
    if (row.bottom() < headHeight_ || row.top() > height())
        return;
    p.setPen(Qt::NoPen);
    p.setBrush(paper_);
    p.drawRect(row);
    // Not there: hatched.
    const auto [from, until] = board_->hours(lane);
    QColor hatch = edge_;
    p.setBrush(QBrush{hatch, Qt::FDiagPattern});
    if (from > 0)
        p.drawRect(QRectF{QPointF{xAt(0), row.top()}, QPointF{xAt(from), row.bottom()}});
    if (until < board_->span())
        p.drawRect(
            QRectF{QPointF{xAt(until), row.top()}, QPointF{xAt(board_->span()), row.bottom()}});
    p.setPen(QPen{edge_, 1});
    p.drawLine(row.bottomLeft(), row.bottomRight());
}

bool LanesItem::showsPieces(const LaneStretch& stretch) const {
    if (stretch.pieces.size() == 1)
        return true;
    const QFontMetricsF metrics{font(std::min(textSize_, lane_ * 0.36), true)};
    return std::ranges::all_of(stretch.pieces, [&](const LanesBoard::Block* piece) {
        const QString zone = words::zone(piece->task->zone);
        const QString name = zone.isEmpty() ? words::shortTask(piece->task->kind) : zone;
        return metrics.horizontalAdvance(name) + 6 <= rectOf(*piece).width();
    });
}

/// One bar for all of a stretch with what it is; what is done in it lies along its lower edge.
void LanesItem::paintStretch(QPainter& p, const LaneStretch& stretch) const {
    QRectF r = rectOf(*stretch.pieces.front());
    r.setRight(std::max(r.right(), xAt(qreal(stretch.end().count())) - 1));
    if (r.right() < headWidth_ || r.left() > width() || r.bottom() < headHeight_ ||
        r.top() > height())
        return;
    if (!stretch.wholePass && showsPieces(stretch)) {
        for (const auto* piece : stretch.pieces)
            paintBlock(p, *piece);
        return;
    }
    const bool done = std::ranges::all_of(stretch.pieces, &LanesBoard::Block::done);
    const bool chosen = std::ranges::any_of(stretch.pieces, [this](const LanesBoard::Block* b) {
        return words::fromCore(b->task->id) == board_->chosen();
    });
    p.setPen(QPen{chosen ? accent_ : ink_, chosen ? 4.0 : 1.2});
    p.setBrush(done ? ground_ : paper_);
    p.drawRoundedRect(r, 3, 3);
    const qreal strip = r.height() * 0.24;
    for (const auto* piece : stretch.pieces)
        paintStrip(p, *piece, strip);
    // Words stay in sight while a long bar is scrolled through.
    QRectF inside = r & QRectF{headWidth_, r.top(), width() - headWidth_, r.height()};
    inside.adjust(4, 1, -4, -1 - strip);
    const int pass = stretch.pieces.front()->task->pass;
    const QString whole = stretch.wholePass ? tr("Pass %1").arg(pass) : words::call(stretch.call);
    paintTitle(p, inside, {whole, stretch.wholePass ? QString::number(pass) : QString{}},
               stretch.zones(), done ? quiet_ : ink_);
    if (done)
        paintDone(p, r);
}

void LanesItem::paintStrip(QPainter& p, const LanesBoard::Block& block, qreal high) const {
    const QRectF own = rectOf(block);
    const QRectF r{own.left(), own.bottom() - high, own.width(), high};
    const auto kind = block.task->kind;
    const bool ends = isLastWork(kind), puts = isOfZone(kind) && !ends;
    p.setPen(QPen{ink_, ends ? 2.0 : 1.0, puts ? Qt::DashLine : Qt::SolidLine});
    p.setBrush(block.done ? ground_ : puts ? open_ : ends ? close_ : team_);
    p.drawRect(r);
}

/// The first of the titles that has room, with the words below where both have.
void LanesItem::paintTitle(QPainter& p, const QRectF& inside, const QStringList& titles,
                           const QString& below, const QColor& ink) const {
    const qreal size = std::min(textSize_, inside.height() * 0.42);
    const QFontMetricsF bold{font(size, true)}, plain{font(size, false)};
    const auto title = std::ranges::find_if(titles, [&](const QString& text) {
        return !text.isEmpty() && bold.horizontalAdvance(text) <= inside.width();
    });
    if (title == titles.end())
        return;
    const bool both = !below.isEmpty() && plain.horizontalAdvance(below) <= inside.width();
    const qreal high = bold.height();
    const QRectF top =
        both ? QRectF{inside.left(), inside.center().y() - high, inside.width(), high} : inside;
    p.setPen(ink);
    p.setFont(font(size, true));
    p.drawText(top, Qt::AlignCenter, *title);
    p.setFont(font(size, false));
    if (both)
        p.drawText(top.translated(0, high * 0.94), Qt::AlignCenter, below);
}

void LanesItem::paintDone(QPainter& p, const QRectF& r) const {
    p.setPen(QPen{ink_, 2});
    const QPointF c{r.right() - 9, r.top() + 9};
    p.drawPolyline(QPolygonF{{c + QPointF{-5, 0}, c + QPointF{-1, 4}, c + QPointF{5, -5}}});
}

void LanesItem::paintBlock(QPainter& p, const LanesBoard::Block& block) const {
    const QRectF r = rectOf(block);
    const auto kind = block.task->kind;
    const bool ends = isLastWork(kind), puts = isOfZone(kind) && !ends;
    const bool team = block.task->people.size() > 1;
    const bool chosen = words::fromCore(block.task->id) == board_->chosen();
    p.setPen(QPen{chosen ? accent_ : ink_,
                  chosen ? 4.0
                  : ends ? 2.4
                         : 1.2,
                  puts ? Qt::DashLine : Qt::SolidLine});
    p.setBrush(block.done ? ground_ : puts ? open_ : ends ? close_ : team ? team_ : paper_);
    p.drawRoundedRect(r, 3, 3);
    const QString zone = words::zone(block.task->zone);
    const QString verb = zone.isEmpty() ? words::shortTask(kind) : words::zoneTask(kind);
    const QRectF inside = r.adjusted(3, 1, -3, -1);
    const auto width = [&](const QString& text, qreal size, bool bold) {
        return QFontMetricsF{font(size, bold)}.horizontalAdvance(text);
    };
    p.setPen(block.done ? quiet_ : ink_);
    const qreal size = std::min(textSize_, lane_ * 0.36);
    const QString first = zone.isEmpty() ? verb : zone;
    if (width(first, size, true) <= inside.width()) {
        const bool both = !zone.isEmpty() && width(verb, size * 0.86, false) <= inside.width();
        const qreal high = QFontMetricsF{font(size, true)}.height();
        const QRectF top =
            both ? QRectF{inside.left(), inside.center().y() - high, inside.width(), high} : inside;
        p.setFont(font(size, true));
        p.drawText(top, Qt::AlignCenter, first);
        if (both) {
            p.setFont(font(size * 0.86, false));
            p.drawText(top.translated(0, high * 0.92), Qt::AlignCenter, verb);
        }
    } else if (width(first, size, true) <= inside.height() && inside.width() >= size * 0.9) {
        p.save();
        p.translate(inside.center());
        p.rotate(-90);
        p.setFont(font(size, true));
        const QString both = QStringLiteral("%1 %2").arg(zone, verb);
        p.drawText(
            QRectF{-inside.height() / 2, -inside.width() / 2, inside.height(), inside.width()},
            Qt::AlignCenter,
            !zone.isEmpty() && width(both, size, true) <= inside.height() ? both : first);
        p.restore();
    }
    if (block.done)
        paintDone(p, r);
}

// People of one team are tied together where it begins.
void LanesItem::paintLinks(QPainter& p) const {
    const auto& blocks = board_->blocks();
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        if (blocks[i].task->people.size() < 2)
            continue;
        std::vector<int> lanes{blocks[i].lane};
        while (i + 1 < blocks.size() && blocks[i + 1].task == blocks[i].task)
            lanes.push_back(blocks[++i].lane);
        const auto [top, bottom] = std::minmax_element(lanes.begin(), lanes.end());
        const qreal x = xAt(qreal(blocks[i].task->start.count())) + 5;
        if (x < headWidth_ || x > width())
            continue;
        p.setPen(QPen{ink_, 2.2});
        p.drawLine(QPointF{x, yAt(*top) + lane_ / 2}, QPointF{x, yAt(*bottom) + lane_ / 2});
        p.setBrush(ink_);
        for (const int lane : lanes)
            p.drawEllipse(QPointF{x, yAt(lane) + lane_ / 2}, 4, 4);
    }
}

void LanesItem::paintTimes(QPainter& p) const {
    p.setPen(Qt::NoPen);
    p.setBrush(ground_);
    p.drawRect(QRectF{0, 0, width(), headHeight_});
    const QFontMetricsF letters{font(textSize_ * 0.9, false)};
    qreal wide = 0; // "12:45 PM" takes more than "09:45"
    for (int at = 0; at <= board_->span() + 3600; at += 3600)
        wide = std::max(wide, letters.horizontalAdvance(board_->clockAt(at)));
    wide += textSize_;
    int every = 120;
    for (const int minutes : {5, 10, 15, 30, 60})
        if (minutes * minute_ >= wide) {
            every = minutes;
            break;
        }
    p.save();
    p.setClipRect(QRectF{headWidth_, 0, width() - headWidth_, height()});
    p.setFont(font(textSize_ * 0.9, false));
    const int first = (every - board_->startMinute() % every) % every;
    for (qreal at = first; at * 60 <= board_->span() + every * 60; at += every) {
        const qreal x = xAt(at * 60);
        if (x < headWidth_ - wide || x > width() + wide)
            continue;
        p.setPen(QPen{edge_, 1, Qt::DotLine});
        p.drawLine(QPointF{x, headHeight_}, QPointF{x, height()});
        const QRectF label{x - wide / 2, 0, wide, headHeight_};
        if (label.left() < headWidth_ || label.intersects(nowBox()))
            continue;
        p.setPen(ink_);
        p.drawText(label, Qt::AlignCenter, board_->clockAt(at * 60));
    }
    p.restore();
}

QString LanesItem::nowText() const {
    return board_->live() ? tr("now %1").arg(board_->clockAt(board_->now()))
                          : tr("start %1").arg(board_->clockAt(0));
}

QRectF LanesItem::nowBox() const {
    const qreal x = xAt(board_->now());
    if (x < headWidth_ - 1 || x > width())
        return {};
    QRectF box{x, 2,
               QFontMetricsF{font(textSize_ * 0.9, true)}.horizontalAdvance(nowText()) +
                   textSize_ * 0.6,
               headHeight_ - 4};
    if (box.right() > width())
        box.moveRight(width());
    return box;
}

void LanesItem::paintNow(QPainter& p) const {
    const qreal x = xAt(board_->now());
    const QRectF box = nowBox();
    if (box.isEmpty())
        return;
    p.setPen(QPen{accent_, 3});
    p.drawLine(QPointF{x, headHeight_}, QPointF{x, height()});
    p.setFont(font(textSize_ * 0.9, true));
    p.setPen(Qt::NoPen);
    p.setBrush(accent_);
    p.drawRoundedRect(box, 3, 3);
    p.setPen(paper_);
    p.drawText(box, Qt::AlignCenter, nowText());
}

qreal LanesItem::markSide() const {
    return std::min({lane_ * 0.6, headWidth_ * 0.5, textSize_ * 2.2});
}

QFont LanesItem::nameFont() const {
    constexpr qreal kLeast = 0.72; // of the other letters
    qreal longest = 1;
    for (const QString& name : board_->names())
        longest = std::max(longest, QFontMetricsF{font(textSize_, true)}.horizontalAdvance(name));
    const qreal room = headWidth_ - markSide() - kBesideMark;
    return font(textSize_ * std::clamp(room / longest, kLeast, 1.0), true);
}

void LanesItem::paintNames(QPainter& p) const {
    p.save();
    p.setClipRect(QRectF{0, headHeight_, width(), height() - headHeight_});
    p.setPen(Qt::NoPen);
    p.setBrush(ground_);
    p.drawRect(QRectF{0, headHeight_, headWidth_, height() - headHeight_});
    for (int lane = 0; lane < board_->lanes(); ++lane) {
        const QRectF row{0, yAt(lane), headWidth_, lane_};
        const qreal side = markSide();
        const QRectF disc{4, row.center().y() - side / 2, side, side};
        people::paintMark(p, disc, lane, board_->letters()[lane], family_);
        const QRectF text{disc.right() + 4, row.top(), headWidth_ - side - kBesideMark, lane_};
        p.setPen(ink_);
        p.setFont(nameFont());
        const QString name = board_->names()[lane];
        // Never a part of a name: the letter beside it is theirs alone.
        if (QFontMetricsF{p.font()}.horizontalAdvance(name) <= text.width())
            p.drawText(text, int(Qt::AlignVCenter | Qt::AlignLeft), name);
        p.setPen(QPen{edge_, 1});
        p.drawLine(row.bottomLeft(), row.bottomRight());
    }
    p.restore();
}
