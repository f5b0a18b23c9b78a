#pragma once

#include <QObject>
#include <QSettings>
#include <QtQmlIntegration>

#include <memory>

class QQuickWindow;

/// Whether letters to tap are shown under a field for words. As needed: where a finger was used
/// last and no keyboard. A key of a keyboard puts them away until the field itself is touched.
class Letters : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the application")
    Q_PROPERTY(Show show READ show WRITE setShow NOTIFY changed)
    /// Now, wherever words are typed.
    Q_PROPERTY(bool wanted READ wanted NOTIFY changed)

public:
    enum class Show { AsNeeded, Always, Never };
    Q_ENUM(Show)

    /// Kept in the file; an empty name keeps nothing (tests).
    explicit Letters(const QString& file, QObject* parent = nullptr);

    Show show() const { return show_; }
    void setShow(Show show);
    bool wanted() const { return show_ == Show::Always || (show_ == Show::AsNeeded && byFinger_); }

    /// Sees from now on what hands do in this window.
    void follow(QQuickWindow* window);

    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    void changed();

private:
    void setByFinger(bool byFinger);

    std::unique_ptr<QSettings> kept_;
    Show show_ = Show::AsNeeded;
    bool byFinger_ = false, keyboardSeen_ = false;
};
