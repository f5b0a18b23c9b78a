#include "view/paper/sheet_preview.h"

#include <QPainter>

#include <algorithm>
#include <optional>

using namespace bastewright;

struct SheetPreview::Composed {
    PlannedPtr planned;
    std::optional<SheetSet> set;
    int order = 0;
};

namespace {

QImage drawn(const SheetSet& set, int page, int width, bool colour) {
    const auto& frame = set.frame();
    const double scale = width / frame.width;
    QImage image{width, int(frame.height * scale), QImage::Format_RGB32};
    image.fill(Qt::white);
    QPainter painter{&image};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(scale, scale);
    set.paint(painter, page);
    painter.end();
    return colour ? image : image.convertToFormat(QImage::Format_Grayscale8);
}

} // namespace

SheetPreview::SheetPreview(QObject* parent)
    : QObject{parent}
    , composed_{std::make_shared<Composed>()} {
    options_.paper = usualPaper(QLocale::system());
    thread_.setLast([composed = composed_] { composed->set.reset(); });
}

SheetPreview::~SheetPreview() = default;

void SheetPreview::show(PlannedPtr planned) {
    if (planned == planned_)
        return;
    planned_ = std::move(planned);
    page_ = 0;
    compose();
}

void SheetPreview::compose() {
    if (!planned_)
        return;
    const int order = ++order_;
    thread_.replace([this, composed = composed_, planned = planned_, options = options_, order] {
        composed->set.reset(); // before the plan it points into
        composed->planned = planned;
        composed->set.emplace(planned->session, planned->plan, options);
        composed->order = order;
        QMetaObject::invokeMethod(
            this,
            [this, order, pages = composed->set->pages(), marks = composed->set->outline()] {
                this->composed(order, pages, marks);
            },
            Qt::QueuedConnection);
    });
    emit changed();
}

void SheetPreview::composed(int order, int pages, Marks marks) {
    if (order != order_)
        return;
    pages_ = pages;
    marks_ = std::move(marks);
    page_ = std::clamp(page_, 0, std::max(0, pages_ - 1));
    if (pages_ == 0)
        picture_ = {};
    emit changed();
    draw();
}

void SheetPreview::draw() {
    if (pages_ == 0 || width_ <= 0) {
        emit pictured();
        return;
    }
    thread_.post([this, composed = composed_, order = order_, page = page_, width = width_,
                  colour = options_.colour] {
        if (composed->order != order || page >= composed->set->pages())
            return;
        QMetaObject::invokeMethod(
            this,
            [this, order, page, image = drawn(*composed->set, page, width, colour)] {
                if (order != order_ || page != page_)
                    return;
                picture_ = image;
                drawnOrder_ = order;
                drawnPage_ = page;
                emit pictured();
            },
            Qt::QueuedConnection);
    });
}

void SheetPreview::setPage(int page) {
    page = std::clamp(page, 0, std::max(0, pages_ - 1));
    if (page == page_)
        return;
    page_ = page;
    emit changed();
    emit pictured(); // no longer the one in hand
    draw();
}

void SheetPreview::stepPart(int by) {
    int target = by > 0 ? pages_ - 1 : 0;
    for (const auto& mark : marks_)
        if (mark.level == 0) {
            if (by > 0 && mark.page > page_) {
                target = mark.page;
                break;
            }
            if (by < 0 && mark.page < page_)
                target = mark.page;
        }
    setPage(target);
}

QString SheetPreview::pageText() const {
    return pages_ == 0 ? tr("No sheet is chosen.") : tr("%1 of %2").arg(page_ + 1).arg(pages_);
}

QString SheetPreview::partText() const {
    QString part, sheet;
    for (const auto& mark : marks_) {
        if (mark.page > page_)
            break;
        if (mark.level == 0) {
            part = mark.title;
            sheet.clear();
        } else {
            sheet = mark.title;
        }
    }
    return sheet.isEmpty() ? part : tr("%1: %2").arg(part, sheet);
}

qreal SheetPreview::tallness() const {
    const auto frame = sheets::PageFrame::of(options_.paper);
    return frame.height / frame.width;
}

void SheetPreview::choose(bool SheetOptions::*option, bool on) {
    if (options_.*option == on)
        return;
    options_.*option = on;
    compose();
}

void SheetPreview::setLead(bool on) {
    choose(&SheetOptions::lead, on);
}
void SheetPreview::setHelpers(bool on) {
    choose(&SheetOptions::helpers, on);
}
void SheetPreview::setBring(bool on) {
    choose(&SheetOptions::bring, on);
}
QStringList SheetPreview::more() const {
    QStringList out;
    for (const SheetPart& part : sheetParts())
        if (options_.*part.option)
            out << QString::fromUtf8(part.name.data(), qsizetype(part.name.size()));
    return out;
}
void SheetPreview::toggle(const QString& part) {
    const std::string name = part.toStdString();
    for (const SheetPart& one : sheetParts())
        if (one.name == name)
            choose(one.option, !(options_.*one.option));
}
void SheetPreview::setColour(bool on) {
    choose(&SheetOptions::colour, on);
}
void SheetPreview::setBothSides(bool on) {
    choose(&SheetOptions::bothSides, on);
}
void SheetPreview::setLetter(bool on) {
    if (letter() == on)
        return;
    options_.paper = on ? Paper::letter : Paper::a4;
    compose();
}

void SheetPreview::setWidth(int pixels) {
    if (pixels == width_)
        return;
    width_ = pixels;
    draw();
}

SheetPicture::SheetPicture(QQuickItem* parent)
    : QQuickPaintedItem{parent} {}

void SheetPicture::setPreview(SheetPreview* preview) {
    if (preview == preview_)
        return;
    if (preview_)
        preview_->disconnect(this);
    preview_ = preview;
    if (preview_) {
        connect(preview_, &SheetPreview::pictured, this, [this] { update(); });
        preview_->setWidth(int(width()));
    }
    emit previewChanged();
    update();
}

void SheetPicture::geometryChange(const QRectF& now, const QRectF& before) {
    QQuickPaintedItem::geometryChange(now, before);
    if (preview_ && now.width() > 0)
        preview_->setWidth(int(now.width()));
}

void SheetPicture::paint(QPainter* painter) {
    painter->fillRect(QRectF{0, 0, width(), height()}, Qt::white);
    if (preview_ && !preview_->picture().isNull()) {
        painter->setRenderHint(QPainter::SmoothPixmapTransform);
        // What is no longer the page in hand stands back until the next one is drawn.
        painter->setOpacity(preview_->isDrawn() ? 1 : 0.3);
        painter->drawImage(QRectF{0, 0, width(), height()}, preview_->picture());
    }
}
