#include "unit/view/qt_application.h"
#include "view/base/tap_guard.h"

#include <QCoreApplication>
#include <QMouseEvent>
#include <QQuickWindow>
#include <gtest/gtest.h>

namespace {

/// Counts the presses that come through.
class Under : public QQuickItem {
public:
    explicit Under(QQuickItem* parent)
        : QQuickItem{parent} {
        setSize(parent->size());
        setAcceptedMouseButtons(Qt::LeftButton);
    }
    int presses = 0, releases = 0;

protected:
    void mousePressEvent(QMouseEvent* event) override {
        ++presses;
        event->accept();
    }
    void mouseReleaseEvent(QMouseEvent*) override { ++releases; }
};

struct Glass : testing::Test {
    std::unique_ptr<QQuickWindow> window;
    Under* under = nullptr;
    TapGuard* guard = nullptr;
    qint64 now = 10'000;

    Glass() {
        needApplication();
        window = std::make_unique<QQuickWindow>();
        window->resize(400, 300);
        window->contentItem()->setSize({400, 300});
        window->show();
        under = new Under{window->contentItem()};
        guard = new TapGuard{window->contentItem()};
        guard->setClock([this] { return now; });
    }
    void tap(QPointF at) {
        for (const auto type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
            const bool down = type == QEvent::MouseButtonPress;
            QMouseEvent event{
                type, at, at, Qt::LeftButton, down ? Qt::LeftButton : Qt::NoButton, Qt::NoModifier};
            QCoreApplication::sendEvent(window.get(), &event);
        }
    }
};

TEST_F(Glass, TwoTapsInOnePlaceWithinHalfASecondAreOne) {
    for (const int between : {0, 40, 80, 160, 250, 400, 499}) {
        now += 10'000;
        const int before = under->presses;
        tap({100, 100});
        now += between;
        tap({103, 98});
        EXPECT_EQ(under->presses, before + 1) << between << " ms";
        EXPECT_EQ(under->releases, under->presses);
        now += 500;
        tap({100, 100});
        EXPECT_EQ(under->presses, before + 2) << "a later one counts";
    }
}

TEST_F(Glass, AnotherFingerElsewhereCounts) {
    tap({100, 100});
    now += 50;
    tap({250, 100});
    now += 50;
    tap({100, 100}); // the first one's second tap
    EXPECT_EQ(under->presses, 2);
}

TEST_F(Glass, KeysOfPadsAreFast) {
    under->setProperty("fast", true);
    tap({100, 100});
    now += 60;
    tap({100, 100});
    EXPECT_EQ(under->presses, 2);
}

TEST_F(Glass, AtRestItLetsEverythingThrough) {
    guard->setProperty("active", false);
    tap({100, 100});
    now += 60;
    tap({100, 100});
    EXPECT_EQ(under->presses, 2);
}

} // namespace
