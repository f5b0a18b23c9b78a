#include "app/within_screen.h"

#include <QGuiApplication>
#include <QScreen>
#include <QTimer>

#include <algorithm>

namespace bastewright::app {
namespace {

constexpr int kFrameMs = 300; // by then a window manager has put its frame round the window

void fitNow(QWindow& window) {
    const QScreen* screen = window.screen();
    if (!screen || window.visibility() != QWindow::Windowed)
        return;
    const QRect free = screen->availableGeometry();
    const QMargins frame = window.frameMargins();
    const QSize size = fitting(window.size(), free.size(), frame);
    if (size == window.size())
        return;
    window.resize(size);
    const QRect whole{window.framePosition(), size.grownBy(frame)};
    window.setFramePosition(
        {std::max(free.left(), std::min(whole.x(), free.right() + 1 - whole.width())),
         std::max(free.top(), std::min(whole.y(), free.bottom() + 1 - whole.height()))});
}

} // namespace

QSize fitting(QSize wanted, QSize available, QMargins frame) {
    return wanted.boundedTo(available.shrunkBy(frame)).expandedTo({1, 1});
}

QSize openingSize(QSize wanted) {
    const QScreen* screen = QGuiApplication::primaryScreen();
    return screen ? fitting(wanted, screen->availableGeometry().size(), {}) : wanted;
}

void keepWithinScreen(QWindow& window) {
    const auto soon = [&window] {
        QTimer::singleShot(kFrameMs, &window, [&window] { fitNow(window); });
    };
    QObject::connect(&window, &QWindow::screenChanged, &window, soon);
    soon();
}

} // namespace bastewright::app
