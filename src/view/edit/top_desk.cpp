#include "view/edit/top_desk.h"

#include "job/grid_off.h"
#include "job/squareness.h"
#include "view/base/words.h"

#include <cmath>

using namespace bastewright;

TopDesk::TopDesk(JobEditor* editor, QObject* parent)
    : QObject{parent}
    , editor_{editor} {
    connect(editor_, &JobEditor::changed, this, [this] {
        begun_.reset();
        emit changed();
    });
    connect(editor_, &JobEditor::previewChanged, this, &TopDesk::changed);
}

Length TopDesk::snapped(qreal inches, Length most) const {
    const Length step =
        editor_->unit() == Unit::inch ? Length::inch64ths(16) : Length::millimetres(5);
    const Length at = std::int64_t(std::llround(inches / step.in())) * step;
    // The far edge is seldom on the raster.
    return std::clamp(abs(at - most) < step ? most : at, Length{}, most);
}

void TopDesk::tap(qreal x, qreal y) {
    const Rect top = topRect(editor_->job().top);
    const Point at{snapped(x, top.width()), snapped(y, top.length())};
    const Unit unit = editor_->unit();
    const auto place = [&](Point p) {
        return tr("%1 from the left, %2 from the head")
            .arg(words::length(p.x, unit), words::length(p.y, unit));
    };
    if (!begun_) {
        begun_ = at;
        told_ = tr("From %1. Tap where the seam ends.").arg(place(at));
    } else if (*begun_ == at) {
        begun_.reset();
        told_ = tr("Forgotten: a seam needs two places.");
    } else {
        Session next = editor_->session();
        next.jobs[std::size_t(editor_->quilt())].top.seams.push_back({*begun_, at});
        told_ = tr("A seam from %1 to %2.").arg(place(*begun_), place(at));
        if (const QString problem = editor_->apply(tr("a seam"), std::move(next));
            !problem.isEmpty())
            told_ = problem;
        begun_.reset();
    }
    emit changed();
}

void TopDesk::forget() {
    begun_.reset();
    told_.clear();
    emit changed();
}

void TopDesk::removeLastSeam() {
    Session next = editor_->session();
    auto& seams = next.jobs[std::size_t(editor_->quilt())].top.seams;
    if (seams.empty())
        return;
    seams.pop_back();
    editor_->apply(tr("without the last seam"), std::move(next));
    told_.clear();
    emit changed();
}

namespace {

/// Common practice: what is less is eased in.
constexpr Length kNoMatter = Length::inch64ths(32);

/// Where grid and measure differ by enough to be told; nothing else.
std::optional<GridOff> gridOffToTell(const Top& top) {
    const auto off = gridOff(top);
    const auto matters = [](const BorderOff& b) {
        return abs(b.comesOut - b.planned) * 2 > kNoMatter;
    };
    return off && (matters(off->sides) || matters(off->ends)) ? off : std::nullopt;
}

} // namespace

QString TopDesk::gridText() const {
    const Job& job = editor_->jobShown();
    const auto off = gridOffToTell(job.top);
    if (!off)
        return {};
    const Rect top = topRect(job.top);
    const BlockGrid& grid = *job.top.grid;
    const auto length = [&](Length l) { return words::length(l, job.unit); };
    if (off->sides.comesOut < Length{})
        return tr("The blocks alone need %1 across, and the top measures %2.")
            .arg(length(grid.blocksWidth()), length(top.width()));
    if (off->ends.comesOut < Length{})
        return tr("The blocks alone need %1 from head to foot, and the top measures %2.")
            .arg(length(grid.blocksLength()), length(top.length()));
    return tr("The blocks and their borders make %1, the top measures %2: the borders come out %3 "
              "at "
              "the sides and %4 at head and foot.")
        .arg(words::size({grid.width(), grid.length()}, job.unit),
             words::size({top.width(), top.length()}, job.unit), length(off->sides.comesOut),
             length(off->ends.comesOut));
}

bool TopDesk::gridFits() const {
    const auto off = gridOffToTell(editor_->jobShown().top);
    return off && off->sides.comesOut >= Length{} && off->ends.comesOut >= Length{};
}

QString TopDesk::sidesText() const {
    const Job& job = editor_->jobShown();
    const auto off = gridOffToTell(job.top);
    return off && off->sides.differs() ? tr("%1, not %2")
                                             .arg(words::length(off->sides.comesOut, job.unit),
                                                  words::length(off->sides.planned, job.unit))
                                       : QString{};
}

QString TopDesk::endsText() const {
    const Job& job = editor_->jobShown();
    const auto off = gridOffToTell(job.top);
    return off && off->ends.differs() ? tr("%1, not %2")
                                            .arg(words::length(off->ends.comesOut, job.unit),
                                                 words::length(off->ends.planned, job.unit))
                                      : QString{};
}

void TopDesk::keepMeasured() {
    Session next = editor_->session();
    Top& top = next.jobs[std::size_t(editor_->quilt())].top;
    top.sizeFromGrid = false;
    setBordersByMeasure(top);
    editor_->apply(tr("borders by the measured size"), std::move(next));
}

void TopDesk::takeGrid() {
    Session next = editor_->session();
    Top& top = next.jobs[std::size_t(editor_->quilt())].top;
    if (!top.grid)
        return;
    top.sizeFromGrid = true;
    top.width = {top.grid->width()};
    top.length = {top.grid->length()};
    editor_->apply(tr("size by the blocks"), std::move(next));
}

QPointF TopDesk::begun() const {
    return begun_ ? QPointF{begun_->x.in(), begun_->y.in()} : QPointF{-1, -1};
}

QString TopDesk::sizeText() const {
    const Job& job = editor_->jobShown();
    const Rect top = topRect(job.top);
    return words::size({top.width(), top.length()}, job.unit);
}

namespace {

/// One reading each way says nothing of the corners.
bool tellsOfCorners(const Top& top) {
    return top.width.size() > 1 || top.length.size() > 1 || !top.diagonals.empty();
}

} // namespace

QString TopDesk::squareVerdict() const {
    const Top& top = editor_->jobShown().top;
    if (!tellsOfCorners(top))
        return {};
    return squareness(top).square ? tr("Square enough") : tr("Not square enough");
}

QString TopDesk::squareText() const {
    const Job& job = editor_->jobShown();
    if (!tellsOfCorners(job.top))
        return {};
    const Squareness s = squareness(job.top);
    QStringList parts;
    if (s.lean && *s.lean != Length{})
        parts << (*s.lean > Length{} ? tr("The foot lies %1 too far to the right.")
                                     : tr("The foot lies %1 too far to the left."))
                     .arg(words::length(abs(*s.lean), job.unit));
    if (s.widthSpread > Length{})
        parts << tr("The widths differ by %1.").arg(words::length(s.widthSpread, job.unit));
    if (s.lengthSpread > Length{})
        parts << tr("The lengths differ by %1.").arg(words::length(s.lengthSpread, job.unit));
    parts << (s.square ? tr("Up to %1 eases flat.").arg(words::length(kSquareEnough, job.unit))
                       : tr("More than %1 off: ease or trim it before it is layered.")
                             .arg(words::length(kSquareEnough, job.unit)));
    return parts.join(QLatin1Char(' '));
}

QString TopDesk::reasonText() const {
    return tr(
        "Measure across at the head, the middle and the foot, and down at the left, the middle "
        "and the right: edges stretch, middles do not. Every layer is cut for the largest "
        "reading, so that none ends short. Equal diagonals mean square corners.");
}
