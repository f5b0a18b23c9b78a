#pragma once

#include <QObject>
#include <QQuickWindow>
#include <QTimer>

namespace bastewright::app {

/// For tests that drive the built program from outside: writes, a few times a second, where on the
/// window everything stands that can be tapped and has a name, as lines of "name x y enabled". The
/// file is replaced as a whole. Off unless the environment names a file in BASTEWRIGHT_TELL_PLACES.
class Places : public QObject {
    Q_OBJECT

public:
    Places(QQuickWindow* window, QString file, QObject* parent = nullptr);

private:
    void tell();

    QQuickWindow* window_;
    QString file_;
    QTimer timer_;
};

} // namespace bastewright::app
