#include "app/event_turn.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QEvent>
#include <QThread>

namespace bastewright::app {

void takeTurn(int atMostMs) {
    if (atMostMs > 0)
        QCoreApplication::processEvents(QEventLoop::AllEvents, atMostMs);
    else
        QCoreApplication::processEvents();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

void live(int milliseconds) {
    QElapsedTimer timer;
    timer.start();
    do {
        takeTurn(20);
        QThread::msleep(2);
    } while (timer.elapsed() < milliseconds);
}

} // namespace bastewright::app
