#pragma once

#include <QObject>
#include <QSettings>
#include <QtQmlIntegration>

#include <memory>

/// How the device behaves in the room: its light, the whole screen or a window, and how it draws
/// attention. Kept between starts, per device.
class Surroundings : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the application")
    /// Light, dark or of high contrast as the rest of the device is, instead of what was chosen
    /// here.
    Q_PROPERTY(bool asDevice READ asDevice WRITE setAsDevice NOTIFY changed)
    Q_PROPERTY(bool deviceDark READ deviceDark WRITE setDeviceDark NOTIFY changed)
    Q_PROPERTY(bool deviceContrast READ deviceContrast WRITE setDeviceContrast NOTIFY changed)
    Q_PROPERTY(bool wholeScreen READ wholeScreen WRITE setWholeScreen NOTIFY changed)
    /// The edge of the screen lights up when a pass may be shifted.
    Q_PROPERTY(bool edgeSign READ edgeSign WRITE setEdgeSign NOTIFY changed)
    /// Nothing moves or fades.
    Q_PROPERTY(bool still READ still WRITE setStill NOTIFY changed)

public:
    /// Kept in the file; an empty name keeps nothing (tests).
    explicit Surroundings(const QString& file, QObject* parent = nullptr);

    bool asDevice() const { return asDevice_; }
    void setAsDevice(bool on);
    bool deviceDark() const { return deviceDark_; }
    void setDeviceDark(bool dark);
    bool deviceContrast() const { return deviceContrast_; }
    void setDeviceContrast(bool high);
    bool wholeScreen() const { return wholeScreen_; }
    void setWholeScreen(bool on);
    bool edgeSign() const { return edgeSign_; }
    void setEdgeSign(bool on);
    bool still() const { return still_; }
    void setStill(bool on);

signals:
    void changed();

private:
    void keep(bool& value, const char* key, bool now);

    std::unique_ptr<QSettings> kept_;
    bool asDevice_ = false, deviceDark_ = false, deviceContrast_ = false, wholeScreen_ = false,
         edgeSign_ = true, still_ = false;
};
