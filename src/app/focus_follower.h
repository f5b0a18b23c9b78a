#pragma once

#include <QList>
#include <QObject>
#include <QQuickWindow>

namespace bastewright::app {

/// Keeps the place of the keyboard in sight: scrolls whatever it comes to into every list it lies
/// in, also when the list becomes lower, as it does above letters to tap; and goes on to the next
/// stop where what it was on has gone.
class FocusFollower : public QObject {
    Q_OBJECT

public:
    explicit FocusFollower(QQuickWindow* window, QObject* parent = nullptr);

    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void comeTo();
    void follow();
    void standOnAStop();

    QQuickWindow* window_;
    bool keys_ = false;                    ///< what was used last
    QList<QMetaObject::Connection> lists_; ///< those the item in focus lies in
};

} // namespace bastewright::app
