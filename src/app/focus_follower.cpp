#include "app/focus_follower.h"

#include <QQuickItem>
#include <QTimer>

namespace bastewright::app {
namespace {

/// A tap leaves things where they are; only keys come to what is out of sight.
bool byKeys(const QQuickItem& item) {
    const auto shown = item.property("visualFocus");
    return !shown.isValid() || shown.toBool();
}

/// How far a list moves on so that from `start` on `size` of it is in sight: least, its start
/// first.
qreal shiftFor(qreal start, qreal size, qreal view) {
    if (start < 0 || size > view)
        return start;
    return std::max(0.0, start + size - view);
}

void bringIntoSight(const QQuickItem& item, QQuickItem& list) {
    const QRectF lies = item.mapRectToItem(&list, item.boundingRect());
    const qreal x = shiftFor(lies.x(), lies.width(), list.width());
    const qreal y = shiftFor(lies.y(), lies.height(), list.height());
    // What is wider or higher than its list scrolls by itself; moving it would show no more of it.
    if (x != 0 && list.property("contentWidth").toReal() > list.width() + 1)
        list.setProperty("contentX", list.property("contentX").toReal() + x);
    if (y != 0 && list.property("contentHeight").toReal() > list.height() + 1)
        list.setProperty("contentY", list.property("contentY").toReal() + y);
}

template <typename Visit>
void eachList(QQuickItem* item, const Visit& visit) {
    for (auto* above = item ? item->parentItem() : nullptr; above; above = above->parentItem())
        if (above->inherits("QQuickFlickable"))
            visit(*above);
}

} // namespace

FocusFollower::FocusFollower(QQuickWindow* window, QObject* parent)
    : QObject{parent}
    , window_{window} {
    window->installEventFilter(this);
    connect(window, &QQuickWindow::activeFocusItemChanged, this, &FocusFollower::comeTo);
}

bool FocusFollower::eventFilter(QObject* watched, QEvent* event) {
    switch (event->type()) {
    case QEvent::KeyPress:
        keys_ = true;
        break;
    case QEvent::TouchBegin:
    case QEvent::MouseButtonPress:
        keys_ = false;
        break;
    default:
        break;
    }
    return QObject::eventFilter(watched, event);
}

void FocusFollower::standOnAStop() {
    if (!keys_)
        return;
    auto* item = window_->activeFocusItem();
    if (!item)
        item = window_->contentItem(); // a screen went with what was in focus
    if (!item->activeFocusOnTab()) {
        if (auto* next = item->nextItemInFocusChain(); next && next->activeFocusOnTab())
            next->forceActiveFocus(Qt::TabFocusReason);
    } else if (item->property("visualFocus") == false) {
        item->setProperty("focusReason", Qt::TabFocusReason); // came back from a sheet
    }
}

void FocusFollower::comeTo() {
    for (const auto& list : lists_)
        disconnect(list);
    lists_.clear();
    eachList(window_->activeFocusItem(), [this](QQuickItem& list) {
        lists_ << connect(&list, &QQuickItem::heightChanged, this,
                          [this] { QTimer::singleShot(0, this, &FocusFollower::follow); });
    });
    QTimer::singleShot(0, this, &FocusFollower::follow); // what is new has been laid out by then
}

void FocusFollower::follow() {
    standOnAStop();
    auto* item = window_->activeFocusItem();
    if (!item || !byKeys(*item))
        return;
    eachList(item, [item](QQuickItem& list) { bringIntoSight(*item, list); });
}

} // namespace bastewright::app
