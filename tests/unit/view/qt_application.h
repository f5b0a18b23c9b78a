#pragma once

/// Qt's signals between threads, timers and fonts need an application; made once for all tests.
void needApplication();

/// Lets queued signals and timers run until the condition holds; false after a few seconds.
template <class Condition>
bool comes(Condition condition);

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QThread>

template <class Condition>
bool comes(Condition condition) {
    QElapsedTimer timer;
    timer.start();
    while (!condition()) {
        if (timer.elapsed() > 5'000)
            return false;
        QCoreApplication::processEvents();
        QThread::msleep(1);
    }
    return true;
}
