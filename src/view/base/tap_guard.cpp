#include "view/base/tap_guard.h"

#include <QElapsedTimer>
#include <QLineF>
#include <QMouseEvent>
#include <QQuickWindow>
#include <QTouchEvent>

#include <algorithm>

namespace {

bool isFastAt(const QQuickItem& item, QPointF scene) {
    for (const auto* child : item.childItems()) {
        if (!child->isVisible() || !child->contains(child->mapFromScene(scene)))
            continue;
        if (child->property("fast").toBool() || isFastAt(*child, scene))
            return true;
    }
    return false;
}

} // namespace

TapGuard::TapGuard(QQuickItem* parent)
    : QQuickItem{parent} {
    QElapsedTimer timer;
    timer.start();
    clock_ = [timer] { return timer.elapsed(); };
    if (window()) // the scene of a parent given here was told before this was a guard
        window()->installEventFilter(this);
}

void TapGuard::itemChange(ItemChange change, const ItemChangeData& data) {
    if (change == ItemSceneChange) {
        if (window())
            window()->removeEventFilter(this);
        if (data.window)
            data.window->installEventFilter(this);
    }
    QQuickItem::itemChange(change, data);
}

bool TapGuard::isSecond(QPointF at) {
    const auto now = clock_();
    lately_.removeIf([now](const Tapped& t) { return now - t.ms >= kOneTapMs; });
    const bool near = std::any_of(lately_.begin(), lately_.end(), [&](const Tapped& t) {
        return QLineF{at, t.at}.length() <= reach_;
    });
    if (near && active_ && isVisible() && window() && !isFastAt(*window()->contentItem(), at))
        return true;
    lately_ << Tapped{at, now};
    return false;
}

bool TapGuard::eventFilter(QObject* watched, QEvent* event) {
    switch (event->type()) {
    case QEvent::MouseButtonPress:
    case QEvent::MouseButtonDblClick:
        mouse_ = isSecond(static_cast<QMouseEvent*>(event)->position());
        break;
    case QEvent::TouchBegin: {
        const auto& points = static_cast<QTouchEvent*>(event)->points();
        touch_ = points.size() == 1 && isSecond(points.front().position());
        break;
    }
    case QEvent::MouseMove:
    case QEvent::MouseButtonRelease:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd:
    case QEvent::TouchCancel:
        break;
    default:
        return QQuickItem::eventFilter(watched, event);
    }
    const bool isTouch = event->type() == QEvent::TouchBegin ||
                         event->type() == QEvent::TouchUpdate ||
                         event->type() == QEvent::TouchEnd || event->type() == QEvent::TouchCancel;
    const bool swallowed = isTouch ? touch_ : mouse_;
    if (event->type() == QEvent::TouchEnd || event->type() == QEvent::TouchCancel)
        touch_ = false;
    if (event->type() == QEvent::MouseButtonRelease)
        mouse_ = false;
    if (!swallowed)
        return QQuickItem::eventFilter(watched, event);
    event->accept(); // else the system makes a mouse's press of an unwanted touch
    return true;
}
