#pragma once

#include <QList>
#include <QPointF>
#include <QQuickItem>

#include <functional>

/// Makes one tap of two in the same place within half a second, all over the window it is in: the
/// second does nothing, whatever has come under the finger meanwhile. Taps in other places (another
/// person's finger) are left alone, and so is whatever says that it is tapped fast (`fast`, the
/// keys of pads).
class TapGuard : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool active MEMBER active_)
    /// How far from the first a tap is in the same place, in pixels.
    Q_PROPERTY(qreal reach MEMBER reach_)

public:
    static constexpr int kOneTapMs = 500;

    explicit TapGuard(QQuickItem* parent = nullptr);

    bool eventFilter(QObject* watched, QEvent* event) override;
    /// Steady milliseconds; for tests.
    void setClock(std::function<qint64()> clock) { clock_ = std::move(clock); }

protected:
    void itemChange(ItemChange change, const ItemChangeData& data) override;

private:
    bool isSecond(QPointF at);

    bool active_ = true, mouse_ = false, touch_ = false; ///< a tap is being swallowed
    qreal reach_ = 32;
    std::function<qint64()> clock_;
    struct Tapped {
        QPointF at;
        qint64 ms = 0;
    };
    QList<Tapped> lately_; ///< within `kOneTapMs`, of all fingers
};
