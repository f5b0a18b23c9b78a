#pragma once

#include <QObject>
#include <QSettings>
#include <QStringList>
#include <QtQmlIntegration>

#include <memory>

/// How this person, on this device, reads best: kept between starts, per device.
class Comfort : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    /// Pixels (of the screen's own logical kind) in a millimetre, as measured; set by calibration.
    Q_PROPERTY(qreal density READ density WRITE setDensity NOTIFY changed)
    /// From the eye to the device at the table, millimetres.
    Q_PROPERTY(qreal distance READ distance WRITE setDistance NOTIFY changed)
    Q_PROPERTY(qreal textScale READ textScale WRITE setTextScale NOTIFY changed)
    Q_PROPERTY(bool dark READ dark WRITE setDark NOTIFY changed)
    /// Black on white (or white on black where dark too), with strong frames.
    Q_PROPERTY(bool highContrast READ highContrast WRITE setHighContrast NOTIFY changed)
    /// Two people face each other across the device: each has a half that stands upright for them.
    Q_PROPERTY(bool faceToFace READ faceToFace WRITE setFaceToFace NOTIFY changed)
    /// Quarter turns of the table as it is drawn at the table, 0 to 3.
    Q_PROPERTY(int turn READ turn WRITE setTurn NOTIFY changed)
    /// Code of the language everything is said in: "de". The device's, until one is chosen here.
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY languageChanged)
    Q_PROPERTY(QStringList languages READ languages CONSTANT)
    /// The device writes times with AM and PM.
    Q_PROPERTY(bool twelveHours READ twelveHours CONSTANT)

public:
    /// Kept in the file; an empty name keeps nothing and leaves the language as it is (tests).
    explicit Comfort(const QString& file, qreal reportedDensity, QObject* parent = nullptr);

    qreal density() const { return density_; }
    void setDensity(qreal density);
    qreal distance() const { return distance_; }
    void setDistance(qreal millimetres);
    qreal textScale() const { return textScale_; }
    void setTextScale(qreal scale);
    bool dark() const { return dark_; }
    void setDark(bool dark);
    bool highContrast() const { return highContrast_; }
    void setHighContrast(bool on);
    bool faceToFace() const { return faceToFace_; }
    void setFaceToFace(bool on);
    int turn() const { return turn_; }
    void setTurn(int turn);
    QString language() const;
    void setLanguage(const QString& code);
    QStringList languages() const;
    bool twelveHours() const;
    /// What a language calls itself.
    Q_INVOKABLE QString languageName(const QString& code) const;

signals:
    void changed();
    void languageChanged();

private:
    void keep(const QString& key, const QVariant& value);

    std::unique_ptr<QSettings> kept_;
    qreal density_, distance_ = 1000, textScale_ = 1;
    bool dark_ = false, highContrast_ = false, faceToFace_ = false;
    int turn_ = 0;
};
