#include "view/base/letters.h"

#include <QKeyEvent>
#include <QMetaEnum>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTouchEvent>

namespace {

constexpr QLatin1String kKey{"letters"};

/// Volume, power and the like are buttons of a device without a keyboard; they write nothing.
bool isOfKeyboard(const QKeyEvent& event) {
    return !event.text().isEmpty();
}

bool onFieldInHand(const QQuickWindow& window, const QTouchEvent& event) {
    const auto* field = window.activeFocusItem();
    if (!field || !field->inherits("QQuickTextInput") || event.points().isEmpty())
        return false;
    return field->contains(field->mapFromScene(event.points().front().scenePosition()));
}

} // namespace

Letters::Letters(const QString& file, QObject* parent)
    : QObject{parent} {
    if (file.isEmpty())
        return;
    kept_ = std::make_unique<QSettings>(file, QSettings::IniFormat);
    bool known = false;
    const auto kept = kept_->value(kKey).toByteArray();
    const int value = QMetaEnum::fromType<Show>().keyToValue(kept.constData(), &known);
    if (known)
        show_ = Show(value);
}

void Letters::setShow(Show show) {
    if (show == show_)
        return;
    show_ = show;
    if (kept_)
        kept_->setValue(kKey, QLatin1String(QMetaEnum::fromType<Show>().valueToKey(int(show))));
    emit changed();
}

void Letters::follow(QQuickWindow* window) {
    window->installEventFilter(this);
}

void Letters::setByFinger(bool byFinger) {
    if (byFinger == byFinger_)
        return;
    byFinger_ = byFinger;
    emit changed();
}

bool Letters::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress && isOfKeyboard(*static_cast<QKeyEvent*>(event))) {
        keyboardSeen_ = true;
        setByFinger(false);
    } else if (event->type() == QEvent::TouchBegin) {
        const auto* window = qobject_cast<QQuickWindow*>(watched);
        if (window && onFieldInHand(*window, *static_cast<QTouchEvent*>(event)))
            keyboardSeen_ = false;
        setByFinger(!keyboardSeen_);
    }
    return false;
}
